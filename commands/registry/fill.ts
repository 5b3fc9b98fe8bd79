import { sha256 } from "../../lib/platform/sha256.ts";
import { nextLogEntry } from "../../lib/publication/log-entry.ts";
import type { LogEntry, Snapshot } from "../../lib/publication/snapshot.ts";
import { type Database, inTransaction } from "../../lib/store/database.ts";
import { layIn } from "../../lib/store/search-index.ts";
import { categoryLabels, labelOf } from "../../lib/wording/labels.ts";

/** Puts snapshots into an empty registry as publication does, a few hundred to a transaction. */
export async function fillRegistry(
  db: Database,
  snapshots: Iterable<Snapshot>,
  told: (done: number) => void = () => {},
): Promise<void> {
  const userId = "invented-tester";
  await db.user.create({
    data: { id: userId, name: "Invented tester", email: "tester@example.org", role: "tester" },
  });
  let previous: LogEntry | null = null;
  let done = 0;
  for (const batch of inBatches(snapshots, 500)) {
    const entries = batch.map((snapshot) => {
      const next: ReturnType<typeof nextLogEntry> = nextLogEntry(snapshot, previous, sha256);
      previous = next.entry;
      return { snapshot, entry: next.entry, text: next.text };
    });
    await inTransaction(db, async (tx) => {
      // One JSON text for many rows: row by row it would take an hour.
      const items = batch.map(({ slug, item: { name, category, ageGroup } }) => ({ slug, name, category, ageGroup }));
      await tx.$executeRaw`INSERT INTO "Item" (id, slug, name, category, "ageGroup", "createdById", state, "updatedAt")
        SELECT value ->> 'slug', value ->> 'slug', value ->> 'name', value ->> 'category', value ->> 'ageGroup',
          ${userId}, 'published', 0 FROM json_each(${JSON.stringify(items)})`;
      const log = entries.map(({ entry, text }) => ({ ...entry, text }));
      await tx.$executeRaw`INSERT INTO "Publication" (seq, slug, revision, kind, "publishedAt", "snapshotSha256",
          "previousHash", hash, snapshot, "itemId", "publishedById")
        SELECT value ->> 'seq', value ->> 'slug', value ->> 'revision', value ->> 'kind', value ->> 'publishedAt',
          value ->> 'snapshotSha256', value ->> 'previousHash', value ->> 'hash', value ->> 'text', value ->> 'slug',
          ${userId} FROM json_each(${JSON.stringify(log)})`;
      await layIn(
        tx,
        entries.map(({ snapshot, entry }) => ({
          ...{ snapshot, seq: entry.seq },
          categoryLabel: labelOf(categoryLabels, snapshot.item.category),
        })),
      );
    });
    done += batch.length;
    told(done);
  }
}

function* inBatches<T>(all: Iterable<T>, size: number): Generator<T[]> {
  let batch: T[] = [];
  for (const one of all) {
    batch.push(one);
    if (batch.length === size) {
      yield batch;
      batch = [];
    }
  }
  if (batch.length > 0) yield batch;
}
