import { describe, expect, it } from "vitest";
import { type AmountsState, parseAmounts } from "@/lib/amounts/amounts-form.ts";
import { leachedInto, overDailyIntake } from "@/lib/amounts/arithmetic-comparisons.ts";
import { coatOfPart } from "@/lib/amounts/coat-of-part.ts";
import { contentOfCoat, loadingOfCoat } from "@/lib/amounts/coating.ts";
import { areaComparators, findAreaComparator, findMassComparator, massComparators } from "@/lib/amounts/comparators.ts";
import { computeAmounts } from "@/lib/amounts/compute-amounts.ts";
import { contentOfResult, type ReportedContent } from "@/lib/amounts/content-of-result.ts";
import { halvingLadder, halvingsTo } from "@/lib/amounts/halving.ts";
import { elementMass } from "@/lib/amounts/mass.ts";
import { prepareInput } from "@/lib/amounts/prepare-input.ts";
import { readQuantity } from "@/lib/amounts/read-quantity.ts";
import { referencesOn } from "@/lib/amounts/references-on.ts";
import { areaAtLoading } from "@/lib/amounts/spread.ts";
import { quantityText } from "@/lib/amounts/state-of-part.ts";
import type { DensitySource, UncertainInput } from "@/lib/amounts/types.ts";
import { areaWeightedLoading, subsampleWeightedMean, wipeLoading } from "@/lib/amounts/wipe-loading.ts";
import { referenceLoadings } from "@/lib/limits/reference-loadings.ts";
import { materialDensities } from "@/lib/quantity/material-densities.ts";
import type { Outcome } from "@/lib/quantity/problem.ts";
import { refusalCode } from "../support/refusal-code.ts";

// Invented figures; what is refused, and the ends of what is not.
const run = { seed: 3, draws: 2000 };
const exact = (value: number): UncertainInput => ({ value, u: 0 });
const entered = (value: number) => ({ from: "entered", density: exact(value) }) as const;
const codes = (outcome: Outcome<unknown>): string[] =>
  outcome.ok ? [] : outcome.problems.map((p) => `${p.code} ${p.where?.field ?? ""}`);
const compute = (state: Partial<AmountsState>) => computeAmounts(parseAmounts(state), 1, { draws: 2000 });
const problems = (state: Partial<AmountsState>) =>
  compute(state).problems.map((p) => `${p.code} ${p.where?.field ?? ""}`);

describe("wipes", () => {
  it("an area or an amount that is none is refused, and nothing is averaged over it", () => {
    for (const bad of [0, -1, Number.NaN, Number.POSITIVE_INFINITY]) {
      expect(codes(wipeLoading({ found: 5, areaFt2: bad }))).toEqual(["area-zero area"]);
      expect(codes(wipeLoading({ found: bad, areaFt2: 1 }))).toEqual(["not-above-zero found"]);
    }
    expect(codes(areaWeightedLoading([]))).toEqual(["area-zero area"]);
    const flawed = [wipe(5, 1), wipe(0, 1), wipe(5, 0)];
    expect(codes(areaWeightedLoading(flawed))).toEqual(["not-above-zero found", "area-zero area"]);
  });
  it("a subsample count that is no count, or a list of nothing", () => {
    expect(codes(subsampleWeightedMean([]))).toEqual(["not-above-zero samples"]);
    for (const [loading, subsamples] of [
      [0, 1],
      [5, 0],
      [5, 1.5],
      [Number.NaN, 2],
    ] as const)
      expect(codes(subsampleWeightedMean([{ loading, subsamples }]))).toEqual(["not-above-zero samples"]);
  });
});
const wipe = (found: number, areaFt2: number) => ({ found, areaFt2 });

