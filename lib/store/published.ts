import { type LogEntry, type Snapshot, snapshotSchema } from "../publication/snapshot.ts";
import { type Db, readDatabase } from "./database.ts";

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

export async function latestPublished(slug: string, db: Db = readDatabase()): Promise<PublishedItem | null> {
  const row = await db.publication.findFirst({ where: { slug }, orderBy: { revision: "desc" } });
  return row ? itemOf(row) : null;
}

export async function publishedRevision(
  slug: string,
  revision: number,
  db: Db = readDatabase(),
): Promise<PublishedItem | null> {
  const row = await db.publication.findUnique({ where: { slug_revision: { slug, revision } } });
  return row ? itemOf(row) : null;
}

/**
 * A revision exactly as it is stored (the newest without a number), its text not read: what the API sends byte for byte,
 * so that whoever checks the log from outside sees a changed text too.
 */
export async function storedRevision(
  slug: string,
  revision: number | null,
  db: Db = readDatabase(),
): Promise<{ entry: LogEntry; json: string } | null> {
  const row = await db.publication.findFirst({
    where: { slug, ...(revision === null ? {} : { revision }) },
    orderBy: { revision: "desc" },
  });
  return row ? { entry: entryOf(row), json: row.snapshot } : null;
}

export async function revisionsOf(slug: string, db: Db = readDatabase()): Promise<LogEntry[]> {
  const rows = await db.publication.findMany({
    where: { slug },
    orderBy: { revision: "asc" },
    omit: { snapshot: true },
  });
  return rows.map(entryOf);
}

/** The log up to an entry, oldest first, a few at a time: it may hold more than should be in memory, or keep others waiting. */
export async function* publicationLog(seq: number, db: Db = readDatabase(), batch = 1000): AsyncGenerator<LogEntry[]> {
  for (let after = 0; ; ) {
    const rows = await db.publication.findMany({
      where: { seq: { gt: after, lte: seq } },
      orderBy: { seq: "asc" },
      omit: { snapshot: true },
      take: batch,
    });
    if (rows.length > 0) yield rows.map(entryOf);
    if (rows.length < batch) return;
    after = rows.at(-1)?.seq ?? seq;
  }
}

/** The newest entries of the log before one, newest first. */
export async function newestEntries(take: number, before: number | null, db: Db = readDatabase()): Promise<LogEntry[]> {
  const rows = await db.publication.findMany({
    where: before === null ? {} : { seq: { lt: before } },
    orderBy: { seq: "desc" },
    omit: { snapshot: true },
    take,
  });
  return rows.map(entryOf);
}

/** Items that have not been withdrawn, each with the day of its newest revision, the newest first; and how many there are. */
export async function standingItems(
  { from, take }: { from: number; take: number },
  db: Db = readDatabase(),
): Promise<{ items: Pick<LogEntry, "slug" | "publishedAt">[]; total: number }> {
  const [count] = await db.$queryRaw<{ n: number | bigint }[]>`SELECT count(*) AS n FROM item_listing l
    JOIN "Publication" p ON p.seq = l.seq WHERE p.kind <> 'withdrawal'`;
  const items = await db.$queryRaw<Pick<LogEntry, "slug" | "publishedAt">[]>`SELECT p.slug, p."publishedAt"
    FROM item_listing l JOIN "Publication" p ON p.seq = l.seq WHERE p.kind <> 'withdrawal'
    ORDER BY l.seq DESC LIMIT ${take} OFFSET ${from}`;
  return { items, total: Number(count?.n ?? 0) };
}

/** Every snapshot as stored, with its entry, oldest first: what verify-log re-derives. */
export async function publicationChain(db: Db = readDatabase()): Promise<{ entry: LogEntry; json: string }[]> {
  const rows = await db.publication.findMany({ orderBy: { seq: "asc" } });
  return rows.map((row) => ({ entry: entryOf(row), json: row.snapshot }));
}

export async function newestPublished(limit: number, db: Db = readDatabase()): Promise<PublishedItem[]> {
  const seqs = await db.$queryRaw<{ seq: number | bigint }[]>`
    SELECT seq FROM item_listing ORDER BY seq DESC LIMIT ${limit}`;
  return bySeq(
    db,
    seqs.map((r) => Number(r.seq)),
  );
}

/** The newest revisions of all items, newest first; of the given kinds only, and before an entry of the log, where these are given. */
export async function recentRevisions(
  limit: number,
  { kinds, before }: { kinds?: readonly LogEntry["kind"][]; before?: number | null } = {},
  db: Db = readDatabase(),
): Promise<PublishedItem[]> {
  const rows = await db.publication.findMany({
    where: { ...(kinds ? { kind: { in: [...kinds] } } : {}), ...(before ? { seq: { lt: before } } : {}) },
    orderBy: { seq: "desc" },
    take: limit,
  });
  return rows.map(itemOf);
}

/** An entry of the log by its number. */
export async function logEntryAt(seq: number, db: Db = readDatabase()): Promise<LogEntry | null> {
  const row = await db.publication.findUnique({ where: { seq }, omit: { snapshot: true } });
  return row ? entryOf(row) : null;
}

/** Every item as it stood when the log had `seq` entries, in the order of those revisions, a few at a time. */
export async function* itemsAsOf(seq: number, db: Db = readDatabase(), batch = 50): AsyncGenerator<PublishedItem> {
  const rows = await db.$queryRaw<{ seq: number | bigint }[]>`
    SELECT max(seq) AS seq FROM "Publication" WHERE seq <= CAST(${seq} AS BIGINT) GROUP BY slug ORDER BY seq`;
  const seqs = rows.map((row) => Number(row.seq));
  for (let from = 0; from < seqs.length; from += batch) yield* await bySeq(db, seqs.slice(from, from + batch));
}

/** Published items by their newest revision's number, in the order asked for. */
export async function bySeq(db: Db, seqs: number[]): Promise<PublishedItem[]> {
  const rows = await db.publication.findMany({ where: { seq: { in: seqs } } });
  const found = new Map(rows.map((row) => [row.seq, row]));
  return seqs.flatMap((seq) => (found.has(seq) ? [itemOf(found.get(seq)!)] : []));
}
