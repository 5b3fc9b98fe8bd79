import { DomainError } from "../quantity/domain-error.ts";
import { requireNumbers } from "./checks.ts";
import { requireNotNegative, requirePositive } from "./require-number.ts";

/**
 * Detection limit of the weighted mean of repeated readings of one place, from the limit of each.
 *
 * L² = F² + 1/Σ(1/(Lᵢ² − F²)), F = `shared`: the part of every limit that all readings have in common (the blank's own uncertainty, the
 * calibration at zero) and that repeats do not average out. n equal limits and F = 0 give L/√n. Limits are taken as the same
 * multiple of the standard uncertainty, errors as independent but for F, and readings as weighted by 1/(Lᵢ² − F²).
 *
 * It is the limit of a mean that has been worked out. "Every reading was below its limit" alone does not put the content below this
 * number: for that, the readings below detection must be given as numbers. Repeats at different spots do not pool: a content that
 * differs between spots does not average like counting does.
 *
 * limits: one or more, above 0, one unit; shared: 0 or more and below every limit, same unit.
 *
 * Source: the law of propagation (JCGM 100:2008 5.1.2 and 5.2.2) on Currie's limits, which are multiples of u.
 *
 * @throws DomainError `empty`, `not-finite`, `not-positive`, `negative`, `shared-too-large`
 * @example pooledDetectionLimit([12, 12, 12, 12]) // 6
 */
export function pooledDetectionLimit(limits: readonly number[], { shared = 0 }: { shared?: number } = {}): number {
  requireNumbers("limits", limits);
  for (const limit of limits) requirePositive("limits", limit);
  requireNotNegative("shared", shared);
  const smallest = Math.min(...limits);
  if (shared >= smallest)
    throw new DomainError("shared-too-large", "the shared part must be below every limit", shared);
  // Relative to the smallest limit, so that squares of any size stay in range.
  const common = shared / smallest;
  const precision = limits.reduce((sum, limit) => {
    const ratio = limit / smallest;
    return sum + 1 / ((ratio - common) * (ratio + common));
  }, 0);
  return smallest * Math.hypot(common, 1 / Math.sqrt(precision));
}
