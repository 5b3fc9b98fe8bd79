import { expect, it } from "vitest";
import {
  newestEntries,
  newestPublished,
  publicationLog,
  recentRevisions,
  standingItems,
} from "@/lib/store/published.ts";
import { publishAll } from "../support/published-database.ts";
import { chained, sampleHistory } from "../support/sample-revisions.ts";
import { sampleSnapshot } from "../support/sample-snapshot.ts";
import { freshDatabase } from "../support/test-context.ts";

const { db } = freshDatabase();
const history = sampleHistory();
await publishAll(db, history);

it("is read in order a few entries at a time, up to an entry, none left out at the end of a piece", async () => {
  const all = history.map(({ entry }) => entry);
  for (const batch of [1, 2, 5, 6])
    for (const upTo of [0, 4, 5, 9]) {
      const pieces = [];
      for await (const piece of publicationLog(upTo, db, batch)) {
        expect(piece.length).toBeLessThanOrEqual(batch);
        pieces.push(...piece);
      }
      expect(pieces, `${batch} at a time up to ${upTo}`).toEqual(all.slice(0, upTo));
    }
});

it("is shown from its newest entry, and goes on before one", async () => {
  const seqs = async (take: number, before: number | null) =>
    (await newestEntries(take, before, db)).map(({ seq }) => seq);
  expect([await seqs(3, null), await seqs(3, 3), await seqs(3, 1)]).toEqual([[5, 4, 3], [2, 1], []]);
  const corrections = async (before: number | null) =>
    (await recentRevisions(2, { kinds: ["correction", "update", "withdrawal"], before }, db)).map(
      ({ entry }) => entry.seq,
    );
  expect([await corrections(null), await corrections(4), await corrections(3)]).toEqual([[5, 4], [3], []]);
});

it("tells which items stand, the newest first, each by its newest revision", async () => {
  expect(await standingItems({ from: 0, take: 10 }, db)).toEqual({
    items: [{ slug: "rattle", publishedAt: "2026-11-27T10:00:00Z" }],
    total: 1,
  });
  // A withdrawn item is among the newest all the same: its page says what happened.
  expect((await newestPublished(10, db)).map(({ entry }) => `${entry.slug} ${entry.revision}`)).toEqual([
    "bluebell-mug 3",
    "rattle 2",
  ]);
  const many = freshDatabase().db;
  const slugs = ["a-mug", "b-mug", "c-mug", "d-mug", "e-mug"];
  await publishAll(many, chained(slugs.map((slug) => sampleSnapshot({ slug }))));
  const page = async (from: number) => {
    const { items, total } = await standingItems({ from, take: 2 }, many);
    return [items.map(({ slug }) => slug).join(" "), total];
  };
  expect([await page(0), await page(2), await page(4), await page(6)]).toEqual([
    ["e-mug d-mug", 5],
    ["c-mug b-mug", 5],
    ["a-mug", 5],
    ["", 5],
  ]);
});
