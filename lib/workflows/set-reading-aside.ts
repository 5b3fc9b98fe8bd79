import { z } from "zod";
import { requirePermission } from "../access/require-permission.ts";
import type { Context } from "../platform/context.ts";
import { done, type Outcome, refused } from "../quantity/problem.ts";
import { recordReadingsAct } from "../store/audit.ts";
import { inTransaction } from "../store/database.ts";
import { readingsByIds, type StoredReading, setReadingAside } from "../store/readings.ts";

export const asideInput = z.object({
  readingIds: z.array(z.string().min(1)).min(1).max(2_000),
  reason: z.string().trim().min(8).max(400),
});

/** What was said of readings before: their reasons, null for none. */
export const asideBefore = z
  .array(z.object({ readingId: z.string().min(1), reason: z.string().max(400).nullable() }))
  .max(2_000);
export type AsideBefore = z.infer<typeof asideBefore>;
type Done = { count: number; before: AsideBefore };

const reasonsOf = (readings: StoredReading[]): AsideBefore =>
  readings.map((r) => ({ readingId: r.id, reason: r.setAside?.reason ?? null }));

/** Sets readings aside with a written reason. They stay visible, and the page shows the value with them too. */
export async function setReadingAsideWorkflow(
  context: Context,
  input: z.input<typeof asideInput>,
): Promise<Outcome<Done>> {
  const permitted = requirePermission(context.person, "set-aside-reading");
  if (!permitted.ok) return permitted;
  const parsed = asideInput.safeParse(input);
  if (!parsed.success)
    return refused({
      code: "reason-too-short",
      where: { field: "reason" },
      found: input.reason,
      allowed: "8 to 400 characters",
    });
  const { readingIds, reason } = parsed.data;
  return inTransaction(context.db, async (tx) => {
    const readings = await readingsByIds(tx, readingIds);
    if (readings.length === 0) return refused({ code: "unknown-reading", found: readingIds.join(", ") });
    await setReadingAside(tx, readingIds, { reason, byId: permitted.value.id, at: context.clock() });
    const act = { at: context.clock(), actor: permitted.value, action: "set-aside-reading", detail: { reason } };
    await recordReadingsAct(tx, act, readingIds);
    return done({ count: readings.length, before: reasonsOf(readings) });
  });
}

/** Takes set-aside readings back into the result. */
export async function restoreReadingWorkflow(context: Context, readingIds: string[]): Promise<Outcome<Done>> {
  const permitted = requirePermission(context.person, "set-aside-reading");
  if (!permitted.ok) return permitted;
  return inTransaction(context.db, async (tx) => {
    const before = reasonsOf(await readingsByIds(tx, readingIds));
    await setReadingAside(tx, readingIds, null);
    const act = { at: context.clock(), actor: permitted.value, action: "restore-reading" };
    await recordReadingsAct(tx, act, readingIds);
    return done({ count: readingIds.length, before });
  });
}

/** The undo of both: every reading has again the reason it had, or none. The person and the time are those of the undo. */
export async function putAsideBackWorkflow(context: Context, before: AsideBefore): Promise<Outcome<number>> {
  const permitted = requirePermission(context.person, "set-aside-reading");
  if (!permitted.ok) return permitted;
  return inTransaction(context.db, async (tx) => {
    const byReason = new Map<string | null, string[]>();
    for (const { readingId, reason } of before) byReason.set(reason, [...(byReason.get(reason) ?? []), readingId]);
    for (const [reason, ids] of byReason)
      await setReadingAside(
        tx,
        ids,
        reason === null ? null : { reason, byId: permitted.value.id, at: context.clock() },
      );
    const act = { at: context.clock(), actor: permitted.value, action: "undo-set-aside" };
    await recordReadingsAct(
      tx,
      act,
      before.map((b) => b.readingId),
    );
    return done(before.length);
  });
}
