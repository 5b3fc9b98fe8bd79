import { describe, expect, it } from "vitest";
import { decide, heldOf } from "@/lib/limits/decide.ts";
import { type BoundPlan, boundPlans } from "@/lib/reconcile/bound-plans.ts";
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

describe("step 10: nothing detected, and the bound over the limit", () => {
  // R: s <- sqrt(log(2)); 10*max(1, exp(s^2/2 - s*qnorm(0.05^(1/n)))) for n = 3, 4, 5, 6, 8 (SciPy gives the same)
  const boundOf = { 3: 18.70832, 4: 14.96656, 5: 12.75665, 6: 11.28185, 8: 10 };
  const below10 = (spots: number) => resultOf(Array.from({ length: spots }, () => missed(10)));
  const bounds = (plans: BoundPlan[], kind: BoundPlan["kind"]) =>
    plans.filter((plan) => plan.kind === kind).map(({ amount, bound }) => [amount, bound]);

  it("more spots lower the bound until the detection limit itself is left", () => {
    const { plans } = boundPlans(below10(3), 15);
    const spots = bounds(plans, "more-spots") as [number, number][];
    expect(spots.map(([m]) => m)).toEqual([1, 2, 3, 4, 5]);
    for (const [m, bound] of spots)
      if (3 + m in boundOf) expect(bound).toBeCloseTo(boundOf[(3 + m) as keyof typeof boundOf], 4);
  });
  it("counts four times as long halve it", () => {
    const { plans } = boundPlans(below10(3), 15);
    const counted = plans.find((plan) => plan.kind === "longer-counts" && plan.amount === 4);
    expect(counted?.bound).toBeCloseTo(18.70832 / 2, 4);
    expect(counted?.effort).toBe(12);
  });
  it("names the cheapest plan that brings it under the limit, and it does so when it is carried out", () => {
    const { cheapest } = boundPlans(below10(3), 15);
    expect(cheapest).toMatchObject({ kind: "more-spots", amount: 1, settles: true });
    const then = below10(4);
    expect(then.upperBound).toBe(cheapest?.bound);
    expect(decide(heldOf(then), { value: 15, failsAt: ">" }).verdict).toBe("below");
    expect(decide(heldOf(below10(3)), { value: 15, failsAt: ">" }).verdict).toBe("not-detected");
  });
  it("asks for longer counts where more spots cannot help", () => {
    const { plans, cheapest } = boundPlans(below10(8), 6);
    expect(bounds(plans, "more-spots")).toEqual([]);
    expect(cheapest).toMatchObject({ kind: "longer-counts", amount: 3 });
    expect(cheapest?.bound).toBeCloseTo(10 / Math.sqrt(3), 12);
    expect(bounds(boundPlans(resultOf([missed(10)]), 6).plans, "more-spots")).toEqual([]);
  });
  it("minds what a limit that fails at the number itself allows", () => {
    const at10 = (failsAt: ">" | ">=") => boundPlans(below10(4), 10, { failsAt });
    expect(at10(">").cheapest).toMatchObject({ kind: "more-spots", amount: 4, bound: 10 });
    expect(at10(">=").cheapest).toMatchObject({ kind: "longer-counts", amount: 3 });
  });
  it("leaves a laboratory where nothing else is enough, without a bound of its own", () => {
    const { plans, cheapest } = boundPlans(below10(3), 1);
    expect(cheapest).toBeNull();
    expect(plans.every((plan) => plan.settles !== true)).toBe(true);
    expect(plans.at(-1)).toEqual({ kind: "laboratory", amount: 1, effort: Infinity, bound: null, settles: null });
  });
  it("has no plan where the bound passes, no limit was named at a spot, or something was seen", () => {
    const none = { plans: [], cheapest: null };
    expect(boundPlans(below10(8), 10)).toEqual(none);
    expect(boundPlans(resultOf([missed(null), missed(10)]), 5)).toEqual(none);
    expect(boundPlans(resultOf(five()), 5)).toEqual(none);
    expect(() => boundPlans(below10(3), 0)).toThrowError(expect.objectContaining({ code: "not-positive" }));
  });
});
