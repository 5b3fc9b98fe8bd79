import { describe, expect, it } from "vitest";
import { DomainError } from "@/lib/quantity/domain-error.ts";
import { censoredNormal } from "@/lib/statistics/censored-normal.ts";
import { censoredMeanAndSpread, censoredRandomEffects } from "@/lib/statistics/censored-random-effects.ts";
import { lognormalRandomEffects } from "@/lib/statistics/lognormal-random-effects.ts";
import { lognormalReading } from "@/lib/statistics/lognormal-reading.ts";
import { upperBoundAllCensored } from "@/lib/statistics/upper-bound-all-censored.ts";
import { refusalCode } from "../support/refusal-code.ts";

const none = (n: number) => Array<boolean>(n).fill(false);
const bad: [string, number[], number[], boolean[]][] = [
  ["empty", [], [], []],
  ["NaN", [1, Number.NaN], [1, 1], [false, true]],
  ["infinity", [1, Number.NEGATIVE_INFINITY], [1, 1], [false, true]],
  ["zero u", [1, 2], [1, 0], [false, false]],
  ["negative u", [1, 2], [1, -2], [false, false]],
  ["u of another length", [1, 2], [1], [false, false]],
  ["flags of another length", [1, 2], [1, 1], [false]],
  ["flags that are not flags", [1, 2], [1, 1], [0, 1] as unknown as boolean[]],
];

describe("refusals", () => {
  it.each(bad)("%s", (_name, x, u, censored) => {
    expect(() => censoredRandomEffects(x, u, censored)).toThrow(DomainError);
    expect(() => lognormalRandomEffects(x, u, censored)).toThrow(DomainError);
  });
  it("bad levels and cuts", () => {
    for (const level of [0, 1, Number.NaN, 95]) {
      expect(() => censoredRandomEffects([1, 2], [1, 1], none(2), { level })).toThrow(DomainError);
      expect(() => lognormalRandomEffects([1, 2], [1, 1], none(2), { level })).toThrow(DomainError);
    }
    expect(() => censoredRandomEffects([1, 2], [1, 1], none(2), { cut: "wald" as "chi2" })).toThrow(DomainError);
  });
  it("one reading with the small-sample cut", () => {
    expect(() => censoredRandomEffects([5], [1], [false], { cut: "small-sample" })).toThrow(DomainError);
    expect(() => lognormalRandomEffects([5], [1], [false])).toThrow(DomainError);
  });
});

describe("censoredNormal", () => {
  it("refuses bad lists", () => {
    expect(() => censoredNormal([], [])).toThrow(DomainError);
    expect(() => censoredNormal([1, Number.NaN], [false, false])).toThrow(DomainError);
    expect(() => censoredNormal([1, 2], [false])).toThrow(DomainError);
    expect(() => censoredNormal([1, 0], [false, true], { log: true })).toThrow(DomainError);
    expect(() => censoredNormal([1, -1], [false, false], { log: true })).toThrow(DomainError);
  });
  it("flags what has no maximum", () => {
    expect(censoredNormal([1, 2], [true, true]).status).toBe("all-censored");
    expect(censoredNormal([5], [false])).toMatchObject({ status: "no-spread", mean: 5, sd: 0, seMean: null });
    expect(censoredNormal([5, 5, 9], [false, false, true]).status).toBe("no-spread");
    expect(censoredNormal([5, 5, 5], [false, false, true]).status).toBe("no-spread");
    expect(censoredNormal([5, 5, 4], [false, false, true]).status).toBe("ok");
  });
  it("is the textbook answer where nothing is censored", () => {
    const x = [12, 15, 11, 19, 13, 14];
    const r = censoredNormal(x, none(6));
    expect(r.mean).toBeCloseTo(14, 12);
    expect(r.sd).toBeCloseTo(Math.sqrt(40 / 6), 12);
    expect(r.seMean).toBeCloseTo(Math.sqrt(40 / 36), 12);
  });
  it("scales and shifts with the data over fifteen decades", () => {
    const values = [10, 10, 12, 12, 19, 25];
    const censored = [true, true, true, true, false, false];
    const base = censoredNormal(values, censored);
    for (const scale of [1e-9, 1, 1e6]) {
      const r = censoredNormal(
        values.map((v) => v * scale),
        censored,
      );
      expect((r.mean ?? 0) / scale).toBeCloseTo(base.mean ?? Number.NaN, 8);
      expect((r.profile?.[0] ?? 0) / scale).toBeCloseTo(base.profile?.[0] ?? Number.NaN, 6);
    }
    const shifted = censoredNormal(
      values.map((v) => v + 1e6),
      censored,
    );
    expect((shifted.mean ?? 0) - 1e6).toBeCloseTo(base.mean ?? Number.NaN, 6);
  });
  it("finds a maximum far below the limits", () => {
    const n = 40;
    const r = censoredNormal([...Array<number>(n).fill(10), 10.5], [...Array<boolean>(n).fill(true), false]);
    expect(r.status).toBe("ok");
    expect(r.mean).toBeLessThan(10);
    expect(r.profile?.[1]).toBeLessThan(10.5);
  });
});

