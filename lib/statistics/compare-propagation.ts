import { DomainError } from "../quantity/domain-error.ts";
import { numericalTolerance } from "./numerical-tolerance.ts";
import { requireNotNegative, requireNumber } from "./require-number.ts";

/**
 * Whether linear propagation will do: its interval held against the Monte Carlo one of the same model and level.
 *
 * δ = half a unit of the last of `digits` (2) significant digits of u; dLow = |lo − lo'|, dHigh = |hi − hi'|; agrees where both are at
 * most δ. Where they differ, the Monte Carlo result stands. u is the linear one; where that is 0 (the model rests on a summit)
 * the simulated standard deviation stands for it. Both 0: δ is 0.
 *
 * The Monte Carlo ends must themselves be known better than δ/4 or so: `adaptiveMonteCarlo` with one digit more, or a million draws.
 *
 * linear: what `propagate` gives; simulated: sd and the interval of the same kind (symmetric for symmetric). One unit.
 *
 * Source: JCGM 101:2008 8.1.3 and 8.2.
 *
 * @throws DomainError `not-finite`, `negative`, `bad-interval` (upside down), `bad-digits`
 * @example comparePropagation({ u: 2, interval: [-3.919928, 3.919928] }, { sd: 2, interval: [-3.879407, 3.879407] })
 * // { delta: 0.05, dLow: 0.040521, dHigh: 0.040521, agrees: true }
 */
export function comparePropagation(
  linear: { u: number; interval: readonly [number, number] },
  simulated: { sd: number; interval: readonly [number, number] },
  { digits = 2 }: { digits?: number } = {},
): { delta: number; dLow: number; dHigh: number; agrees: boolean } {
  requireNotNegative("u", linear.u);
  requireNotNegative("sd", simulated.sd);
  for (const [lo, hi] of [linear.interval, simulated.interval]) {
    requireNumber("lower end", lo);
    requireNumber("upper end", hi);
    if (lo > hi) throw new DomainError("bad-interval", "an interval's lower end lies above its upper end", [lo, hi]);
  }
  numericalTolerance(1, digits);
  const u = linear.u > 0 ? linear.u : simulated.sd;
  const delta = u > 0 ? numericalTolerance(u, digits) : 0;
  const dLow = Math.abs(linear.interval[0] - simulated.interval[0]);
  const dHigh = Math.abs(linear.interval[1] - simulated.interval[1]);
  return { delta, dLow, dHigh, agrees: dLow <= delta && dHigh <= delta };
}
