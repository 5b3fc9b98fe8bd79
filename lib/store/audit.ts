import type { Db } from "./database.ts";
import { textRows } from "./dialect.ts";

/** One thing that a person did. `detail` holds what a team member needs to understand it later: plain values only. */
export type Act = {
  at: Date;
  actor: { id: string; name: string } | null;
  action: string;
  record: string;
  recordId: string;
  itemId?: string | null;
  detail?: Record<string, string | number | boolean | null>;
};

/** Writes down who did what, when, to which record, in the transaction of the workflow that does it. It is never changed or deleted (triggers). */
export async function recordAct(tx: Db, act: Act): Promise<void> {
  const { at, actor, action, record, recordId, itemId = null, detail = {} } = act;
  const who = { actorId: actor?.id ?? null, actorName: actor?.name ?? "the registry itself" };
  await tx.auditEntry.create({
    data: { at, ...who, action, record, recordId, itemId, detail: JSON.stringify(detail) },
  });
}

/**
 * The same for something done to many readings: one entry for each item they are on (one without an item where they are on none), with how
 * many of them. Called before they move, and after as well where they move to another item.
 */
export async function recordReadingsAct(
  tx: Db,
  act: Pick<Act, "at" | "actor" | "action" | "detail">,
  readingIds: readonly string[],
): Promise<void> {
  const [first] = readingIds;
  if (first === undefined) return;
  const touched = await tx.$queryRaw<{ itemId: string | null; n: number | bigint }[]>`
    SELECT s."itemId", count(*) AS n FROM ${textRows(tx, readingIds)} ids
    JOIN "Reading" r ON r.id = ids.value
    LEFT JOIN "Component" c ON c.id = r."componentId" LEFT JOIN "Specimen" s ON s.id = c."specimenId"
    GROUP BY s."itemId" ORDER BY s."itemId"`;
  for (const { itemId, n } of touched)
    await recordAct(tx, {
      ...act,
      record: "reading",
      recordId: first,
      itemId,
      detail: { readings: Number(n), ...act.detail },
    });
}

export type RecordedAct = Required<Omit<Act, "actor">> & { id: number; actorName: string };

/** What was done to an item and all that belongs to it, the newest first. */
export async function actsOnItem(db: Db, itemId: string, most = 500): Promise<RecordedAct[]> {
  const rows = await db.auditEntry.findMany({ where: { itemId }, orderBy: { id: "desc" }, take: most });
  return rows.map(({ actorId: _, detail, ...row }) => ({
    ...row,
    detail: JSON.parse(detail) as RecordedAct["detail"],
  }));
}
