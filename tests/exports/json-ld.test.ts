import { describe, expect, it } from "vitest";
import { itemJsonLd, jsonForScript } from "@/lib/exports/json-ld.ts";
import { publishedSample, sampleHistory } from "../support/sample-revisions.ts";
import { sampleSnapshot, sampleSnapshotOf } from "../support/sample-snapshot.ts";
import { jsonLdFaults } from "../support/type-checked-json-ld.ts";

const base = "https://shelf.example/";

describe("the page for machines", () => {
  const full = publishedSample({
    item: { ...sampleSnapshot().item, maker: "Nobody", gtin: "00000000000017" },
    registry: { ...sampleSnapshot().registry, licence: "our own terms" },
  });
  it("is a Dataset about a Product, in schema.org's words and types only", { timeout: 120_000 }, () => {
    expect(jsonLdFaults([...sampleHistory(), full].map((revision) => itemJsonLd(revision, base)))).toEqual([]);
    // The check does find what is wrong.
    const made = itemJsonLd(full, base);
    const wrong = [
      { ...made, verdict: "bad" },
      { ...made, about: { "@type": "Product", weightOfLead: "1" } },
      { ...made, variableMeasured: [{ "@type": "PropertyValue", value: { a: 1 } }] },
      { ...made, "@type": "Certificate" },
    ];
    const found = jsonLdFaults(wrong);
    expect(found).toHaveLength(wrong.length);
    for (const fault of found) expect(fault).toMatch(/verdict|weightOfLead|"a"|Certificate/);
  });
  it("names maker, product code and terms where they are known", () => {
    expect(itemJsonLd(full, base)).toMatchObject({
      "@type": "Dataset",
      "@id": "https://shelf.example/items/bluebell-mug/revisions/1",
      about: { "@type": "Product", brand: { name: "Nobody" }, gtin14: "00000000000017" },
      license: { "@type": "CreativeWork", name: "our own terms" },
    });
  });
  it("gives each element of each part as a PropertyValue with its UCUM unit and interval", () => {
    const { variableMeasured } = itemJsonLd(publishedSample(), base) as { variableMeasured: object[] };
    expect(variableMeasured).toHaveLength(6);
    expect(variableMeasured[0]).toMatchObject({
      name: "Lead (Pb), glaze, outside",
      value: 411.8620090873221,
      minValue: 376.90031321154106,
      maxValue: 446.8237049631032,
      unitCode: "UCUM:mg/kg",
      description: "412 ± 35 mg/kg",
    });
  });
  it("of what was not detected states only what it lies below", () => {
    const revision = { ...publishedSample(), snapshot: sampleSnapshotOf("not-detected") };
    const [value] = (itemJsonLd(revision, base) as { variableMeasured: Record<string, unknown>[] }).variableMeasured;
    expect(value).toMatchObject({ maxValue: 5 });
    expect(value).not.toHaveProperty("value");
    expect(value).not.toHaveProperty("minValue");
  });
  it("says what a correction corrects", () => {
    const correction = sampleHistory()[2]!;
    expect(itemJsonLd(correction, base)).toMatchObject({
      version: "2",
      isBasedOn: "https://shelf.example/items/bluebell-mug/revisions/1",
      correction: { "@type": "CorrectionComment", text: correction.snapshot.reason },
    });
  });
});

it("no text of an item can end the script tag it stands in", () => {
  const hostile = publishedSample({
    item: { ...sampleSnapshot().item, name: "</script><script>alert(1)</script><!--\u2028" },
  });
  const made = itemJsonLd(hostile, base);
  const text = jsonForScript(made);
  expect(text).not.toMatch(/[<\u2028\u2029]/);
  expect(text).toContain("\\u003c/script>");
  expect(JSON.parse(text)).toEqual(made);
});
