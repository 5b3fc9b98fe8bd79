import { sha256 } from "../../lib/platform/sha256.ts";
import { nextLogEntry } from "../../lib/publication/log-entry.ts";
import type { LogEntry, Snapshot } from "../../lib/publication/snapshot.ts";
import { type Database, inTransaction } from "../../lib/store/database.ts";
import { appendPublication } from "../../lib/store/publications.ts";
import { indexSnapshot } from "../../lib/store/search-index.ts";
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
  for (const batch of inBatches(snapshots, 250)) {
    await inTransaction(db, async (tx) => {
      for (const snapshot of batch) {
        const { slug, item } = snapshot;
        const { name, category, ageGroup, foodContact, mouthable } = item;
        const words = { name, category, ageGroup, foodContact, mouthable, createdById: userId };
        await tx.item.create({ data: { id: slug, slug, ...words, state: "published" } });
        const next: ReturnType<typeof nextLogEntry> = nextLogEntry(snapshot, previous, sha256);
        previous = next.entry;
        await appendPublication(tx, {
          ...{ entry: next.entry, json: next.text, itemId: slug },
          ...{ publishedById: userId, batchIds: [] },
        });
        await indexSnapshot(tx, snapshot, labelOf(categoryLabels, category));
      }
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
