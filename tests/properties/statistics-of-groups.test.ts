import fc from "fast-check";
import { describe, it } from "vitest";
import { algorithmA } from "@/lib/statistics/algorithm-a.ts";
import { cochran } from "@/lib/statistics/cochran.ts";
import { dixon } from "@/lib/statistics/dixon.ts";
import { generalizedEsd } from "@/lib/statistics/generalized-esd.ts";
import { grubbs } from "@/lib/statistics/grubbs.ts";
import { huberProposal2 } from "@/lib/statistics/huber-proposal-2.ts";
import { nestedAnova } from "@/lib/statistics/nested-anova.ts";
import { oneWayAnova } from "@/lib/statistics/one-way-anova.ts";
import { weightedLine } from "@/lib/statistics/weighted-line.ts";
import { york } from "@/lib/statistics/york.ts";

/** Readings as an instrument shows them: four digits, some equal, some far off. */
const reading = fc.oneof(
  { weight: 8, arbitrary: fc.integer({ min: 1, max: 9999 }) },
  { weight: 1, arbitrary: fc.integer({ min: 1, max: 9 }) },
  { weight: 1, arbitrary: fc.integer({ min: 100_000, max: 999_999 }) },
);
const readings = (minLength: number) => fc.array(reading, { minLength, maxLength: 12 });
/** A power of two changes no digit, so results must scale exactly or nearly so. */
const scale = fc.integer({ min: -20, max: 20 }).map((power) => 2 ** power);
const close = (a: number, b: number, size: number, digits = 9) => Math.abs(a - b) <= 10 ** -digits * size;

describe("robust means", () => {
  it("do not depend on the order of readings, and scale with them", () => {
    fc.assert(
      fc.property(readings(2), scale, (x, k) => {
        for (const robust of [algorithmA, (list: number[]) => huberProposal2(list)]) {
          const plain = robust(x);
          const other = robust(x.map((value) => k * value).reverse());
          if (!close(other.mean, k * plain.mean, k * Math.max(...x))) return false;
          if (!close(other.sd, k * plain.sd, k * Math.max(...x))) return false;
          if (plain.mean < Math.min(...x) || plain.mean > Math.max(...x)) return false;
        }
        return true;
      }),
    );
  });
});

describe("outlier tests", () => {
  it("never have a statistic beyond its bound, nor a p outside 0 to 1", () => {
    fc.assert(
      fc.property(readings(3), fc.constantFrom(1 as const, 2 as const), (x, sides) => {
        const n = x.length;
        const r = grubbs(x, { sides });
        if (r.status === "no-spread") return new Set(x).size === 1;
        const g = r.g as number;
        const p = r.p as number;
        return g <= ((n - 1) / Math.sqrt(n)) * (1 + 1e-12) && p >= 0 && p <= 1 && g > r.critical === p < 0.05;
      }),
    );
  });
  it("generalised ESD with one step is the two-sided Grubbs test", () => {
    fc.assert(
      fc.property(readings(3), (x) => {
        const esd = generalizedEsd(x, { maxOutliers: 1 });
        const g = grubbs(x, { sides: 2 });
        if (g.status === "no-spread") return esd.status === "no-spread" && esd.outliers.length === 0;
        const [step] = esd.steps;
        return (
          step !== undefined &&
          step.index === g.index &&
          close(step.r, g.g as number, 10) &&
          close(step.lambda, g.critical, 10) &&
          (esd.outliers.length === 1) === (g.g as number) > g.critical
        );
      }),
    );
  });
  it("Dixon's ratios turn over with the sign of the readings", () => {
    fc.assert(
      fc.property(readings(3), (x) => {
        const there = dixon(x);
        const back = dixon(x.map((value) => -value));
        return there.low === back.high && there.high === back.low;
      }),
      { numRuns: 50 },
    );
  });
  it("Cochran's c lies between 1/k and 1", () => {
    fc.assert(
      fc.property(readings(2), fc.integer({ min: 2, max: 6 }), (variances, n) => {
        const { c, p } = cochran(variances, n);
        return (c as number) >= 1 / variances.length - 1e-12 && (c as number) <= 1 && (p as number) >= 0;
      }),
    );
  });
});

