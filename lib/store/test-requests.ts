import type { Db } from "./database.ts";

export type TestRequestRecord = {
  id: string;
  description: string;
  count: number;
  firstAt: Date;
  lastAt: Date;
  state: "open" | "tied" | "closed";
  itemId: string | null;
  photoKey: string | null;
  answeredAt: Date | null;
};

const recordOf = (row: { state: string } & Omit<TestRequestRecord, "state">): TestRequestRecord => ({
  ...row,
  state: row.state as TestRequestRecord["state"],
});

export async function findTestRequest(db: Db, id: string): Promise<TestRequestRecord | null> {
  const row = await db.testRequest.findUnique({ where: { id } });
  return row ? recordOf(row) : null;
}

/** The request with the same words, counted once more; or a new one. */
export async function countTestRequest(
  tx: Db,
  request: { description: string; wordsKey: string; photoKey: string | null },
): Promise<TestRequestRecord> {
  const same = await sameTestRequest(tx, request);
  if (!same) return recordOf(await tx.testRequest.create({ data: request }));
  return recordOf(
    await tx.testRequest.update({
      where: { id: same.id },
      data: { count: { increment: 1 }, photoKey: same.photoKey ?? request.photoKey },
    }),
  );
}

/** The request that these words would be counted with. */
export const sameTestRequest = (db: Db, request: { description: string; wordsKey: string }) =>
  db.testRequest.findFirst({
    where: { OR: [{ wordsKey: request.wordsKey }, { description: request.description }] },
    orderBy: { firstAt: "asc" },
  });

/** Whether any request still has this photo. */
export const requestsWithPhoto = (db: Db, photoKey: string): Promise<number> =>
  db.testRequest.count({ where: { photoKey } });

/** What readers ask for most comes first; among equals what waits longest. */
export async function testRequestQueue(db: Db, state: TestRequestRecord["state"], take = 100) {
  const rows = await db.testRequest.findMany({
    where: { state },
    orderBy: [{ count: "desc" }, { firstAt: "asc" }, { id: "asc" }],
    take,
  });
  return rows.map(recordOf);
}

export async function setTestRequestState(
  tx: Db,
  id: string,
  change: Pick<TestRequestRecord, "state" | "itemId" | "answeredAt" | "photoKey">,
): Promise<void> {
  await tx.testRequest.update({ where: { id }, data: change });
}
