import { describe, expect, it } from "vitest";
import { kaplanMeier } from "@/lib/statistics/kaplan-meier.ts";
import { moments } from "@/lib/statistics/moments.ts";
import { regressionOnOrderStatistics } from "@/lib/statistics/regression-on-order-statistics.ts";
import { refusalCode } from "../support/refusal-code.ts";

// Values below are invented for the tests.
const values = [3.1, 4.4, 2.2, 8.9, 5.1, 3.3, 2.9, 7.5, 4.1, 6.6, 3.1];
const none = values.map(() => false);
const all = values.map(() => true);

describe("kaplanMeier", () => {
  it("with nothing censored is the ordinary mean, median and s/√n", () => {
    const { mean, sd, n } = moments(values);
    const r = kaplanMeier(values, none);
    if (r.status !== "ok") throw new Error(r.status);
    expect(r.mean).toBeCloseTo(mean, 12);
    expect(r.sd).toBeCloseTo(sd * Math.sqrt((n - 1) / n), 12);
    expect(r.seMean).toBeCloseTo(sd / Math.sqrt(n), 12);
    expect(r.median).toBe(4.1);
    expect(r.shareBelow).toBe(0);
    expect(kaplanMeier([...values, 100], [...none, false]).median).toBe(4.25);
  });
  it("by hand: ten values, one '< 3' among them", () => {
    // P(X < 10) … P(X < 4) = 9/10 … 3/10 as nothing below 4 is censored there; at 2, of <1 and 2 (and <3 is not at most 2): 3/10 · 1/2.
    const r = kaplanMeier(
      [1, 2, 3, 4, 5, 6, 7, 8, 9, 10],
      [true, false, true, false, false, false, false, false, false, false],
    );
    expect(r.shareBelow).toBeCloseTo(0.15, 14);
    expect(r.mean).toBeCloseTo((4 + 5 + 6 + 7 + 8 + 9 + 10) / 10 + 0.15 * 2 + 0.15 * 1, 12);
  });
  it("the median is unknown where half may lie below the lowest limit", () => {
    const r = kaplanMeier(
      [1, 1, 1, 1, 1, 1, 5, 6, 7, 8],
      [true, true, true, true, true, true, false, false, false, false],
    );
    expect(r.median).toBeNull();
    expect(r.shareBelow).toBeCloseTo(0.6, 12);
    expect(r.mean).toBeCloseTo(0.6 + 2.6, 12);
  });
  it("a single seen value has no standard error", () => {
    expect(kaplanMeier([...values.slice(1), 20], [...all.slice(1), false]).seMean).toBeNull();
  });
  it("says so where it cannot speak", () => {
    expect(kaplanMeier(values.slice(2), none.slice(2)).status).toBe("too-few");
    expect(kaplanMeier(values, all).status).toBe("all-censored");
    expect(refusalCode(() => kaplanMeier([], []))).toBe("empty");
    expect(refusalCode(() => kaplanMeier(values, [true]))).toBe("length-mismatch");
    expect(refusalCode(() => kaplanMeier([...values, Infinity], [...none, false]))).toBe("not-finite");
  });
});

describe("regressionOnOrderStatistics", () => {
  it("with nothing censored leaves the values as they are", () => {
    const r = regressionOnOrderStatistics(values, none);
    expect(r.filled).toEqual(values);
    expect(r.mean).toBeCloseTo(moments(values).mean, 12);
    expect(r.median).toBe(4.1);
  });
  it("fills in values that scale with the unit, and on the plain scale shift with it", () => {
    const censored = values.map((value) => value < 3);
    const scaled = regressionOnOrderStatistics(
      values.map((value) => value * 1000),
      censored,
    );
    const plain = regressionOnOrderStatistics(values, censored);
    expect(scaled.mean).toBeCloseTo(1000 * (plain.mean as number), 8);
    const onPlain = regressionOnOrderStatistics(values, censored, { log: false });
    const shifted = regressionOnOrderStatistics(
      values.map((value) => value - 50),
      censored,
      { log: false },
    );
    expect(shifted.mean).toBeCloseTo((onPlain.mean as number) - 50, 10);
    expect(shifted.slope).toBeCloseTo(onPlain.slope as number, 10);
  });
  it("says so where it cannot speak", () => {
    expect(regressionOnOrderStatistics(values.slice(2), none.slice(2)).status).toBe("too-few");
    expect(regressionOnOrderStatistics(values, all).status).toBe("all-censored");
    expect(regressionOnOrderStatistics([...values.slice(1), 20], [...all.slice(1), false]).status).toBe("no-spread");
    expect(refusalCode(() => regressionOnOrderStatistics([...values, -1], [...none, false]))).toBe("not-positive");
    expect(refusalCode(() => regressionOnOrderStatistics(values, none, { plottingConstant: 0.6 }))).toBe(
      "out-of-range",
    );
    expect(regressionOnOrderStatistics([...values, -1], [...none, false], { log: false }).status).toBe("ok");
  });
});
