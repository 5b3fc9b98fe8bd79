import { coverageFactor } from "../statistics/coverage-factor.ts";
import { chiSquareUpperTail } from "../statistics/distributions.ts";
import { york } from "../statistics/york.ts";

/** One check standard: its certified value and what was read of it, with standard uncertainties. */
export type StandardRead = { certified: number; uCertified: number; read: number; uRead: number };

export type RecoveryLine = {
  /** Slope: read over certified along the line; without unit. */
  recovery: number;
  uRecovery: number;
  /** What is read where nothing is there, unit of the readings. */
  offset: number;
  uOffset: number;
  cov: number;
  /** Probability of points this far off a straight line, if all uncertainties are right; null with two standards. */
  fitP: number | null;
  /** By how much the uncertainties were widened because the points do not lie on a line within theirs; 1 where they do. */
  widened: number;
  /** Whether slope and offset differ from 1 and 0 by more than their expanded uncertainties (95 %). */
  recoveryDiffers: boolean;
  offsetDiffers: boolean;
};

/**
 * Recovery over several check standards, as a straight line of read against certified values with errors in both: a slope apart
 * from 1 is an error in proportion, an offset apart from 0 the same error everywhere.
 *
 * Line by `york`. With S of n − 2 degrees of freedom above n − 2, uncertainties are widened by √(S/(n − 2)) (never narrowed) and held
 * against Student's t with n − 2; otherwise against the normal distribution. Differences are judged for slope and offset each on its own.
 *
 * standards: two or more with different certified values; uCertified and uRead 0 or more and not both 0; one unit, one element and mode.
 *
 * Source: York et al., Am. J. Phys. 72 (2004) 367; ISO/TS 28037:2010 clause 7 and 6.3 (validation by χ²).
 *
 * @throws DomainError what `york` refuses: `too-few`, `not-finite`, `negative`, `no-uncertainty`, `no-spread-in-x`, `no-line`
 * @example recoveryLine([[17.3, 0.4, 19, 2], [50.1, 1, 48.2, 2.5], [148, 5, 155, 6], [400, 12, 389, 10], [1162, 31, 1190, 22]].map(
 *   ([certified, uCertified, read, uRead]) => ({ certified, uCertified, read, uRead })))
 * // { recovery: 1.00404, uRecovery: 0.0240274, offset: 0.42897, uOffset: 1.84931, fitP: 0.4126, widened: 1, recoveryDiffers: false, offsetDiffers: false }
 */
export function recoveryLine(standards: readonly StandardRead[]): RecoveryLine {
  const { intercept, slope, seIntercept, seSlope, cov, s } = york(
    standards.map((one) => one.certified),
    standards.map((one) => one.read),
    standards.map((one) => one.uCertified),
    standards.map((one) => one.uRead),
  );
  const df = standards.length - 2;
  const widened = df > 0 ? Math.max(1, Math.sqrt(s / df)) : 1;
  const k = coverageFactor(widened > 1 ? df : Number.POSITIVE_INFINITY, 0.95);
  const uRecovery = widened * seSlope;
  const uOffset = widened * seIntercept;
  return {
    recovery: slope,
    uRecovery,
    offset: intercept,
    uOffset,
    cov: widened * widened * cov,
    fitP: df > 0 ? chiSquareUpperTail(s, df) : null,
    widened,
    recoveryDiffers: Math.abs(slope - 1) > k * uRecovery,
    offsetDiffers: Math.abs(intercept) > k * uOffset,
  };
}
