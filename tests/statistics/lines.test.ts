import { describe, expect, it } from "vitest";
import { inversePrediction } from "@/lib/statistics/inverse-prediction.ts";
import { weightedLine } from "@/lib/statistics/weighted-line.ts";
import { york } from "@/lib/statistics/york.ts";
import { refusalCode } from "../support/refusal-code.ts";

// Invented inputs; the expected answers follow from the definitions.
describe("weightedLine", () => {
  it("two points: the line through them, nothing left over", () => {
    const r = weightedLine([0, 10], [1, 21], [1, 2]);
    expect(r).toMatchObject({ df: 0 });
    expect(r.slope).toBeCloseTo(2, 14);
    expect(r.intercept).toBeCloseTo(1, 14);
    expect(r.chi2).toBeCloseTo(0, 20);
    expect(r.seIntercept).toBeCloseTo(1, 14);
  });
  it("uncertainties a thousand million times apart keep their order", () => {
    const r = weightedLine([0, 1, 2], [0, 1, 100], [1e-6, 1e-6, 1e3]);
    expect(r.slope).toBeCloseTo(1, 9);
  });
  it("uncertainties of any size do not overflow", () => {
    for (const size of [1e-160, 1e160]) {
      const r = weightedLine([1, 2, 3], [2 * size, 4 * size, 6.3 * size], [size, size, size]);
      expect(r.slope / size).toBeCloseTo(2.15, 12);
      expect(r.chi2).toBeCloseTo(0.015, 12);
    }
  });
  it("refuses equal x, unequal lists, u of zero, one point", () => {
    expect(refusalCode(() => weightedLine([2, 2], [1, 3], [1, 1]))).toBe("no-spread-in-x");
    expect(refusalCode(() => weightedLine([1, 2], [1], [1, 1]))).toBe("length-mismatch");
    expect(refusalCode(() => weightedLine([1, 2], [1, 2], [1]))).toBe("length-mismatch");
    expect(refusalCode(() => weightedLine([1, 2], [1, 2], [1, 0]))).toBe("not-positive");
    expect(refusalCode(() => weightedLine([1], [1], [1]))).toBe("too-few");
    expect(refusalCode(() => weightedLine([1, Number.NaN], [1, 2], [1, 1]))).toBe("not-finite");
  });
});

describe("inversePrediction", () => {
  const line = { intercept: 1, slope: 2, seIntercept: 0, seSlope: 0, cov: 0 };
  it("an exact line passes the reading's uncertainty through the slope", () => {
    expect(inversePrediction(line, { y0: 7, uY0: 0.5 })).toEqual({ x: 3, u: 0.25 });
    expect(inversePrediction({ ...line, slope: -2 }, { y0: 7, uY0: 0.5 })).toEqual({ x: -3, u: 0.25 });
  });
  it("is least uncertain at the middle of the points", () => {
    const fitted = weightedLine([0, 5, 10], [0, 5, 10], [1, 1, 1]);
    const u = (y0: number) => inversePrediction(fitted, { y0, uY0: 0 }).u;
    expect(u(5)).toBeLessThan(u(0));
    expect(u(5)).toBeLessThan(u(10));
    expect(u(5)).toBeCloseTo(1 / Math.sqrt(3), 12);
  });
  it("refuses a flat line, a negative uncertainty, an impossible covariance", () => {
    expect(refusalCode(() => inversePrediction({ ...line, slope: 0 }, { y0: 1, uY0: 1 }))).toBe("flat-line");
    expect(refusalCode(() => inversePrediction(line, { y0: 1, uY0: -1 }))).toBe("negative");
    expect(refusalCode(() => inversePrediction({ ...line, cov: 1 }, { y0: 1, uY0: 1 }))).toBe("covariance-too-large");
    expect(refusalCode(() => inversePrediction(line, { y0: Number.NaN, uY0: 1 }))).toBe("not-finite");
  });
});

/** S of the best line of one slope, by its definition: the intercept that makes Σ(y − a − bx)²/(u(y)² + b²u(x)²) least. */
function leastSum(x: number[], y: number[], ux: number[], uy: number[], slope: number): number {
  const w = x.map((_, i) => 1 / (uy[i]! ** 2 + slope ** 2 * ux[i]! ** 2));
  const sum = (of: (i: number) => number) => w.reduce((total, weight, i) => total + weight * of(i), 0);
  const intercept = sum((i) => y[i]! - slope * x[i]!) / sum(() => 1);
  return sum((i) => (y[i]! - intercept - slope * x[i]!) ** 2);
}

