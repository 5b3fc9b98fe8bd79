import Papa from "papaparse";
import { describe, expect, it } from "vitest";
import { apiLimitSchema, itemsPageSchema, limitsSchema, logSchema } from "@/lib/exports/api-schemas.ts";
import { dataPackage } from "@/lib/exports/data-package.ts";
import { itemSummary, itemSummarySchema } from "@/lib/exports/item-summary.ts";
import { openApiDocument } from "@/lib/exports/openapi.ts";
import { problemJson, problemJsonSchema, problemTypes } from "@/lib/exports/problem-json.ts";
import { readingColumns, readingRows, readingsCsv } from "@/lib/exports/readings-csv.ts";
import { listLimits } from "@/lib/limits/list-limits.ts";
import { paths } from "@/lib/platform/paths.ts";
import { snapshotSchema } from "@/lib/publication/snapshot.ts";
import { publishedSample, sampleHistory, sha256 } from "../support/sample-revisions.ts";
import { sampleSnapshot } from "../support/sample-snapshot.ts";

const baseUrl = "https://shelf.example";

describe("the list entry of an item", () => {
  it("keeps to its schema for every revision, withdrawn ones too", () => {
    for (const revision of sampleHistory()) {
      const summary = itemSummary(revision, baseUrl);
      expect(itemSummarySchema.parse(summary)).toEqual(summary);
    }
    const page = { items: sampleHistory().map((r) => itemSummary(r, baseUrl)), total: 5, nextCursor: null };
    expect(itemsPageSchema.parse(page)).toEqual(page);
    expect(logSchema.parse({ entries: sampleHistory().map((r) => r.entry) }).entries).toHaveLength(5);
  });
  it("leads with what weighs most", () => {
    const summary = itemSummary(publishedSample(), baseUrl);
    expect(summary).toMatchObject({
      slug: "bluebell-mug",
      verdict: "above",
      answer: "Above the limit: lead in the part “glaze, outside”.",
    });
    expect(summary.elements[0]).toMatchObject({
      part: "glaze, outside",
      element: "Pb",
      text: "412 ± 35 mg/kg",
      verdict: "above",
      verdictText: "above the limit (at least 99 chances in 100): US children's products, 100 mg/kg",
      limit: { id: "us-cpsia-lead-100", applies: "applies", probabilityAbove: 1 },
    });
    expect(summary.links.self).toBe("https://shelf.example/api/v1/items/bluebell-mug");
  });
});

it("every limit of the registry keeps to the schema that the interface document promises", () => {
  const limits = listLimits();
  expect(limitsSchema.parse({ limits })).toEqual({ limits });
  expect(Object.keys(limits[0]!).sort()).toEqual(Object.keys(apiLimitSchema.shape).sort());
});

describe("problems (RFC 9457)", () => {
  it("carry type, title, status and detail, and our own members", () => {
    const body = problemJson(
      { code: "unknown-item", found: "blue-mug" },
      { baseUrl, instance: "/api/v1/items/blue-mug" },
    );
    expect(problemJsonSchema.parse(body)).toEqual(body);
    expect(body).toEqual({
      type: "https://shelf.example/api/v1/openapi.json#/x-problem-types/unknown-item",
      title: "No such item",
      status: 404,
      detail: "There is no item “blue-mug”. It may have been renamed; search for it.",
      instance: "/api/v1/items/blue-mug",
      code: "unknown-item",
      found: "blue-mug",
    });
  });
  it("a code that the interface does not know is about:blank, with its own words", () => {
    expect(problemJson({ code: "mode-unknown", found: "x" }, { baseUrl, status: 422 })).toMatchObject({
      type: "about:blank",
      status: 422,
      detail: "Mode unknown. Found: “x”.",
    });
  });
});

