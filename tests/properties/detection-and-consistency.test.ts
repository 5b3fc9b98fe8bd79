import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { compareResults } from "@/lib/consistency/compare-results.ts";
import type { LocatedReading } from "@/lib/consistency/located-reading.ts";
import { sessionPrecision } from "@/lib/consistency/session-precision.ts";
import { sessionState } from "@/lib/consistency/session-state.ts";
import { varianceComponents } from "@/lib/consistency/variance-components.ts";
import { blankLimits } from "@/lib/statistics/blank-limits.ts";
import { cholesky } from "@/lib/statistics/cholesky.ts";
import { countingLimits } from "@/lib/statistics/counting-limits.ts";
import { kaplanMeier } from "@/lib/statistics/kaplan-meier.ts";
import { pooledDetectionLimit } from "@/lib/statistics/pooled-detection-limit.ts";
import { propagate } from "@/lib/statistics/propagate.ts";
import { regressionOnOrderStatistics } from "@/lib/statistics/regression-on-order-statistics.ts";
import { secondsForLimit } from "@/lib/statistics/seconds-for-limit.ts";

const runs = { numRuns: 1000 };
const content = fc.double({ min: 0.01, max: 1e5, noNaN: true });
const near = (got: number, expected: number, digits = 9) =>
  expect(Math.abs(got - expected)).toBeLessThanOrEqual(10 ** -digits * Math.max(Math.abs(expected), 1e-300));

/** Values with flags, ten to twenty-five, some of them alike. */
const mixed = fc
  .array(fc.record({ value: fc.oneof(content, fc.constantFrom(1, 2, 5)), below: fc.boolean() }), {
    minLength: 10,
    maxLength: 25,
  })
  .map((list) => ({ values: list.map(({ value }) => value), censored: list.map(({ below }) => below), list }));

describe("detection", () => {
  it("scaling blanks scales their limits, and the detection limit is never under the critical value", () => {
    fc.assert(
      fc.property(fc.array(content, { minLength: 2, maxLength: 8 }), (blanks) => {
        const one = blankLimits(blanks);
        const scaled = blankLimits(blanks.map((blank) => blank * 1024));
        near(scaled.critical, 1024 * one.critical);
        near(scaled.detection, 1024 * one.detection);
        expect(one.detection).toBeGreaterThanOrEqual(one.critical);
      }),
      { numRuns: 200 }, // each run solves for a noncentrality twice
    );
  });
  it("more background never lowers a counting limit", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 1e9, noNaN: true }),
        fc.double({ min: 0, max: 1e9, noNaN: true }),
        (a, b) => {
          const [less, more] = [Math.min(a, b), Math.max(a, b)].map((background) => countingLimits({ background }));
          for (const name of ["critical", "detection", "determination"] as const)
            expect((more as typeof less)?.[name]).toBeGreaterThanOrEqual(less?.[name] as number);
        },
      ),
      runs,
    );
  });
  it("pooling never raises a limit, does not depend on order, and pooled pools pool alike", () => {
    fc.assert(
      fc.property(
        fc.array(content, { minLength: 1, maxLength: 8 }),
        fc.array(content, { minLength: 1, maxLength: 8 }),
        (a, b) => {
          const all = pooledDetectionLimit([...a, ...b]);
          expect(all).toBeLessThanOrEqual(Math.min(...a, ...b));
          near(pooledDetectionLimit([...b, ...a].reverse()), all);
          near(pooledDetectionLimit([pooledDetectionLimit(a), pooledDetectionLimit(b)]), all);
        },
      ),
      runs,
    );
  });
  it("the time for a limit, counted, reaches it, and from there it takes that time again", () => {
    fc.assert(
      fc.property(content, content, content, (limit, wanted, seconds) => {
        const found = secondsForLimit({ limit, seconds, wanted });
        const back = secondsForLimit({ limit: wanted, seconds: found.seconds as number, wanted: limit });
        near(back.seconds as number, seconds);
      }),
      runs,
    );
  });
});

describe("second opinions", () => {
  it("order does not matter and scale scales, for Kaplan–Meier and for regression on order statistics", () => {
    fc.assert(
      fc.property(mixed, ({ values, censored }) => {
        for (const f of [kaplanMeier, regressionOnOrderStatistics]) {
          const one = f(values, censored);
          const reversed = f([...values].reverse(), [...censored].reverse());
          const scaled = f(
            values.map((value) => value * 64),
            censored,
          );
          expect([reversed.status, scaled.status]).toEqual([one.status, one.status]);
          if (one.status !== "ok") continue;
          near(reversed.mean as number, one.mean);
          near(scaled.mean as number, 64 * one.mean);
          if (one.median !== null) near(scaled.median as number, 64 * one.median);
        }
      }),
      runs,
    );
  });
  it("the Kaplan–Meier mean lies among the values, and its distribution sums to one", () => {
    fc.assert(
      fc.property(mixed, ({ values, censored }) => {
        const r = kaplanMeier(values, censored);
        if (r.status !== "ok") return;
        expect(r.mean).toBeGreaterThanOrEqual(Math.min(...values) * (1 - 1e-12));
        expect(r.mean).toBeLessThanOrEqual(Math.max(...values) * (1 + 1e-12));
        expect(r.shareBelow).toBeGreaterThanOrEqual(0);
        expect(r.shareBelow).toBeLessThan(1);
      }),
      runs,
    );
  });
  it("what regression fills in leaves every seen value as it was", () => {
    fc.assert(
      fc.property(mixed, ({ values, censored }) => {
        const r = regressionOnOrderStatistics(values, censored);
        if (r.status !== "ok") return;
        for (const [i, value] of r.filled.entries()) {
          if (!censored[i]) expect(value).toBe(values[i]);
          expect(Number.isFinite(value) && value >= 0).toBe(true);
        }
      }),
      runs,
    );
  });
});

