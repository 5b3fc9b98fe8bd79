import { describe, expect, it } from "vitest";
import { type NestedReading, nestedAnova } from "@/lib/statistics/nested-anova.ts";
import { oneWayAnova } from "@/lib/statistics/one-way-anova.ts";
import { repeatability } from "@/lib/statistics/repeatability.ts";
import { refusalCode } from "../support/refusal-code.ts";

/**
 * −2 × restricted log-likelihood from the whole covariance matrix, by Cholesky: slow, and written from the definition
 * (Patterson and Thompson 1971), so that it shares nothing with the code under test.
 */
function denseDeviance(readings: readonly NestedReading[], variance: { a: number; b: number; error: number }): number {
  const n = readings.length;
  const at = (i: number) => readings[i] as NestedReading;
  const lower: number[][] = [];
  let logDeterminant = 0;
  for (let i = 0; i < n; i++) {
    const row: number[] = [];
    for (let j = 0; j <= i; j++) {
      const sameA = at(i).a === at(j).a;
      let sum =
        (sameA ? variance.a : 0) + (sameA && at(i).b === at(j).b ? variance.b : 0) + (i === j ? variance.error : 0);
      for (let k = 0; k < j; k++) sum -= (row[k] as number) * (lower[j]?.[k] ?? (row[k] as number));
      row.push(i === j ? Math.sqrt(sum) : sum / (lower[j]?.[j] as number));
    }
    lower.push(row);
    logDeterminant += 2 * Math.log(row[i] as number);
  }
  const solve = (right: number[]) => {
    const z: number[] = [];
    for (let i = 0; i < n; i++) {
      let sum = right[i] as number;
      for (let k = 0; k < i; k++) sum -= (lower[i]?.[k] as number) * (z[k] as number);
      z.push(sum / (lower[i]?.[i] as number));
    }
    return z;
  };
  const ones = solve(readings.map(() => 1));
  const y = solve(readings.map((reading) => reading.y));
  const dot = (p: number[], q: number[]) => p.reduce((sum, value, i) => sum + value * (q[i] as number), 0);
  const information = dot(ones, ones);
  const mean = dot(ones, y) / information;
  return logDeterminant + Math.log(information) + dot(y, y) - mean * mean * information;
}

// Invented readings: specimens a, spots b, repeats.
const uneven: NestedReading[] = (
  [
    ["a", 1, [12.1, 12.9, 12.4]],
    ["a", 2, [15.2]],
    ["a", 3, [11.8, 11.1]],
    ["b", 1, [20.3, 19.5]],
    ["b", 2, [23.9, 24.4, 23.1, 24]],
    ["c", 1, [9.4]],
    ["c", 2, [14.8, 15.9]],
    ["d", 1, [17.2, 16.1, 17.7]],
  ] as [string, number, number[]][]
).flatMap(([a, b, values]) => values.map((y) => ({ a, b, y })));