describe("censoredRandomEffects", () => {
  it("flags all censored", () => {
    expect(censoredRandomEffects([1, 2], [1, 1], [true, true])).toMatchObject({ status: "all-censored", mean: null });
    expect(refusalCode(() => censoredMeanAndSpread([1, 2], [1, 1], [true, true]))).toBe("all-censored");
  });
  it("is the weighted mean with χ² interval where readings agree", () => {
    const r = censoredRandomEffects([5, 5], [1, 1], none(2));
    expect(r).toMatchObject({ status: "ok", mean: 5, tau: 0, tauOnBoundary: true });
    expect(r.interval?.[0]).toBeLessThan(5 - 1.96 / Math.SQRT2);
  });
  it("with the small-sample cut is Student's interval where u is nothing beside the scatter", () => {
    // mean ± t(0.975, 4)·s/√5 of the values themselves.
    const x = [412, 655, 501, 398, 890];
    const mean = x.reduce((a, b) => a + b, 0) / 5;
    const s = Math.sqrt(x.reduce((a, b) => a + (b - mean) ** 2, 0) / 4);
    const r = censoredRandomEffects(
      x,
      x.map(() => 1e-6),
      none(5),
      { cut: "small-sample" },
    );
    expect(r.mean).toBeCloseTo(mean, 6);
    expect(r.interval?.[0]).toBeCloseTo(mean - (2.7764451051977934 * s) / Math.sqrt(5), 4);
    expect(r.interval?.[1]).toBeCloseTo(mean + (2.7764451051977934 * s) / Math.sqrt(5), 4);
  });
  it("keeps its answer at 1e-9 and at 1e6, and for u over twelve decades", () => {
    const x = [10, 12, 10, 25, 19, 14];
    const u = [3, 3, 3, 4, 4, 3];
    const censored = [true, true, true, false, false, false];
    for (const scale of [1e-9, 1e6]) {
      const r = censoredRandomEffects(
        x.map((v) => v * scale),
        u.map((v) => v * scale),
        censored,
      );
      expect((r.mean ?? 0) / scale).toBeCloseTo(11.169950352325912, 6);
      expect((r.interval?.[0] ?? 0) / scale).toBeCloseTo(-8.45107389193599, 6);
    }
    const wide = censoredRandomEffects([1, 2, 3, 4], [1e-9, 1e-3, 1, 1e3], none(4));
    expect(wide.status).toBe("ok");
    expect(wide.mean).toBeGreaterThan(1);
    expect(wide.mean).toBeLessThan(2.5);
  });
});

