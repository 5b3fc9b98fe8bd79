import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { decide, heldOf } from "@/lib/limits/decide.ts";
import type { ReconcileResult, ShotInput, StatedContribution } from "@/lib/reconcile/types.ts";
import { missed, resultOf, seen, shot, written } from "../reconcile/shots.ts";

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
    .array(readingWith(someU, fc.constant(false)), { minLength: min, maxLength: 6 })
    .map((draws) => draws.map((d) => ({ ...d, spot: null })));

const undetected = fc.array(readingWith(someU, fc.constant(true)), { minLength: 1, maxLength: 6 });

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

/** Books, order, numbering, scale and repetition are asked of the same draws: a reconciliation is the dear part of a run. */
function booksBalance(result: ReconcileResult, draws: readonly Draw[]): void {
  expect(result.counts.readings).toBe(draws.length);
  expect(result.spots.flatMap((spot) => spot.shots).sort()).toEqual(draws.map((_, i) => String(i)).sort());
  for (const number of [result.value, result.u, result.U, ...(result.interval ?? [])])
    if (number !== null) expect(Number.isFinite(number)).toBe(true);
  expect(result.value === null).toBe(result.state !== "quantified");
  if (result.interval === null) return;
  const [lo, hi] = result.interval;
  expect(lo).toBeGreaterThanOrEqual(0);
  expect(hi).toBeGreaterThanOrEqual(lo);
  if (result.value !== null && result.value >= 0) {
    expect(lo).toBeLessThanOrEqual(result.value);
    expect(hi).toBeGreaterThanOrEqual(result.value);
  }
}

/** The two things that do not scale: the last written digit, on which equal readings without errors rest, and the whole. */
const scales = (result: ReconcileResult): boolean =>
  !result.flags.includes("error-unknown") && !result.notes.includes("interval-to-whole");

function isScaled(other: ReconcileResult, one: ReconcileResult, factor: number): void {
  const times = (number: number | null): number | null => (number === null ? null : number * factor);
  expect([other.state, other.model, other.notes]).toEqual([one.state, one.model, one.notes]);
  close(other.value, times(one.value));
  close(other.u, times(one.u), 1e-5);
  close(other.below, times(one.below));
  for (const end of [0, 1] as const) close(other.interval?.[end], one.interval ? times(one.interval[end]) : null, 1e-5);
}

// A thousand reconciliations, some by quadrature, take longer than the usual limit on a busy machine.
describe("properties of reconcile that always hold", { timeout: 600_000 }, () => {
  it("has an answer for every legal input, whatever the order, the numbering and the scale of its readings", () => {
    fc.assert(
      fc.property(
        anything,
        fc.array(fc.nat(), { minLength: 8, maxLength: 8 }),
        fc.constantFrom(0.25, 4, 3, 0.1),
        (draws, keys, factor) => {
          const shots = shotsOf(draws);
          const before = JSON.stringify(shots);
          const first = resultOf(shots);
          expect(JSON.stringify(shots)).toBe(before);
          booksBalance(first, draws);
          const mixed = shots.map((one, i) => ({ one, key: keys[i] ?? 0 })).sort((a, b) => a.key - b.key);
          const renumbered = resultOf(mixed.map(({ one }, i) => ({ ...one, id: `n${i}` })));
          expect([renumbered.value, renumbered.u, renumbered.interval, renumbered.flags]).toEqual([
            first.value,
            first.u,
            first.interval,
            first.flags,
          ]);
          const scaled = resultOf(shotsOf(draws, factor));
          if (scales(first) && scales(scaled)) isScaled(scaled, first, factor);
        },
      ),
      runs,
    );
  });

  it("gives the same digits and the same digest for the same readings in another order", () => {
    fc.assert(
      fc.property(detectedOnly(1), (draws) => {
        const shots = shotsOf(draws);
        expect(JSON.stringify(resultOf([...shots].reverse()))).toBe(JSON.stringify(resultOf(structuredClone(shots))));
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

  it("moves the verdict one way as the limit moves", () => {
    const limits = fc.array(fc.integer({ min: 1, max: 40_000 }), { minLength: 4, maxLength: 4 });
    const rank = { above: 0, "too-close": 1, "not-detected": 1, "cannot-say": 1, below: 2 } as const;
    fc.assert(
      fc.property(fc.oneof(detectedOnly(1), undetected), limits, (draws, numbers) => {
        const held = heldOf(resultOf(shotsOf(draws)));
        const ranks = numbers
          .map((number) => number / 8)
          .sort((a, b) => a - b)
          .map((value) => rank[decide(held, { value, failsAt: ">", anyReportedValue: false }).verdict]);
        expect(ranks).toEqual([...ranks].sort((a, b) => a - b));
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
});
