import Papa from "papaparse";
import { beforeAll, describe, expect, it } from "vitest";
import { GET as notFound } from "@/app/api/v1/[...rest]/route.ts";
import { GET as readReadings } from "@/app/api/v1/items/[slug]/readings.csv/route.ts";
import { OPTIONS, GET as readItem } from "@/app/api/v1/items/[slug]/route.ts";
import { GET as listItems } from "@/app/api/v1/items/route.ts";
import { GET as readLimits } from "@/app/api/v1/limits/route.ts";
import { GET as readLog } from "@/app/api/v1/log/route.ts";
import { itemsPageSchema, limitsSchema, logSchema } from "@/lib/exports/api-schemas.ts";
import { problemJsonSchema } from "@/lib/exports/problem-json.ts";
import type { Snapshot } from "@/lib/publication/snapshot.ts";
import { asked, publishedRegistry } from "../support/published-database.ts";
import { chained, sampleHistory, sha256 } from "../support/sample-revisions.ts";
import { sampleSnapshotOf } from "../support/sample-snapshot.ts";

/** The five sample revisions, then 24 invented spoons, so that there are pages to turn. */
const spoons = Array.from({ length: 24 }, (_, i): Snapshot => {
  const spoon = sampleSnapshotOf(i % 2 === 0 ? "above" : "not-detected", {
    slug: `spoon-${i}`,
    publishedAt: "2026-12-01T10:00:00Z",
  });
  return { ...spoon, item: { ...spoon.item, name: `Spoon ${i}`, category: "cutlery-or-utensil" } };
});
const history = chained([...sampleHistory().map((one) => one.snapshot), ...spoons]);
beforeAll(() => publishedRegistry(history));

const item = (slug: string, query = "", headers: Record<string, string> = {}) =>
  readItem(asked(`/api/v1/items/${slug}${query}`, headers), { params: Promise.resolve({ slug }) });
const readings = (slug: string, query = "") =>
  readReadings(asked(`/api/v1/items/${slug}/readings.csv${query}`), { params: Promise.resolve({ slug }) });
const list = (query = "") => listItems(asked(`/api/v1/items${query}`));
const problem = async (response: Response) => {
  expect(response.headers.get("content-type")).toBe("application/problem+json");
  expect(response.headers.get("cache-control")).toBe("no-store");
  const body = problemJsonSchema.parse(await response.json());
  expect(body.status).toBe(response.status);
  return body;
};

describe("an item's snapshot", () => {
  it("is served byte for byte: every revision hashes to what the log holds", async () => {
    const { entries } = logSchema.parse(await (await readLog(asked("/api/v1/log"))).json());
    expect(entries).toEqual(history.map((one) => one.entry));
    for (const entry of entries) {
      const response = await item(entry.slug, `?revision=${entry.revision}`);
      expect(response.status).toBe(200);
      expect(response.headers.get("content-type")).toBe("application/json");
      expect(response.headers.get("etag")).toBe(`"${entry.snapshotSha256}"`);
      expect(response.headers.get("cache-control")).toBe("public, max-age=31536000, immutable");
      expect(sha256(new Uint8Array(await response.arrayBuffer()))).toBe(entry.snapshotSha256);
    }
  });
  it("without a number is the newest, which must be asked about again", async () => {
    const response = await item("bluebell-mug");
    expect(response.headers.get("cache-control")).toBe("public, max-age=0, must-revalidate");
    expect(response.headers.get("content-location")).toBe("/api/v1/items/bluebell-mug?revision=3");
    expect(response.headers.get("access-control-allow-origin")).toBe("*");
    expect(response.headers.get("link")).toContain(
      '<https://shelf.example/items/bluebell-mug/revisions/2>; rel="predecessor-version"',
    );
    expect(await response.json()).toMatchObject({ slug: "bluebell-mug", revision: 3, kind: "withdrawal" });
  });
  it("is not sent to whoever holds it already", async () => {
    const etag = (await item("rattle")).headers.get("etag")!;
    for (const header of [etag, `W/${etag}`, `"other", ${etag}`, "*"]) {
      const response = await item("rattle", "", { "if-none-match": header });
      expect(response.status, header).toBe(304);
      expect(await response.text()).toBe("");
      expect(response.headers.get("etag")).toBe(etag);
      expect(response.headers.get("access-control-allow-origin")).toBe("*");
    }
    expect((await item("rattle", "?revision=1", { "if-none-match": etag })).status).toBe(200);
  });
  it("answers what is not there, or not understood, with a problem", async () => {
    expect(await problem(await item("blue-mug"))).toMatchObject({
      status: 404,
      code: "unknown-item",
      instance: "/api/v1/items/blue-mug",
    });
    expect(await problem(await item("rattle", "?revision=9"))).toMatchObject({
      status: 404,
      code: "unknown-revision",
      detail: "There is no revision “9” of this item. There are revisions 1 to 2.",
    });
    for (const query of ["?revision=0", "?revision=-1", "?revision=1.0", "?revision=", "?revision=1&revision=2"])
      expect((await problem(await item("rattle", query))).where, query).toEqual({ field: "revision" });
    expect(await problem(await item("rattle", "?version=1"))).toMatchObject({ status: 400, allowed: "revision" });
    expect((await problem(await notFound(asked("/api/v1/nothing")))).status).toBe(404);
  });
  it("lets a browser of another origin ask with If-None-Match", () => {
    const answer = OPTIONS();
    expect(answer.headers.get("access-control-allow-origin")).toBe("*");
    expect(answer.headers.get("access-control-allow-headers")).toBe("If-None-Match");
  });
});

