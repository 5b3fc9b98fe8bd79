import { describe, expect, it } from "vitest";
import { type AmountsState, amountsSchema, parseAmounts, serialiseAmounts } from "@/lib/amounts/amounts-form.ts";
import { nearestAreas, nearestMasses } from "@/lib/amounts/comparators.ts";
import { computeAmounts } from "@/lib/amounts/compute-amounts.ts";
import { geometries, geometryShapes } from "@/lib/amounts/geometry.ts";
import { readQuantity } from "@/lib/amounts/read-quantity.ts";
import { areaRectangle, areaSide, grainDiameter } from "@/lib/amounts/to-scale.ts";
import { intakeBenchmarks } from "@/lib/limits/intake-benchmarks.ts";
import { referenceLoadings } from "@/lib/limits/reference-loadings.ts";
import { refusalCode } from "../support/refusal-code.ts";

const references = referenceLoadings();
const compute = (state: Partial<AmountsState>, seed = 1) =>
  computeAmounts(parseAmounts(state), seed, { references, draws: 20_000 });
const codes = (state: Partial<AmountsState>) =>
  compute(state).problems.map((p) => `${p.code} ${p.where?.field ?? ""}`.trim());

const disc = {
  from: "shape",
  shape: "disc",
  diameter: "17.91",
  thickness: "1.35",
  densityFrom: "alloy",
  rest: "Sn",
  content: "40",
  contentUnit: "%",
} as const;

describe("a quantity as a person writes it", () => {
  const read = (text: string) => readQuantity(text, { field: "x" });
  it.each([
    ["12", { value: 12, u: 0 }],
    [" 1 234.5 ", { value: 1234.5, u: 0 }],
    ["1e-3", { value: 0.001, u: 0 }],
    ["12 ± 1.959963984540054", { value: 12, u: 1 }],
    ["12 +- 1.959963984540054", { value: 12, u: 1 }],
    ["12+/-1.959963984540054", { value: 12, u: 1 }],
    ["10 to 14", { min: 10, max: 14, shape: "rectangular" }],
    ["10-14", { min: 10, max: 14, shape: "rectangular" }],
    ["10 – 14", { min: 10, max: 14, shape: "rectangular" }],
    ["10..14", { min: 10, max: 14, shape: "rectangular" }],
    ["1e-3 - 2e-3", { min: 0.001, max: 0.002, shape: "rectangular" }],
    ["10 to 14 Triangular", { min: 10, max: 14, shape: "triangular" }],
    ["10 to 14 lognormal", { min: 10, max: 14, shape: "lognormal" }],
    ["412 (380 to 470)", { value: 412, interval: [380, 470] }],
    ["< 5", { below: 5 }],
    // As Spanish writes it: a comma where it can only be a decimal mark, "a" between two ends.
    ["0,05", { value: 0.05, u: 0 }],
    ["1,5", { value: 1.5, u: 0 }],
    ["1,2340", { value: 1.234, u: 0 }],
    ["10 a 14", { min: 10, max: 14, shape: "rectangular" }],
    ["0,25 to 0,5", { min: 0.25, max: 0.5, shape: "rectangular" }],
    ["2,5–3,7", { min: 2.5, max: 3.7, shape: "rectangular" }],
    ["0,4-0,6 triangular", { min: 0.4, max: 0.6, shape: "triangular" }],
    ["41,2 (38 a 47,5)", { value: 41.2, interval: [38, 47.5] }],
    ["< 0,5", { below: 0.5 }],
  ])("%j", (text, expected) => expect(read(text)).toEqual({ ok: true, value: expected }));
  it("nothing is nothing, and never zero", () => expect(read("  ")).toEqual({ ok: true, value: null }));
  it.each([
    "about 5",
    "5 mm",
    "5 to",
    "to 5",
    "1 to 2 to 3",
    "5 lognormal",
    "5 ± 1 ± 2",
    "12 (3)",
    "NaN",
    "Infinity",
    "1e999",
  ])("%j is refused", (text) =>
    expect(read(text)).toMatchObject({ ok: false, problems: [{ code: "quantity-unreadable" }] }),
  );
  it.each(["1,500", "12,345 ± 1", "1 a 1,500"])("%j is not guessed at", (text) =>
    expect(read(text)).toMatchObject({ ok: false, problems: [{ code: "quantity-ambiguous" }] }),
  );
  it("takes 12 ± 0,5 as it takes 12 ± 0.5", () => expect(read("12 ± 0,5")).toEqual(read("12 ± 0.5")));
  it("turns every number into the unit asked for", () =>
    expect(readQuantity("1 to 2", { field: "x", unit: "in", into: "mm" })).toEqual({
      ok: true,
      value: { min: 25.4, max: 50.8, shape: "rectangular" },
    }));
});

