import { beforeAll, describe, expect, it } from "vitest";
import type { Database } from "@/lib/store/database.ts";
import { type SearchQuery, searchNear, searchPublished, searchWithCounts, suggestItems } from "@/lib/store/search.ts";
import { indexWhatIsMissing } from "@/lib/store/search-index.ts";
import { publishAll } from "../support/published-database.ts";
import { chained } from "../support/sample-revisions.ts";
import { sampleSnapshot } from "../support/sample-snapshot.ts";
import { freshDatabase } from "../support/test-context.ts";

/** Invented items: slug, name, other names, marks, code. */
const items: [string, string, string[], string, string?][] = [
  ["poppy-mug", "Poppy mug with red band", ["coffee cup"], "A snail over a wave, No. 12-345/B", "02001234567893"],
  ["poppy-plate", "Plate with poppies", [], "Two leaves"],
  ["cornflower-plate", "Cornflower plate", ["blue flower dish"], "A kite in a ring"],
  ["enamel-pot", "Émaille stock pot from the 1970s", [], "18/0"],
  ["berry-bowl", "Bowl with painted berries", [], "A fox, 4711-A"],
];

const categoryOf = (slug: string) => (slug.endsWith("mug") ? "mug-or-cup" : "plate-or-bowl");

let db: Database;
const slugs = async (query: string | SearchQuery): Promise<string[]> =>
  (await searchPublished(typeof query === "string" ? { q: query } : query, db)).hits.map((hit) => hit.entry.slug);

beforeAll(async () => {
  db = freshDatabase().db;
  await publishAll(
    db,
    chained(
      items.map(([slug, name, aliases, marks, gtin]) => {
        const sample = sampleSnapshot({ slug });
        return {
          ...sample,
          item: {
            ...sample.item,
            name,
            aliases,
            marks,
            gtin: gtin ?? null,
            category: categoryOf(slug),
            description: "",
          },
        };
      }),
    ),
  );
});

describe("search", () => {
  it.each([
    ["poppy mug", ["poppy-mug"]],
    ["mug poppies", ["poppy-mug"]],
    ["was my popyp mug tested", ["poppy-mug"]],
    ["emaille", ["enamel-pot"]],
    ["émaille 70s", ["enamel-pot"]],
    ["cornflwoer", ["cornflower-plate"]],
    ["berry", ["berry-bowl"]],
    ["12345b", ["poppy-mug"]],
    ["12 345", ["poppy-mug"]],
    ["4711a", ["berry-bowl"]],
    ["2001234-567893", ["poppy-mug"]],
    ["corn pla", ["cornflower-plate"]],
    ["4712", []],
    ["bicycle", []],
    ["2001234567886", []],
    ['"); DROP TABLE item_search; --', []],
    ["name: OR NEAR(* ^", []],
    ["🫖", []],
  ])("%s finds %j", async (query, found) => {
    expect(await slugs(query)).toEqual(found);
  });
  it("says what it read a slip as", async () => {
    expect((await searchPublished({ q: "popyp" }, db)).read).toEqual([{ typed: "popyp", as: "poppy" }]);
  });
  it("puts a mark typed as it stands first", async () => {
    expect((await slugs("a kite in a ring"))[0]).toBe("cornflower-plate");
  });
  it("narrows down, and counts what is left", async () => {
    expect((await slugs({ q: "plate", category: "plate-or-bowl" })).sort()).toEqual([
      "berry-bowl",
      "cornflower-plate",
      "enamel-pot",
      "poppy-plate",
    ]);
    expect(await slugs({ q: "plate", category: "toy" })).toEqual([]);
    const { counts } = await searchWithCounts({ q: "plate" }, db);
    expect(counts?.category).toEqual([{ value: "plate-or-bowl", items: 4 }]);
    expect((await searchWithCounts({ q: "" }, db)).counts?.category).toEqual([
      { value: "plate-or-bowl", items: 4 },
      { value: "mug-or-cup", items: 1 },
    ]);
  });
  it("pages without a gap or a double in each order, also while items are published", async () => {
    for (const sort of ["best", "newest", "name"] as const) {
      const seen: string[] = [];
      let cursor: string | undefined;
      for (let page = 0; page < 10; page++) {
        const found = await searchPublished({ q: "a", sort, cursor, limit: 2 }, db);
        seen.push(...found.hits.map((hit) => hit.entry.slug));
        cursor = found.nextCursor ?? undefined;
        if (!cursor) break;
      }
      expect(new Set(seen).size).toBe(seen.length);
      expect(seen.length).toBeGreaterThan(0);
    }
    expect(await slugs({ q: "", sort: "name" })).toEqual(
      ["berry-bowl", "cornflower-plate", "enamel-pot", "poppy-plate", "poppy-mug"].sort((a, b) =>
        names(a).localeCompare(names(b)),
      ),
    );
  });
  it("reads an odd cursor as the first page", async () => {
    expect(await slugs({ q: "", cursor: "'; --" })).toHaveLength(5);
  });
  it("offers what is near, and items as one types", async () => {
    expect((await searchNear("cornflower teapot", 3, db)).map((hit) => hit.entry.slug)).toEqual(["cornflower-plate"]);
    expect(await suggestItems("pop", 8, db)).toHaveLength(2);
    expect(await suggestItems("2001234567893", 8, db)).toEqual([
      { slug: "poppy-mug", name: "Poppy mug with red band" },
    ]);
  });
  it("lays in again what an index in an older form lacks, and nothing twice", async () => {
    for (const table of ["item_listing", "item_search", "item_facet", "item_facet_count"])
      await db.$executeRawUnsafe(`DELETE FROM ${table}`);
    expect(await slugs("emaille")).toEqual([]);
    expect(await indexWhatIsMissing(db, () => "mug")).toBeGreaterThan(0);
    expect(await slugs("emaille")).toEqual(["enamel-pot"]);
    expect(await indexWhatIsMissing(db, () => "mug")).toBe(0);
  });
});

const names = (slug: string): string =>
  items
    .find(([own]) => own === slug)?.[1]
    .normalize("NFKD")
    .toLowerCase() ?? "";
