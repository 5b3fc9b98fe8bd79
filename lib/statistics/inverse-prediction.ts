import { DomainError } from "../quantity/domain-error.ts";
import { requireNotNegative, requireNumber } from "./require-number.ts";
import type { Line } from "./weighted-line.ts";

/**
 * The x that gave a reading y₀ on a calibration line, with first-order uncertainty (ISO/TS 28037:2010 11.2; JCGM
 * 100:2008 5.2.2).
 *
 * x = (y₀ − a)/b, u² = (u(y₀)² + u(a)² + x²·u(b)² + 2x·cov(a, b))/b². First order only: where the slope is known to
 * no better than some 10 % the true interval is lopsided.
 *
 * line: intercept a, slope b (not 0), their standard errors and covariance; y0 and uY0 (0 or more) in the unit of y.
 *
 * @throws DomainError `not-finite`, `negative`, `flat-line`, `covariance-too-large` (no variance could give it)
 * @example inversePrediction({ intercept: 0.651023, slope: 1.016409, seIntercept: 1.436208, seSlope: 0.0133094, cov: -0.00688 }, { y0: 500, uY0: 9 })
 * // { x: 491.287, u: 10.735 }
 */
export function inversePrediction(line: Line, { y0, uY0 }: { y0: number; uY0: number }): { x: number; u: number } {
  requireNumber("y0", y0);
  requireNotNegative("uY0", uY0);
  for (const part of ["intercept", "slope", "cov"] as const) requireNumber(part, line[part]);
  for (const part of ["seIntercept", "seSlope"] as const) requireNotNegative(part, line[part]);
  if (line.slope === 0) throw new DomainError("flat-line", "a line with slope 0 gives every x the same y", line.slope);
  // The limit of |cov| is the product of the standard errors; the margin is for rounding in the line's own sums.
  if (Math.abs(line.cov) > line.seIntercept * line.seSlope * (1 + 1e-9))
    throw new DomainError("covariance-too-large", "cov is beyond the product of the standard errors", line.cov);
  const x = (y0 - line.intercept) / line.slope;
  const lineVariance = line.seIntercept ** 2 + (x * line.seSlope) ** 2 + 2 * x * line.cov;
  return { x, u: Math.sqrt(uY0 * uY0 + Math.max(0, lineVariance)) / Math.abs(line.slope) };
}
