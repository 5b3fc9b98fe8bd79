import { describe, expect, it } from "vitest";
import { DomainError } from "@/lib/quantity/domain-error.ts";
import { medianMad } from "@/lib/statistics/median-mad.ts";
import { type RandomEffectsOptions, randomEffects } from "@/lib/statistics/random-effects.ts";
import { weightedMean } from "@/lib/statistics/weighted-mean.ts";

const badReadings: [string, number[], number[]][] = [
  ["empty", [], []],
  ["NaN", [1, Number.NaN], [1, 1]],
  ["infinity", [1, Number.POSITIVE_INFINITY], [1, 1]],
  ["NaN u", [1, 2], [1, Number.NaN]],
  ["infinite u", [1, 2], [1, Number.POSITIVE_INFINITY]],
  ["zero u", [1, 2], [1, 0]],
  ["negative u", [1, 2], [1, -1]],
  ["mismatch", [1, 2], [1]],
  ["mismatch, u longer", [1], [1, 2]],
];

describe("weightedMean", () => {
  it.each(badReadings)("refuses %s", (_name, x, u) => expect(() => weightedMean(x, u)).toThrow(DomainError));

  it("says nothing of the scatter of one reading", () => {
    expect(weightedMean([250], [12])).toEqual({
      mean: 250,
      uInternal: 12,
      q: 0,
      df: 0,
      p: null,
      birge: null,
      uExternal: null,
      i2: null,
    });
  });

  it("holds over twelve decades of u and at the ends of the number range", () => {
    // Q by exact arithmetic (mpmath, 60 digits).
    expect(weightedMean([1, 2, 3, 4], [1e-9, 1e-3, 1, 1e3]).q).toBeCloseTo(1000004.000008, 4);
    expect(weightedMean([1e-300, 3e-300], [1e-301, 1e-301]).mean).toBeCloseTo(2e-300, 310);
    const large = weightedMean([1e300, 3e300], [1e300, 1e300]);
    expect(large.mean).toBe(2e300);
    expect(large.q).toBeCloseTo(2, 12);
  });

  it("gives identical readings Q of exactly zero", () => {
    expect(weightedMean([0.1, 0.1, 0.1], [0.3, 0.7, 0.9])).toMatchObject({ mean: 0.1, q: 0, p: 1, birge: 0, i2: 0 });
  });
});

describe("randomEffects", () => {
  it.each(badReadings)("refuses %s", (_name, x, u) =>
    expect(() => randomEffects(x, u, { tau2: "PM" })).toThrow(DomainError),
  );

  it("refuses one reading, a bad level, an unknown estimator or interval", () => {
    const run = (options: unknown) => () => randomEffects([1, 2], [1, 1], options as RandomEffectsOptions);
    expect(() => randomEffects([1], [1], { tau2: "PM" })).toThrow(DomainError);
    for (const level of [0, 1, -0.5, 95, Number.NaN]) expect(run({ tau2: "PM", level })).toThrow(DomainError);
    expect(run({ tau2: "ML" })).toThrow(DomainError);
    expect(run({ tau2: "PM", interval: "wald" })).toThrow(DomainError);
  });

  // Expected values by 60-digit arithmetic (mpmath: bisection on Q for PM, grid and root of the restricted likelihood for REML).
  it.each([
    [[1, 2, 3, 4], [1e-9, 1e-3, 1, 1e3], { PM: 0.333334074076428, DL: 0.500000000004, REML: 0.55723332288679 }],
    [
      [1e-9, 3e-9, 2e-9],
      [1e-12, 2e-10, 1e-9],
      { PM: 9.8008013721246e-19, DL: 1.903843803996342e-18, REML: 1.1923710774776e-18 },
    ],
    [[1, 1.000001, 1e6], [1e-7, 1e-7, 1e5], { PM: 326666000000, DL: 1.479998e-12, REML: 323263923387.21 }],
  ])("τ² of %j with u %j", (x, u, expected) => {
    for (const tau2 of ["PM", "DL", "REML"] as const)
      expect(randomEffects(x, u, { tau2 }).tau2 / expected[tau2]).toBeCloseTo(1, 9);
  });

  it("holds the factor at one by default, so identical readings still have a width", () => {
    const [lo, hi] = randomEffects([57, 57, 57], [2, 3, 4], { tau2: "PM" }).interval;
    expect(hi - lo).toBeGreaterThan(1);
    expect(randomEffects([57, 57, 57], [2, 3, 4], { tau2: "PM", interval: "HK" }).interval).toEqual([57, 57]);
  });

  it("gives a Q-profile interval that holds the Paule–Mandel estimate", () => {
    const r = randomEffects([412, 655, 501, 398, 890], [9, 13, 11, 8, 18], { tau2: "PM" });
    expect(r.tau2Interval[0]).toBeLessThan(r.tau2);
    expect(r.tau2Interval[1]).toBeGreaterThan(r.tau2);
  });

  it("takes the higher of two maxima of the restricted likelihood", () => {
    // −28.07 at 3.2e11 against −70.74 at zero and a lower hump beside it (mpmath).
    expect(randomEffects([1, 1.000001, 1e6], [1e-7, 1e-7, 1e5], { tau2: "REML" }).tau2).toBeGreaterThan(1e11);
  });
  it("restricted likelihood of two readings is ((x₁ − x₂)² − u₁² − u₂²)/2 held at zero, however unlike their u", () => {
    // Harville, JASA 72 (1977) 320: REML depends on the contrast x₁ − x₂ alone, of variance u₁² + u₂² + 2τ² (from memory).
    const tau2 = (x: number[], u: number[]) => randomEffects(x, u, { tau2: "REML" }).tau2;
    expect(tau2([100, 100.5], [116923.0027103479, 2.2287570985392074e-6])).toBe(0);
    expect(tau2([100, 100.5], [1e-9, 0.5000001])).toBe(0);
    expect(tau2([0, 5], [3, 1e-6])).toBeCloseTo(8, 9);
    expect(tau2([0, 1e6], [1, 1e-12]) / ((1e12 - 1) / 2)).toBeCloseTo(1, 14);
  });
});

describe("medianMad", () => {
  it("takes odd and even counts and one value", () => {
    expect(medianMad([1, 2, 4, 7, 100])).toEqual({ median: 4, mad: 3, scaled: 1.4826 * 3 });
    expect(medianMad([4, 1, 3, 2])).toEqual({ median: 2.5, mad: 1, scaled: 1.4826 });
    expect(medianMad([7])).toEqual({ median: 7, mad: 0, scaled: 0 });
  });
  it("leaves its argument as it was", () => {
    const x = [3, 1, 2];
    medianMad(x);
    expect(x).toEqual([3, 1, 2]);
  });
  it("refuses what is not a list of numbers", () => {
    expect(() => medianMad([])).toThrow(DomainError);
    expect(() => medianMad([1, Number.NaN])).toThrow(DomainError);
    expect(() => medianMad(["1" as unknown as number])).toThrow(DomainError);
  });
});