describe("OpenAPI 3.1", () => {
  type Node = { [key: string]: unknown };
  const document = openApiDocument({
    baseUrl,
    title: "Shelf",
    licence: "CC-BY-4.0",
    contact: "corrections@shelf.example",
  });
  const at = (pointer: string): unknown =>
    pointer
      .split("/")
      .slice(1)
      .reduce<unknown>(
        (node, key) => (node as Node | undefined)?.[key.replaceAll("~1", "/").replaceAll("~0", "~")],
        document,
      );
  const refs = (node: unknown): string[] =>
    typeof node !== "object" || node === null
      ? []
      : Object.entries(node).flatMap(([key, value]) => (key === "$ref" ? [String(value)] : refs(value)));

  it("survives JSON, and every $ref in it leads somewhere", () => {
    expect(JSON.parse(JSON.stringify(document))).toEqual(document);
    expect(refs(document).length).toBeGreaterThan(10);
    for (const ref of refs(document)) expect(at(ref.replace(/^#/, "")), ref).toBeTruthy();
  });
  it("lists every address of the read interface", () => {
    const slug = "{slug}";
    const asTemplate = (path: string) => decodeURIComponent(path);
    const addresses = [
      ...Object.values(paths.api).map((path) => asTemplate((path as (slug: string) => string)(slug))),
      paths.feedXml(),
      paths.feedJson(),
      paths.correctionsFeed(),
      ...Object.values(paths.data).map((path) => path()),
      asTemplate(paths.photo("{key}")),
      asTemplate(paths.requestFeed("{id}")),
      asTemplate(paths.cardSvg(slug)),
      asTemplate(paths.labelSvg(slug)),
    ];
    expect(Object.keys(document["paths"] as Node).sort()).toEqual(addresses.sort());
  });
  it("gives every operation a name of its own, a summary and described answers", () => {
    const operations = Object.values(document["paths"] as Record<string, { get: Node }>).map((p) => p.get);
    expect(new Set(operations.map((o) => o["operationId"])).size).toBe(operations.length);
    for (const operation of operations) {
      expect(operation["summary"]).toBeTruthy();
      for (const response of Object.values(operation["responses"] as Record<string, Node>))
        expect(response["description"]).toBeTruthy();
    }
  });
  it("declares every parameter that a path names", () => {
    for (const [path, item] of Object.entries(
      document["paths"] as Record<string, { get: { parameters?: { name: string; in: string }[] } }>,
    )) {
      const named = [...path.matchAll(/\{(\w+)\}/g)].map((m) => m[1]);
      const declared = (item.get.parameters ?? []).filter((p) => p.in === "path").map((p) => p.name);
      expect(declared).toEqual(named);
    }
  });
  it("has schemas made from the zod schemas: the same members, the same required ones", () => {
    const snapshot = at("/components/schemas/Snapshot") as { properties: Node; required: string[] };
    expect(Object.keys(snapshot.properties).sort()).toEqual(Object.keys(snapshotSchema.shape).sort());
    const asked = Object.entries(snapshotSchema.shape).filter(([, schema]) => !schema.safeParse(undefined).success);
    expect(snapshot.required.sort()).toEqual(asked.map(([member]) => member).sort());
    const limit = at("/components/schemas/Limit") as { properties: Node };
    expect(Object.keys(limit.properties)).toEqual(Object.keys(apiLimitSchema.shape));
    expect(JSON.stringify(document)).not.toContain('"$id"');
    // The stability promise: members may be added, so no schema forbids them.
    expect(JSON.stringify(document)).not.toContain('"additionalProperties":false');
  });
  it("describes every problem type that an answer can point to", () => {
    for (const code of Object.keys(problemTypes)) expect(at(`/x-problem-types/${code}`)).toBeTruthy();
  });
});

describe("Data Package v2 (datapackage.org)", () => {
  const csv = readingsCsv(sampleSnapshot());
  const file = (path: string, text: string) => ({
    path,
    bytes: new TextEncoder().encode(text).length,
    sha256: sha256(text),
  });
  const made = dataPackage({
    baseUrl,
    registry: sampleSnapshot().registry,
    seq: 5,
    created: "2026-11-29T08:15:00+01:00",
    files: { results: file("results.csv", "x"), readings: file("readings.csv", csv), log: file("log.json", "{}") },
  });
  it("names its profile, licence, version and resources, each with bytes and hash", () => {
    expect(made.$schema).toBe("https://datapackage.org/profiles/2.0/datapackage.json");
    expect(made.name).toMatch(/^[a-z0-9._-]+$/);
    expect(made.licenses).toEqual([
      {
        name: "CC-BY-4.0",
        title: "Creative Commons Attribution 4.0 International",
        path: "https://creativecommons.org/licenses/by/4.0/",
      },
    ]);
    expect(made.resources.map((r) => r.name)).toEqual(["results", "readings", "log"]);
    expect(made.resources[1]).toMatchObject({
      bytes: Buffer.byteLength(csv),
      hash: `sha256:${sha256(csv)}`,
      type: "table",
    });
  });
  it("describes the very columns of the file, its key among them", () => {
    const [, readings] = made.resources;
    if (!readings || !("schema" in readings)) throw new Error("readings has a schema");
    expect(readings.schema.fields.map((f) => f.name).join(",")).toBe(csv.split("\r\n")[0]);
    for (const key of readings.schema.primaryKey) expect(readingColumns.map((c) => c.name)).toContain(key);
    expect(readings.schema.fields.find((f) => f.name === "seconds_counted")).toMatchObject({
      type: "number",
      unit: "s",
    });
  });
  it("whose key tells every row from every other", () => {
    const [, readings] = made.resources;
    if (!readings || !("schema" in readings)) throw new Error("readings has a schema");
    const { data } = Papa.parse<Record<string, string>>(csv, { header: true, skipEmptyLines: true });
    const keys = data.map((row) => JSON.stringify(readings.schema.primaryKey.map((name) => row[name])));
    expect(new Set(keys).size).toBe(data.length);
    expect(data.length).toBe(readingRows(sampleSnapshot()).length);
  });
  it("has a licence name in the form the profile asks for, whatever the owner wrote", () => {
    const own = dataPackage({
      baseUrl,
      registry: { ...sampleSnapshot().registry, licence: "ask us first!" },
      seq: 1,
      created: "2026-11-29T08:15:00+01:00",
      files: { results: file("results.csv", ""), readings: file("readings.csv", csv) },
    });
    expect(own.licenses[0]?.name).toMatch(/^[-a-zA-Z0-9._]+$/);
  });
});
