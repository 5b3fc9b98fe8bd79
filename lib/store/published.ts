import { type LogEntry, type Snapshot, snapshotSchema } from "../publication/snapshot.ts";
import { type Db, database } from "./database.ts";

/** What readers, the API, exports and feeds read: snapshots and the log, never the working tables. */
export type PublishedItem = { snapshot: Snapshot; json: string; sha256: string; entry: LogEntry };

type Row = Awaited<ReturnType<Db["publication"]["findFirstOrThrow"]>>;

export const entryOf = (row: Omit<Row, "snapshot">): LogEntry => ({
  seq: row.seq,
  slug: row.slug,
  revision: row.revision,
  kind: row.kind as LogEntry["kind"],
  publishedAt: row.publishedAt,
  snapshotSha256: row.snapshotSha256,
  previousHash: row.previousHash,
  hash: row.hash,
});

const itemOf = (row: Row): PublishedItem => ({
  snapshot: snapshotSchema.parse(JSON.parse(row.snapshot)),
  json: row.snapshot,
  sha256: row.snapshotSha256,
  entry: entryOf(row),
});

export async function latestPublished(slug: string, db: Db = database()): Promise<PublishedItem | null> {
  const row = await db.publication.findFirst({ where: { slug }, orderBy: { revision: "desc" } });
  return row ? itemOf(row) : null;
}

export async function publishedRevision(
  slug: string,
  revision: number,
  db: Db = database(),
): Promise<PublishedItem | null> {
  const row = await db.publication.findUnique({ where: { slug_revision: { slug, revision } } });
  return row ? itemOf(row) : null;
}

export async function revisionsOf(slug: string, db: Db = database()): Promise<LogEntry[]> {
  const rows = await db.publication.findMany({
    where: { slug },
    orderBy: { revision: "asc" },
    omit: { snapshot: true },
  });
  return rows.map(entryOf);
}

export async function publicationLog(db: Db = database()): Promise<LogEntry[]> {
  const rows = await db.publication.findMany({ orderBy: { seq: "asc" }, omit: { snapshot: true } });
  return rows.map(entryOf);
}

/** Every snapshot as stored, with its entry, oldest first: what verify-log re-derives. */
export async function publicationChain(db: Db = database()): Promise<{ entry: LogEntry; json: string }[]> {
  const rows = await db.publication.findMany({ orderBy: { seq: "asc" } });
  return rows.map((row) => ({ entry: entryOf(row), json: row.snapshot }));
}

export async function newestPublished(limit: number, db: Db = database()): Promise<PublishedItem[]> {
  const seqs = await db.$queryRaw<{ seq: number | bigint }[]>`
    SELECT max(seq) AS seq FROM "Publication" GROUP BY slug ORDER BY seq DESC LIMIT ${limit}`;
  return bySeq(
    db,
    seqs.map((r) => Number(r.seq)),
  );
}

/** Published items by their newest revision's number, in the order asked for. */
export async function bySeq(db: Db, seqs: number[]): Promise<PublishedItem[]> {
  const rows = await db.publication.findMany({ where: { seq: { in: seqs } } });
  const found = new Map(rows.map((row) => [row.seq, row]));
  return seqs.flatMap((seq) => (found.has(seq) ? [itemOf(found.get(seq)!)] : []));
}