describe("york", () => {
  it("finds the best line even where it is all but upright, with u over ten decades", () => {
    const x = [861, 861, 861, 1722, 861, 861, 861, 861, 861];
    const y = [975, 0, 0, 861, 861, -957, 1722, 1929, 1722];
    const ux = [870, 0.0011, 86, 14.8, 86, 0, 86, 86, 1.5e7];
    const uy = [7960, 0.00025, 45.6, 1.51, 25.2, 0.217, 420, 23.7, 0];
    const { slope, s } = york(x, y, ux, uy);
    expect(Math.abs(slope)).toBeGreaterThan(1000);
    expect(s).toBeCloseTo(leastSum(x, y, ux, uy, slope), 6);
    for (const other of [0.9, 1.1, -1, 1e-6])
      expect(leastSum(x, y, ux, uy, other * slope)).toBeGreaterThanOrEqual(s * (1 - 1e-12));
  });
  it("a far point that says next to nothing does not hide an all but upright line", () => {
    const line = york(
      [0, 0.001, 0.002, 0.003, 1000],
      [0, 1, 2, 3, 0],
      [1e-4, 1e-4, 1e-4, 1e-4, 1e6],
      [0.1, 0.1, 0.1, 0.1, 1e6],
    );
    expect(line.slope).toBeCloseTo(1000, 6);
    expect(line.intercept).toBeCloseTo(0, 6);
  });
  it("refuses where no slope is better than another, or the best cannot be weighed", () => {
    const codeOf = (y: number[], uy: number[]) => refusalCode(() => york([1, 2, 3, 4], y, [1, 1, 1, 1], uy));
    // All y exact and equal: S is the same for every slope.
    expect(codeOf([5, 5, 5, 5], [0, 0, 0, 0])).toBe("no-line");
    expect(codeOf([5, 5, 5, 5], [0, 1, 1, 1])).toBe("no-line");
    // A cross of exact y: as far above as below, whatever the slope.
    expect(codeOf([1, -1, -1, 1], [0, 0, 0, 0])).toBe("no-line");
  });
  const x = [1, 2.2, 2.9, 4.3, 5];
  const y = [2.1, 3.8, 6.4, 8.1, 10.3];
  const ux = [0.1, 0.2, 0.1, 0.3, 0.2];
  const uy = [0.3, 0.2, 0.4, 0.2, 0.5];

  it("does not care which variable is called x", () => {
    const there = york(x, y, ux, uy);
    const back = york(y, x, uy, ux);
    expect(back.slope).toBeCloseTo(1 / there.slope, 12);
    expect(back.intercept).toBeCloseTo(-there.intercept / there.slope, 12);
    expect(back.s).toBeCloseTo(there.s, 11);
  });
  it("is stationary: no neighbouring line fits better", () => {
    const { slope, intercept, s } = york(x, y, ux, uy);
    const sumAt = (a: number, b: number) =>
      x.reduce(
        (sum, value, i) =>
          sum + ((y[i] as number) - a - b * value) ** 2 / ((uy[i] as number) ** 2 + (b * (ux[i] as number)) ** 2),
        0,
      );
    expect(sumAt(intercept, slope)).toBeCloseTo(s, 11);
    for (const da of [-0.01, 0, 0.01])
      for (const db of [-0.01, 0, 0.01])
        if (da !== 0 || db !== 0) expect(sumAt(intercept + da, slope + db)).toBeGreaterThan(s);
  });
  it("of two hollows takes the deeper, where York's iteration from least squares would stay in the other", () => {
    const r = york([579, 956, 893], [68, 0, 807], [98, 2, 2], [12, 78, 64]);
    expect(r.slope).toBeCloseTo(-13.07085, 5);
    expect(r.s).toBeLessThan(74.35);
  });
  it("scales with both variables", () => {
    const by = (k: number, list: number[]) => list.map((value) => k * value);
    const plain = york(x, y, ux, uy);
    const scaled = york(by(1e-6, x), by(1e9, y), by(1e-6, ux), by(1e9, uy));
    expect(scaled.slope / 1e15).toBeCloseTo(plain.slope, 10);
    expect(scaled.intercept / 1e9).toBeCloseTo(plain.intercept, 10);
    expect(scaled.seSlope / 1e15).toBeCloseTo(plain.seSlope, 10);
    expect(scaled.cov / 1e24).toBeCloseTo(plain.cov, 10);
    expect(scaled.s).toBeCloseTo(plain.s, 10);
  });
  it("errors in x only: the line of x on y, turned over", () => {
    const none = x.map(() => 0);
    const line = weightedLine(y, x, ux);
    expect(york(x, y, ux, none).slope).toBeCloseTo(1 / line.slope, 10);
  });
  it("points on one line, on a level line, and only two of them", () => {
    expect(york([1, 2, 3], [2, 4, 6], [0.1, 0.1, 0.1], [0.1, 0.2, 0.3]).slope).toBeCloseTo(2, 14);
    expect(york([1, 2, 3], [5, 5, 5], [0.1, 0.1, 0.1], [0.1, 0.1, 0.1])).toMatchObject({ slope: 0, s: 0 });
    expect(york([1, 3], [2, 8], [0.1, 0.1], [0.1, 0.1]).slope).toBeCloseTo(3, 13);
  });
  it("refuses equal x, a point without uncertainty, a negative one, unequal lists", () => {
    expect(refusalCode(() => york([1, 1], [1, 2], [1, 1], [1, 1]))).toBe("no-spread-in-x");
    expect(refusalCode(() => york([1, 2], [1, 2], [0, 1], [0, 1]))).toBe("no-uncertainty");
    expect(refusalCode(() => york([1, 2], [1, 2], [-1, 1], [1, 1]))).toBe("negative");
    expect(refusalCode(() => york([1, 2], [1, 2], [1, 1], [1]))).toBe("length-mismatch");
    expect(refusalCode(() => york([1], [1], [1], [1]))).toBe("too-few");
    expect(refusalCode(() => york([1, Number.NaN], [1, 2], [1, 1], [1, 1]))).toBe("not-finite");
  });
});
