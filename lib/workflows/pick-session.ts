import { z } from "zod";
import { requirePermission } from "../access/require-permission.ts";
import type { Context } from "../platform/context.ts";
import { done, type Outcome, refused } from "../quantity/problem.ts";
import { recordReadingsAct } from "../store/audit.ts";
import { inTransaction } from "../store/database.ts";
import { readingsByIds } from "../store/readings.ts";
import { findSession, joinedAsItStands, writeSessions } from "../store/sessions.ts";

export const pickInput = z.object({
  readingIds: z.array(z.string().min(1)).min(1).max(20_000),
  sessionId: z.string().min(1).nullable(),
});

/**
 * Says which session readings belong to, where their times cannot: two sessions claim them, or they carry no time.
 *
 * Refused: no such session or reading, and a session whose time does not hold them (`not-a-claim`).
 */
export async function pickSessionWorkflow(
  context: Context,
  input: z.input<typeof pickInput>,
): Promise<Outcome<{ readings: number }>> {
  const permitted = requirePermission(context.person, "manage-instruments");
  if (!permitted.ok) return permitted;
  const { readingIds, sessionId } = pickInput.parse(input);
  return inTransaction(context.db, async (tx) => {
    if (sessionId !== null && !(await findSession(tx, sessionId)))
      return refused({ code: "unknown-session", found: sessionId });
    const readings = await readingsByIds(tx, readingIds);
    if (readings.length !== new Set(readingIds).size)
      return refused({ code: "unknown-reading", found: `${readingIds.length - readings.length}` });
    const { overlaps } = await joinedAsItStands(tx);
    const claims = new Map(overlaps.map((o) => [o.id, o.sessionIds]));
    const stranger = readings.find(
      (r) => sessionId !== null && r.takenAt !== null && !claims.get(r.id)?.includes(sessionId),
    );
    if (stranger) return refused({ code: "not-a-claim", found: stranger.number ?? `row ${stranger.row}` });
    await writeSessions(
      tx,
      readings.map((r) => ({ id: r.id, sessionId })),
    );
    const detail = { session: sessionId };
    await recordReadingsAct(
      tx,
      { at: context.clock(), actor: permitted.value, action: "pick-session", detail },
      readingIds,
    );
    return done({ readings: readings.length });
  });
}
