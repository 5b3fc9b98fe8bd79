import { z } from "zod";
import { requirePermission } from "../access/require-permission.ts";
import type { Context } from "../platform/context.ts";
import { done, type Outcome, refused } from "../quantity/problem.ts";
import { dealToSpots, inOrderOfTime } from "../readings/in-order-of-time.ts";
import { recordReadingsAct } from "../store/audit.ts";
import { inTransaction } from "../store/database.ts";
import { type Assignment, assignmentsOf, readingsOfComponents, writeAssignments } from "../store/readings.ts";
import { findSpot } from "../store/spots.ts";

export const joinInput = z.object({
  componentId: z.string().min(1),
  join: z.discriminatedUnion("how", [
    /** the part's readings that are not set aside, in order of time, to these spots in this order */
    z.object({ how: z.literal("in-order"), spotIds: z.array(z.string().min(1)).min(1).max(500) }),
    /** by hand; null takes a reading off its spot */
    z.object({
      how: z.literal("by-hand"),
      pairs: z.array(z.object({ readingId: z.string().min(1), spotId: z.string().min(1).nullable() })).max(5_000),
    }),
  ]),
});

/**
 * Joins the readings of a part to its spots. Answers with what they were on before, so that it can be undone.
 *
 * Refused: `unknown-spot`, `unknown-reading` and `spots-do-not-divide`, where the readings do not go evenly into the spots.
 */
export async function joinSpotsWorkflow(
  context: Context,
  input: z.input<typeof joinInput>,
): Promise<Outcome<{ before: Assignment[] }>> {
  const permitted = requirePermission(context.person, "assign-readings");
  if (!permitted.ok) return permitted;
  const person = permitted.value;
  const { componentId, join } = joinInput.parse(input);
  return inTransaction(context.db, async (tx) => {
    const spotIds = join.how === "in-order" ? join.spotIds : join.pairs.flatMap((p) => p.spotId ?? []);
    for (const spotId of new Set(spotIds))
      if ((await findSpot(tx, spotId))?.componentId !== componentId)
        return refused({ code: "unknown-spot", found: spotId });
    const readings = await readingsOfComponents(tx, [componentId]);
    if (join.how === "in-order") {
      const used = inOrderOfTime(readings.filter((r) => r.setAside === null));
      const dealt = dealToSpots(used, join.spotIds);
      if (!dealt)
        return refused({
          code: "spots-do-not-divide",
          found: String(used.length),
          allowed: String(join.spotIds.length),
        });
      const after = dealt.flatMap(([spotId, shots]) =>
        shots.map(({ id: readingId }) => ({ readingId, componentId, spotId })),
      );
      return done(await written(after));
    }
    const known = new Set(readings.map((r) => r.id));
    const unknown = join.pairs.find(({ readingId }) => !known.has(readingId));
    if (unknown) return refused({ code: "unknown-reading", found: unknown.readingId });
    return done(await written(join.pairs.map((pair) => ({ ...pair, componentId }))));

    async function written(after: Assignment[]): Promise<{ before: Assignment[] }> {
      const ids = after.map((a) => a.readingId);
      const before = await assignmentsOf(tx, ids);
      await writeAssignments(tx, after);
      await recordReadingsAct(tx, { at: context.clock(), actor: person, action: "join-spots" }, ids);
      return { before };
    }
  });
}
