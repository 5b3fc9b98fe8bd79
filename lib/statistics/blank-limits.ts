import { DomainError } from "../quantity/domain-error.ts";
import { requireLevel, requireNumbers } from "./checks.ts";
import { detectionNoncentrality } from "./detection-noncentrality.ts";
import { tUpperQuantile } from "./distributions.ts";
import { moments } from "./moments.ts";

export type BlankLimits = {
  /** Mean and standard deviation of the blanks, with n − 1 degrees of freedom. */
  mean: number;
  sd: number;
  df: number;
  /** A reading above this says that something is there; `alpha` of true blanks lie above. */
  critical: number;
  /** A true reading at this is missed with probability `beta` only. */
  detection: number;
};

/**
 * Critical value and detection limit from repeated readings of a blank.
 *
 * s_w = s·√(1/m + 1/n): n blanks, m = `repeats` readings averaged for the sample (1). critical = x̄ + t_{1−α,n−1}·s_w;
 * detection = x̄ + δ·s_w, δ the noncentrality of Student's t (about 2t). Both on the scale of the readings: subtract the mean for a net
 * value. The spread at the detection limit is taken to be the blank's. s is itself uncertain, by about 1/√(2(n − 1)): 24 % at
 * ten blanks.
 *
 * With all blanks equal the limits meet at their mean, which says only that the readings are too coarse to show a spread.
 * Readings that were cut off at zero or at a detection limit of their own are no blanks: their spread is too small.
 *
 * blanks: two or more finite readings of blank material in one unit; repeats: whole, 1 or more; alpha, beta in (0, 0.5).
 *
 * Source: ISO 11843-1:1997 and ISO 11843-2:2000 5.2 and 5.3, at the blank; Currie, Anal. Chem. 40 (1968) 586.
 *
 * @throws DomainError `empty`, `too-few`, `not-finite`, `bad-level`, `bad-repeats`
 * @example blankLimits([1.2, -0.4, 0.5, 0.9, -0.2]) // { mean: 0.4, sd: 0.689202, df: 4, critical: 2.00951, detection: 3.47073 }
 */
export function blankLimits(
  blanks: readonly number[],
  { repeats = 1, alpha = 0.05, beta = 0.05 }: { repeats?: number; alpha?: number; beta?: number } = {},
): BlankLimits {
  requireNumbers("blanks", blanks, 2);
  requireLevel(2 * alpha, "2·alpha");
  requireLevel(2 * beta, "2·beta");
  if (!(Number.isInteger(repeats) && repeats >= 1))
    throw new DomainError("bad-repeats", "repeats must be a whole number of 1 or more", repeats);
  const { n, mean, sd } = moments(blanks);
  const spread = sd * Math.sqrt(1 / repeats + 1 / n);
  return {
    mean,
    sd,
    df: n - 1,
    critical: mean + tUpperQuantile(alpha, n - 1) * spread,
    detection: mean + detectionNoncentrality({ nu: n - 1, alpha, beta }) * spread,
  };
}
