import { describe, expect, it } from "vitest";
import { cusum } from "@/lib/statistics/cusum.ts";
import { ewma } from "@/lib/statistics/ewma.ts";
import { individualsChart } from "@/lib/statistics/individuals-chart.ts";
import { moments } from "@/lib/statistics/moments.ts";
import { multirule } from "@/lib/statistics/multirule.ts";
import { xbarChart } from "@/lib/statistics/xbar-chart.ts";
import { printed, printedList, worked } from "./printed.ts";

describe("NIST/SEMATECH e-Handbook, control charts", () => {
  it("6.3.2.4: EWMA, lambda 0.3, target 50, s = 2.0539: 20 statistics, steady limits 52.5884 and 47.4115 (printed cut), in control", () => {
    const x = [
      52, 47, 53, 49.3, 50.1, 47, 51, 50.1, 51.2, 50.5, 49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 52.1,
    ];
    const r = ewma(x, { mu: 50, sigma: 2.0539, lambda: 0.3, L: 3 });
    printedList(
      "z",
      r.z,
      "50.60 49.52 50.56 50.18 50.16 49.21 49.75 49.85 50.26 50.33 50.11 49.36 49.52 50.05 49.38 49.92 50.73 51.23 51.94 51.99",
    );
    // The exact limits of the twentieth reading have reached the handbook's steady ones to six digits.
    printed("upper limit", r.limits[19]?.[1], "52.5884", 1);
    printed("lower limit", r.limits[19]?.[0], "47.4115", 1);
    expect(r.signals).toEqual([]);
  });

  it("6.3.2.3: CUSUM, target 325, k = 0.3175, h = 4.1959: signal from group 14 on [from memory]", () => {
    const x = [
      324.925, 324.675, 324.725, 324.35, 325.35, 325.225, 324.125, 324.525, 325.225, 324.6, 324.625, 325.15, 328.325,
      327.25, 327.825, 328.5, 326.675, 327.775, 326.875, 328.35,
    ];
    const r = cusum(x, { mu: 325, sigma: 1, k: 0.3175, h: 4.1959 });
    printedList("S_hi", r.cPlus.slice(12), "3.01 4.94 7.45 10.63 11.99 14.44 16.00 19.04", 0.51);
    printedList("S_hi, recomputed", r.cPlus.slice(12), "3.0075 4.9400 7.4475 10.6300 11.9875 14.4450 16.0025 19.0350");
    expect(r.signals).toEqual([13, 14, 15, 16, 17, 18, 19]);
    printed("S_lo of group 8, the largest", Math.max(...r.cMinus), "0.715");
    expect(r.cMinus.indexOf(Math.max(...r.cMinus))).toBe(7);
    // The same chart in multiples of a standard deviation of 0.635.
    const inSigma = cusum(x, { mu: 325, sigma: 0.635, k: 0.5, h: 4.1959 / 0.635 });
    printedList("S_hi", inSigma.cPlus.slice(12), "3.0075 4.9400 7.4475 10.6300 11.9875 14.4450 16.0025 19.0350");
    expect(inSigma.signals).toEqual(r.signals);
  });

  it("6.3.2.2: individuals, mean 50.81, mean range 1.8778, limits 55.8041 and 45.8158 (the last is 45.8159) [from memory]", () => {
    const x = [49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 52.1];
    const r = individualsChart(x);
    printed("center", r.center, "50.81");
    printed("mean range", r.sigma * 1.128, "1.8778");
    printed("upper limit", r.limits[1], "55.8041");
    printed("lower limit, one unit low in print", r.limits[0], "45.8158", 1.2);
    printed("lower limit, recomputed", r.limits[0], "45.815910");
    expect(r.signals).toEqual([]);
  });
});