describe("variance components", () => {
  const groups = fc
    .array(fc.array(reading, { minLength: 1, maxLength: 4 }), { minLength: 2, maxLength: 6 })
    .filter((list) => list.some((group) => group.length > 1));

  it("REML is never negative, scales with the square, and does not depend on the order of groups", () => {
    fc.assert(
      fc.property(groups, scale, (list, k) => {
        const { reml } = oneWayAnova(list);
        const other = oneWayAnova(list.map((group) => group.map((value) => k * value)).reverse()).reml;
        const size = Math.max(...list.flat()) ** 2;
        return (
          reml.within >= 0 &&
          reml.between >= 0 &&
          close(other.within, k * k * reml.within, k * k * size, 7) &&
          close(other.between, k * k * reml.between, k * k * size, 7)
        );
      }),
    );
  });

  it("a nested design never has a negative component, and its order does not matter", () => {
    const nested = fc
      .array(fc.record({ a: fc.integer({ min: 0, max: 2 }), b: fc.integer({ min: 0, max: 2 }), y: reading }), {
        minLength: 8,
        maxLength: 16,
      })
      .filter((list) => {
        const ofA = new Set(list.map(({ a }) => a)).size;
        const ofB = new Set(list.map(({ a, b }) => `${a} ${b}`)).size;
        return ofA >= 2 && ofB > ofA && list.length > ofB;
      });
    fc.assert(
      fc.property(nested, (list) => {
        const there = nestedAnova(list);
        const back = nestedAnova([...list].reverse());
        const size = Math.max(...list.map(({ y }) => y)) ** 2;
        return (
          [there.a, there.b, there.error, there.reml.a, there.reml.b, there.reml.error].every((part) => part >= 0) &&
          close(there.aRaw, back.aRaw, size) &&
          close(there.reml.error, back.reml.error, size, 6) &&
          close(there.reml.b, back.reml.b, size, 6)
        );
      }),
      { numRuns: 40 },
    );
  });
});

describe("lines", () => {
  const point = fc.record({
    x: fc.integer({ min: 0, max: 1000 }),
    y: fc.integer({ min: 0, max: 1000 }),
    ux: fc.integer({ min: 1, max: 50 }),
    uy: fc.integer({ min: 1, max: 50 }),
  });
  const points = fc
    .array(point, { minLength: 3, maxLength: 8 })
    .filter((list) => new Set(list.map(({ x }) => x)).size > 1);

  it("York's line without errors in x is the weighted line", () => {
    fc.assert(
      fc.property(points, (list) => {
        const [x, y, uy] = [list.map((p) => p.x), list.map((p) => p.y), list.map((p) => p.uy)];
        const line = weightedLine(x, y, uy);
        const r = york(
          x,
          y,
          x.map(() => 0),
          uy,
        );
        return (
          close(r.slope, line.slope, Math.abs(line.slope) + line.seSlope) &&
          close(r.seSlope, line.seSlope, line.seSlope) &&
          close(r.s, line.chi2, line.chi2 + 1)
        );
      }),
    );
  });
  it("doubling every uncertainty leaves York's line and doubles its errors", () => {
    fc.assert(
      fc.property(points, (list) => {
        const by = (k: number) =>
          york(
            list.map((p) => p.x),
            list.map((p) => p.y),
            list.map((p) => k * p.ux),
            list.map((p) => k * p.uy),
          );
        const one = by(1);
        const two = by(2);
        return (
          close(two.slope, one.slope, Math.abs(one.slope) + one.seSlope, 7) &&
          close(two.seSlope, 2 * one.seSlope, one.seSlope, 6)
        );
      }),
    );
  });
});