describe("the state in the address", () => {
  it("goes out and comes back", () => {
    const state = parseAmounts({ ...disc, loading: "5", over: "2808", day: "2019-06-01", sealed: "yes" });
    expect(parseAmounts(new URLSearchParams(serialiseAmounts(state)))).toEqual(state);
  });
  it("an untouched form has an empty address, no problems and nothing worked out", () => {
    expect(serialiseAmounts(parseAmounts({}))).toBe("");
    const result = computeAmounts(parseAmounts({}), 1, { references });
    expect(result).toMatchObject({ mass: null, amount: null, spread: null, references: [], problems: [] });
  });
  it("what is no choice becomes the usual one; repeated and unknown keys do no harm", () => {
    const state = parseAmounts({
      shape: "teapot",
      element: "<b>",
      content: ["1", "2"],
      extra: "x",
      diameter: "9".repeat(99),
    });
    expect(state).toMatchObject({ shape: "disc", element: "Pb", content: "1", diameter: "" });
    expect("extra" in state).toBe(false);
  });
  it("has a field for every dimension of every shape", () => {
    for (const shape of geometryShapes)
      for (const name of Object.keys(geometries[shape].dimensions)) expect(name in amountsSchema.shape).toBe(true);
  });
});

describe("the calculator", () => {
  it("works out a piece of solder of a dime's size: 1.157 g of lead, and how far it goes", () => {
    const result = compute({ ...disc, loading: "5", over: "2808" });
    expect(result.problems).toEqual([]);
    const mg = result.mass?.mass.value as number;
    expect(mg / 1000).toBeCloseTo(1.157, 3);
    expect(result.amount).toBe(result.mass?.mass);
    expect(result.spread?.area.value).toBeCloseTo((mg * 1000) / 5, 6);
    expect(result.onArea?.loading.value).toBeCloseTo((mg * 1000) / 2808, 6);
    expect(result.onArea?.ladder.at(-1)?.loading).toBeLessThanOrEqual(5);
    expect(result.needed?.mass.value).toBeCloseTo(14.04, 9);
    expect(result.references.map((one) => one.reference.value)).toEqual([40, 10, 5, 250, 100, 40, 400, 400, 100]);
    expect(result.grain?.diameterMm).toBeCloseTo(grainDiameter(mg, 11.34), 12);
    expect(result.nearestMass).toHaveLength(2);
    expect(result.nearestArea[0]?.comparator.id).toBe("football-pitch");
  });
  it("an uncertain mass at an exact loading keeps its interval exactly in proportion", () => {
    const { amount, spread } = compute({ ...disc, content: "30 to 60", loading: "40" });
    expect(spread?.area.interval[1]).toBeCloseTo(((amount?.interval[1] as number) * 1000) / 40, 6);
  });
  it("an uncertain loading widens the area", () => {
    const narrow = compute({ ...disc, content: "30 to 60", loading: "40" }).spread?.area.interval as [number, number];
    const wide = compute({ ...disc, content: "30 to 60", loading: "20 to 60" }).spread?.area.interval as [
      number,
      number,
    ];
    expect(wide[1] / wide[0]).toBeGreaterThan(narrow[1] / narrow[0]);
  });
  it("units are those chosen", () => {
    const inInches = compute({ ...disc, diameter: "0.5", thickness: "0.1", lengthUnit: "in" }).mass?.mass
      .value as number;
    const inMillimetres = compute({ ...disc, diameter: "12.7", thickness: "2.54" }).mass?.mass.value as number;
    expect(inInches).toBeCloseTo(inMillimetres, 9);
    expect(compute({ from: "weight", weight: "1", weightUnit: "oz", content: "1000" }).mass?.mass.value).toBeCloseTo(
      28.349523125,
      9,
    );
    expect(compute({ from: "amount", amount: "2", amountUnit: "g" }).amount?.value).toBe(2000);
    expect(compute({ from: "amount", amount: "1", loading: "1", loadingUnit: "mg/m²" }).spread?.area.value).toBeCloseTo(
      10.7639,
      4,
    );
  });
  it("the same state and seed give the same result", () => {
    const state = { ...disc, content: "30 to 60", loading: "4 to 6", over: "100 to 120" };
    expect(compute(state, 3)).toEqual(compute(state, 3));
  });
  it("not detected: at most, all the way", () => {
    const result = compute({ from: "weight", weight: "350", content: "< 5", loading: "40", over: "10" });
    expect([result.amount?.atMost, result.spread?.area.atMost, result.onArea?.loading.atMost]).toEqual([
      true,
      true,
      true,
    ]);
    expect(result.amount?.interval[1]).toBeCloseTo(1.75, 9);
  });
  it("a coat: mass, and its content where thickness and density are there", () => {
    const coat = { from: "coat", area: "25", coatLoading: "1", densityFrom: "entered" } as const;
    expect(compute(coat)).toMatchObject({ coating: null, problems: [] });
    const whole = compute({ ...coat, coatThickness: "100", density: "1.5" });
    expect(whole.mass?.mass.value).toBe(25);
    expect(whole.coating?.content.value).toBeCloseTo(66_666.67, 2);
    const byContent = compute({
      from: "coat",
      area: "25",
      content: "90",
      coatThickness: "25",
      densityFrom: "entered",
      density: "1.5",
    });
    expect(byContent.coating?.loading.value).toBeCloseTo(0.0003375, 12);
    expect(byContent.mass?.mass.value).toBeCloseTo(25 * 0.0003375, 12);
  });
  it("a sealed part is an estimate", () => expect(compute({ ...disc, sealed: "yes" }).mass?.sealed).toBe(true));
  it("a day chooses the loadings in force on it", () => {
    const on = (day: string) => compute({ ...disc, day }).references.map((one) => one.reference.value);
    expect(on("2019-06-01")).toEqual([40, 250, 400]);
    expect(on("2024-12-31")).toEqual([10, 100, 400]);
    expect(on("2026-11-24")).toEqual([5, 40, 100]);
  });
});

