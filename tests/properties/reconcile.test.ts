import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { ReconcileResult, ShotInput, StatedContribution } from "@/lib/reconcile/types.ts";
import { inputOf, missed, resultOf, seen, shot, written } from "../reconcile/shots.ts";

/** The method's "Properties that always hold", and that nothing legal makes it stumble. */
const runs = { numRuns: 1000 };

type Draw = { value: number; u: number | null; below: boolean; limit: number | null; spot: string | null };

const readingWith = (u: fc.Arbitrary<number | null>, below: fc.Arbitrary<boolean>): fc.Arbitrary<Draw> =>
  fc.record({
    value: fc.integer({ min: 1, max: 20_000 }).map((n) => n / 8),
    u,
    below,
    limit: fc.oneof(
      { weight: 9, arbitrary: fc.integer({ min: 8, max: 400 }).map((n) => n / 8) },
      { weight: 1, arbitrary: fc.constant(null) },
    ),
    spot: fc.constantFrom(null, null, "a", "b", "c"),
  });
const someU = fc.integer({ min: 1, max: 400 }).map((n) => n / 8);
const anything = fc.array(readingWith(fc.oneof(someU, someU, fc.constant(null)), fc.boolean()), {
  minLength: 0,
  maxLength: 8,
});
const detectedOnly = (min: number) =>
  fc
    .array(readingWith(someU, fc.constant(false)), { minLength: min, maxLength: 8 })
    .map((draws) => draws.map((d) => ({ ...d, spot: null })));

const shotsOf = (draws: readonly Draw[], factor = 1): ShotInput[] =>
  draws.map((draw, i) => {
    const common = { id: String(i), spot: draw.spot };
    return draw.below
      ? missed(draw.limit === null ? null : draw.limit * factor, common)
      : seen(draw.value * factor, draw.u === null ? null : draw.u * factor, common);
  });

const close = (a: number | null | undefined, b: number | null | undefined, relative = 1e-6): void => {
  if (a === null || b === null || a === undefined || b === undefined) {
    expect(a ?? null).toBe(b ?? null);
    return;
  }
  expect(Math.abs(a - b)).toBeLessThanOrEqual(relative * Math.max(Math.abs(a), Math.abs(b)) + 1e-12);
};
const width = (result: ReconcileResult): number =>
  result.interval ? result.interval[1] - result.interval[0] : Number.NaN;

