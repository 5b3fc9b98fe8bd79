import { describe, expect, it } from "vitest";
import { guardBand } from "@/lib/limits/guard-band.ts";
import { probabilityAbove, type StateOfKnowledge } from "@/lib/limits/probability-above.ts";
import { DomainError } from "@/lib/quantity/domain-error.ts";

const normal: StateOfKnowledge = { value: 412, u: 9, shape: "normal" };

describe("probabilityAbove", () => {
  it("keeps its digits far from the limit", () => {
    expect(probabilityAbove({ value: 0, u: 1, shape: "normal" }, 30)).toBeCloseTo(4.906714e-198, 203);
    expect(probabilityAbove({ value: 100, u: 1, shape: "normal" }, 30)).toBe(1);
  });
  it("takes t without degrees of freedom, or with infinitely many, as normal", () => {
    for (const nu of [undefined, null, Number.POSITIVE_INFINITY])
      expect(probabilityAbove({ ...normal, shape: "t", ...(nu === undefined ? {} : { nu }) }, 400)).toBe(
        probabilityAbove(normal, 400),
      );
  });
  it("gives a lognormal all its weight above zero", () => {
    expect(probabilityAbove({ value: 1, u: 5, shape: "lognormal" }, 0)).toBe(1);
    expect(probabilityAbove({ value: 1, u: 5, shape: "lognormal" }, -3)).toBe(1);
    expect(probabilityAbove({ value: 7, u: 5, shape: "lognormal" }, 7)).toBe(0.5);
  });
  it("falls as the limit rises", () => {
    for (const shape of ["normal", "t", "lognormal"] as const) {
      let before = 1;
      for (let limit = 1; limit < 1000; limit += 7) {
        const p = probabilityAbove({ value: 412, u: 60, nu: 4, shape }, limit);
        expect(p).toBeLessThanOrEqual(before);
        before = p;
      }
    }
  });
  it("refuses what is no state of knowledge", () => {
    const bad: unknown[] = [
      { ...normal, u: 0 },
      { ...normal, u: -1 },
      { ...normal, u: Number.POSITIVE_INFINITY },
      { ...normal, value: Number.NaN },
      { ...normal, shape: "t", nu: 0 },
      { ...normal, shape: "t", nu: Number.NaN },
      { ...normal, shape: "gamma" },
      { ...normal, value: 0, shape: "lognormal" },
      { ...normal, value: -1, shape: "lognormal" },
    ];
    for (const state of bad) expect(() => probabilityAbove(state as StateOfKnowledge, 400)).toThrow(DomainError);
    for (const limit of [Number.NaN, Number.POSITIVE_INFINITY])
      expect(() => probabilityAbove(normal, limit)).toThrow(DomainError);
  });
});

describe("guardBand", () => {
  it("leaves exactly the risk at the guarded limit", () => {
    for (const nu of [undefined, 4, 9])
      for (const risk of [0.001, 0.05, 0.3]) {
        const freedom = nu === undefined ? {} : { nu };
        const g = guardBand({ risk, u: 7, ...freedom });
        const p = probabilityAbove({ value: 400 - g, u: 7, shape: "t", ...freedom }, 400);
        expect(p / risk).toBeCloseTo(1, 10);
      }
  });
  it("is nothing at even odds or without uncertainty, and negative beyond even odds", () => {
    expect(Math.abs(guardBand({ risk: 0.5, u: 7 }))).toBeLessThan(1e-15);
    expect(guardBand({ risk: 0.05, u: 0 })).toBe(0);
    expect(guardBand({ risk: 0.7, u: 7 })).toBeCloseTo(-guardBand({ risk: 0.3, u: 7 }), 12);
  });
  it("refuses bad risks, u and ν", () => {
    for (const risk of [0, 1, -0.1, 5, Number.NaN]) expect(() => guardBand({ risk, u: 1 })).toThrow(DomainError);
    for (const u of [-1, Number.NaN, Number.POSITIVE_INFINITY])
      expect(() => guardBand({ risk: 0.05, u })).toThrow(DomainError);
    for (const nu of [0, -1, Number.NaN]) expect(() => guardBand({ risk: 0.05, u: 1, nu })).toThrow(DomainError);
  });
});
