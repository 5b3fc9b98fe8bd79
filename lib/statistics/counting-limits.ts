import { DomainError } from "../quantity/domain-error.ts";
import { requireLevel } from "./checks.ts";
import { normalQuantile } from "./distributions.ts";
import { requireNotNegative } from "./require-number.ts";

export type CountingLimits = {
  /** Net counts above which something is said to be there (L_C). */
  critical: number;
  /** Net counts that are missed only with probability beta (L_D). */
  detection: number;
  /** Net counts whose relative standard deviation is `relative` (L_Q). */
  determination: number;
};

/**
 * Critical level, detection limit and determination limit of a count over a background, in net counts.
 *
 * B: background counts expected under the peak in the counting time. σ₀² = B·(1 + 1/r), r = time the background was counted
 * over time the sample is counted: 1 for a paired blank, Infinity for a background known exactly.
 * L_C = z_α·σ₀; L_D solves L_D = L_C + z_β·√(L_D + σ₀²), which for α = β is L_C·2 + z²;
 * L_Q = (1 + √(1 + 4f²·σ₀²))/(2f²), f = `relative` (0.1).
 * With α = β = 0.05 and a paired blank: 2.33·√B, 2.71 + 4.65·√B and 50·(1 + √(1 + B/12.5)).
 *
 * Counts are taken as normal with their Poisson variance; under about ten background counts the true risks differ from α and β.
 * To turn counts into a content, divide by the net counts that one unit of content gives in the same time.
 *
 * background: counts, 0 or more (a mean, so it need not be whole); alpha, beta in (0, 0.5); relative in (0, 1).
 *
 * Source: Currie, Anal. Chem. 40 (1968) 586, equations 6, 12a and 13 and Table II.
 *
 * @throws DomainError `not-finite`, `negative`, `bad-level`, `not-positive` (backgroundTime)
 * @example countingLimits({ background: 100 }) // { critical: 23.2617, detection: 49.229, determination: 200 }
 */
export function countingLimits({
  background,
  backgroundTime = 1,
  alpha = 0.05,
  beta = 0.05,
  relative = 0.1,
}: {
  background: number;
  backgroundTime?: number;
  alpha?: number;
  beta?: number;
  relative?: number;
}): CountingLimits {
  requireNotNegative("background", background);
  if (typeof backgroundTime !== "number" || !(backgroundTime > 0))
    throw new DomainError("not-positive", "backgroundTime must be above zero", backgroundTime);
  requireLevel(2 * alpha, "2·alpha");
  requireLevel(2 * beta, "2·beta");
  requireLevel(relative, "relative");
  const variance = background * (1 + 1 / backgroundTime);
  const zAlpha = -normalQuantile(alpha);
  const zBeta = -normalQuantile(beta);
  const critical = zAlpha * Math.sqrt(variance);
  const half = (zBeta * zBeta) / 2;
  const f2 = relative * relative;
  return {
    critical,
    detection: critical + half + Math.sqrt(half * half + zBeta * zBeta * (critical + variance)),
    determination: (1 + Math.sqrt(1 + 4 * f2 * variance)) / (2 * f2),
  };
}
