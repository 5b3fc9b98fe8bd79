import { describe, expect, it } from "vitest";
import { missed, resultOf, seen } from "./shots.ts";

/** Expected numbers: R 4.2.2, base functions (uniroot on the Paule-Mandel equation; numerical integration and optim for the lognormal). */
describe("step 3: one spot", () => {
  it("states the spot's value with the normal factor and flags that it says nothing about the rest", () => {
    const result = resultOf([seen(100, 5, { spot: "rim" })]);
    expect(result).toMatchObject({ state: "quantified", model: "one-spot", value: 100, u: 5, nuEff: null });
    expect(result.U).toBeCloseTo(1.959963984540054 * 5, 9);
    expect(result.flags).toEqual(["one-spot", "few-readings"]);
  });
  it("has no uncertainty where the only error is unknown", () => {
    const result = resultOf([seen(100, null, { spot: "rim" })]);
    expect(result).toMatchObject({ state: "quantified", value: 100, u: null, U: null, k: null, interval: null });
    expect(result.stated).toEqual({ value: "100", U: null, interval: null, below: null });
    expect(result.flags).toContain("error-unknown");
  });
});

describe("step 3: even spots, random effects", () => {
  it("gives Paule–Mandel with Hartung–Knapp: five readings 412 405 421 398 417", () => {
    const result = resultOf([seen(412, 9), seen(405, 8), seen(421, 10), seen(398, 9), seen(417, 9)]);
    expect(result.model).toBe("random-effects");
    expect(result.value).toBeCloseTo(409.923101384228, 7);
    expect(result.u).toBeCloseTo(4.012063478925, 7);
    expect(result.U).toBeCloseTo(11.139274007804, 6);
    expect(result.nuEff).toBeCloseTo(4, 9);
    expect(result.scatter?.tau).toBeCloseTo(0.822440141858, 5);
    expect(result.stated).toMatchObject({ value: "410", U: "11", interval: ["399", "421"] });
    expect(result.flags).toEqual(["no-spots-named"]);
  });
  it("keeps a width for identical readings: the Hartung–Knapp factor is held at 1", () => {
    const result = resultOf([seen(50, 2), seen(50, 2), seen(50, 2)]);
    expect(result.value).toBe(50);
    expect(result.u).toBeCloseTo(2 / Math.sqrt(3), 12);
    expect(result.scatter).toMatchObject({ q: 0, p: 1, tau: 0, relative: 0 });
  });
});

describe("step 3 and 4: uneven spots, lognormal model", () => {
  const shots = [seen(120, 4), seen(60, 3), seen(210, 6), seen(95, 3), seen(150, 5)];
  const result = resultOf(shots, { policy: { fiveSpotsLevel: 0.95 } });
  it("takes the interval of five spots at a higher level, since at 95 % it ends too low too often (policy)", () => {
    const wider = resultOf(shots);
    expect(wider.value).toBe(result.value);
    expect(wider.interval?.[0] ?? 0).toBeLessThan(result.interval?.[0] ?? 0);
    expect(wider.interval?.[1] ?? 0).toBeGreaterThan(result.interval?.[1] ?? 0);
    const six = [...shots, seen(100, 4)];
    expect(resultOf(six, { policy: { fiveSpotsLevel: 0.95 } }).interval).toEqual(resultOf(six).interval);
  });
  it("states the mean of the lognormal and its profile interval", () => {
    expect(result).toMatchObject({ state: "quantified", model: "lognormal", asymmetric: true, U: null });
    expect(result.value).toBeCloseTo(127.307725993447, 4);
    expect(result.interval?.[0]).toBeCloseTo(79.037122888191, 4);
    expect(result.interval?.[1]).toBeCloseTo(296.199287221122, 3);
  });
  it("never states a mass fraction above the whole", () => {
    const wild = resultOf([seen(40, 2), seen(400, 20), seen(9000, 90)]);
    expect(wild).toMatchObject({ model: "lognormal", notes: ["interval-to-whole"] });
    expect(wild.interval?.[1]).toBe(1_000_000);
  });
  it("leads with the range and the highest spot", () => {
    expect(result.flags).toContain("uneven");
    expect(result.flags).toContain("scatter-beyond-counting");
    expect(result.range).toEqual([60, 210]);
    expect(result.highestSpot).toMatchObject({ value: 210, u: 6 });
    expect(result.scatter?.relative).toBeGreaterThan(0.15);
  });
  it("switches where τ over the mean passes the policy's number", () => {
    const shots = [seen(100, 3), seen(108, 4), seen(95, 3), seen(112, 5)];
    expect(resultOf(shots).model).toBe("random-effects"); // τ/mean 0.064
    expect(resultOf(shots, { policy: { unevenFrom: 0.05 } }).model).toBe("lognormal");
  });
});