describe("lognormalRandomEffects", () => {
  // SciPy: 400-point Gauss–Legendre likelihood, Nelder–Mead and root finding; the maximum is good to about 1e-8, the ends to 1e-5.
  it.each([
    [
      [412, 655, 501, 398, 890],
      [9, 13, 11, 8, 18],
      none(5),
      [569.66423, 0.3021668, -32.620086981373305, 398.94581812648426, 977.4613665969149],
    ],
    [
      [10, 12, 10, 25, 19, 14],
      [3, 3, 3, 4, 4, 3],
      [true, true, true, false, false, false],
      [12.7711335, 0.53292524, -13.50353457542613, 5.495258530045968, 124.1762313833511],
    ],
    [
      [80, 150, 40, 30, 200],
      [30, 30, 30, 30, 30],
      none(5),
      [101.776917, 0.62803946, -27.870668228815976, 40.01365062902682, 1509.412189178885],
    ],
  ])("%j (SciPy 1.17.1)", (x, u, censored, [mean, sigma, l, lo, hi]) => {
    const r = lognormalRandomEffects(x as number[], u as number[], censored as boolean[]);
    expect(r.status).toBe("ok");
    expect((r.mean ?? 0) / mean!).toBeCloseTo(1, 7);
    expect((r.sigma ?? 0) / sigma!).toBeCloseTo(1, 6);
    expect(r.logLikelihood).toBeCloseTo(l!, 8);
    expect((r.interval?.[0] ?? 0) / lo!).toBeCloseTo(1, 6);
    expect((r.interval?.[1] ?? 0) / hi!).toBeCloseTo(1, 5);
  });

  it("is the log-normal sample's own likelihood where u is nothing", () => {
    // θ and σ are then the mean and the n-divisor deviation of ln x.
    const x = [412, 655, 501, 398, 890];
    const logs = x.map(Math.log);
    const theta = logs.reduce((a, b) => a + b, 0) / 5;
    const sigma = Math.sqrt(logs.reduce((a, b) => a + (b - theta) ** 2, 0) / 5);
    for (const relative of [1e-5, 1e-9, 1e-12]) {
      const r = lognormalRandomEffects(
        x,
        x.map((v) => v * relative),
        none(5),
      );
      expect(r.theta).toBeCloseTo(theta, 7);
      expect(r.sigma).toBeCloseTo(sigma, 7);
      expect((r.mean ?? 0) / Math.exp(theta + sigma ** 2 / 2)).toBeCloseTo(1, 7);
    }
  });

  it("has no spread where readings agree within their errors", () => {
    const r = lognormalRandomEffects([100, 102, 99], [5, 5, 5], none(3));
    expect(r).toMatchObject({ status: "ok", sigma: 0 });
    expect(r.mean).toBeCloseTo(100.3333333333, 9);
  });

  it("says so where nothing is seen, or what is seen is not above nothing", () => {
    expect(lognormalRandomEffects([10, 12], [3, 3], [true, true])).toMatchObject({
      status: "all-censored",
      mean: null,
    });
    const zero = lognormalRandomEffects([-1, -2, -3], [1, 1, 1], none(3));
    expect(zero).toMatchObject({ status: "at-zero", mean: 0, theta: null });
    expect(zero.interval).toEqual([0, Number.POSITIVE_INFINITY]);
  });

  it("takes readings at or below zero among others", () => {
    const r = lognormalRandomEffects([-1, 20, 30, 0], [2, 2, 2, 2], none(4), { cut: "chi2" });
    expect(r.status).toBe("ok");
    expect(r.mean).toBeGreaterThan(0);
  });

  it("scales, whatever the unit", () => {
    const x = [10, 12, 10, 25, 19, 14];
    const u = [3, 3, 3, 4, 4, 3];
    const censored = [true, true, true, false, false, false];
    for (const scale of [1e-9, 1e6]) {
      const r = lognormalRandomEffects(
        x.map((v) => v * scale),
        u.map((v) => v * scale),
        censored,
      );
      expect((r.mean ?? 0) / scale).toBeCloseTo(12.771133, 5);
      expect((r.interval?.[0] ?? 0) / scale).toBeCloseTo(5.4952585, 5);
    }
  });

  it("finds the spread one precise reading and four limits tell of", () => {
    const r = lognormalRandomEffects([60, 60, 158, 60, 60], [20, 20, 0.1, 20, 20], [true, true, false, true, true]);
    expect(r.status).toBe("ok");
    expect(r.sigma).toBeGreaterThan(0.5);
  });
});

describe("lognormalReading", () => {
  it("joins its forms without a step where one takes over from the other", () => {
    for (const censored of [false, true]) {
      const below = lognormalReading(100, 9.9999999, censored, 4.4, 0.5);
      const beyond = lognormalReading(100, 10.0000001, censored, 4.4, 0.5);
      for (const key of ["logf", "m1", "m2", "m3", "m4"] as const) expect(below[key]).toBeCloseTo(beyond[key], 6);
    }
  });
});

describe("upperBoundAllCensored", () => {
  it("refuses bad input", () => {
    expect(() => upperBoundAllCensored([], [])).toThrow(DomainError);
    expect(() => upperBoundAllCensored([1], [0])).toThrow(DomainError);
    expect(() => upperBoundAllCensored([1], [1, 1])).toThrow(DomainError);
    for (const level of [0.5, 0.2, 1, Number.NaN])
      expect(() => upperBoundAllCensored([1], [1], { level })).toThrow(DomainError);
  });
  it("falls with more readings, and rises with the level", () => {
    const bound = (n: number, level?: number) =>
      upperBoundAllCensored(Array(n).fill(8), Array(n).fill(2.5), level === undefined ? {} : { level }).upper;
    expect(bound(1)).toBeGreaterThan(bound(3));
    expect(bound(3)).toBeGreaterThan(bound(30));
    expect(bound(3, 0.99)).toBeGreaterThan(bound(3, 0.95));
  });
  it("holds over twelve decades of u", () => {
    expect(upperBoundAllCensored([10, 11, 12], [1e-9, 1, 1e3]).upper).toBeCloseTo(10, 6);
    expect(upperBoundAllCensored([1e-9], [1e-10]).upper).toBeGreaterThan(1e-9);
  });
});
