import { expect, it } from "vitest";
import { itemNames, itemsAtBench, partLabels, partsToPutOn } from "@/lib/store/items-at-bench.ts";
import { freshDatabase, person } from "../support/test-context.ts";

const { db } = freshDatabase();
const maker = await person(db, "tester");
for (let n = 1; n <= 5; n++)
  await db.item.create({
    data: {
      ...{
        id: `i${n}`,
        slug: `mug-${n}`,
        name: n === 3 ? "50 % off Bowl" : `Mug ${n}`,
        category: "mug-or-cup",
        ageGroup: "unknown",
      },
      ...{
        foodContact: true,
        mouthable: false,
        createdById: maker.id,
        state: n === 5 ? "withdrawn" : n === 4 ? "published" : "draft",
      },
      updatedAt: new Date(Date.UTC(2026, 0, n)),
      specimens: {
        create: {
          ...{ id: `s${n}`, label: "object A", howGot: "given", whoPaid: "nobody", position: 0 },
          components: {
            create: ["rim", "foot"].map((name, position) => ({
              ...{ id: `c${n}-${name}`, name, material: "glaze", form: "coating", accessible: true, position },
            })),
          },
        },
      },
    },
  });

it("items are listed a page at a time, those last worked on first, by letters of their names and by state", async () => {
  const page = async (asked: Parameters<typeof itemsAtBench>[1], start = 0) => {
    const { items, total } = await itemsAtBench(db, asked, { start, take: 2 });
    return [items.map(({ id }) => id).join(" "), total];
  };
  expect([await page({}), await page({}, 2), await page({}, 4), await page({}, 6)]).toEqual([
    ["i5 i4", 5],
    ["i3 i2", 5],
    ["i1", 5],
    ["", 5],
  ]);
  expect(await page({ find: "mUG" })).toEqual(["i5 i4", 4]);
  expect(await page({ find: "mug", state: "draft" })).toEqual(["i2 i1", 2]);
});

it("parts to put readings on are those of the items last worked on, by name, none of what was withdrawn", async () => {
  const of = async (find: string | undefined, most: number) => {
    const { parts, items, total } = await partsToPutOn(db, find, most);
    return [parts.map(({ id }) => id).join(" "), items, total];
  };
  expect(await of(undefined, 2)).toEqual(["c3-rim c3-foot c4-rim c4-foot", 2, 4]);
  expect(await of("mug 2", 2)).toEqual(["c2-rim c2-foot", 1, 1]);
  expect(await of("jar", 2)).toEqual(["", 0, 0]);
  expect((await partsToPutOn(db, "mug 2", 2)).parts[0]?.label).toBe("Mug 2 — object A: rim");
});

it("names of items and parts are told for those asked about, and for no other", async () => {
  expect([...(await itemNames(db, ["i1", "i1", "none"]))]).toEqual([["i1", "Mug 1"]]);
  expect([...(await partLabels(db, ["c5-foot", "none"]))]).toEqual([["c5-foot", "Mug 5 — object A: foot"]]);
  expect([...(await itemNames(db, []))]).toEqual([]);
});