describe("bad input of the issue, each with its code and its field", () => {
  const coat = { from: "coat", area: "25", coatLoading: "1" } as const;
  it.each<[string, Partial<AmountsState>, string[]]>([
    ["a thickness without a density", { ...coat, coatThickness: "100" }, ["density-needed density"]],
    ["a density without a thickness", { ...coat, material: "paint" }, ["thickness-needed coatThickness"]],
    [
      "a content of a coat without a thickness",
      { from: "coat", area: "25", content: "90", material: "paint" },
      ["thickness-needed coatThickness"],
    ],
    ["a shape without a density", { ...disc, densityFrom: "material" }, ["density-needed material"]],
    ["a mass larger than the item's weight", { ...disc, itemWeight: "2" }, ["heavier-than-item itemWeight"]],
    [
      "an amount larger than the item's weight",
      { from: "amount", amount: "3", amountUnit: "g", itemWeight: "2" },
      ["heavier-than-item amount"],
    ],
    ["a range upside down", { ...disc, diameter: "18 to 17" }, ["range-upside-down diameter"]],
    ["a content over 100 %", { ...disc, content: "101" }, ["content-over-100 content"]],
    ["a loading of zero", { ...disc, loading: "0" }, ["loading-zero loading"]],
    ["an area of zero", { ...disc, over: "0" }, ["area-zero over"]],
    ["a date before any limit", { ...disc, day: "2001-03-05" }, ["date-before-any-limit day"]],
    ["a day that is none", { ...disc, day: "2025-02-30" }, ["bad-date day"]],
    ["a field left out", { ...disc, thickness: "" }, ["amount-field-needed thickness"]],
    ["an alloy without its other metal", { ...disc, rest: "" }, ["amount-field-needed rest"]],
    [
      "several at once",
      { shape: "disc", diameter: "3 to 1", content: "120", contentUnit: "%", loading: "0" },
      [
        "range-upside-down diameter",
        "amount-field-needed thickness",
        "content-over-100 content",
        "density-needed material",
        "loading-zero loading",
      ],
    ],
  ])("%s", (_name, state, expected) => expect(codes(state)).toEqual(expected));
  it("says what was typed, not what it was turned into", () =>
    expect(compute({ ...disc, content: "101" }).problems[0]?.found).toBe("101"));
  it("a flaw in one part leaves the others", () => {
    const result = compute({ ...disc, loading: "0", over: "2808" });
    expect(result.spread).toBeNull();
    expect(result.onArea).not.toBeNull();
  });
});