describe("Montgomery, Introduction to Statistical Quality Control", () => {
  it("Example 9.1, Table 9.2: tabular CUSUM, K 0.5, H 5, signal at 29 (position 28)", () => {
    const r = cusum(worked.montgomery, { mu: 10, sigma: 1, k: 0.5, h: 5 });
    printedList(
      "C+",
      r.cPlus,
      "0 0 0 1.16 2.82 2.50 0.04 1.00 0 0 0 0.97 0.98 0 0 0 0.12 0 0 0.34 0.74 0 1.79 2.79 2.89 3.47 3.35 4.47 5.28 5.30",
    );
    expect(r.signals[0]).toBe(28);
    const lastZero = r.cPlus.lastIndexOf(0, 28);
    expect(28 - lastZero, "N+ at the signal").toBe(7);
  });

  it("Example 9.1: lower sums, recomputed", () => {
    const r = cusum(worked.montgomery, { mu: 10, sigma: 1, k: 0.5, h: 5 });
    printedList(
      "C-",
      r.cMinus.slice(0, 23),
      "0.05 1.56 1.77 0 0 0 1.46 0 0.30 0 0.47 0 0 0.10 0 0.13 0 0 0.98 0 0 0.17 0",
    );
  });

  it("Example 9.2: EWMA, lambda 0.10, L 2.7: first values and steady limits 9.38, 10.62; first signal at 29, not 28 [from memory]", () => {
    const r = ewma(worked.montgomery, { mu: 10, sigma: 1, lambda: 0.1, L: 2.7 });
    printedList("z", r.z.slice(0, 3), "9.945 9.7495 9.70355");
    printed("upper limit at 30", r.limits[29]?.[1], "10.62");
    printed("lower limit at 30", r.limits[29]?.[0], "9.38");
    printed("upper limit at 1", r.limits[0]?.[1], "10.27");
    printed("upper limit at 2", r.limits[1]?.[1], "10.3632");
    expect(r.signals[0]).toBe(28);
    printed("z28, inside its limits", r.z[27], "10.5731");
    printed("z29", r.z[28], "10.6468");
  });

  it("Table 6.3: piston rings, grand mean 74.001, limits 74.014 and 73.988 (the upper rounds to 74.015) [data from memory]", () => {
    const groups = worked.rings.map((group) => group.map((value) => 73.9 + value / 1000));
    const grand = moments(groups.flat()).mean;
    const meanSd = groups.reduce((sum, group) => sum + moments(group).sd, 0) / 25;
    printed("grand mean", grand, "74.001");
    printed("mean s", meanSd, "0.0094");
    const c4 = 0.939986;
    const r = xbarChart(groups, { mu: grand, sigma: meanSd / c4 });
    printed("upper limit", r.limits[1], "74.014", 1);
    printed("lower limit", r.limits[0], "73.988");
    const rounded = xbarChart(groups, { mu: grand, sigma: (1.427 * meanSd * Math.sqrt(5)) / 3 });
    printedList("with the rounded factor 1.427", rounded.limits, "73.987763 74.014589");
    expect(r.signals).toEqual([]);
  });

  it("Appendix VI; ASTM E2587: A3 = 3/(c4 √n) for n = 2 to 5, 2.659 1.954 1.628 1.427 [from memory]", () => {
    const c4 = [0.797885, 0.886227, 0.921318, 0.939986];
    const factors = c4.map((c, i) => {
      const group = Array.from({ length: i + 2 }, () => 0);
      return xbarChart([group], { mu: 0, sigma: 1 / c }).limits[1];
    });
    printedList("A3", factors, "2.659 1.954 1.628 1.427", 0.6);
  });

  it("Appendix VI; ASTM E2587: d2 of pairs is 1.128, so two readings one apart give sigma 0.8865 [from memory]", () => {
    printed("sigma", individualsChart([0, 1]).sigma, "0.8865");
  });
});

describe("Control rules of clinical laboratories", () => {
  it("each rule at its definition (common practice, Westgard et al. 1981; no published sequence with answers was found)", () => {
    expect(multirule([3.1])["1-3s"]).toEqual([0]);
    expect(multirule([3])["1-3s"]).toEqual([]);
    expect(multirule([2.1, 2.1])["2-2s"]).toEqual([1]);
    expect(multirule([2.1, -2.1])).toMatchObject({ "2-2s": [], "R-4s": [1] });
    expect(multirule([1.1, 1.1, 1.1, 1.1, 1.1])["4-1s"]).toEqual([3, 4]);
    expect(multirule(Array.from({ length: 11 }, () => -0.1))["10-x"]).toEqual([9, 10]);
    expect(multirule(Array.from({ length: 11 }, (_, i) => (i === 5 ? 0 : 1.5)))["10-x"]).toEqual([]);
  });
});
