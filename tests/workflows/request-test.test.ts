import { XMLParser } from "fast-xml-parser";
import { expect, it } from "vitest";
import { requestFeed } from "@/lib/exports/request-feed.ts";
import { findTestRequest, testRequestQueue } from "@/lib/store/test-requests.ts";
import { requestTestWorkflow } from "@/lib/workflows/request-test.ts";
import { tieRequestWorkflow } from "@/lib/workflows/tie-request.ts";
import { benchItem, must } from "../support/bench-item.ts";
import { contextAs, fixedNow, freshDatabase } from "../support/test-context.ts";

const reader = () => ({ db: freshDatabase().db, person: null, clock: () => fixedNow });

it("counts the same wish once, however it is worded, and ranks the queue by how often", async () => {
  const context = reader();
  const first = must(await requestTestWorkflow(context, { description: "Blue mug with two ducks" }, "a"));
  must(await requestTestWorkflow(context, { description: "red tin drum" }, "a"));
  const again = must(await requestTestWorkflow(context, { description: "two DUCKS, blue mug" }, "b"));
  expect(again).toMatchObject({ id: first.id, count: 2, description: "Blue mug with two ducks" });
  expect((await testRequestQueue(context.db, "open")).map((r) => [r.description, r.count])).toEqual([
    ["Blue mug with two ducks", 2],
    ["red tin drum", 1],
  ]);
});

it("refuses what says nothing, and a flood from one place; others still get through, and later so does it", async () => {
  const context = reader();
  expect(await requestTestWorkflow(context, { description: "?!" }, "a")).toMatchObject({
    problems: [{ code: "request-too-vague" }],
  });
  const send = (n: number, place: string, at = context) =>
    requestTestWorkflow(at, { description: `mug number ${n}` }, place);
  for (let n = 0; n < 10; n++) expect((await send(n, "flood")).ok).toBe(true);
  expect(await send(10, "flood")).toMatchObject({ ok: false, problems: [{ code: "rate-limited" }] });
  expect((await send(11, "somebody else")).ok).toBe(true);
  const later = { ...context, clock: () => new Date(context.clock().getTime() + 3_600_001) };
  expect((await send(12, "flood", later)).ok).toBe(true);
});

it("is tied to an item by a tester only, and its feed tells so", async () => {
  const anybody = reader();
  const { id } = must(await requestTestWorkflow(anybody, { description: "grey jug, a snail <under> it" }, "a"));
  const tester = await contextAs("tester");
  const { itemId } = await benchItem(tester);
  const here = must(await requestTestWorkflow({ ...tester, person: null }, { description: "grey jug" }, "a"));
  expect(await tieRequestWorkflow({ ...tester, person: null }, { requestId: here.id, itemId })).toMatchObject({
    ok: false,
    problems: [{ code: "not-signed-in" }],
  });
  expect(await tieRequestWorkflow(tester, { requestId: here.id, itemId: "none" })).toMatchObject({
    problems: [{ code: "unknown-item" }],
  });
  must(await tieRequestWorkflow(tester, { requestId: here.id, itemId }));
  const request = await findTestRequest(tester.db, here.id);
  expect(request).toMatchObject({ state: "tied", itemId });
  const feed = new XMLParser().parse(
    requestFeed({ request: request ?? must(null as never), published: null, baseUrl: "https://shelf.example" }),
  ).feed;
  expect(feed.entry).toHaveLength(2);
  expect(feed.entry[0].title).toContain("on the bench");
  must(await tieRequestWorkflow(tester, { requestId: here.id, itemId: null }));
  expect(await findTestRequest(tester.db, here.id)).toMatchObject({ state: "open", itemId: null, answeredAt: null });
  const escaped = requestFeed({
    request: (await findTestRequest(anybody.db, id)) ?? must(null as never),
    published: null,
    baseUrl: "https://shelf.example",
  });
  expect(new XMLParser().parse(escaped).feed.title).toContain("<under>");
});
