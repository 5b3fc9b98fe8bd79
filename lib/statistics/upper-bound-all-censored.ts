import { bracketedRoot } from "./bracketed-root.ts";
import { requireLevel, requireReadings, scaleOf } from "./checks.ts";
import { normalLogCdf, normalQuantile } from "./distributions.ts";

/**
 * Upper bound of a content all of whose readings were below their limits: one-sided likelihood-ratio bound.
 *
 * The m with Σ ln Φ((Lᵢ − m)/uᵢ) = −z²/2, z the `level` quantile of the normal distribution (0.95 → 1.645): the likelihood has its
 * supremum 1 as m falls, and the bound is where it has dropped by z²/2. No spread between spots is assumed (τ = 0), since nothing
 * seen can tell it. Limits, u and the bound in one unit; the bound can be negative where u is large beside the limits.
 *
 * Refuses (DomainError) empty or unequal lists, numbers that are not finite, u of zero or less, level not above 0.5 or not below 1.
 *
 * Source: Pawitan, In All Likelihood (2001) 2.6, likelihood intervals (from memory).
 *
 * @example upperBoundAllCensored([10, 12, 15], [3, 3, 4]) // { upper: 10.517016 }
 */
export const upperBoundAllCensored = (
  limits: readonly number[],
  u: readonly number[],
  options: { level?: number } = {},
): { upper: number } => {
  const { level = 0.95 } = options;
  requireReadings(limits, u);
  requireLevel(level);
  requireLevel(2 * level - 1, "2·level − 1");
  const drop = 0.5 * normalQuantile(1 - level) ** 2;
  const lowest = limits.reduce((a, b, i) => (b < limits[a]! ? i : a), 0);
  const origin = limits[lowest]!;
  const scale = scaleOf(u[lowest]!);
  const over = (m: number) => {
    let l = drop;
    for (let i = 0; i < limits.length; i++) l += normalLogCdf((limits[i]! - origin - m * scale) / u[i]!);
    return l;
  };
  let lo = -1;
  while (over(lo) < 0) lo *= 2;
  let hi = 1;
  while (over(hi) > 0) hi *= 2;
  return { upper: origin + scale * bracketedRoot(over, lo, hi) };
};