describe("nestedAnova", () => {
  it("REML is at a minimum of the deviance written from the definition", () => {
    const { reml } = nestedAnova(uneven);
    const best = denseDeviance(uneven, reml);
    for (const part of ["a", "b", "error"] as const)
      for (const factor of [0.9, 0.99, 1.01, 1.1])
        expect(denseDeviance(uneven, { ...reml, [part]: reml[part] * factor })).toBeGreaterThan(best);
  });
  it("REML agrees with the ANOVA estimators for balanced readings with all components positive", () => {
    const balanced = [0, 1, 2].flatMap((a) =>
      [0, 1].flatMap((b) => [0, 1].map((k) => ({ a, b, y: 10 * a + 3 * b * (a + 1) + k * (0.5 + 0.1 * a) }))),
    );
    const r = nestedAnova(balanced);
    expect(r.aRaw).toBeGreaterThan(0);
    for (const part of ["a", "b", "error"] as const) expect(r.reml[part]).toBeCloseTo(r[part], 9);
  });
  it("labels of b count within their a: renaming them apart changes nothing", () => {
    const renamed = uneven.map(({ a, b, y }) => ({ a, b: `${a}-${b}`, y }));
    expect(nestedAnova(renamed)).toEqual(nestedAnova(uneven));
  });
  it("a component below zero is 0 where stated and kept where raw", () => {
    const r = nestedAnova([
      { a: 1, b: 1, y: 1 },
      { a: 1, b: 1, y: 9 },
      { a: 1, b: 2, y: 2 },
      { a: 1, b: 2, y: 8 },
      { a: 2, b: 1, y: 4 },
      { a: 2, b: 1, y: 6 },
      { a: 2, b: 2, y: 5 },
      { a: 2, b: 2, y: 5 },
    ]);
    expect(r.bRaw).toBeLessThan(0);
    expect([r.a, r.b, r.reml.a, r.reml.b]).toEqual([0, 0, 0, 0]);
  });
  it("repeats that agree exactly: error 0 and the cell means carry the rest", () => {
    const r = nestedAnova([
      { a: 1, b: 1, y: 10 },
      { a: 1, b: 1, y: 10 },
      { a: 1, b: 2, y: 14 },
      { a: 2, b: 1, y: 30 },
      { a: 2, b: 2, y: 34 },
    ]);
    expect(r.error).toBe(0);
    expect(r.reml.error).toBe(0);
    const ofMeans = oneWayAnova([
      [10, 14],
      [30, 34],
    ]).reml;
    expect(r.reml.b).toBeCloseTo(ofMeans.within, 12);
    expect(r.reml.a).toBeCloseTo(ofMeans.between, 10);
  });
  it("all readings equal: every component 0", () => {
    const equal = uneven.map((reading) => ({ ...reading, y: 0.1 }));
    const r = nestedAnova(equal);
    expect([r.a, r.b, r.error, r.reml.a, r.reml.b, r.reml.error]).toEqual([0, 0, 0, 0, 0, 0]);
  });
  it("refuses what cannot be split into three", () => {
    const one = (a: number, b: number, y = 1) => ({ a, b, y });
    expect(refusalCode(() => nestedAnova([one(1, 1), one(1, 1), one(1, 2)]))).toBe("too-few-groups");
    expect(refusalCode(() => nestedAnova([one(1, 1), one(1, 1), one(2, 1)]))).toBe("no-nesting");
    expect(refusalCode(() => nestedAnova([one(1, 1), one(1, 2), one(2, 1)]))).toBe("no-repeats");
    expect(refusalCode(() => nestedAnova([]))).toBe("empty");
    expect(refusalCode(() => nestedAnova([one(1, 1), one(1, 1, Number.NaN)]))).toBe("not-finite");
  });
});

describe("oneWayAnova", () => {
  it("REML is at a minimum of the deviance written from the definition", () => {
    const groups = [[410, 422, 415], [655, 640], [501, 489, 511, 495], [398], [890, 905]];
    const { reml } = oneWayAnova(groups);
    const readings = groups.flatMap((values, a) => values.map((y, b) => ({ a, b, y })));
    const deviance = (between: number, within: number) => denseDeviance(readings, { a: between, b: 0, error: within });
    const best = deviance(reml.between, reml.within);
    for (const factor of [0.9, 0.99, 1.01, 1.1]) {
      expect(deviance(reml.between * factor, reml.within)).toBeGreaterThan(best);
      expect(deviance(reml.between, reml.within * factor)).toBeGreaterThan(best);
    }
  });
  it("a spread between groups a million million times that of repeats is found", () => {
    const { reml } = oneWayAnova([
      [0, 1e-3],
      [1e3, 1e3 + 1e-3],
      [2e3, 2e3 + 1e-3],
    ]);
    expect(reml.between / 1e6).toBeCloseTo(1, 10);
    expect(reml.within).toBeCloseTo(5e-7, 12);
  });
  it("repeats that agree exactly: f is infinite, p 0, REML the variance of the means", () => {
    const r = oneWayAnova([[1, 1], [2, 2, 2], [6]]);
    expect(r).toMatchObject({ within: 0, f: Number.POSITIVE_INFINITY, p: 0 });
    expect(r.reml.within).toBe(0);
    expect(r.reml.between).toBeCloseTo(7, 12);
    expect(r.reml.mean).toBeCloseTo(3, 12);
  });
  it("all readings equal: no f, no p, no components", () => {
    expect(oneWayAnova([[4, 4], [4]])).toMatchObject({ within: 0, between: 0, f: null, p: null });
  });
  it("a group that scatters less than repeats explain: raw below zero, stated 0", () => {
    const r = oneWayAnova([
      [1, 9],
      [4, 6],
      [2, 8],
    ]);
    expect(r.betweenRaw).toBeLessThan(0);
    expect([r.between, r.reml.between, r.f]).toEqual([0, 0, 0]);
  });
  it("refuses one group, an empty group, no repeat, and what is no number", () => {
    expect(refusalCode(() => oneWayAnova([[1, 2]]))).toBe("too-few-groups");
    expect(refusalCode(() => oneWayAnova([[1, 2], []]))).toBe("empty");
    expect(refusalCode(() => oneWayAnova([[1], [2]]))).toBe("no-repeats");
    expect(refusalCode(() => oneWayAnova([[1, Number.NaN], [2]]))).toBe("not-finite");
  });
});