describe("comparators and sizes for drawings", () => {
  it("the nearest by ratio comes first", () => {
    expect(nearestAreas(2808)[0]).toMatchObject({ comparator: { id: "tennis-court" }, times: expect.closeTo(1, 12) });
    expect(nearestMasses(4).map((one) => one.comparator.id)).toEqual(["sesame-seed", "poppy-seed"]);
    expect(refusalCode(() => nearestAreas(0))).toBe("not-positive");
  });
  it("a ball's diameter gives its mass back; a square's side its area", () => {
    const d = grainDiameter(34.02, 11.34);
    expect((Math.PI / 6) * d ** 3 * 11.34).toBeCloseTo(34.02, 10);
    expect(areaSide(100)).toBeCloseTo(3.048, 12);
    const [long, short] = areaRectangle(2808, 78 / 36);
    expect([long / 0.3048, short / 0.3048].map((x) => Number(x.toFixed(9)))).toEqual([78, 36]);
    expect(refusalCode(() => grainDiameter(1, 0))).toBe("not-positive");
  });
});

describe("beside daily benchmarks: arithmetic, labelled (limits.md part D8, our arithmetic from the benchmarks read)", () => {
  const withBenchmarks = (state: Partial<AmountsState>) =>
    computeAmounts(parseAmounts(state), 1, { references, benchmarks: intakeBenchmarks("Pb"), draws: 2_000 });
  const days = (result: ReturnType<typeof withBenchmarks>["daily"], id: string) =>
    result.find((one) => one.benchmark.limitId === id)?.days.value;

  it("350 mL at 0.5 µg/mL is 175 µg, 79.5 times 2.2 µg/day", () => {
    const { leach, daily, problems } = withBenchmarks({ from: "none", leached: "0.5", volume: "350" });
    expect(leach?.drawn.value).toBe(175);
    expect(days(leach?.daily ?? [], "FDA-IRL-CHILD")).toBeCloseTo(79.545, 3);
    expect(daily).toEqual([]);
    expect(problems).toEqual([]);
  });
  it("500 mL at 2.0 µg/mL is 1,000 µg", () => {
    expect(withBenchmarks({ leached: "2.0", volume: "500" }).leach?.drawn.value).toBe(1000);
  });
  it("the whole amount too, by the benchmarks in force now, or on the day asked about", () => {
    const amount = { from: "amount", amount: "0.175" } as const;
    expect(days(withBenchmarks(amount).daily, "FDA-IRL-CHILD")).toBeCloseTo(79.545, 3);
    const then = withBenchmarks({ ...amount, day: "2019-06-01" }).daily;
    expect(then.map((one) => one.benchmark.value)).toContain(3);
    expect(then.map((one) => one.benchmark.value)).not.toContain(2.2);
  });
  it.each([
    [{ leached: "0.5" }, "amount-field-needed volume"],
    [{ leached: "0", volume: "350" }, "not-above-zero leached"],
    [{ leached: "much", volume: "350" }, "quantity-unreadable leached"],
  ])("%o: %s", (state, code) => {
    expect(codes(state)).toEqual([code]);
  });
});
