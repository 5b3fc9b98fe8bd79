import { expect, it } from "vitest";
import { GET as listItems } from "@/app/api/v1/items/route.ts";
import { itemsPageSchema } from "@/lib/exports/api-schemas.ts";
import { asked, publishAll, publishedRegistry } from "../support/published-database.ts";
import { chained } from "../support/sample-revisions.ts";
import { sampleSnapshotOf } from "../support/sample-snapshot.ts";

it("what is published between two pages moves nothing from one to the other", async () => {
  const at = { publishedAt: "2026-12-01T10:00:00Z" };
  const history = chained(["cup", "jug", "pan", "toy"].map((slug) => sampleSnapshotOf("below", { slug, ...at })));
  const { db } = await publishedRegistry(history.slice(0, 3));
  const page = async (query: string) =>
    itemsPageSchema.parse(await (await listItems(asked(`/api/v1/items?limit=2${query}`))).json());
  const first = await page("");
  await publishAll(db, history.slice(3));
  const second = await page(`&cursor=${first.nextCursor}`);
  expect(first.items.map((item) => item.slug)).toEqual(["pan", "jug"]);
  expect(second.items.map((item) => item.slug)).toEqual(["cup"]);
  expect(second).toMatchObject({ total: 4, nextCursor: null });
});
