import type { CheckedSitting } from "../consistency/check-series.ts";
import type { Db } from "./database.ts";
import { peopleByIds } from "./people.ts";
import { checkedSessions } from "./sessions.ts";

/**
 * Sessions with what their check standards showed: of these instruments and from this to that day, where asked; the newest of
 * them at most.
 */
export async function checkedSittings(
  db: Db,
  asked: { instrumentIds?: readonly string[]; from?: string; to?: string } = {},
  most = 200,
): Promise<CheckedSitting[]> {
  const { instrumentIds, from, to } = asked;
  const rows = await db.session.findMany({
    where: {
      ...(instrumentIds ? { instrumentId: { in: [...instrumentIds] } } : {}),
      ...(from || to ? { startedAt: { ...(from ? { gte: from } : {}), ...(to ? { lte: to } : {}) } } : {}),
    },
    orderBy: { startedAt: "desc" },
    take: most,
    select: { id: true },
  });
  const checked = await checkedSessions(
    db,
    rows.map((row) => row.id),
  );
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
    instrument: session.instrument.name,
    operator: session.operatorName ?? operators.get(session.operatorId ?? "") ?? null,
    startedAt: session.startedAt,
    fitness,
  }));
}
