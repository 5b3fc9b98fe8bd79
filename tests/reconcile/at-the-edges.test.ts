import { describe, expect, it } from "vitest";
import type { ElementResult } from "@/lib/readings/reading.ts";
import { budgetOf } from "@/lib/reconcile/budget.ts";
import { compareNumbers } from "@/lib/reconcile/canonical-order.ts";
import { emptyFit, type Fit } from "@/lib/reconcile/fit.ts";
import { canonicalText } from "@/lib/reconcile/inputs-digest.ts";
import { type PartReading, partInputs } from "@/lib/reconcile/part-inputs.ts";
import { plainMean } from "@/lib/reconcile/spots.ts";
import { statement } from "@/lib/reconcile/statement.ts";
import type { StatedContribution } from "@/lib/reconcile/types.ts";
import { whatNext } from "@/lib/reconcile/what-next.ts";
import { missed, resultOf, seen, written } from "./shots.ts";

// Invented numbers throughout.
const fitOf = (overrides: Partial<Fit>): Fit => ({
  ...emptyFit,
  state: "quantified",
  value: 100,
  u: 4,
  nu: 4,
  ...overrides,
});
const given = (code: string, size: Partial<StatedContribution>): StatedContribution => ({
  ...{ code, type: "B", source: "test" },
  ...size,
});

describe("budget", () => {
  const fit = fitOf({ interval: [90, 110] });
  it("orders contributions of one code by size, relative or absolute", () => {
    const { lines } = budgetOf(fit, [
      given("b", { absolute: 3 }),
      given("b", { absolute: 2 }),
      given("a", { relative: 0.01 }),
    ]);
    expect(lines.map((line) => line.u)).toEqual([4, 1, 2, 3]);
    expect(lines.reduce((sum, line) => sum + line.share, 0)).toBeCloseTo(1, 12);
  });
  it("gives every line no share where nothing is uncertain", () => {
    const { lines, u } = budgetOf(fitOf({ u: 0, interval: [100, 100] }), [given("a", { absolute: 0 })]);
    expect(u).toBe(0);
    expect(lines.map((line) => line.share)).toEqual([0, 0]);
  });
  it("combines a profile that reaches zero as it stands, without a logarithm", () => {
    const profile = fitOf({ interval: [-5, 150], asymmetric: true, value: 40 });
    const { interval, notes } = budgetOf(profile, [given("calibration", { relative: 0.05 })]);
    // 40 + hypot(110, 1.959964 · 2), the lower end below zero and so stated as zero
    expect(interval?.[0]).toBe(0);
    expect(interval?.[1]).toBeCloseTo(40 + Math.hypot(110, 1.959963985 * 2), 6);
    expect(notes).toEqual(["interval-from-zero"]);
  });
  it("leaves a profile as it is where no other part counts", () => {
    const profile = fitOf({ interval: [80, 150], asymmetric: true });
    expect(budgetOf(profile, []).interval).toEqual([80, 150]);
    expect(budgetOf(profile, [given("none", { absolute: 0 })]).interval).toEqual([80, 150]);
    expect(budgetOf(profile, [], 140)).toMatchObject({ interval: [80, 140], notes: ["interval-to-whole"] });
  });
  it.each([
    [{}],
    [{ relative: 0.1, absolute: 1 }],
    [{ relative: -0.1 }],
    [{ absolute: Number.NaN }],
    [{ absolute: 1, nu: 0 }],
  ])("refuses the contribution %j", (size) => expect(() => budgetOf(fit, [given("x", size)])).toThrow(/contribution/));
});

describe("statement", () => {
  const nothing = { lines: [], u: null, nuEff: null, k: null, U: null, interval: null, asymmetric: false, notes: [] };
  const stated = (fit: Partial<Fit>, interval: [number, number] | null) =>
    statement(fitOf(fit), { ...nothing, interval, asymmetric: interval !== null });
  it("prints a value of unknown uncertainty to three digits", () => {
    expect(stated({ value: 1234.5 }, null)).toMatchObject({ value: "1230", U: null, interval: null });
    expect(stated({ value: 0 }, null).value).toBe("0");
    expect(stated({ value: -0.012345 }, null).value).toBe("-0.0123");
  });
  it("prints an interval without width by its ends", () => {
    expect(stated({ value: 0 }, [0, 0])).toMatchObject({ value: "0", interval: ["0", "0"] });
    expect(stated({ value: -2.5 }, [-2.5, -2.5])).toMatchObject({ value: "-2.500", interval: ["-2.500", "-2.500"] });
  });
  it("prints a detection limit as it stands, large, small and whole", () => {
    const below = (limit: number) => stated({ value: null, below: limit }, null).below;
    expect(below(4.25)).toBe("4.25");
    expect(below(1200)).toBe("1200");
    expect(below(0.1 + 0.2)).toBe("0.3");
    expect(below(0.00042)).toBe("0.00042");
    expect(below(1.5e7)).toBe("15000000");
  });
});

