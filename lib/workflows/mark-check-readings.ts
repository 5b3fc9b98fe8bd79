import { z } from "zod";
import { requirePermission } from "../access/require-permission.ts";
import type { Context } from "../platform/context.ts";
import { done, type Outcome, refused } from "../quantity/problem.ts";
import { recordReadingsAct } from "../store/audit.ts";
import { findCheckStandard, markCheckReadings, unmarkCheckReadings } from "../store/check-standards.ts";
import { inTransaction } from "../store/database.ts";
import { readingsByIds } from "../store/readings.ts";

export const markInput = z.object({
  readingIds: z.array(z.string().min(1)).min(1).max(20_000),
  /** null: they are no check readings after all */
  checkStandardId: z.string().min(1).nullable(),
});
export type Marked = { readings: number; before: { readingId: string; checkStandardId: string | null }[] };

/**
 * Says that readings were taken on a check standard, or that they were not; answers with what they were before, for the undo.
 *
 * Refused: no such standard or reading, and a reading that is on a part of an item (`reading-on-part`): it is taken off there first.
 */
export async function markCheckReadingsWorkflow(
  context: Context,
  input: z.input<typeof markInput>,
): Promise<Outcome<Marked>> {
  const permitted = requirePermission(context.person, "assign-readings");
  if (!permitted.ok) return permitted;
  const { readingIds, checkStandardId } = markInput.parse(input);
  return inTransaction(context.db, async (tx) => {
    if (checkStandardId !== null && !(await findCheckStandard(tx, { id: checkStandardId })))
      return refused({ code: "unknown-check-standard", found: checkStandardId });
    const readings = await readingsByIds(tx, readingIds);
    if (readings.length !== new Set(readingIds).size)
      return refused({ code: "unknown-reading", found: `${readingIds.length - readings.length}` });
    const assigned = readings.find((r) => r.componentId !== null);
    if (assigned) return refused({ code: "reading-on-part", found: assigned.number ?? `row ${assigned.row}` });
    const before = readings.map((r) => ({ readingId: r.id, checkStandardId: r.checkStandardId }));
    if (checkStandardId === null) await unmarkCheckReadings(tx, readingIds);
    else await markCheckReadings(tx, readingIds, checkStandardId);
    const detail = { checkStandard: checkStandardId };
    await recordReadingsAct(
      tx,
      { at: context.clock(), actor: permitted.value, action: "mark-check-readings", detail },
      readingIds,
    );
    return done({ readings: readings.length, before });
  });
}
