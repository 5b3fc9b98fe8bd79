import { describe, expect, it } from "vitest";
import { normaliseShot, requireOneKind } from "@/lib/reconcile/normalise.ts";
import { missed, resultOf, seen, shot, written } from "./shots.ts";

describe("step 0: unit to the canonical one, u = error / k", () => {
  it("divides an error of two standard uncertainties by two and turns % into mg/kg", () => {
    const normal = normaliseShot(
      shot({ unit: "%", value: written(0.0412), error: written(0.0018), k: 2 }),
      "bulk-mass-fraction",
    );
    expect(normal.value).toBeCloseTo(412, 9);
    expect(normal.u).toBeCloseTo(9, 9);
    expect(normal.resolution).toBeCloseTo(1, 9);
  });
  it("turns µg/cm² into mg/cm²", () => {
    const normal = normaliseShot(
      shot({ quantity: "coating-areal", unit: "µg/cm²", value: written(850), error: written(30), k: 3 }),
      "coating-areal",
    );
    expect(normal.value).toBeCloseTo(0.85, 12);
    expect(normal.u).toBeCloseTo(0.01, 12);
  });
  it("keeps an error without a stated k, an error of zero and a missing error as unknown", () => {
    expect(normaliseShot(shot({ error: written(5), k: null }), "bulk-mass-fraction").u).toBeNull();
    expect(normaliseShot(shot({ error: written(0), k: 1 }), "bulk-mass-fraction").u).toBeNull();
    expect(normaliseShot(shot(), "bulk-mass-fraction").u).toBeNull();
  });
  it("never turns a non-detect into a number", () => {
    const normal = normaliseShot(missed(12), "bulk-mass-fraction");
    expect(normal).toMatchObject({ detected: false, value: null, u: null, limit: 12 });
    expect(normaliseShot(missed(0), "bulk-mass-fraction").limit).toBeNull();
    expect(normaliseShot(missed(null), "bulk-mass-fraction").limit).toBeNull();
  });
  it.each([
    ["not-finite", shot({ value: { text: "1e400", value: Infinity, decimals: 0 } })],
    ["not-finite", shot({ error: { text: "?", value: Number.NaN, decimals: 0 }, k: 1 })],
    ["negative-uncertainty", shot({ error: written(-3), k: 1 })],
    ["value-missing", shot({ value: null })],
  ])("refuses with %s", (code, bad) => {
    expect(() => normaliseShot(bad, "bulk-mass-fraction")).toThrowError(expect.objectContaining({ code }));
  });
});

describe("step 1: readings of another kind or mode are never mixed in", () => {
  it("refuses a shot of another quantity kind", () => {
    const shots = [seen(100, 5), seen(1, 0.1, { quantity: "coating-areal", unit: "mg/cm²" })];
    expect(() => resultOf(shots)).toThrowError(expect.objectContaining({ code: "mixed-kinds" }));
  });
  it("refuses two named modes, and lets a shot without a mode stand with either", () => {
    expect(() => requireOneKind([shot({ mode: "A" }), shot({ mode: "B" })], "bulk-mass-fraction")).toThrowError(
      expect.objectContaining({ code: "mixed-modes", found: ["A", "B"] }),
    );
    expect(() => requireOneKind([shot({ mode: "A" }), shot()], "bulk-mass-fraction")).not.toThrow();
  });
  it("shows the value with a set-aside reading beside the one without, and flags it", () => {
    const result = resultOf([
      seen(100, 3, { spot: "a" }),
      seen(102, 3, { spot: "b" }),
      seen(98, 3, { spot: "c" }),
      seen(20, 3, { spot: "d", setAside: { reason: "the window hung over the edge" } }),
    ]);
    expect(result.value).toBeCloseTo(100, 9);
    expect(result.counts).toEqual({ readings: 4, used: 3, setAside: 1, spots: 3, spotsDetected: 3 });
    expect(result.withSetAside?.value).toBeLessThan(100);
    expect(result.flags).toContain("excluded-readings");
  });
  it("keeps a set-aside reading of another mode or kind out of both values", () => {
    const result = resultOf([
      seen(100, 3, { mode: "soil" }),
      seen(102, 3, { mode: "soil" }),
      seen(900, 3, { mode: "alloy", setAside: { reason: "wrong mode" } }),
      seen(5, 1, { quantity: "coating-areal", unit: "mg/cm²", setAside: { reason: "another quantity" } }),
    ]);
    expect(result.withSetAside?.value).toBe(result.value);
  });
  it("says so when every reading was set aside", () => {
    const result = resultOf([seen(100, 3, { setAside: { reason: "wrong part" } })]);
    expect(result).toMatchObject({ state: "no-readings", value: null, interval: null, below: null, highestSpot: null });
    expect(result.withSetAside?.value).toBe(100);
    expect(result.flags).toEqual(["excluded-readings"]);
  });
});
