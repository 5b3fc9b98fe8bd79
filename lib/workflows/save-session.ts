import { z } from "zod";
import { requirePermission } from "../access/require-permission.ts";
import { instantOf } from "../consistency/instant.ts";
import type { Joined } from "../consistency/join-sessions.ts";
import type { Context } from "../platform/context.ts";
import { done, type Outcome, refused } from "../quantity/problem.ts";
import { recordAct } from "../store/audit.ts";
import { inTransaction } from "../store/database.ts";
import { findInstrument } from "../store/instruments.ts";
import { deleteSession, findSession, joinReadings, type SessionFields, saveSession } from "../store/sessions.ts";

const moment = z.iso.datetime({ offset: true });
const line = (most: number) => z.string().trim().min(1).max(most).nullable().default(null);

export const sessionInput = z.object({
  instrumentId: z.string().min(1),
  operatorId: z.string().min(1).nullable().default(null),
  operatorName: line(120),
  place: line(200),
  timeZone: z.string().min(1).max(60),
  startedAt: moment,
  endedAt: moment.nullable().default(null),
  conditions: line(400),
  trained: z.boolean().default(false),
  clockShiftMinutes: z
    .number()
    .int()
    .min(-27 * 60)
    .max(27 * 60)
    .default(0),
  corrections: z.array(z.string()).max(60).default([]),
  inDoubtReason: z.string().trim().min(8).max(400).nullable().default(null),
  note: z.string().trim().max(2000).default(""),
});

export type SavedSession = { id: string; joined: Joined };

/**
 * Opens a session or changes one, and lets the instrument's readings join by their times. Without an id, `joined` says what is still
 * outside any session and what two of them claim.
 *
 * Refused: no such instrument or session, an end that is not after the start (`ends-before-start`).
 */
export async function saveSessionWorkflow(
  context: Context,
  input: z.input<typeof sessionInput>,
  id?: string,
): Promise<Outcome<SavedSession>> {
  const permitted = requirePermission(context.person, "manage-instruments");
  if (!permitted.ok) return permitted;
  const fields: SessionFields = sessionInput.parse(input);
  const { startedAt, endedAt, instrumentId } = fields;
  if (endedAt !== null && instantOf(endedAt) <= instantOf(startedAt))
    return refused({ code: "ends-before-start", where: { field: "endedAt" }, found: endedAt, allowed: startedAt });
  return inTransaction(context.db, async (tx) => {
    if (!(await findInstrument(tx, { id: instrumentId })))
      return refused({ code: "unknown-instrument", where: { field: "instrumentId" }, found: instrumentId });
    const before = id ? await findSession(tx, id) : null;
    if (id && !before) return refused({ code: "unknown-session", found: id });
    const saved = await saveSession(tx, fields, {
      ...(id ? { id } : {}),
      personId: permitted.value.id,
      at: context.clock(),
    });
    if (before && before.instrumentId !== instrumentId) await joinReadings(tx, { instrumentId: before.instrumentId });
    const of = { record: "session", recordId: saved, detail: { startedAt } };
    await recordAct(tx, {
      at: context.clock(),
      actor: permitted.value,
      action: id ? "edit-session" : "add-session",
      ...of,
    });
    return done({ id: saved, joined: await joinReadings(tx, { instrumentId }) });
  });
}

/** Changes one thing of a session and leaves the rest: the clock put right, what to correct for, why doubtful readings are used. */
export async function adjustSessionWorkflow(
  context: Context,
  id: string,
  change: Partial<Pick<SessionFields, "clockShiftMinutes" | "corrections" | "inDoubtReason" | "trained">>,
): Promise<Outcome<SavedSession>> {
  const permitted = requirePermission(context.person, "manage-instruments");
  if (!permitted.ok) return permitted;
  const parsed = sessionInput
    .pick({ clockShiftMinutes: true, corrections: true, inDoubtReason: true, trained: true })
    .partial()
    .safeParse(change);
  if (!parsed.success) {
    const field = String(parsed.error.issues[0]?.path[0] ?? "");
    return field === "inDoubtReason"
      ? refused({ code: "reason-too-short", where: { field }, allowed: "8 to 400 characters" })
      : refused({ code: "invalid-form", where: { field } });
  }
  return inTransaction(context.db, async (tx) => {
    const session = await findSession(tx, id);
    if (!session) return refused({ code: "unknown-session", found: id });
    const { id: _, instrument: __, label: ___, readings: ____, checks: _____, ...fields } = session;
    const given = Object.fromEntries(Object.entries(change).filter(([, value]) => value !== undefined));
    await saveSession(tx, { ...fields, ...given }, { id, personId: permitted.value.id, at: context.clock() });
    const detail = { changed: Object.keys(given).join(", ") };
    await recordAct(tx, {
      at: context.clock(),
      actor: permitted.value,
      action: "edit-session",
      record: "session",
      recordId: id,
      detail,
    });
    return done({ id, joined: await joinReadings(tx, { instrumentId: session.instrumentId }) });
  });
}

/** Takes a session away; its readings stay, without one. */
export async function removeSessionWorkflow(context: Context, id: string): Promise<Outcome<{ readings: number }>> {
  const permitted = requirePermission(context.person, "manage-instruments");
  if (!permitted.ok) return permitted;
  return inTransaction(context.db, async (tx) => {
    const session = await findSession(tx, id);
    if (!session) return refused({ code: "unknown-session", found: id });
    await deleteSession(tx, id);
    const of = { record: "session", recordId: id, detail: { session: session.label } };
    await recordAct(tx, { at: context.clock(), actor: permitted.value, action: "remove-session", ...of });
    return done({ readings: session.readings });
  });
}
