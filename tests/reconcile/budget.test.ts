import { describe, expect, it } from "vitest";
import type { StatedContribution } from "@/lib/reconcile/types.ts";
import { missed, resultOf, seen } from "./shots.ts";

const calibration: StatedContribution = {
  code: "calibration",
  relative: 0.05,
  type: "B",
  source: "instrument default, stated by the tester; no check-standard session yet",
};
const five = () => [seen(412, 9), seen(405, 8), seen(421, 10), seen(398, 9), seen(417, 9)];

describe("step 6: the budget", () => {
  it("adds a relative calibration component by the law of propagation", () => {
    // u_own 4.012063478925 with 4 degrees of freedom, 0.05 × 409.923101384 = 20.4961550692, worked in R:
    // u <- sqrt(4.012063478925^2+20.4961550692^2); nu <- u^4/(4.012063478925^4/4); qt(.975,nu)*u
    const result = resultOf(five(), { contributions: [calibration] });
    expect(result.u).toBeCloseTo(20.8851388786, 6);
    expect(result.nuEff).toBeCloseTo(2937.232183161, 2);
    expect(result.U).toBeCloseTo(40.9509948428, 5);
    expect(result.budget.map((line) => line.code)).toEqual(["scatter-and-counting", "calibration"]);
    expect(result.budget.reduce((sum, line) => sum + line.share, 0)).toBeCloseTo(1, 12);
    expect(result.budget[0]).toMatchObject({ type: "A", nu: 4 });
    expect(result.budget[1]).toMatchObject({ type: "B", nu: null });
  });
  it("takes an absolute component and its degrees of freedom", () => {
    const result = resultOf(five(), {
      contributions: [{ code: "recovery", absolute: 3, nu: 6, type: "A", source: "six checks" }],
    });
    expect(result.u).toBeCloseTo(Math.hypot(4.012063478925, 3), 6);
    expect(result.nuEff).toBeCloseTo(Math.hypot(4.012063478925, 3) ** 4 / (4.012063478925 ** 4 / 4 + 3 ** 4 / 6), 4);
  });
  it("orders contributions by code, so their order does not matter", () => {
    const other: StatedContribution = { code: "matrix-geometry", relative: 0.1, type: "B", source: "policy table" };
    const a = resultOf(five(), { contributions: [calibration, other] });
    const b = resultOf(five(), { contributions: [other, calibration] });
    expect(a.budget).toEqual(b.budget);
    expect(a.u).toBe(b.u);
  });
  it("combines an asymmetric interval with the rest on the log scale, arm by arm", () => {
    const shots = [seen(120, 4), seen(60, 3), seen(210, 6), seen(95, 3), seen(150, 5)];
    const alone = resultOf(shots);
    const [lo = 0, hi = 0] = alone.interval ?? [];
    const m = alone.value ?? 0;
    const result = resultOf(shots, { contributions: [calibration] });
    const k = 1.959963984540054;
    expect(result.interval?.[0]).toBeCloseTo(m * Math.exp(-Math.hypot(Math.log(m / lo), k * 0.05)), 6);
    expect(result.interval?.[1]).toBeCloseTo(m * Math.exp(Math.hypot(Math.log(hi / m), k * 0.05)), 6);
    expect(result.value).toBe(m);
    expect(result.u ?? 0).toBeGreaterThan(alone.u ?? 0);
  });
  it("has no budget where nothing was quantified or the part's own u is unknown", () => {
    expect(resultOf([missed(10)], { contributions: [calibration] })).toMatchObject({ budget: [], u: null });
    expect(resultOf([seen(10, null)], { contributions: [calibration] })).toMatchObject({
      budget: [],
      u: null,
      U: null,
    });
  });
  it.each([
    { code: "x", type: "B", source: "neither" },
    { code: "x", relative: 0.1, absolute: 2, type: "B", source: "both" },
    { code: "x", relative: -0.1, type: "B", source: "negative" },
    { code: "x", absolute: Number.NaN, type: "B", source: "not a number" },
    { code: "x", absolute: 1, nu: 0, type: "A", source: "no degrees of freedom" },
  ] as StatedContribution[])("refuses a malformed contribution: $source", (bad) => {
    expect(() => resultOf(five(), { contributions: [bad] })).toThrowError(
      expect.objectContaining({ code: "contribution" }),
    );
  });
});
