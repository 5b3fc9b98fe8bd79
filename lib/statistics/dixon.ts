import { DomainError } from "../quantity/domain-error.ts";
import { bracketedRoot } from "./bracketed-root.ts";
import { requireLevel, requireNumbers } from "./checks.ts";
import { normalUpperTail } from "./distributions.ts";
import { gaussLegendre } from "./gauss-legendre.ts";

export type Dixon = {
  /** "no-spread": all values are equal, so there is no ratio. */
  status: "ok" | "no-spread";
  /** r10 of the lowest value: gap to the next over the range. */
  low: number | null;
  /** r10 of the highest value. */
  high: number | null;
  /** Critical value for either. */
  critical: number;
};

const MOST_VALUES = 100;

/**
 * Dixon's r10 ratio for the lowest and the highest value (Dixon 1950, 1951; Rorabacher, Anal. Chem. 63 (1991) 139).
 *
 * low = (x₂ − x₁)/(xₙ − x₁), high = (xₙ − xₙ₋₁)/(xₙ − x₁). `critical` is where
 * P(r10 > r) = n(n − 1)∬φ(x)φ(x − v)[Φ(x − rv) − Φ(x − v)]ⁿ⁻² dv dx equals alpha/sides: integrated numerically from the
 * exact distribution for normal readings, not read from a table. With sides 2, the default since both ends are returned,
 * it agrees with Rorabacher's two-sided tables (n = 5: 0.710, n = 10: 0.466 at 95 %).
 *
 * x: 3 to 100 finite values in one unit (the ratio is meant for 3 to 7: beyond that a second outlier hides the first).
 *
 * @throws DomainError `too-few`, `too-many-values`, `not-finite`, `bad-level`, `unknown-sides`
 * @example dixon([412, 405, 421, 398, 617]) // { status: "ok", low: 0.03196, high: 0.89498, critical: 0.71024 }
 */
export function dixon(
  x: readonly number[],
  { alpha = 0.05, sides = 2 }: { alpha?: number; sides?: 1 | 2 } = {},
): Dixon {
  requireNumbers("x", x, 3);
  requireLevel(alpha, "alpha");
  if (x.length > MOST_VALUES) throw new DomainError("too-many-values", `at most ${MOST_VALUES} values`, x.length);
  if (sides !== 1 && sides !== 2) throw new DomainError("unknown-sides", "sides must be 1 or 2", sides);
  const critical = dixonCritical(x.length, alpha / sides);
  const ordered = [...x].sort((a, b) => a - b);
  const at = (position: number) => ordered.at(position) as number;
  const range = at(-1) - at(0);
  if (range === 0) return { status: "no-spread", low: null, high: null, critical };
  return { status: "ok", low: (at(1) - at(0)) / range, high: (at(-1) - at(-2)) / range, critical };
}

const remembered = new Map<string, number>();

/** The r that r10 exceeds with probability `tail`. Remembered, since it depends on n and the level only. */
function dixonCritical(n: number, tail: number): number {
  const key = `${n} ${tail}`;
  const known = remembered.get(key);
  if (known !== undefined) return known;
  const critical = bracketedRoot((r) => dixonUpperTail(r, n) - tail, 0, 1);
  remembered.set(key, critical);
  return critical;
}

// Mean m of the two ends is spread like a normal of variance 1/2 (trapezium rule, which converges faster than any power
// on such a bell); the range v like one of variance 2 on [0, ∞) (Gauss–Legendre). Both are cut where under 1e-20 is left.
const CENTRE_REACH = 7;
const CENTRE_STEP = 0.125;
const RANGE_REACH = 14;
const rangeRule = gaussLegendre(64);

/** P(r10 > r) for one chosen end of n normal values. */
function dixonUpperTail(r: number, n: number): number {
  if (r <= 0) return 1;
  if (r >= 1) return 0;
  let total = 0;
  for (let m = -CENTRE_REACH; m <= CENTRE_REACH; m += CENTRE_STEP) {
    for (const [i, node] of rangeRule.nodes.entries()) {
      const v = ((node + 1) * RANGE_REACH) / 2;
      const highest = m + v / 2;
      const between = normalUpperTail(highest - v) - normalUpperTail(highest - r * v);
      total += (rangeRule.weights[i] as number) * Math.exp(-m * m - (v * v) / 4) * between ** (n - 2);
    }
  }
  return (n * (n - 1) * total * CENTRE_STEP * RANGE_REACH) / 2 / (2 * Math.PI);
}
