import { DomainError } from "../quantity/domain-error.ts";
import { requireNumbers } from "./checks.ts";
import { requirePositive, requireSameLength } from "./require-number.ts";

/** A straight line y = intercept + slope·x with the standard errors and covariance of its two numbers. */
export type Line = { intercept: number; slope: number; seIntercept: number; seSlope: number; cov: number };
export type WeightedLine = Line & { chi2: number; df: number };

/**
 * Straight line by weighted least squares with known standard uncertainties of y (ISO/TS 28037:2010 clause 6).
 *
 * w = 1/u²; slope = Σw(x − x̄)y/Σw(x − x̄)², intercept = ȳ − slope·x̄ with weighted means; se and cov from the u as given,
 * not scaled by the fit: se² (slope) = 1/Σw(x − x̄)², cov = −x̄·se²(slope), se²(intercept) = 1/Σw + x̄²·se²(slope).
 * chi2 = Σw(y − line)², df = n − 2: a chi2 far above df says that the u are too small or the line is none.
 *
 * x, y: two or more finite values each; u above 0, unit of y. x must not all be equal.
 *
 * @throws DomainError `length-mismatch`, `too-few`, `not-finite`, `not-positive`, `no-spread-in-x`
 * @example weightedLine([1, 2, 3, 4, 5, 6], [2.1, 3.9, 6.2, 7.8, 10.1, 12.2], [0.2, 0.2, 0.2, 0.2, 0.2, 0.2])
 * // { intercept: -0.02, slope: 2.02, seIntercept: 0.18619, seSlope: 0.047809, cov: -0.008, chi2: 3.2, df: 4 }
 */
export function weightedLine(x: readonly number[], y: readonly number[], u: readonly number[]): WeightedLine {
  requireSameLength("x and y", x, y);
  requireSameLength("x and u", x, u);
  requireNumbers("x", x, 2);
  requireNumbers("y", y, 2);
  for (const each of u) requirePositive("u", each);
  // Weights relative to the smallest u, so that u of any size keeps the sums in range.
  const unit = Math.min(...u);
  const w = u.map((each) => (unit / each) ** 2);
  const sumWeights = w.reduce((sum, weight) => sum + weight, 0);
  const mean = (values: readonly number[]) => {
    const anchor = values[0] as number;
    return anchor + values.reduce((sum, value, i) => sum + (w[i] as number) * (value - anchor), 0) / sumWeights;
  };
  const xMean = mean(x);
  const yMean = mean(y);
  let sxx = 0;
  let sxy = 0;
  for (const [i, weight] of w.entries()) {
    const dx = (x[i] as number) - xMean;
    sxx += weight * dx * dx;
    sxy += weight * dx * ((y[i] as number) - yMean);
  }
  if (sxx === 0 || x.every((value) => value === x[0]))
    throw new DomainError("no-spread-in-x", "all x are equal: no line goes through them", x[0]);
  const slope = sxy / sxx;
  const slopeVariance = (unit * unit) / sxx;
  const chi2 = w.reduce((sum, weight, i) => {
    const residual = (y[i] as number) - yMean - slope * ((x[i] as number) - xMean);
    return sum + weight * (residual / unit) ** 2;
  }, 0);
  return {
    intercept: yMean - slope * xMean,
    slope,
    seIntercept: Math.sqrt((unit * unit) / sumWeights + xMean * xMean * slopeVariance),
    seSlope: Math.sqrt(slopeVariance),
    cov: -xMean * slopeVariance,
    chi2,
    df: x.length - 2,
  };
}
