import { z } from "zod";
import { requirePermission } from "../access/require-permission.ts";
import type { Context } from "../platform/context.ts";
import { done, type Outcome, refused } from "../quantity/problem.ts";
import { recordReadingsAct } from "../store/audit.ts";
import { inTransaction } from "../store/database.ts";
import { itemIdOfComponent } from "../store/items.ts";
import { type Assignment, assignmentsOf, readingsByIds, spotOf, writeAssignments } from "../store/readings.ts";

export const assignInput = z.object({
  readingIds: z.array(z.string().min(1)).min(1).max(20_000),
  componentId: z.string().min(1).nullable(), // null takes the readings off whatever they were on
  /** "as-written": the file's own spot column; "one": all at one named spot; "each": no spot named, each counts alone */
  spot: z.discriminatedUnion("how", [
    z.object({ how: z.literal("as-written") }),
    z.object({ how: z.literal("one"), label: z.string().trim().min(1).max(60) }),
    z.object({ how: z.literal("each") }),
  ]),
});

/** Puts readings on a component; answers with what they were on before, so that it can be undone. */
export async function assignReadingsWorkflow(
  context: Context,
  input: z.input<typeof assignInput>,
): Promise<Outcome<{ before: Assignment[] }>> {
  const permitted = requirePermission(context.person, "assign-readings");
  if (!permitted.ok) return permitted;
  const { readingIds, componentId, spot } = assignInput.parse(input);
  return inTransaction(context.db, async (tx) => {
    if (componentId !== null && !(await itemIdOfComponent(tx, componentId)))
      return refused({ code: "unknown-part", found: componentId });
    const readings = await readingsByIds(tx, readingIds);
    if (readings.length !== new Set(readingIds).size)
      return refused({
        code: "unknown-reading",
        found: `${readingIds.length - readings.length}`,
        allowed: "readings of an import in force",
      });
    const check = readings.find((r) => r.checkStandardId !== null);
    if (check && componentId !== null)
      return refused({ code: "is-check-reading", found: check.number ?? `row ${check.row}` });
    const before = await assignmentsOf(tx, readingIds);
    const spotIds = new Map<string, string>();
    const after: Assignment[] = [];
    for (const reading of readings) {
      const label = spot.how === "one" ? spot.label : spot.how === "as-written" ? reading.spotText?.trim() : undefined;
      if (componentId !== null && label && !spotIds.has(label))
        spotIds.set(label, await spotOf(tx, componentId, label));
      after.push({
        readingId: reading.id,
        componentId,
        spotId: componentId !== null && label ? (spotIds.get(label) ?? null) : null,
      });
    }
    const act = {
      at: context.clock(),
      actor: permitted.value,
      action: componentId === null ? "unassign-readings" : "assign-readings",
    };
    if (componentId === null) await recordReadingsAct(tx, act, readingIds);
    await writeAssignments(tx, after);
    if (componentId !== null) await recordReadingsAct(tx, act, readingIds);
    return done({ before });
  });
}

export const restoreInput = z.array(
  z.object({ readingId: z.string(), componentId: z.string().nullable(), spotId: z.string().nullable() }),
);

/** Puts readings back where they were: the undo of an assignment. */
export async function restoreAssignmentsWorkflow(context: Context, before: Assignment[]): Promise<Outcome<number>> {
  const permitted = requirePermission(context.person, "assign-readings");
  if (!permitted.ok) return permitted;
  return inTransaction(context.db, async (tx) => {
    const act = { at: context.clock(), actor: permitted.value, action: "restore-assignments" };
    const ids = before.map((b) => b.readingId);
    await recordReadingsAct(tx, act, ids);
    await writeAssignments(tx, restoreInput.parse(before));
    return done(before.length);
  });
}
