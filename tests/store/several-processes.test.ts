import { expect, it } from "vitest";
import { nextLogEntry } from "@/lib/publication/log-entry.ts";
import { verifyLog } from "@/lib/publication/verify-log.ts";
import { type Database, inTransaction, openDatabase } from "@/lib/store/database.ts";
import { appendPublication, lastEntry } from "@/lib/store/publications.ts";
import { publicationChain } from "@/lib/store/published.ts";
import { takeTurn } from "@/lib/store/rate-buckets.ts";
import { searchPublished } from "@/lib/store/search.ts";
import { indexSnapshot } from "@/lib/store/search-index.ts";
import { sha256 } from "../support/sample-revisions.ts";
import { sampleSnapshot } from "../support/sample-snapshot.ts";
import { fixedNow, freshDatabase, person } from "../support/test-context.ts";

/** What publishing does: look at the log's end, then write behind it. */
const publish = (db: Database, slug: string, by: string) =>
  inTransaction(db, async (tx) => {
    const snapshot = sampleSnapshot({ slug });
    const previous = await lastEntry(tx);
    await new Promise((later) => setTimeout(later, 5));
    const { entry, text } = nextLogEntry(snapshot, previous, sha256);
    const { name, category, ageGroup } = snapshot.item;
    await tx.item.create({ data: { id: slug, slug, name, category, ageGroup, createdById: by, state: "published" } });
    await appendPublication(tx, { entry, json: text, itemId: slug, publishedById: by, batchIds: [] });
    await indexSnapshot(tx, snapshot, "Mug or cup");
  });

it("several processes publish at once: one log without a gap or a fork, and every item found", async () => {
  const { db, url } = freshDatabase();
  const { id } = await person(db, "tester");
  // A connection of its own is to the database what a process of its own is.
  const processes = [db, openDatabase(url), openDatabase(url), openDatabase(url)];
  const slugs = Array.from({ length: 24 }, (_, i) => `item-${i}`);
  await Promise.all(slugs.map((slug, i) => publish(processes[i % processes.length]!, slug, id)));
  const chain = await publicationChain(db);
  expect(chain.map(({ entry }) => entry.seq)).toEqual(slugs.map((_, i) => i + 1));
  const entries = chain.map(({ entry }) => entry);
  expect(verifyLog({ entries, snapshot: (seq) => chain[seq - 1]?.json }, sha256)).toEqual([]);
  expect((await searchPublished({ q: "" }, processes[3])).total).toBe(24);
  const [counted] = await db.$queryRaw<{ n: number | bigint }[]>`SELECT max(items) AS n FROM item_facet_count`;
  expect(Number(counted?.n)).toBe(24);
  await Promise.all(processes.map((one) => one.$disconnect()));
});

it("several processes count together", async () => {
  const { db, url } = freshDatabase();
  const processes = [db, openDatabase(url), openDatabase(url)];
  const limit = { most: 10, windowSeconds: 60, now: fixedNow };
  const turns = await Promise.all(
    Array.from({ length: 30 }, (_, i) => takeTurn(processes[i % processes.length]!, "a", limit)),
  );
  expect(turns.filter((turn) => turn.ok)).toHaveLength(10);
  expect(turns.find((turn) => !turn.ok)).toEqual({ ok: false, waitSeconds: 60 });
  await Promise.all(processes.map((one) => one.$disconnect()));
});