describe("step 3: some spots not detected", () => {
  it("uses the censored lognormal where at least two and at least half were detected and the part is uneven", () => {
    const result = resultOf([seen(40, 3), seen(22, 2), seen(75, 4), seen(31, 2), missed(15), missed(15)]);
    expect(result.model).toBe("censored-lognormal");
    expect(result.value).toBeCloseTo(32.339594061919, 4);
    expect(result.interval?.[0]).toBeCloseTo(14.180139037226, 3);
    expect((result.interval?.[1] ?? 0) / 498.37715011).toBeCloseTo(1, 5);
    expect(result.flags).toContain("mixed-detection");
    expect(result.counts).toMatchObject({ spots: 6, spotsDetected: 4 });
  });
  it("uses the censored normal where the part is even", () => {
    const result = resultOf([seen(50, 2), seen(51, 2), seen(49, 2), missed(52)]);
    expect(result.model).toBe("censored-normal");
    expect(result.value).toBeGreaterThan(48);
    expect(result.value).toBeLessThan(51);
  });
  it("does not quantify two of five, and gives an upper bound", () => {
    const result = resultOf([seen(30, 3), seen(33, 3), missed(20), missed(20), missed(20)]);
    expect(result).toMatchObject({ state: "not-quantified", value: null, interval: null, stated: { value: "" } });
    expect(result.upperBound ?? 0).toBeGreaterThan(33);
    expect(result.highestSpot?.value).toBe(33);
    expect(result.range).toEqual([30, 33]);
    expect(result.counts).toMatchObject({ spots: 5, spotsDetected: 2 });
  });
  it("gives an even part a close bound", () => {
    const bound = resultOf([seen(22, 1), seen(23, 1), missed(20), missed(20), missed(20)]).upperBound ?? 0;
    expect(bound).toBeGreaterThan(20);
    expect(bound).toBeLessThan(30);
  });
  it("says that there is no bound where one spot of three was detected on an uneven part", () => {
    const result = resultOf([seen(30, 3), missed(20), missed(20)]);
    expect(result).toMatchObject({ state: "not-quantified", upperBound: null, notes: ["no-upper-bound"] });
  });
  it("gives no bound where a non-detect names no limit", () => {
    const result = resultOf([seen(30, 3), seen(33, 3), seen(31, 3), missed(null)]);
    expect(result).toMatchObject({ state: "not-quantified", upperBound: null, notes: ["non-detect-without-limit"] });
  });
  it("serves unknown errors too, by the spread of the spots alone", () => {
    const result = resultOf([seen(50, null), seen(56, null), seen(44, null), seen(52, null), missed(48)]);
    expect(result.state).toBe("quantified");
    expect(result.scatter).toBeNull();
    expect(result.value).toBeGreaterThan(40);
    expect(result.value).toBeLessThan(55);
  });
});

describe("step 3: nothing detected", () => {
  it("is below the highest over spots of the lowest limit reached at each", () => {
    const result = resultOf([
      missed(12, { spot: "a" }),
      missed(8, { spot: "a" }),
      missed(10, { spot: "b" }),
      missed(25, { spot: "b" }),
    ]);
    expect(result).toMatchObject({ state: "not-detected", value: null, below: 10, stated: { below: "10" } });
    expect(result.budget).toEqual([]);
  });
  it("has no bound when a spot names no limit", () => {
    const result = resultOf([missed(12, { spot: "a" }), missed(null, { spot: "b" })]);
    expect(result).toMatchObject({ state: "not-detected", below: null, notes: ["non-detect-without-limit"] });
  });
});

describe("step 3: errors unknown", () => {
  it("is the mean of spots, s/√n and t with n−1", () => {
    // R: x <- c(10,12,14,11); mean(x) 11.75; sd(x)/2 0.853912563829967; qt(.975,3)*that 2.7175308838
    const result = resultOf([10, 12, 14, 11].map((value) => seen(value, null)));
    expect(result).toMatchObject({ model: "mean-of-spots", value: 11.75, nuEff: 3, scatter: null });
    expect(result.u).toBeCloseTo(0.853912563829967, 12);
    expect(result.U).toBeCloseTo(2.7175308838, 8);
  });
  it("treats a part with some unknown errors the same way", () => {
    const result = resultOf([seen(10, 1), seen(12, null), seen(14, 1)]);
    expect(result.model).toBe("mean-of-spots");
    expect(result.value).toBe(12);
    expect(result.flags).toContain("error-unknown");
  });
  it("does not claim an exact value for equal readings", () => {
    expect(resultOf([seen(5, null), seen(5, null), seen(5, null)]).U ?? 0).toBeGreaterThan(0.5);
  });
});

describe("values at and below zero", () => {
  it("states no content below zero", () => {
    const result = resultOf([seen(4, 3), seen(-2, 3), seen(1, 3)]);
    expect(result.interval?.[0]).toBe(0);
    expect(result).toMatchObject({ asymmetric: true, U: null, notes: ["interval-from-zero"] });
    expect(result.value).toBeCloseTo(1, 9);
  });
  it("keeps an upper end above zero for readings that are all negative", () => {
    const result = resultOf([seen(-4, 1), seen(-5, 1), seen(-6, 1)]);
    expect(result.value).toBeCloseTo(-5, 9);
    expect(result.interval?.[0]).toBe(0);
    expect(result.interval?.[1] ?? 0).toBeGreaterThan(1);
  });
  it("takes zeros", () => {
    expect(resultOf([seen(0, 1), seen(0, 1)])).toMatchObject({ value: 0, state: "quantified" });
    expect(resultOf([seen(0, null)])).toMatchObject({ value: 0, u: null, stated: { value: "0" } });
  });
  it("has an answer for no readings at all", () => {
    expect(resultOf([])).toMatchObject({ state: "no-readings", value: null, flags: [] });
  });
});
