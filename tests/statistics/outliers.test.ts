import { describe, expect, it } from "vitest";
import { cochran } from "@/lib/statistics/cochran.ts";
import { dixon } from "@/lib/statistics/dixon.ts";
import { generalizedEsd } from "@/lib/statistics/generalized-esd.ts";
import { grubbs } from "@/lib/statistics/grubbs.ts";
import { refusalCode } from "../support/refusal-code.ts";

// Invented inputs; the expected answers follow from the definitions.
const bad = [Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];

describe("grubbs", () => {
  it("tests the largest on one side and the farther end on two", () => {
    const x = [1, 50, 51, 52, 53];
    expect(grubbs(x, { sides: 1 }).index).toBe(4);
    expect(grubbs(x, { sides: 2 }).index).toBe(0);
  });
  it("names the first of equal values", () => {
    expect(grubbs([9, 1, 1, 9, 9.5, 9.5], { sides: 1 }).index).toBe(4);
  });
  it("at its bound (one value against equal others) the tail is empty", () => {
    const r = grubbs([5, 5, 5, 5, 9], { sides: 2 });
    expect(r.g).toBeCloseTo(4 / Math.sqrt(5), 12);
    expect(r.p).toBeLessThan(1e-6);
  });
  it("says so where all values agree, and still gives the critical value", () => {
    const r = grubbs([0.1, 0.1, 0.1, 0.1], { sides: 2 });
    expect(r).toMatchObject({ status: "no-spread", index: null, g: null, p: null });
    expect(r.critical).toBeCloseTo(1.4813, 4);
  });
  it("is blind to scale and offset", () => {
    const x = [3, 1, 4, 1, 5, 9, 2, 6];
    const far = grubbs(
      x.map((value) => 1e6 + 1e-3 * value),
      { sides: 2 },
    );
    expect(far.g).toBeCloseTo(grubbs(x, { sides: 2 }).g as number, 6);
  });
  it("refuses too few values, numbers that are none, a level or side that is none", () => {
    expect(refusalCode(() => grubbs([1, 2], { sides: 1 }))).toBe("too-few");
    expect(refusalCode(() => grubbs([], { sides: 1 }))).toBe("empty");
    for (const value of bad) expect(refusalCode(() => grubbs([1, 2, value], { sides: 1 }))).toBe("not-finite");
    for (const alpha of [0, 1, -1, Number.NaN])
      expect(refusalCode(() => grubbs([1, 2, 3], { sides: 1, alpha }))).toBe("bad-level");
    expect(refusalCode(() => grubbs([1, 2, 3], { sides: 3 as 1 }))).toBe("unknown-sides");
  });
});

describe("dixon", () => {
  it("two equal values at an end make its ratio 0", () => {
    expect(dixon([1, 1, 2])).toMatchObject({ status: "ok", low: 0, high: 1 });
  });
  it("n = 3 has a closed form, P(r10 > r) = 1/2 + (3/π)·atan((1 - 2r)/√3), and the integral agrees with it", () => {
    for (const alpha of [0.5, 0.1, 0.05, 0.01, 1e-4]) {
      const closed = (1 - Math.sqrt(3) * Math.tan((Math.PI / 3) * (alpha - 0.5))) / 2;
      expect(dixon([1, 2, 3], { alpha, sides: 1 }).critical).toBeCloseTo(closed, 12);
    }
  });
  it("the critical value falls with n and with alpha", () => {
    const of = (n: number, alpha: number) => dixon([...Array(n).keys()], { alpha }).critical;
    expect(of(4, 0.05)).toBeLessThan(of(3, 0.05));
    expect(of(20, 0.05)).toBeLessThan(of(10, 0.05));
    expect(of(5, 0.1)).toBeLessThan(of(5, 0.05));
  });
  it("says so where all values agree", () => {
    expect(dixon([7, 7, 7])).toMatchObject({ status: "no-spread", low: null, high: null });
  });
  it("refuses fewer than 3 and more than 100 values, and what is no number", () => {
    expect(refusalCode(() => dixon([1, 2]))).toBe("too-few");
    expect(refusalCode(() => dixon([...Array(101).keys()]))).toBe("too-many-values");
    for (const value of bad) expect(refusalCode(() => dixon([1, 2, value]))).toBe("not-finite");
    expect(refusalCode(() => dixon([1, 2, 3], { alpha: 1.5 }))).toBe("bad-level");
    expect(refusalCode(() => dixon([1, 2, 3], { sides: 0 as 1 }))).toBe("unknown-sides");
  });
});

describe("generalizedEsd", () => {
  it("finds a hidden pair that a single test misses", () => {
    const x = [10, 11, 10.5, 10.2, 10.8, 9.9, 10.4, 10.6, 30, 31];
    expect(generalizedEsd(x, { maxOutliers: 1 }).outliers).toEqual([]);
    expect(generalizedEsd(x, { maxOutliers: 2 }).outliers).toEqual([9, 8]);
  });
  it("stops, and says so, when the values left agree", () => {
    const r = generalizedEsd([5, 5, 5, 5, 9], { maxOutliers: 3 });
    expect(r.status).toBe("no-spread");
    expect(r.steps.map((step) => step.index)).toEqual([4]);
    expect(r.outliers).toEqual([4]);
  });
  it("takes the first of equal extremes", () => {
    expect(generalizedEsd([0, 0, 1, -1, 8, 8], { maxOutliers: 2 }).steps.map((step) => step.index)).toEqual([4, 5]);
  });
  it("refuses a number of outliers that n cannot carry", () => {
    for (const maxOutliers of [0, 4, 1.5, Number.NaN])
      expect(refusalCode(() => generalizedEsd([1, 2, 3, 4, 9], { maxOutliers }))).toBe("bad-max-outliers");
    expect(refusalCode(() => generalizedEsd([1, 2], { maxOutliers: 1 }))).toBe("too-few");
    expect(refusalCode(() => generalizedEsd([1, 2, Number.NaN], { maxOutliers: 1 }))).toBe("not-finite");
  });
});

describe("cochran", () => {
  it("one variance against zeros takes all: c = 1, p = 0", () => {
    expect(cochran([0, 4, 0], 2)).toMatchObject({ status: "ok", index: 1, c: 1, p: 0 });
  });
  it("equal variances: the first is named, c = 1/k, p = 1", () => {
    expect(cochran([3, 3, 3, 3], 3)).toMatchObject({ index: 0, c: 0.25, p: 1 });
  });
  it("all zero: no spread", () => {
    expect(cochran([0, 0], 5)).toMatchObject({ status: "no-spread", index: null, c: null, p: null });
  });
  it("keeps its digits for variances of any size", () => {
    const ordinary = cochran([1, 2, 10], 4);
    for (const scale of [1e-200, 1e200])
      expect(cochran([1 * scale, 2 * scale, 10 * scale], 4).p).toBeCloseTo(ordinary.p as number, 12);
  });
  it("refuses negative variances, one variance, one reading each", () => {
    expect(refusalCode(() => cochran([1, -1], 2))).toBe("negative");
    expect(refusalCode(() => cochran([1], 2))).toBe("too-few");
    for (const nEach of [1, 2.5, Number.NaN]) expect(refusalCode(() => cochran([1, 2], nEach))).toBe("bad-group-size");
    expect(refusalCode(() => cochran([1, Number.NaN], 2))).toBe("not-finite");
  });
});
