import { describe, expect, test } from "vitest";
import { coatOfPart } from "@/lib/amounts/coat-of-part.ts";
import type { ReportedContent } from "@/lib/amounts/content-of-result.ts";

const run = { seed: 1, draws: 20_000 };
const paint = { form: "coating", material: "paint", thicknessMm: 0.1 };
const areal: ReportedContent = {
  quantity: "coating-areal",
  state: "quantified",
  value: 1,
  u: 0,
  interval: [1, 1],
  below: null,
  upperBound: null,
  range: null,
};

describe("a coat of a record, by weight and on an area (L = w·t·ρ; limits.md part D5)", () => {
  test("1.0 mg/cm² in 100 µm of vinyl print, 1.1 to 1.4 g/cm³: between 71 429 and 90 909 mg/kg", () => {
    const coat = coatOfPart({ ...paint, material: "textile-print" }, areal, run);
    if (!coat?.ok) throw new Error("refused");
    expect(coat.value).toMatchObject({ from: "loading", thicknessUm: 100, density: { min: 1.1, max: 1.4 } });
    // 10⁷·1/(100·1.4) and 10⁷·1/(100·1.1), and 80 000 at the middle.
    expect(coat.value.content.value).toBeCloseTo(80_000, 6);
    expect(coat.value.content.interval[0]).toBeGreaterThan(71_428);
    expect(coat.value.content.interval[1]).toBeLessThan(90_910);
    expect(coat.value.loading.value).toBe(1);
  });
  test("90 mg/kg in 100 µm of such a print: 0.001125 mg/cm² at the middle", () => {
    const coat = coatOfPart(
      { ...paint, material: "textile-print" },
      { ...areal, quantity: "coating-mass-fraction", value: 90, interval: [80, 100] },
      run,
    );
    if (!coat?.ok) throw new Error("refused");
    expect(coat.value.from).toBe("content");
    expect(coat.value.loading.value).toBeCloseTo((90 * 100 * 1.25) / 1e7, 12);
    expect(coat.value.content.interval[0]).toBeCloseTo(80, 0);
  });
  test.each([
    ["no thickness", { ...paint, thicknessMm: null }, areal, "thickness-needed"],
    ["a material of no known density", { ...paint, material: "other" }, areal, "density-needed"],
    ["more than can lie in so thin a coat", { ...paint, thicknessMm: 0.001 }, areal, "content-over-100"],
  ])("refused: %s", (_, part, result, code) => {
    expect(coatOfPart(part, result, run)).toMatchObject({ ok: false, problems: [{ code }] });
  });
  test.each([
    ["a solid part", { ...paint, form: "bulk" }, areal],
    ["a bulk reading of a layer, which is of both", paint, { ...areal, quantity: "bulk-mass-fraction" }],
    ["nothing read", paint, { ...areal, state: "no-readings" as const }],
  ])("nothing to convert: %s", (_, part, result) => {
    expect(coatOfPart(part, result, run)).toBeNull();
  });
});
