import type { AssessSession } from "../publication/snapshot-sessions.ts";
import type { Db } from "./database.ts";
import { peopleByIds } from "./people.ts";
import { checkedSessions } from "./sessions.ts";

/** How many earlier sessions of an instrument a page can look back on. */
const lookBack = 12;

/** The sessions of an item's readings, and the last ones before them of the same instruments, with what their checks showed. */
export async function assessSessions(db: Db, sessionIds: readonly string[]): Promise<AssessSession[]> {
  const own = [...new Set(sessionIds)];
  if (own.length === 0) return [];
  const known = await db.session.findMany({
    where: { id: { in: own } },
    select: { instrumentId: true, startedAt: true },
  });
  const latest =
    known
      .map((s) => s.startedAt)
      .sort()
      .at(-1) ?? "";
  const earlier = await Promise.all(
    [...new Set(known.map((s) => s.instrumentId))].map((instrumentId) =>
      db.session.findMany({
        where: { instrumentId, startedAt: { lte: latest } },
        orderBy: { startedAt: "desc" },
        take: lookBack,
        select: { id: true },
      }),
    ),
  );
  const ids = [...new Set([...own, ...earlier.flat().map((s) => s.id)])];
  const checked = await checkedSessions(db, ids);
  const operators = new Map(
    (
      await peopleByIds(
        db,
        checked.flatMap(({ session }) => session.operatorId ?? []),
      )
    ).map((p) => [p.id, p.name]),
  );
  return checked.map(({ session, fitness }) => ({
    id: session.id,
    label: session.label,
    instrument: session.instrument,
    startedAt: session.startedAt,
    endedAt: session.endedAt,
    place: session.place,
    operator: session.operatorName ?? operators.get(session.operatorId ?? "") ?? null,
    conditions: session.conditions,
    trained: session.trained,
    clockShiftMinutes: session.clockShiftMinutes,
    inDoubtReason: session.inDoubtReason,
    fitness,
  }));
}