describe("coats", () => {
  it("every flaw of a coat is told at once", () => {
    const bare = { thickness: null, density: null };
    expect(codes(contentOfCoat(exact(0), bare, run))).toEqual([
      ...["loading-zero coatLoading", "thickness-needed coatThickness", "density-needed density"],
    ]);
    expect(codes(loadingOfCoat(exact(-1), bare, run))).toEqual([
      ...["not-above-zero content", "thickness-needed coatThickness", "density-needed density"],
    ]);
    const flat = { thickness: exact(0), density: entered(0) };
    expect(codes(contentOfCoat(exact(1), flat, run))).toEqual([
      ...["not-above-zero coatThickness", "not-above-zero density"],
    ]);
    expect(codes(contentOfCoat(exact(1), { ...flat, density: entered(2) }, run))).toEqual([
      "not-above-zero coatThickness",
    ]);
    expect(codes(contentOfCoat(exact(0), { thickness: exact(50), density: entered(2) }, run))).toEqual([
      "loading-zero coatLoading",
    ]);
    expect(codes(loadingOfCoat(exact(2e6), { thickness: exact(50), density: entered(2) }, run))).toEqual([
      "content-over-100 content",
    ]);
    expect(codes(loadingOfCoat(exact(5), { thickness: exact(50), density: entered(0) }, run))).toEqual([
      "not-above-zero density",
    ]);
  });
  it("a content and its loading undo one another: L = w·t·ρ/10⁷", () => {
    const coat = { thickness: exact(40), density: entered(1.5) };
    const loading = loadingOfCoat(exact(5000), coat, run);
    expect(loading.ok && loading.value.value).toBeCloseTo((5000 * 40 * 1.5) / 1e7, 12);
    const back = contentOfCoat(exact((5000 * 40 * 1.5) / 1e7), coat, run);
    expect(back.ok && back.value.value).toBeCloseTo(5000, 8);
  });
});

describe("density and mass", () => {
  const weighed = (weight: UncertainInput, content: UncertainInput) =>
    elementMass({ by: "weighed", weight, content }, run);
  const ball = (density: DensitySource, diameter = exact(10)) =>
    elementMass({ by: "geometry", shape: "sphere", dimensions: { diameter }, density, content: exact(90_000) }, run);
  it.each<[DensitySource, string]>([
    [{ from: "material", id: "" }, "density-needed material"],
    [{ from: "material", id: "moon-rock" }, "unknown-material material"],
    [{ from: "alloy", element: "Xx", rest: "Sn" }, "unknown-metal element"],
    [{ from: "alloy", element: "Pb", rest: "Xx" }, "unknown-metal rest"],
    [{ from: "alloy", element: "Pb", rest: "Pb" }, "same-metal-twice rest"],
    [entered(-1), "not-above-zero density"],
  ])("%j is refused as %s", (density, code) => expect(codes(ball(density))).toEqual([code]));
  it("flaws of a coat's size and of its density come together", () => {
    const coat = (area: number, density: number) =>
      elementMass(
        {
          ...{ by: "coat-content", area: exact(area), thickness: exact(50), density: entered(density) },
          content: exact(90_000),
        },
        run,
      );
    expect(codes(coat(0, 0))).toEqual(["area-zero area", "not-above-zero density"]);
    expect(codes(coat(0, 2))).toEqual(["area-zero area"]);
    expect(codes(coat(10, 0))).toEqual(["not-above-zero density"]);
  });
  it("tin and lead have their own uncertainty of the rule, other metals 5 %", () => {
    const u = (rest: string) => {
      const outcome = ball({ from: "alloy", element: "Pb", rest });
      return outcome.ok ? outcome.value.density!.u : Number.NaN;
    };
    expect(u("Sn")).toBeCloseTo(0.03, 12);
    expect(u("Cu")).toBeGreaterThan(0.4);
  });
  it("weights, areas and whole objects that cannot be", () => {
    expect(codes(weighed(exact(0), exact(-1)))).toEqual(["not-above-zero weight", "not-above-zero content"]);
    const coat = elementMass({ by: "coat", area: exact(0), loading: exact(0) }, run);
    expect(codes(coat)).toEqual(["area-zero area", "loading-zero coatLoading"]);
    const within = (itemWeight: number) =>
      elementMass({ by: "weighed", weight: exact(10), content: exact(500) }, { ...run, itemWeight });
    for (const bad of [0, Number.NaN]) expect(codes(within(bad))).toEqual(["not-above-zero itemWeight"]);
    expect(codes(within(9))).toEqual(["heavier-than-item itemWeight"]);
    expect(within(11).ok).toBe(true);
    const onCoat = elementMass({ by: "coat", area: exact(100), loading: exact(50) }, { ...run, itemWeight: 1 });
    expect(codes(onCoat)).toEqual(["heavier-than-item itemWeight"]);
  });
  it("an interval the wrong way round is refused", () =>
    expect(codes(prepareInput({ value: 5, interval: [9, 2] }, { field: "x" }))).toEqual(["range-upside-down x"]));
  it("a mass and a loading of zero are both told", () =>
    [
      [0, 0, 2],
      [1, 0, 1],
      [0, 1, 1],
      [1, 1, 0],
    ].forEach(([mass, loading, flaws]) => {
      expect(codes(areaAtLoading({ mass: exact(mass!), loading: exact(loading!) }, run))).toHaveLength(flaws!);
    }));
  it("a density from the list of materials names its source", () => {
    const [brass] = materialDensities.filter((one) => one.material === "brass");
    const outcome = ball({ from: "material", id: brass!.id });
    expect(outcome.ok && outcome.value.density).toMatchObject({
      source: `${brass!.name}: ${brass!.source}`,
      checked: brass!.checked,
    });
  });
  it("a coat of a record of a thickness or a content that cannot be", () => {
    const part = { form: "coating", material: "paint", thicknessMm: 0 };
    const areal: ReportedContent = {
      ...{ quantity: "coating-areal", state: "quantified", value: 1, u: 0 },
      ...{ interval: null, below: null, upperBound: null, range: null },
    };
    expect(codes(coatOfPart(part, areal, run)!)).toEqual(["not-above-zero coatThickness"]);
    expect(codes(coatOfPart(part, { ...areal, quantity: "coating-mass-fraction" }, run)!)).toEqual([
      "not-above-zero coatThickness",
    ]);
    expect(codes(coatOfPart(part, { ...areal, u: Number.NaN }, run)!)).toEqual(["quantity-unreadable content"]);
  });
  it("without a number of draws, as many as JCGM 101 7.2.2 asks for: the interval of a normal input to 1 %", () => {
    const outcome = elementMass({ by: "weighed", weight: { value: 1000, u: 10 }, content: exact(1000) }, { seed: 1 });
    const [low, high] = outcome.ok ? outcome.value.mass.interval : [0, 0];
    expect(Math.abs(high - low - 2 * 1.959964 * 10)).toBeLessThan(0.4);
  });
});