describe("readings.csv", () => {
  it("holds the snapshot's readings, row by row, in their own digits", async () => {
    for (const { snapshot } of history.slice(0, 5)) {
      const response = await readings(snapshot.slug, `?revision=${snapshot.revision}`);
      expect(response.headers.get("content-type")).toContain("text/csv");
      const { data } = Papa.parse<Record<string, string>>(await response.text(), {
        header: true,
        skipEmptyLines: true,
      });
      const results = snapshot.specimens.flatMap((s) => s.parts.flatMap((p) => p.results));
      expect(data.map((row) => [row["element"], row["reading_id"], row["value_as_written"], row["file_row"]])).toEqual(
        results.flatMap((result) =>
          result.readings.map((reading) => [
            result.element,
            reading.id,
            reading.value?.text ?? "",
            String(reading.row ?? ""),
          ]),
        ),
      );
    }
  });
  it("has its own ETag and the same problems", async () => {
    const response = await readings("rattle");
    expect(response.headers.get("etag")).toBe(`"${sha256(await response.text())}"`);
    expect(response.headers.get("content-disposition")).toContain("rattle-revision-2-readings.csv");
    expect((await problem(await readings("blue-mug"))).code).toBe("unknown-item");
  });
});

describe("the list of items", () => {
  const page = async (query: string) => itemsPageSchema.parse(await (await list(query)).json());
  it("finds by words, element, category and verdict", async () => {
    expect((await page("?q=Spoon+7")).items.map((one) => one.slug)).toEqual(["spoon-7"]);
    expect(await page("?q=teapot")).toEqual({ items: [], total: 0, nextCursor: null });
    expect((await page("?category=cutlery-or-utensil&limit=100")).total).toBe(24);
    expect((await page("?category=cutlery-or-utensil&verdict=above")).total).toBe(12);
    expect((await page("?category=cutlery-or-utensil&element=Pb&verdict=")).total).toBeGreaterThan(0);
    expect(await page("?element=W")).toEqual({ items: [], total: 0, nextCursor: null });
  });
  it.each(["", "?q=spoon", "?category=cutlery-or-utensil", "?q=&element=&category=&verdict=&cursor="])(
    "turns pages of %s without a gap or a repeat",
    async (query) => {
      const at = (more: Record<string, string>) => {
        const params = new URLSearchParams(query);
        for (const [key, value] of Object.entries(more)) params.set(key, value);
        return page(`?${params}`);
      };
      const seen: string[] = [];
      let next: string | null = "";
      let pages = 0;
      while (next !== null) {
        const one: Awaited<ReturnType<typeof page>> = await at({ limit: "7", ...(next ? { cursor: next } : {}) });
        seen.push(...one.items.map((found) => found.slug));
        expect(one.items.length).toBeLessThanOrEqual(7);
        next = one.nextCursor;
        pages += 1;
        expect(pages).toBeLessThan(10);
      }
      expect(new Set(seen).size).toBe(seen.length);
      expect(seen.length).toBe(query.includes("spoon") || query.includes("cutlery") ? 24 : 26);
    },
  );
  it("refuses a cursor of another query, and one that is none", async () => {
    const { nextCursor } = await page("?q=spoon&limit=3");
    expect((await list(`?q=spoon&limit=5&cursor=${nextCursor}`)).status).toBe(200);
    for (const query of [`?q=mug&cursor=${nextCursor}`, `?q=spoon&element=Pb&cursor=${nextCursor}`, "?cursor=x"])
      expect(await problem(await list(query))).toMatchObject({ status: 400, code: "bad-cursor" });
  });
  it.each([
    ["?element=lead", "element"],
    ["?category=spoons", "category"],
    ["?verdict=fine", "verdict"],
    ["?limit=0", "limit"],
    ["?limit=101", "limit"],
    [`?q=${"a".repeat(201)}`, "q"],
    ["?elment=Pb", "elment"],
    ["?q=a&q=b", "q"],
  ])("refuses %s and names the parameter", async (query, field) => {
    const body = await problem(await list(query));
    expect(body).toMatchObject({ status: 400, code: "invalid-form", where: { field } });
    expect(body.detail.length).toBeGreaterThan(20);
  });
  it("takes what is not a word for a word, never for syntax", async () => {
    for (const q of ['"', "AND", "NEAR(", "x* OR y", "-", "'; DROP TABLE Item; --", "\u0000"])
      expect((await list(`?q=${encodeURIComponent(q)}`)).status, q).toBe(200);
  });
});

describe("limits and log", () => {
  it("limits have the keys of the stable format first", async () => {
    const { limits } = limitsSchema.parse(await (await readLimits(asked("/api/v1/limits"))).json());
    expect(Object.keys(limits[0]!).slice(0, 14)).toEqual(
      "id jurisdiction title citation substances quantity value unit failsAt scope from until nature checked".split(
        " ",
      ),
    );
  });
  it("log entries have exactly the eight members, in their order", async () => {
    const body = (await (await readLog(asked("/api/v1/log"))).json()) as { entries: object[] };
    for (const entry of body.entries)
      expect(Object.keys(entry)).toEqual(
        "seq slug revision kind publishedAt snapshotSha256 previousHash hash".split(" "),
      );
  });
  it("both are not sent again to whoever holds them", async () => {
    for (const [path, get] of [
      ["/api/v1/limits", readLimits],
      ["/api/v1/log", readLog],
    ] as const) {
      const etag = (await get(asked(path))).headers.get("etag")!;
      expect((await get(asked(path, { "if-none-match": etag }))).status).toBe(304);
    }
  });
});
