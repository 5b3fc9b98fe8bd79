import { expect, it } from "vitest";
import { fillRegistry } from "@/commands/registry/fill.ts";
import { inventedItem } from "@/commands/registry/invented-items.ts";
import type { Snapshot } from "@/lib/publication/snapshot.ts";
import { searchPublished } from "@/lib/store/search.ts";
import { freshDatabase, onPostgres } from "../support/test-context.ts";

/** An old item that has the words in its name, and more than are ever ranked that hold them somewhere else. */
function* manyLoose(): Generator<Snapshot> {
  const like = inventedItem(0);
  const named = (slug: string, name: string, description: string): Snapshot => ({
    ...like,
    slug,
    item: { ...like.item, name, aliases: [], marks: "", gtin: null, description },
  });
  yield named("old-storage-jar", "Storage jar", "");
  for (let n = 0; n < 2100; n++) yield named(`jar-${n}`, `Jar number ${n}`, "For storage.");
}

// Its filling is SQLite's; the statement itself runs on both in search.test.ts.
it.skipIf(onPostgres())(
  "what has all words in its name comes first, however many younger items hold them",
  async () => {
    const { db } = freshDatabase();
    await fillRegistry(db, manyLoose());
    const first = await searchPublished({ q: "storage jar", limit: 3 }, db);
    expect(first.total).toBe(2101);
    expect(first.hits.map((hit) => hit.entry.slug)).toEqual(["old-storage-jar", "jar-2099", "jar-2098"]);
    const seen = new Set<string>();
    let cursor: string | undefined;
    for (let page = 0; page < 5; page++) {
      const { hits, nextCursor } = await searchPublished({ q: "storage jar", limit: 100, cursor }, db);
      for (const { entry } of hits) {
        expect(seen.has(entry.slug)).toBe(false);
        seen.add(entry.slug);
      }
      cursor = nextCursor ?? undefined;
    }
    expect(seen.size).toBe(500);
  },
);