describe("properties of reconcile that always hold", () => {
  it("has an answer for every legal input, and keeps its own books", () => {
    fc.assert(
      fc.property(anything, (draws) => {
        const result = resultOf(shotsOf(draws));
        expect(result.counts.readings).toBe(draws.length);
        expect(result.spots.flatMap((spot) => spot.shots).sort()).toEqual(draws.map((_, i) => String(i)).sort());
        for (const number of [result.value, result.u, result.U, ...(result.interval ?? [])])
          if (number !== null) expect(Number.isFinite(number)).toBe(true);
        if (result.interval) {
          expect(result.interval[0]).toBeGreaterThanOrEqual(0);
          expect(result.interval[1]).toBeGreaterThanOrEqual(result.interval[0]);
          if (result.value !== null && result.value >= 0) {
            expect(result.interval[0]).toBeLessThanOrEqual(result.value);
            expect(result.interval[1]).toBeGreaterThanOrEqual(result.value);
          }
        }
        expect(result.value === null).toBe(result.state !== "quantified");
      }),
      runs,
    );
  });

  it("does not depend on the order of the readings, nor on how they are numbered", () => {
    fc.assert(
      fc.property(anything, fc.infiniteStream(fc.nat()), (draws, keys) => {
        const shots = shotsOf(draws);
        const mixed = shots
          .map((one) => ({ one, key: keys.next().value ?? 0 }))
          .sort((a, b) => a.key - b.key)
          .map(({ one }) => one);
        const first = resultOf(shots);
        expect(resultOf(mixed)).toEqual(first);
        const renumbered = resultOf(mixed.map((one, i) => ({ ...one, id: `n${i}` })));
        expect([renumbered.value, renumbered.u, renumbered.interval]).toEqual([first.value, first.u, first.interval]);
      }),
      runs,
    );
  });

  it("scales with the values and errors", () => {
    fc.assert(
      fc.property(anything, fc.constantFrom(0.25, 4, 3, 0.1), (draws, factor) => {
        const one = resultOf(shotsOf(draws));
        const other = resultOf(shotsOf(draws, factor));
        // Only the resolution of the written digits does not scale with a factor; equal readings without errors rest on it.
        fc.pre(!draws.some((draw) => draw.u === null));
        expect(other.state).toBe(one.state);
        expect(other.model).toBe(one.model);
        close(other.value, one.value === null ? null : one.value * factor);
        close(other.u, one.u === null ? null : one.u * factor, 1e-5);
        close(other.below, one.below === null ? null : one.below * factor);
        for (const end of [0, 1] as const)
          close(other.interval?.[end], one.interval ? one.interval[end] * factor : null, 1e-5);
      }),
      runs,
    );
  });

  it("never shrinks u when a component is added", () => {
    const component = fc.record({
      relative: fc.double({ min: 0, max: 0.5, noNaN: true }),
      nu: fc.integer({ min: 1, max: 60 }),
    });
    fc.assert(
      fc.property(detectedOnly(1), component, component, (draws, first, second) => {
        const stated = (part: { relative: number; nu: number }, code: string): StatedContribution => ({
          ...part,
          code,
          type: "B",
          source: "test",
        });
        const shots = shotsOf(draws);
        const none = resultOf(shots);
        const one = resultOf(shots, { contributions: [stated(first, "first")] });
        const two = resultOf(shots, { contributions: [stated(first, "first"), stated(second, "second")] });
        if (none.u === null) return;
        expect(one.u ?? 0).toBeGreaterThanOrEqual(none.u * (1 - 1e-12));
        expect(two.u ?? 0).toBeGreaterThanOrEqual((one.u ?? 0) * (1 - 1e-12));
      }),
      runs,
    );
  });

  it("never widens the interval when every spot's evidence is repeated at new spots", () => {
    fc.assert(
      fc.property(detectedOnly(2), (draws) => {
        const once = resultOf(shotsOf(draws));
        const twice = resultOf(shotsOf([...draws, ...draws]));
        if (once.interval && twice.interval) expect(width(twice)).toBeLessThanOrEqual(width(once) * (1 + 1e-6));
      }),
      runs,
    );
  });

  it("changes nothing but digits when the unit changes", () => {
    fc.assert(
      fc.property(detectedOnly(1), (draws) => {
        const inUnit = (unit: string, per: number) =>
          resultOf(
            draws.map((draw, i) =>
              shot({
                id: String(i),
                unit,
                value: written(draw.value / per),
                error: written((draw.u ?? 1) / per),
                k: 1,
              }),
            ),
          );
        const ppm = inUnit("ppm", 1);
        const percent = inUnit("%", 10_000);
        expect(percent.unit).toBe(ppm.unit);
        expect(percent.flags).toEqual(ppm.flags);
        close(percent.value, ppm.value);
        close(percent.u, ppm.u);
        for (const end of [0, 1] as const) close(percent.interval?.[end], ppm.interval?.[end]);
      }),
      runs,
    );
  });

  it("gives the same digits and the same digest every time", () => {
    fc.assert(
      fc.property(anything, (draws) => {
        const shots = shotsOf(draws);
        expect(JSON.stringify(resultOf(shots))).toBe(JSON.stringify(resultOf(structuredClone(shots))));
      }),
      { numRuns: 200 },
    );
  });

  it("does not touch its input", () => {
    fc.assert(
      fc.property(anything, (draws) => {
        const input = inputOf(shotsOf(draws));
        const before = JSON.stringify(input);
        resultOf(input.shots);
        expect(JSON.stringify(input)).toBe(before);
      }),
      { numRuns: 100 },
    );
  });
});
