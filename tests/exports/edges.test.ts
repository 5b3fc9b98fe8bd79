import Papa from "papaparse";
import { describe, expect, it } from "vitest";
import { dataPackage } from "@/lib/exports/data-package.ts";
import { feedEntry } from "@/lib/exports/feed-entry.ts";
import { itemSummary, itemSummarySchema } from "@/lib/exports/item-summary.ts";
import { jsonFeed } from "@/lib/exports/json-feed.ts";
import { itemJsonLd } from "@/lib/exports/json-ld.ts";
import { openApiDocument } from "@/lib/exports/openapi.ts";
import { problemJson, problemJsonSchema } from "@/lib/exports/problem-json.ts";
import { readingsCsv } from "@/lib/exports/readings-csv.ts";
import { resultsCsv } from "@/lib/exports/results-csv.ts";
import type { Snapshot } from "@/lib/publication/snapshot.ts";
import { publishedSample, sampleHistory } from "../support/sample-revisions.ts";
import { sampleSnapshot } from "../support/sample-snapshot.ts";

const base = "https://shelf.example";
const plain = (): Snapshot => structuredClone(sampleSnapshot()) as Snapshot;
/** The sample with one thing after another left out. */
const bare = publishedSample({
  item: { ...plain().item, aliases: [], description: "" },
  registry: { ...plain().registry, contact: "", invented: false, licence: "our own terms" },
  testers: [],
  specimens: plain().specimens.map((specimen) => ({
    ...specimen,
    parts: specimen.parts.map((part) => ({
      ...part,
      results: part.results.map((result) => ({
        ...result,
        ...{ decisions: [], unit: "grains", interval: null, below: null, upperBound: null },
      })),
    })),
  })),
});
const rowsOf = (csv: string) => Papa.parse<Record<string, string>>(csv, { header: true, skipEmptyLines: true }).data;

describe("a page with little on it is exported with as little", () => {
  it("JSON-LD leaves out what nobody said", () => {
    const made = itemJsonLd(bare, base) as Record<string, unknown>;
    expect(made["publisher"]).not.toHaveProperty("email");
    expect(made["about"]).not.toHaveProperty("alternateName");
    expect(made["about"]).not.toHaveProperty("description");
    for (const property of made["variableMeasured"] as object[]) {
      expect(property).not.toHaveProperty("unitCode");
      expect(property).not.toHaveProperty("minValue");
      expect(property).not.toHaveProperty("maxValue");
    }
    const reasonless = publishedSample({ kind: "correction", reason: null });
    expect(itemJsonLd(reasonless, base)).toMatchObject({ correction: { text: "" } });
  });
  it("a list entry and a table of results without a decision have none", () => {
    const summary = itemSummary(bare, base);
    expect(itemSummarySchema.parse(summary)).toEqual(summary);
    for (const element of summary.elements) expect(element).toMatchObject({ verdictText: null, limit: null });
    for (const row of rowsOf(resultsCsv([bare.snapshot])))
      expect([
        row["probability_above"],
        row["limit"],
        row["limit_value"],
        row["limit_unit"],
        row["limit_applies"],
      ]).toEqual(["", "", "", "", ""]);
  });
  it("an entry of a feed without testers names the registry", () =>
    expect(feedEntry(bare, base).authors).toEqual([bare.snapshot.registry.name]));
  it("a feed of corrections leads to the page of corrections", () => {
    const frame = {
      baseUrl: base,
      title: "Shelf",
      emptySince: "2026-11-01T00:00:00Z",
      kind: "corrections",
      path: "/c",
    };
    expect(jsonFeed(sampleHistory(), frame as never).home_page_url).toBe(`${base}/corrections`);
  });
  it("the data package and the interface name a licence's address and a contact only where there is one", () => {
    const file = { path: "a.csv", bytes: 1, sha256: "0".repeat(64) };
    const of = (contact: string, licence: string) => {
      const registry = { ...plain().registry, contact, licence, invented: false };
      const made = dataPackage({
        baseUrl: base,
        registry,
        seq: 3,
        created: "2026-11-24T12:00:00Z",
        files: { results: file, readings: file },
      });
      return [made.contributors[0], made.licenses[0], made.description] as const;
    };
    const [publisher, licence, description] = of("a desk in the hall", "our own terms");
    expect(publisher).not.toHaveProperty("email");
    expect(licence).not.toHaveProperty("path");
    expect(description).not.toMatch(/^Invented/);
    const [reached, free] = of("shelf@shelf.example", "CC-BY-4.0");
    expect(reached).toHaveProperty("email", "shelf@shelf.example");
    expect(free).toHaveProperty("path");
    const document = (contact: string, licence: string) =>
      openApiDocument({ baseUrl: base, title: "Shelf", contact, licence }) as { info: object };
    expect(document("a desk in the hall", "our own terms").info).not.toHaveProperty("contact.email");
    expect(document("shelf@shelf.example", "CC-BY-4.0").info).toMatchObject({
      contact: { email: "shelf@shelf.example" },
    });
  });
  it("a problem carries what it has, and a code without a type is about:blank", () => {
    const full = { code: "not-found", where: { field: "slug" }, found: "x", allowed: "y" };
    expect(problemJson(full, { baseUrl: base, instance: "/i", status: 404 })).toMatchObject({ ...full, status: 404 });
    const unknown = problemJson({ code: "never-heard-of" }, { baseUrl: base });
    expect(problemJsonSchema.parse(unknown)).toEqual(unknown);
    expect(unknown).toMatchObject({ type: "about:blank", status: 400 });
    for (const key of ["where", "found", "allowed", "instance"]) expect(unknown).not.toHaveProperty(key);
  });
  it("a number too long for decimals is written as JavaScript writes it; a file not listed has no name", () => {
    const snapshot = plain();
    const [reading] = snapshot.specimens[0]!.parts[0]!.results[0]!.readings;
    Object.assign(reading!, { value: { text: "1e22", value: 1e22, decimals: 0 }, file: "0".repeat(64) });
    const [row] = rowsOf(readingsCsv(snapshot));
    expect(Object.values(row!)).toContain("1e+22");
  });
});
