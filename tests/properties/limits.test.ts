import fc from "fast-check";
import { expect, test } from "vitest";
import { decide, type Held } from "@/lib/limits/decide.ts";
import { decideSum } from "@/lib/limits/decide-sum.ts";
import type { Verdict } from "@/lib/limits/types.ts";

const content = fc.double({ min: 0.01, max: 1e6, noNaN: true });
const share = fc.double({ min: 0.001, max: 2, noNaN: true });

/** Results of every state, symmetric or not, even or not. */
const anyHeld: fc.Arbitrary<Held> = fc
  .record({
    state: fc.constantFrom("quantified" as const, "not-detected" as const, "not-quantified" as const),
    value: content,
    relative: share,
    nu: fc.option(fc.double({ min: 1, max: 200, noNaN: true })),
    low: fc.double({ min: 0, max: 1, noNaN: true }),
    high: fc.double({ min: 1, max: 50, noNaN: true }),
    asymmetric: fc.boolean(),
    uneven: fc.boolean(),
    withInterval: fc.boolean(),
  })
  .map(({ state, value, relative, nu, low, high, asymmetric, uneven, withInterval }) => ({
    state,
    value: state === "quantified" ? value : null,
    u: state === "quantified" ? value * relative : null,
    nuEff: nu,
    interval: state === "quantified" && withInterval ? ([value * low, value * high] as [number, number]) : null,
    asymmetric,
    below: state === "not-detected" ? value : null,
    upperBound: state === "not-quantified" ? value : null,
    uneven,
  }));

/** From above the limit to below it; "not-detected" says as little as "too-close". */
const rank: Record<Verdict, number> = { above: 0, "too-close": 1, "not-detected": 1, "cannot-say": 1, below: 2 };
const failsAt = fc.constantFrom(">" as const, ">=" as const);

test("as the limit rises the verdict moves one way: above, too close, below", () => {
  fc.assert(
    fc.property(anyHeld, content, content, failsAt, (held, a, b, fails) => {
      const [low, high] = a < b ? [a, b] : [b, a];
      const first = decide(held, { value: low, failsAt: fails });
      const second = decide(held, { value: high, failsAt: fails });
      expect(rank[first.verdict]).toBeLessThanOrEqual(rank[second.verdict]);
      if (first.probabilityAbove !== null && second.probabilityAbove !== null)
        expect(first.probabilityAbove).toBeGreaterThanOrEqual(second.probabilityAbove - 1e-12);
    }),
    { numRuns: 2000 },
  );
});

test("a limit that fails at its own number is never passed more easily", () => {
  fc.assert(
    fc.property(anyHeld, content, (held, value) => {
      const strict = rank[decide(held, { value, failsAt: ">=" }).verdict];
      expect(strict).toBeLessThanOrEqual(rank[decide(held, { value, failsAt: ">" }).verdict]);
    }),
  );
});

test("a smaller risk never turns too close into a verdict", () => {
  fc.assert(
    fc.property(anyHeld, content, fc.double({ min: 0.001, max: 0.2, noNaN: true }), (held, value, risk) => {
      const loose = decide(held, { value, failsAt: ">" }, risk).verdict;
      const tight = decide(held, { value, failsAt: ">" }, risk / 2).verdict;
      if (rank[loose] === 1) expect(tight).toBe(loose);
    }),
  );
});

test("scaling the result and the limit changes nothing", () => {
  fc.assert(
    fc.property(anyHeld, content, failsAt, fc.constantFrom(2, 0.5, 1024), (held, value, fails, factor) => {
      const times = (x: number | null) => (x === null ? null : x * factor);
      const scaled: Held = {
        ...held,
        value: times(held.value),
        u: times(held.u),
        below: times(held.below),
        upperBound: times(held.upperBound),
        interval: held.interval && [held.interval[0] * factor, held.interval[1] * factor],
      };
      expect(decide(scaled, { value: value * factor, failsAt: fails })).toEqual(
        decide(held, { value, failsAt: fails }),
      );
    }),
  );
});

test("a sum moves one way with its limit, and leaving an element out never gives below", () => {
  const substances = ["Pb", "Cd", "Hg"];
  fc.assert(
    fc.property(anyHeld, anyHeld, anyHeld, content, content, failsAt, (Pb, Cd, Hg, a, b, fails) => {
      const limit = (value: number) => ({ value, failsAt: fails, sum: true, substances });
      const [low, high] = a < b ? [a, b] : [b, a];
      const all = { Pb, Cd, Hg };
      expect(rank[decideSum(all, limit(low)).verdict]).toBeLessThanOrEqual(rank[decideSum(all, limit(high)).verdict]);
      expect(decideSum({ Pb, Cd }, limit(high)).verdict).not.toBe("below");
    }),
    { numRuns: 1000 },
  );
});