describe("propagation", () => {
  it("a Cholesky factor gives its covariance back, whatever the units", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 4 }).chain((n) =>
          fc.array(fc.array(fc.integer({ min: -3000, max: 3000 }), { minLength: n, maxLength: n }), {
            minLength: n,
            maxLength: n,
          }),
        ),
        (root) => {
          const times = (a: number[][]) =>
            a.map((x) => a.map((y) => x.reduce((sum, each, k) => sum + each * (y[k] as number), 0)));
          // Rows of very different size, as quantities in different units are.
          const matrix = times(root.map((row, i) => row.map((each) => each * 10 ** (7 * (i % 3) - 10))));
          const back = times(cholesky(matrix));
          for (const [i, row] of back.entries())
            for (const [j, each] of row.entries()) {
              const size = Math.sqrt((matrix[i]?.[i] as number) * (matrix[j]?.[j] as number));
              // A pivot under 1e-12 counts as zero, and what goes with it is at most its square root.
              expect(Math.abs(each - (matrix[i]?.[j] as number))).toBeLessThanOrEqual(3e-6 * size);
            }
        },
      ),
      runs,
    );
  });
  it("a product combines relative uncertainties in quadrature, and another input never shrinks u", () => {
    fc.assert(
      fc.property(content, content, fc.double({ min: 0.001, max: 0.3, noNaN: true }), (a, b, relative) => {
        const inputs = { a: { value: a, u: a * relative }, b: { value: b, u: b * 0.05 } };
        const both = propagate((at) => at.a * at.b, inputs);
        near(both.u / both.value, Math.hypot(relative, 0.05), 8);
        const alone = propagate((at) => at.a * at.b, { ...inputs, b: { value: b, u: 0 } });
        expect(both.u).toBeGreaterThanOrEqual(alone.u * (1 - 1e-9));
      }),
      runs,
    );
  });
});

const located = fc
  .array(fc.record({ value: content, session: fc.constantFrom("a", "b", "c"), spot: fc.constantFrom("1", "2") }), {
    minLength: 1,
    maxLength: 12,
  })
  .map((list) =>
    list.map((one, i): LocatedReading => ({ id: `${i}`, specimen: null, instrument: null, operator: null, ...one })),
  );

describe("consistency", () => {
  it("order of readings does not matter to components of scatter and to precision", () => {
    fc.assert(
      fc.property(located, (readings) => {
        const turned = [...readings].reverse();
        const [one, other] = [readings, turned].map((list) =>
          varianceComponents(list, { outer: "session", inner: "spot" }),
        );
        expect(other?.status).toBe(one?.status);
        if (one?.status === "ok" && other?.status === "ok") {
          const size = one.components.reduce((sum, part) => sum + Math.abs(part.anovaRaw) + part.reml, 0);
          for (const [i, part] of one.components.entries())
            expect(Math.abs((other.components[i]?.anovaRaw as number) - part.anovaRaw)).toBeLessThanOrEqual(
              1e-9 * size,
            );
        }
        const [p, q] = [readings, turned].map((list) => sessionPrecision(list));
        expect(q?.status).toBe(p?.status);
        if (p?.status === "ok" && q?.status === "ok") near(q.precision.sR, p.precision.sR);
      }),
      runs,
    );
  });
  it("comparing two results turns its sign with their order, and leaving a shared part out never makes them agree more", () => {
    fc.assert(
      fc.property(content, content, content, content, content, (a, b, ua, ub, calibration) => {
        const result = (value: number, u: number) => ({
          value,
          budget: [
            { code: "scatter-and-counting", u, nu: null },
            { code: "calibration", u: calibration, nu: null },
          ],
        });
        const [x, y] = [result(a, ua), result(b, ub)];
        const there = compareResults(x, y, { shared: ["calibration"] });
        expect(compareResults(y, x, { shared: ["calibration"] }).zeta).toBe(-(there.zeta as number) + 0);
        expect(Math.abs(there.zeta as number)).toBeGreaterThanOrEqual(Math.abs(compareResults(x, y).zeta as number));
      }),
      runs,
    );
  });
  it("one failed check makes any session not fit, whatever the order; without one it is fit or not shown", () => {
    const value = fc.option(fc.double({ min: 1, max: 200, noNaN: true }));
    fc.assert(
      fc.property(fc.array(value, { maxLength: 6 }), (values) => {
        const checks = values.map((each, i) => ({
          id: `${i}`,
          takenAt: `2026-03-14T${10 + i}:00:00Z`,
          value: each,
          u: 2,
          detectionLimit: null,
        }));
        const certificate = { certified: 100, uCertified: 1 };
        const r = sessionState(checks, certificate);
        expect(sessionState([...checks].reverse(), certificate)).toEqual(r);
        const outside = values.filter((each) => each !== null && Math.abs(each - 100) > 20);
        expect(r.failed).toHaveLength(outside.length);
        const any = values.some((each) => each !== null);
        expect(r.state).toBe(outside.length > 0 ? "not-fit" : any ? "fit" : "not-shown");
        expect(r.inDoubt.length > 0).toBe(outside.length > 0);
      }),
      runs,
    );
  });
});
