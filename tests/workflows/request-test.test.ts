import { mkdtempSync, readdirSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { XMLParser } from "fast-xml-parser";
import sharp from "sharp";
import { expect, it } from "vitest";
import { requestFeed } from "@/lib/exports/request-feed.ts";
import { readPhoto } from "@/lib/files/photo-store.ts";
import { findTestRequest, testRequestQueue } from "@/lib/store/test-requests.ts";
import { requestTestWorkflow } from "@/lib/workflows/request-test.ts";
import { tieRequestWorkflow } from "@/lib/workflows/tie-request.ts";
import { benchItem, must } from "../support/bench-item.ts";
import { contextAs, fixedNow, freshDatabase } from "../support/test-context.ts";

const dataDir = mkdtempSync(join(tmpdir(), "assay-requests-"));
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
  expect(await tieRequestWorkflow({ ...tester, person: null }, { requestId: here.id, itemId }, dataDir)).toMatchObject({
    ok: false,
    problems: [{ code: "not-signed-in" }],
  });
  expect(await tieRequestWorkflow(tester, { requestId: here.id, itemId: "none" }, dataDir)).toMatchObject({
    problems: [{ code: "unknown-item" }],
  });
  must(await tieRequestWorkflow(tester, { requestId: here.id, itemId }, dataDir));
  const request = await findTestRequest(tester.db, here.id);
  expect(request).toMatchObject({ state: "tied", itemId });
  const feed = new XMLParser().parse(
    requestFeed({ request: request ?? must(null as never), published: null, baseUrl: "https://shelf.example" }),
  ).feed;
  expect(feed.entry).toHaveLength(2);
  expect(feed.entry[0].title).toContain("on the bench");
  must(await tieRequestWorkflow(tester, { requestId: here.id, itemId: null }, dataDir));
  expect(await findTestRequest(tester.db, here.id)).toMatchObject({ state: "open", itemId: null, answeredAt: null });
  const escaped = requestFeed({
    request: (await findTestRequest(anybody.db, id)) ?? must(null as never),
    published: null,
    baseUrl: "https://shelf.example",
  });
  expect(new XMLParser().parse(escaped).feed.title).toContain("<under>");
});

const picture = async (colour: string) =>
  new Uint8Array(
    await sharp({ create: { width: 1600, height: 1200, channels: 3, background: colour } })
      .jpeg()
      .withExif({ IFD0: { Artist: "somebody" }, IFD3: { GPSLatitude: "51/1 30/1 0/1" } })
      .toBuffer(),
  );

it("keeps the first photo of a request small and bare, and deletes it when the request is answered", async () => {
  const tester = await contextAs("tester");
  const context = { ...tester, person: null };
  const folder = mkdtempSync(join(tmpdir(), "assay-requests-"));
  const ask = async (description: string, colour: string) =>
    must(await requestTestWorkflow(context, { description }, "a", { bytes: await picture(colour), dataDir: folder }));
  const request = await ask("yellow duck on wheels", "yellow");
  const again = await ask("wheels, yellow duck", "blue");
  expect(again).toMatchObject({ id: request.id, count: 2, photoKey: request.photoKey });
  expect(readdirSync(join(folder, "photos"))).toEqual([request.photoKey]);
  expect(readdirSync(folder)).toEqual(["photos"]);
  const kept = await sharp((await readPhoto(folder, request.photoKey ?? "")) ?? undefined).metadata();
  expect(kept).toMatchObject({ format: "webp", width: 960, height: 720 });
  expect([kept.exif, kept.xmp, kept.icc]).toEqual([undefined, undefined, undefined]);
  // The same picture with another wish: the file stays until the last of both is answered.
  const other = await ask("a second duck", "yellow");
  expect(other.photoKey).toBe(request.photoKey);
  must(await tieRequestWorkflow(tester, { requestId: request.id, itemId: null, closed: true }, folder));
  expect(await findTestRequest(tester.db, request.id)).toMatchObject({ state: "closed", photoKey: null });
  expect(readdirSync(join(folder, "photos"))).toEqual([request.photoKey]);
  const { itemId } = await benchItem(tester);
  must(await tieRequestWorkflow(tester, { requestId: other.id, itemId }, folder));
  expect(readdirSync(join(folder, "photos"))).toEqual([]);
});

it("refuses what is no photo, and keeps nothing of the request", async () => {
  const context = reader();
  const bytes = new TextEncoder().encode("<svg xmlns='http://www.w3.org/2000/svg'><script>1</script></svg>");
  expect(await requestTestWorkflow(context, { description: "grey tin fish" }, "a", { bytes, dataDir })).toMatchObject({
    ok: false,
    problems: [{ code: "photo-other-kind", where: { field: "photo" } }],
  });
  expect(await testRequestQueue(context.db, "open")).toEqual([]);
});
