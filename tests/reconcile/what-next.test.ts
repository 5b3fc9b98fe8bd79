import { describe, expect, it } from "vitest";
import { whatNext } from "@/lib/reconcile/what-next.ts";
import { missed, resultOf, seen } from "./shots.ts";

const five = () => [seen(412, 9), seen(405, 8), seen(421, 10), seen(398, 9), seen(417, 9)];

describe("step 10: what next", () => {
  it("predicts U for more spots from the spread seen so far", () => {
    // u 4.012063478925 with five spots; R: qt(.975, 9) 2.262157162798205, qt(.975, 14) 2.144786687917804
    const { plans } = whatNext(resultOf(five()), 415);
    const expected = (m: number) => plans.find((plan) => plan.kind === "more-spots" && plan.amount === m)?.expectedU;
    expect(expected(5)).toBeCloseTo((4.012063478925 / Math.sqrt(2)) * 2.262157162798205, 6);
    expect(expected(10)).toBeCloseTo((4.012063478925 / Math.sqrt(3)) * 2.144786687917804, 6);
  });
  it("has a better chance the more is done, and the farther the limit lies", () => {
    const chances = (limit: number) =>
      whatNext(resultOf(five()), limit)
        .plans.filter((plan) => plan.kind === "more-spots")
        .map((plan) => plan.chance ?? 0);
    const near = chances(415);
    for (let i = 1; i < near.length; i++) expect(near[i] ?? 0).toBeGreaterThan(near[i - 1] ?? 1);
    expect(chances(440)[0] ?? 0).toBeGreaterThan(near[0] ?? 1);
  });
  it("names the cheapest plan that decides four times in five", () => {
    const { plans, cheapest } = whatNext(resultOf(five()), 420);
    expect(cheapest).not.toBeNull();
    expect(cheapest?.chance ?? 0).toBeGreaterThanOrEqual(0.8);
    for (const plan of plans) if (plan.effort < (cheapest?.effort ?? 0)) expect(plan.chance ?? 1).toBeLessThan(0.8);
  });
  it("does not promise anything from more spots where the calibration is what is uncertain", () => {
    const result = resultOf(five(), {
      contributions: [{ code: "calibration", relative: 0.1, type: "B", source: "test" }],
    });
    const { plans } = whatNext(result, 450);
    const spots = plans.filter((plan) => plan.kind === "more-spots");
    const standard = plans.find((plan) => plan.kind === "closer-standard");
    expect(Math.max(...spots.map((plan) => plan.chance ?? 0))).toBeLessThan(standard?.chance ?? 0);
  });
  it("predicts an uneven part on the log scale", () => {
    const { plans } = whatNext(resultOf([seen(120, 4), seen(60, 3), seen(210, 6), seen(95, 3), seen(150, 5)]), 600);
    expect(plans.every((plan) => Number.isFinite(plan.expectedU))).toBe(true);
  });
  it("has no plan for what has no value, and refuses a limit that is none", () => {
    expect(whatNext(resultOf([missed(10)]), 90)).toEqual({ plans: [], cheapest: null });
    expect(whatNext(resultOf([seen(10, null)]), 90).plans).toEqual([]);
    expect(() => whatNext(resultOf(five()), 0)).toThrowError(expect.objectContaining({ code: "not-positive" }));
  });
});