describe("spots and parts", () => {
  it("knows no scatter of one value", () => {
    expect(plainMean([7], 0.1)).toEqual({ value: 7, u: null, nu: Infinity });
  });
  it("takes the one detected shot as it is where the missed one names no limit", () => {
    const [spot] = resultOf([seen(30, 2, { spot: "a" }), missed(null, { spot: "a" })]).spots;
    expect(spot).toMatchObject({ detected: true, value: 30, u: 2, birge: null });
  });
  it("reconciles shots without errors, of one value and of several", () => {
    expect(resultOf([seen(40, null)])).toMatchObject({ model: "one-spot", value: 40, U: null, interval: null });
    const equal = resultOf([seen(40, null), seen(40, null), seen(40, 1)]);
    expect(equal.crossCheck).toMatchObject({ median: 40, leaveOneOut: [40, 40], candidates: [] });
    expect(equal.value).toBe(40);
  });
  it("cannot say what a part set aside by mode would have been", () => {
    const aside = { setAside: { reason: "slipped" } };
    const shots = [
      seen(10, 1, { mode: null }),
      seen(11, 1, { mode: "metal", ...aside }),
      seen(12, 1, { mode: "plastic", ...aside }),
    ];
    expect(resultOf(shots).withSetAside).toEqual({ value: null, interval: null });
  });
  it("leaves out of the second value what is of another kind", () => {
    const aside = { setAside: { reason: "other kind" }, quantity: "coating-mass-fraction" as const };
    const { withSetAside } = resultOf([seen(10, 1), seen(10, 1), seen(90, 1, aside)]);
    expect(withSetAside?.value).toBeCloseTo(10, 12);
  });
  it("orders unknown numbers last", () => {
    expect([3, null, 1, null, 2].sort(compareNumbers)).toEqual([1, 2, 3, null, null]);
  });
  it("digests two shots of one id by all that they say", () => {
    const pair = [seen(400, 5, { id: "same" }), seen(401, 5, { id: "same" })];
    expect(resultOf(pair).inputsDigest).toBe(resultOf([...pair].reverse()).inputsDigest);
    const twins = [seen(400, 5, { id: "twin" }), seen(400, 5, { id: "twin" })];
    expect(resultOf(twins).inputsDigest).toBe(resultOf([...twins].reverse()).inputsDigest);
  });
  it("writes what JSON cannot hold as JSON.stringify does", () => {
    const odd = [Number.NaN, Infinity, undefined, null, true, false, "\ud800", { b: undefined, a: [] }, {}];
    expect(canonicalText(odd)).toBe(JSON.stringify(odd));
  });
});

describe("partInputs", () => {
  const result = (element: string, overrides: Partial<ElementResult> = {}): ElementResult =>
    ({
      ...{ element, quantity: "bulk-mass-fraction", unit: "ppm", belowDetection: false, value: written(12) },
      ...{ error: null, k: null, detectionLimit: null },
      ...overrides,
    }) as ElementResult;
  const reading = (id: string, overrides: Partial<PartReading> = {}): PartReading => ({
    ...{ id, spot: null, mode: null, secondsCounted: 30, takenAt: null, setAside: null },
    results: [result("Pb"), result("As", { belowDetection: true, value: null, detectionLimit: written(5) })],
    instrument: { calibrationRel: 0.05, windowMm: 8, minimumSeconds: null },
    ...overrides,
  });
  const part = { form: "bulk", thicknessMm: null } as const;

  it("splits by element, kind and mode, in one order whatever the order of readings", () => {
    const readings = [reading("1"), reading("2", { mode: "metal" }), reading("3")];
    const names = (list: PartReading[]) => partInputs(part, list).map(({ input, mode }) => [input.element, mode]);
    expect(names(readings)).toEqual(names([...readings].reverse()));
    expect(names(readings).length).toBe(4);
    const [, arsenic] = partInputs(part, readings).filter(({ input }) => input.element === "As");
    expect(arsenic?.input.shots.map((shot) => [shot.leadValue, shot.arsenicValue])).toEqual([
      [12, null],
      [12, null],
    ]);
  });
  it("takes the widest calibration and the longest minimum of several instruments, and none from none", () => {
    const other = { calibrationRel: 0.1, windowMm: null, minimumSeconds: 20 };
    const [lead] = partInputs(part, [reading("1"), reading("2", { instrument: other })]).slice(-1);
    expect(lead?.input).toMatchObject({ minimumSeconds: 20, windowMm: 8, contributions: [{ relative: 0.1 }] });
    const [bare] = partInputs(part, [reading("1", { instrument: null })]);
    expect(bare?.input).toMatchObject({ minimumSeconds: null, windowMm: null, contributions: [] });
    const exact = { calibrationRel: 0, windowMm: null, minimumSeconds: null };
    expect(partInputs(part, [reading("1", { instrument: exact })])[0]?.input.contributions).toEqual([]);
  });
  it("asks how thick the part must be for mass fractions only", () => {
    const areal = reading("1", { results: [result("Pb", { quantity: "coating-areal", unit: "mg/cm²" })] });
    const asked = (readings: PartReading[]) =>
      partInputs({ ...part, smallestDimensionMm: 4 }, readings, () => 1.5).map(
        ({ input }) => input.infiniteThicknessMm,
      );
    expect(asked([areal])).toEqual([null]);
    expect(asked([reading("1")])).toEqual([1.5, 1.5]);
    expect(partInputs(part, [reading("1")])[0]?.input.infiniteThicknessMm).toBeNull();
  });
});

describe("what next", () => {
  it("says what is to be expected without a limit, and of parts without errors or with one spot", () => {
    const { plans, cheapest } = whatNext(resultOf([seen(100, 5), seen(104, 5), seen(97, 5)]), null);
    expect(plans.every((plan) => plan.chance === null)).toBe(true);
    expect(cheapest).toBeNull();
    expect(whatNext(resultOf([seen(100, null), seen(104, null), seen(97, null)]), 150).plans.length).toBeGreaterThan(3);
    const one = whatNext(resultOf([seen(100, 5)]), 130).plans;
    expect(one.find((plan) => plan.kind === "longer-counts")?.expectedU).toBeCloseTo((1.959963985 * 5) / Math.SQRT2, 6);
    const uneven = resultOf([seen(120, 4), seen(60, 3), seen(210, 6), seen(95, 3), seen(150, 5)]);
    expect(whatNext(uneven, null).plans.length).toBeGreaterThan(3);
  });
});
