import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { convert, dimensionOf, units } from "@/lib/quantity/units.ts";
import { censoredNormal } from "@/lib/statistics/censored-normal.ts";
import { censoredRandomEffects } from "@/lib/statistics/censored-random-effects.ts";
import { combine } from "@/lib/statistics/combine.ts";
import { lognormalRandomEffects } from "@/lib/statistics/lognormal-random-effects.ts";
import { medianMad } from "@/lib/statistics/median-mad.ts";
import { randomEffects } from "@/lib/statistics/random-effects.ts";
import { weightedMean } from "@/lib/statistics/weighted-mean.ts";

type Shot = { x: number; u: number; censored: boolean };
const shot = fc.record({
  x: fc.double({ min: 1, max: 1000, noNaN: true }),
  u: fc.double({ min: 0.01, max: 100, noNaN: true }),
  censored: fc.boolean(),
});
/** Readings, the first of them detected, and the same in another order. */
const shots = (min: number, max: number) =>
  fc
    .array(shot, { minLength: min, maxLength: max })
    .map((list) => list.map((s, i) => (i === 0 ? { ...s, censored: false } : s)))
    .chain((list) => fc.tuple(fc.constant(list), fc.shuffledSubarray(list, { minLength: list.length })));
const xs = (list: Shot[]) => list.map((s) => s.x);
const us = (list: Shot[]) => list.map((s) => s.u);
const flags = (list: Shot[]) => list.map((s) => s.censored);

/** Every number in a result, named, so that two results can be compared. */
const close = (a: unknown, b: unknown, relative: number, at = ""): void => {
  if (typeof a === "number" && typeof b === "number") {
    if (a === b || Math.abs(a - b) <= relative * Math.max(Math.abs(a), Math.abs(b)) + 1e-12) return;
    expect.fail(`${at}: ${a} and ${b} differ`);
  }
  if (a !== null && typeof a === "object" && b !== null && typeof b === "object") {
    for (const key of Object.keys(a))
      close((a as Record<string, unknown>)[key], (b as Record<string, unknown>)[key], relative, `${at}.${key}`);
    return;
  }
  expect(a).toEqual(b);
};

describe("the order of readings does not matter", () => {
  it("weighted mean, random effects, median", () => {
    fc.assert(
      fc.property(shots(2, 8), ([a, b]) => {
        close(weightedMean(xs(a), us(a)), weightedMean(xs(b), us(b)), 1e-9);
        for (const tau2 of ["PM", "DL", "REML"] as const)
          close(randomEffects(xs(a), us(a), { tau2 }), randomEffects(xs(b), us(b), { tau2 }), 1e-7);
        expect(medianMad(xs(a))).toEqual(medianMad(xs(b)));
      }),
      { numRuns: 100 },
    );
  });
  it("censored normal and censored random effects", () => {
    fc.assert(
      fc.property(shots(2, 6), ([a, b]) => {
        close(censoredNormal(xs(a), flags(a)), censoredNormal(xs(b), flags(b)), 1e-5);
        // τ stands where the likelihood is flat; the mean and its interval are what is asked for.
        const [p, q] = [a, b].map((l) => censoredRandomEffects(xs(l), us(l), flags(l), { cut: "small-sample" }));
        close([p!.mean, p!.interval], [q!.mean, q!.interval], 1e-5);
      }),
      { numRuns: 40 },
    );
  });
});

describe("scaling every value and error scales the result", () => {
  it("weighted mean and random effects, to the last digit for powers of two", () => {
    fc.assert(
      fc.property(shots(2, 8), fc.integer({ min: -30, max: 20 }), ([a], power) => {
        const s = 2 ** power;
        const r = randomEffects(xs(a), us(a), { tau2: "PM" });
        const scaled = randomEffects(
          xs(a).map((v) => v * s),
          us(a).map((v) => v * s),
          { tau2: "PM" },
        );
        expect(scaled.mean).toBe(r.mean * s);
        expect(scaled.tau2).toBe(r.tau2 * s * s);
        expect(scaled.interval).toEqual(r.interval.map((end) => end * s));
        const w = weightedMean(xs(a), us(a));
        expect(
          weightedMean(
            xs(a).map((v) => v * s),
            us(a).map((v) => v * s),
          ),
        ).toMatchObject({ mean: w.mean * s, q: w.q, p: w.p });
      }),
    );
  });
  it("censored random effects and the lognormal model", () => {
    fc.assert(
      fc.property(shots(3, 5), fc.constantFrom(1e-9, 1e-3, 1e6), ([a], s) => {
        const scaled = a.map((r) => ({ ...r, x: r.x * s, u: r.u * s }));
        const p = censoredRandomEffects(xs(a), us(a), flags(a));
        const q = censoredRandomEffects(xs(scaled), us(scaled), flags(scaled));
        close([p.mean, p.interval], [(q.mean ?? 0) / s, q.interval?.map((end) => end / s)], 1e-5);
        const l = lognormalRandomEffects(xs(a), us(a), flags(a), { cut: "chi2" });
        const m = lognormalRandomEffects(xs(scaled), us(scaled), flags(scaled), { cut: "chi2" });
        expect(m.status).toBe(l.status);
        if (l.status === "ok" && m.status === "ok") close(l.mean, m.mean / s, 1e-4);
      }),
      { numRuns: 25 },
    );
  });
});

describe("intervals", () => {
  it("hold their own mean, and a higher level holds a lower one's", () => {
    fc.assert(
      fc.property(shots(3, 5), ([a]) => {
        const inside = (level: number) => {
          const r = lognormalRandomEffects(xs(a), us(a), flags(a), { level });
          return r.status === "ok" ? [r.interval[0], r.mean, r.interval[1]] : [0, 0, Number.POSITIVE_INFINITY];
        };
        const [lo, mean, hi] = inside(0.95) as [number, number, number];
        const [lower, , higher] = inside(0.99) as [number, number, number];
        expect(lo <= mean && mean <= hi).toBe(true);
        expect(lower <= lo * (1 + 1e-9) && higher >= hi * (1 - 1e-9)).toBe(true);
      }),
      { numRuns: 25 },
    );
  });
  it("of τ² hold the Paule–Mandel estimate unless it is empty", () => {
    fc.assert(
      fc.property(shots(2, 8), ([a]) => {
        const { tau2, tau2Interval } = randomEffects(xs(a), us(a), { tau2: "PM" });
        if (tau2Interval[1] > 0) expect(tau2Interval[0] <= tau2 && tau2 <= tau2Interval[1]).toBe(true);
      }),
    );
  });
});

describe("combination and units", () => {
  it("adding a contribution never shrinks u", () => {
    const contribution = fc.record({
      u: fc.double({ min: 0, max: 1e6, noNaN: true }),
      nu: fc.integer({ min: 1, max: 100 }),
    });
    fc.assert(
      fc.property(fc.array(contribution, { minLength: 1, maxLength: 6 }), contribution, (list, more) => {
        expect(combine([...list, more]).u).toBeGreaterThanOrEqual(combine(list).u * (1 - 1e-15));
      }),
      { numRuns: 1000 },
    );
  });
  it("units go there and back", () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...units),
        fc.constantFrom(...units),
        fc.double({ min: 1e-9, max: 1e6, noNaN: true }),
        (a, b, value) => {
          if (dimensionOf(a) !== dimensionOf(b)) expect(() => convert(value, a, b)).toThrow();
          else expect(Math.abs(convert(convert(value, a, b), b, a) / value - 1)).toBeLessThan(2e-15);
        },
      ),
      { numRuns: 1000 },
    );
  });
});
