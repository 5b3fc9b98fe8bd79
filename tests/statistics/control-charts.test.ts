import { describe, expect, it } from "vitest";
import { cusum } from "@/lib/statistics/cusum.ts";
import { ewma } from "@/lib/statistics/ewma.ts";
import { individualsChart } from "@/lib/statistics/individuals-chart.ts";
import { multirule } from "@/lib/statistics/multirule.ts";
import { xbarChart } from "@/lib/statistics/xbar-chart.ts";
import { refusalCode } from "../support/refusal-code.ts";

// Invented inputs; the expected answers follow from the definitions.
describe("individualsChart", () => {
  it("equal readings: limits meet at the centre and nothing signals", () => {
    expect(individualsChart([0.1, 0.1, 0.1])).toEqual({ center: 0.1, sigma: 0, limits: [0.1, 0.1], signals: [] });
  });
  it("signals a reading beyond a limit", () => {
    const x = Array.from({ length: 20 }, (_, i) => (i === 12 ? 9 : i % 2));
    expect(individualsChart(x).signals).toEqual([12]);
  });
  it("refuses one reading and what is no number", () => {
    expect(refusalCode(() => individualsChart([1]))).toBe("too-few");
    expect(refusalCode(() => individualsChart([1, Number.NaN]))).toBe("not-finite");
  });
});

describe("xbarChart", () => {
  it("a mean on the limit does not signal, one past it does", () => {
    const chart = (top: number) => xbarChart([[top, top, top, top]], { mu: 0, sigma: 2 });
    expect(chart(3).signals).toEqual([]);
    expect(chart(3.0001).signals).toEqual([0]);
    expect(chart(-3.0001).signals).toEqual([0]);
  });
  it("refuses unequal groups, none, an empty one, and a sigma of zero", () => {
    const known = { mu: 0, sigma: 1 };
    expect(refusalCode(() => xbarChart([[1, 2], [1]], known))).toBe("unequal-groups");
    expect(refusalCode(() => xbarChart([], known))).toBe("too-few-groups");
    expect(refusalCode(() => xbarChart([[]], known))).toBe("empty");
    expect(refusalCode(() => xbarChart([[1]], { mu: 0, sigma: 0 }))).toBe("not-positive");
    expect(refusalCode(() => xbarChart([[1]], { mu: Number.NaN, sigma: 1 }))).toBe("not-finite");
  });
});

describe("ewma", () => {
  it("lambda 1 is the chart of single readings", () => {
    const r = ewma([1, -2, 4], { mu: 0, sigma: 1, lambda: 1, L: 3 });
    expect(r).toEqual({
      z: [1, -2, 4],
      limits: [
        [-3, 3],
        [-3, 3],
        [-3, 3],
      ],
      signals: [2],
    });
  });
  it("limits widen towards the steady state and never past it", () => {
    const { limits } = ewma(Array(200).fill(0), { mu: 0, sigma: 1, lambda: 0.05, L: 2 });
    for (let i = 1; i < 200; i++) expect(limits[i]?.[1]).toBeGreaterThanOrEqual(limits[i - 1]?.[1] as number);
    expect(limits[199]?.[1]).toBeCloseTo(2 * Math.sqrt(0.05 / 1.95), 6);
  });
  it("refuses lambda outside (0, 1], sigma and L of zero, no readings", () => {
    const settings = { mu: 0, sigma: 1, lambda: 0.2, L: 3 };
    for (const lambda of [0, -0.1, 1.1, Number.NaN])
      expect(refusalCode(() => ewma([1], { ...settings, lambda }))).toBe("bad-lambda");
    expect(refusalCode(() => ewma([1], { ...settings, sigma: 0 }))).toBe("not-positive");
    expect(refusalCode(() => ewma([1], { ...settings, L: 0 }))).toBe("not-positive");
    expect(refusalCode(() => ewma([], settings))).toBe("empty");
  });
});

describe("cusum", () => {
  it("either sum signals, and a signal resets nothing", () => {
    const settings = { mu: 10, sigma: 2, k: 0.5, h: 1 };
    const up = cusum([14, 14], settings);
    expect(up).toEqual({ cPlus: [3, 6], cMinus: [0, 0], signals: [0, 1] });
    const down = cusum([6, 6, 10], settings);
    expect(down).toEqual({ cPlus: [0, 0, 0], cMinus: [3, 6, 5], signals: [0, 1, 2] });
  });
  it("k and h count in sigma: scaling readings and sigma scales the sums", () => {
    const x = [1, 3, -2, 4, 2, 2.5];
    const plain = cusum(x, { mu: 0, sigma: 1, k: 0.5, h: 2 });
    const scaled = cusum(
      x.map((value) => 8 * value),
      { mu: 0, sigma: 8, k: 0.5, h: 2 },
    );
    expect(scaled.cPlus).toEqual(plain.cPlus.map((value) => 8 * value));
    expect(scaled.signals).toEqual(plain.signals);
  });
  it("a sum on the decision line does not signal", () => {
    expect(cusum([3], { mu: 0, sigma: 1, k: 1, h: 2 }).signals).toEqual([]);
  });
  it("refuses a negative k, an h of zero, what is no number", () => {
    const settings = { mu: 0, sigma: 1, k: 0.5, h: 5 };
    expect(refusalCode(() => cusum([1], { ...settings, k: -1 }))).toBe("negative");
    expect(refusalCode(() => cusum([1], { ...settings, h: 0 }))).toBe("not-positive");
    expect(refusalCode(() => cusum([Number.NaN], settings))).toBe("not-finite");
  });
});

describe("multirule", () => {
  it("counts only what lies beyond a bound, on either side", () => {
    expect(multirule([-2, -2])["2-2s"]).toEqual([]);
    expect(multirule([2, 2])["2-2s"]).toEqual([]);
    expect(multirule([-2.01, -2.01])["2-2s"]).toEqual([1]);
    expect(multirule([-1, -1, -1, -1])["4-1s"]).toEqual([]);
  });
  it("works on a list shorter than any pattern", () => {
    expect(multirule([0])).toEqual({ "1-3s": [], "2-2s": [], "R-4s": [], "4-1s": [], "10-x": [] });
  });
  it("R-4s wants both beyond 2, on opposite sides, next to each other", () => {
    expect(multirule([2.5, -1.8])["R-4s"]).toEqual([]);
    expect(multirule([2.5, 0, -2.5])["R-4s"]).toEqual([]);
    expect(multirule([-2.5, 2.5, -2.5])["R-4s"]).toEqual([1, 2]);
  });
  it("both signs of every rule", () => {
    expect(multirule([-3.5, -3.5])).toMatchObject({ "1-3s": [0, 1], "2-2s": [1] });
    expect(multirule([-1.5, -1.5, -1.5, -1.5])["4-1s"]).toEqual([3]);
  });
  it("refuses none and what is no number", () => {
    expect(refusalCode(() => multirule([]))).toBe("empty");
    expect(refusalCode(() => multirule([0, Number.NaN]))).toBe("not-finite");
  });
});
