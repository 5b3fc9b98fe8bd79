import { z } from "zod";
import { requirePermission } from "../access/require-permission.ts";
import type { Context } from "../platform/context.ts";
import { sha256 } from "../platform/sha256.ts";
import { type AssessedResult, assessItem } from "../publication/assess-item.ts";
import { done, type Outcome, refused } from "../quantity/problem.ts";
import { recordAct } from "../store/audit.ts";
import { type Db, inTransaction } from "../store/database.ts";
import { itemDraft } from "../store/item-draft.ts";
import { peopleByIds } from "../store/people.ts";
import { addRetest, closeRetest, findRetest, isBlindTo, type RetestValue } from "../store/retests.ts";
import { type WorkingRecord, workingItem } from "../store/working-item.ts";

export const retestInput = z.object({
  itemId: z.string().min(1),
  componentId: z.string().min(1),
  element: z.string().min(1).max(3),
  testerId: z.string().min(1),
  note: z.string().trim().max(600).default(""),
});

/**
 * Asks another tester to measure an element of a part again. The value as it now stands is put away; until theirs is handed in,
 * the tester sees nothing of the first one, and the item cannot be published.
 */
export async function askRetestWorkflow(
  context: Context,
  input: z.input<typeof retestInput>,
): Promise<Outcome<string>> {
  const { itemId, componentId, element, testerId, note } = retestInput.parse(input);
  const now = context.clock();
  return inTransaction(context.db, async (tx) => {
    const draft = await itemDraft(tx, itemId, { now });
    const blind = context.person !== null && (await isBlindTo(tx, context.person.id, itemId));
    const about = draft ? { state: draft.record.item.state, blind } : {};
    const permitted = requirePermission(context.person, "ask-retest", about);
    if (!permitted.ok) return permitted;
    if (!draft) return refused({ code: "unknown-item", found: itemId });
    if (draft.openRetest) return refused({ code: "retest-open" });
    const [tester] = await peopleByIds(tx, [testerId]);
    if (!tester || !requirePermission(tester, "hand-in-retest").ok)
      return refused({ code: "not-a-tester", where: { field: "testerId" }, found: tester?.name ?? testerId });
    if (draft.concerned.includes(testerId) || testerId === permitted.value.id)
      return refused({ code: "knows-first-value", where: { field: "testerId" }, found: tester.name });
    const first = valueOn(draft.record, element, componentId);
    if (!first) return refused({ code: "nothing-to-retest", where: { field: "element" }, found: element });
    const retest = { itemId, componentId, element, askedById: permitted.value.id, testerId, note, askedAt: now, first };
    const recordId = await addRetest(tx, retest);
    const of = { record: "retest", recordId, itemId };
    const detail = { element, tester: tester.name };
    await recordAct(tx, { at: now, actor: permitted.value, action: "ask-retest", ...of, detail });
    return done(recordId);
  });
}

/** The re-tester hands in: from now on both values are seen and compared, and the readings count with the others. */
export async function handInRetestWorkflow(context: Context, retestId: string): Promise<Outcome<string>> {
  const permitted = requirePermission(context.person, "hand-in-retest");
  if (!permitted.ok) return permitted;
  const now = context.clock();
  return inTransaction(context.db, async (tx) => {
    const retest = await findRetest(tx, retestId);
    if (!retest || retest.testerId !== permitted.value.id) return refused({ code: "unknown-retest", found: retestId });
    if (retest.state !== "asked") return refused({ code: "retest-closed" });
    const own = await ownRecord(tx, retest.itemId, permitted.value.id, now);
    const second = own && valueOn(own, retest.element, retest.componentId);
    if (!own || !second) return refused({ code: "retest-without-readings", found: retest.element });
    const readingIds = own.readings.filter((r) => r.componentId === retest.componentId).map((r) => r.id);
    await closeRetest(tx, retestId, { state: "done", second, doneAt: now, readingIds });
    const of = { record: "retest", recordId: retestId, itemId: retest.itemId };
    const detail = { element: retest.element, readings: readingIds.length };
    await recordAct(tx, { at: now, actor: permitted.value, action: "hand-in-retest", ...of, detail });
    return done(retest.itemId);
  });
}

/** Calls a re-test off: whoever asked for it, or the owner. What was loaded for it so far counts with the other readings. */
export async function callOffRetestWorkflow(context: Context, retestId: string): Promise<Outcome<string>> {
  return inTransaction(context.db, async (tx) => {
    const retest = await findRetest(tx, retestId);
    const person = context.person;
    const blind = person !== null && retest !== null && (await isBlindTo(tx, person.id, retest.itemId));
    const permitted = requirePermission(person, "ask-retest", { blind });
    if (!permitted.ok) return permitted;
    if (!retest) return refused({ code: "unknown-retest", found: retestId });
    if (retest.state !== "asked") return refused({ code: "retest-closed" });
    await closeRetest(tx, retestId, { state: "called-off" });
    const of = { record: "retest", recordId: retestId, itemId: retest.itemId };
    await recordAct(tx, { at: context.clock(), actor: permitted.value, action: "call-off-retest", ...of });
    return done(retest.itemId);
  });
}

const ownRecord = (tx: Db, itemId: string, testerId: string, now: Date): Promise<WorkingRecord | null> =>
  workingItem(tx, itemId, now.toISOString().slice(0, 10), testerId);

/** The value of an element on a part, by the method; of several modes the one with a number, then the first. Null without readings. */
function valueOn(record: WorkingRecord, element: string, componentId: string): RetestValue | null {
  const part = assessItem(record.assess, sha256)
    .specimens.flatMap((s) => s.parts)
    .find((p) => p.id === componentId);
  const results = part?.results.filter((r) => r.reconciled.element === element && r.reconciled.counts.used > 0) ?? [];
  const chosen = results.find((r) => r.reconciled.value !== null) ?? results[0];
  return chosen ? kept(chosen, record) : null;
}

function kept({ reconciled, readings }: AssessedResult, record: WorkingRecord): RetestValue {
  const { element, quantity, unit, state, value, u, U, interval, asymmetric, below, upperBound, range, stated } =
    reconciled;
  const ids = new Set(readings.map((r) => r.id));
  const used = record.readings.filter((r) => ids.has(r.id));
  return {
    ...{ element, quantity, unit, state, value, u, U, interval, asymmetric, below, upperBound, range, stated },
    counts: {
      readings: reconciled.counts.readings,
      spots: reconciled.counts.spots,
      spotsDetected: reconciled.counts.spotsDetected,
    },
    budget: reconciled.budget.map(({ code, u: part, nu }) => ({ code, u: part, nu })),
    inputsDigest: reconciled.inputsDigest,
    instruments: [...new Set(used.flatMap((r) => r.instrumentId ?? []))].sort(),
  };
}