describe("a reported result without what an amount needs", () => {
  const result: ReportedContent = {
    ...{ quantity: "bulk-mass-fraction", state: "quantified", value: 412, u: 18 },
    ...{ interval: [376, 448], below: null, upperBound: null, range: null },
  };
  const content = (over: Partial<ReportedContent>) => {
    const outcome = contentOfResult({ ...result, ...over });
    return outcome.ok ? outcome.value : codes(outcome)[0];
  };
  it("gives what it has, and refuses where it has nothing", () => {
    expect(content({ value: null })).toBe("no-content content");
    expect(content({ value: -3, upperBound: 40 })).toEqual({ below: 40 });
    expect(content({ interval: null })).toEqual({ value: 412, u: 18 });
    expect(content({ interval: null, u: null })).toEqual({ value: 412, u: 0 });
    expect(content({ state: "range-only", range: [3, 9] })).toEqual({ min: 3, max: 9, shape: "rectangular" });
    expect(content({ state: "range-only" })).toBe("no-content content");
    expect(content({ state: "not-quantified" })).toBe("no-content content");
    expect(content({ state: "not-quantified", upperBound: 30 })).toEqual({ below: 30 });
    expect(content({ state: "not-detected" })).toBe("no-content content");
    expect(content({ state: "no-readings" })).toBe("no-content content");
  });
});

describe("halving, comparators, benchmarks, days", () => {
  it("halvings need a loading, a target and a mass above zero", () => {
    for (const bad of [0, -5, Number.NaN]) {
      expect(refusalCode(() => halvingsTo(bad, 5))).toBe("not-positive");
      expect(refusalCode(() => halvingsTo(40, bad))).toBe("not-positive");
      expect(refusalCode(() => halvingLadder({ mass: bad, loading: 40 }, 5))).toBe("not-positive");
    }
    expect(halvingLadder({ mass: null, loading: 40 }, 20)).toEqual([
      { halvings: 0, mass: null, loading: 40 },
      { halvings: 1, mass: null, loading: 20 },
    ]);
  });
  it("comparators are found by id, and no other is", () => {
    for (const one of areaComparators) expect(findAreaComparator(one.id)).toBe(one);
    for (const one of massComparators) expect(findMassComparator(one.id)).toBe(one);
    expect([findAreaComparator("moon"), findMassComparator("moon")]).toEqual([null, null]);
  });
  it("arithmetic with nothing is refused, both flaws at once", () => {
    expect(codes(overDailyIntake(0, Number.NaN))).toEqual(["not-above-zero amount", "not-above-zero benchmark"]);
    expect(codes(leachedInto(-1, 0))).toEqual(["not-above-zero leached", "not-above-zero volume"]);
  });
  it("a day must be one, and not lie before the first limit", () => {
    const all = referenceLoadings();
    for (const text of ["24.11.2026", "2026-02-30", "soon"])
      expect(codes(referencesOn(all, text))).toEqual(["bad-date day"]);
    expect(codes(referencesOn(all, "1900-01-01"))).toEqual(["date-before-any-limit day"]);
    expect(referencesOn([], "soon")).toEqual({ ok: true, value: [] });
  });
});