describe("repeatability", () => {
  it("agrees with the one-way components, for unequal numbers too", () => {
    const groups = [[1, 2, 4], [8, 9], [3], [5, 5, 6, 7]];
    const anova = oneWayAnova(groups);
    const r = repeatability(groups.flatMap((values, lab) => values.map((y) => ({ lab, y }))));
    expect(r.sr ** 2).toBeCloseTo(anova.within, 12);
    expect(r.sL ** 2).toBeCloseTo(anova.between, 12);
    expect(r.sR ** 2).toBeCloseTo(anova.between + anova.within, 12);
    expect(r.generalMean).toBe(anova.grandMean);
  });
  it("keeps the order in which laboratories appear, and h sums to zero", () => {
    const r = repeatability([
      { lab: "z", y: 10 },
      { lab: "a", y: 1 },
      { lab: "z", y: 12 },
      { lab: "a", y: 3 },
      { lab: "m", y: 5 },
      { lab: "m", y: 9 },
    ]);
    expect(r.h[0]).toBeGreaterThan(0);
    expect(r.h[1]).toBeLessThan(0);
    expect((r.h as number[]).reduce((sum, h) => sum + h, 0)).toBeCloseTo(0, 12);
    expect((r.k[2] as number) / (r.k[0] as number)).toBeCloseTo(2, 12);
  });
  it("no k for a single reading, none where repeats agree exactly, no h where means agree", () => {
    const single = repeatability([
      { lab: 1, y: 1 },
      { lab: 1, y: 3 },
      { lab: 2, y: 5 },
    ]);
    expect(single.k).toEqual([1, null]);
    const exact = repeatability([
      { lab: 1, y: 2 },
      { lab: 1, y: 2 },
      { lab: 2, y: 2 },
    ]);
    expect(exact).toMatchObject({ sr: 0, sL: 0, sR: 0, h: [null, null], k: [null, null] });
  });
  it("sR is never below sr", () => {
    const r = repeatability([
      { lab: 1, y: 1 },
      { lab: 1, y: 9 },
      { lab: 2, y: 4 },
      { lab: 2, y: 6 },
    ]);
    expect(r.sL).toBe(0);
    expect(r.sR).toBe(r.sr);
  });
  it("refuses one laboratory, no repeat, and what is no number", () => {
    expect(refusalCode(() => repeatability([{ lab: 1, y: 1 }]))).toBe("too-few");
    expect(
      refusalCode(() =>
        repeatability([
          { lab: 1, y: 1 },
          { lab: 1, y: 2 },
        ]),
      ),
    ).toBe("too-few-groups");
    expect(
      refusalCode(() =>
        repeatability([
          { lab: 1, y: 1 },
          { lab: 2, y: 2 },
        ]),
      ),
    ).toBe("no-repeats");
    expect(
      refusalCode(() =>
        repeatability([
          { lab: 1, y: 1 },
          { lab: 2, y: Number.NaN },
        ]),
      ),
    ).toBe("not-finite");
  });
});