describe("the calculator on half a form", () => {
  it("a flaw in the basis and one in the weight of the object are both told", () =>
    expect(problems({ from: "weight", weight: "0", content: "5", itemWeight: "heavy" })).toEqual([
      ...["not-above-zero weight", "quantity-unreadable itemWeight"],
    ]));
  it("an entered amount is held against the weight of the object", () => {
    expect(problems({ from: "amount", amount: "5000", itemWeight: "2" })).toEqual(["heavier-than-item amount"]);
    expect(problems({ from: "amount", amount: "1000", itemWeight: "2" })).toEqual([]);
    expect(problems({ from: "amount", amount: "1000", itemWeight: "2 to 3" })).toEqual([]);
    expect(problems({ from: "amount", amount: "1000", itemWeight: "x" })).toEqual(["quantity-unreadable itemWeight"]);
  });
  it("a sheet asks for its area in the unit of areas", () => {
    const sheet = {
      from: "shape",
      shape: "sheet",
      area: "100",
      thickness: "1",
      densityFrom: "entered",
      density: "2",
    } as const;
    const { mass } = compute({ ...sheet, content: "1000" });
    // 100 cm² × 0.1 cm × 2 g/cm³ = 20 g; 0.1 % of it is 20 mg.
    expect(mass?.mass.value).toBeCloseTo(20, 9);
  });
  it("a density that is missing, unreadable or not chosen", () => {
    const disc = { from: "shape", shape: "disc", diameter: "10", thickness: "1", content: "1000" } as const;
    expect(problems({ ...disc, densityFrom: "entered" })).toEqual(["density-needed density"]);
    expect(problems({ ...disc, densityFrom: "entered", density: "dense" })).toEqual(["quantity-unreadable density"]);
    expect(problems({ ...disc, densityFrom: "material" })).toEqual(["density-needed material"]);
    expect(problems({ ...disc, densityFrom: "alloy" })).toEqual(["amount-field-needed rest"]);
  });
  it("an untouched weight asks for nothing", () => expect(problems({ from: "weight" })).toEqual([]));
  it("an element without a density of its own has no ball to draw", () => {
    expect(compute({ from: "amount", amount: "5", element: "Br" }).grain).toBeNull();
    expect(compute({ from: "amount", amount: "5", element: "Pb" }).grain?.density).toBeGreaterThan(11);
  });
  it("a good basis beside a weight of the object that cannot be read", () =>
    expect(problems({ from: "weight", weight: "5", content: "5", itemWeight: "heavy" })).toEqual([
      "quantity-unreadable itemWeight",
    ]));
  it("a coat: untouched, flawed, or without anything to convert", () => {
    expect(problems({ from: "coat" })).toEqual([]);
    expect(problems({ from: "coat", area: "-1", coatLoading: "1" })).toEqual(["area-zero area"]);
    const flawed = {
      from: "coat",
      densityFrom: "entered",
      coatLoading: "much",
      coatThickness: "thin",
      density: "heavy",
    } as const;
    expect(problems({ ...flawed, area: "10" })).toEqual([
      ...["quantity-unreadable coatLoading", "quantity-unreadable coatThickness", "quantity-unreadable density"],
    ]);
    const { coating } = compute({ from: "coat", densityFrom: "entered", area: "10", coatThickness: "50" });
    expect(coating).toBeNull();
  });
  it("a range over two lines is read like one over a space, or refused", () =>
    expect(codes(readQuantity("5\nlognormal", { field: "x" }))).toEqual(["quantity-unreadable x"]));
  it("nor are two lines of numbers", () =>
    expect(codes(readQuantity("5\n6", { field: "x" }))).toEqual(["quantity-unreadable x"]));
  it("an uncertainty is written as its 95 % and read back", () => {
    expect(quantityText({ value: 412, u: 10 })).toBe("412 ± 19.5996");
    const back = readQuantity(quantityText({ value: 412, u: 10 }), { field: "x" });
    expect(back.ok && back.value).toMatchObject({ value: 412, u: expect.closeTo(10, 4) });
  });
  it("an amount below detection: the ladder stands on its bound", () => {
    const { onArea } = compute({ from: "amount", amount: "< 5", over: "10" });
    expect(onArea?.ladder[0]?.mass).toBe(5);
  });
  it("an amount below detection over an area known to a range is at most so much on each square foot", () => {
    const { onArea } = compute({ from: "amount", amount: "< 5", over: "10 ± 1" });
    expect(onArea?.loading).toMatchObject({ atMost: true, value: 500, unit: "µg/ft²" }); // 5 mg over 10 ft²
    expect(onArea?.loading.interval[1]).toBeGreaterThan(500);
  });
});
