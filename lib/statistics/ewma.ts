import { DomainError } from "../quantity/domain-error.ts";
import { requireNumbers } from "./checks.ts";
import { beyond, type Signals } from "./individuals-chart.ts";
import { requireNumber, requirePositive } from "./require-number.ts";

export type Ewma = { z: number[]; limits: [lo: number, hi: number][]; signals: Signals };

/**
 * Exponentially weighted moving average chart with exact limits (Roberts 1959; ISO 7870-6; Montgomery, Introduction to
 * Statistical Quality Control, 9.2).
 *
 * z₀ = mu, zᵢ = lambda·xᵢ + (1 − lambda)·zᵢ₋₁;
 * limitsᵢ = mu ± L·sigma·√(lambda/(2 − lambda)·(1 − (1 − lambda)²ⁱ)), i from 1: they widen from the first reading to the
 * steady state. A signal is a zᵢ strictly beyond its limits.
 *
 * x: finite readings in order; mu, sigma (above 0) in their unit; 0 < lambda ≤ 1; L above 0 in multiples of sigma.
 *
 * @throws DomainError `too-few`, `not-finite`, `not-positive`, `bad-lambda`
 * @example ewma([9.45, 7.99], { mu: 10, sigma: 1, lambda: 0.1, L: 2.7 })
 * // { z: [9.945, 9.7495], limits: [[9.73, 10.27], [9.63675, 10.36325]], signals: [] }
 */
export function ewma(
  x: readonly number[],
  { mu, sigma, lambda, L }: { mu: number; sigma: number; lambda: number; L: number },
): Ewma {
  requireNumbers("x", x, 1);
  requireNumber("mu", mu);
  requirePositive("sigma", sigma);
  requirePositive("L", L);
  if (!(lambda > 0 && lambda <= 1)) throw new DomainError("bad-lambda", "lambda must be above 0 and at most 1", lambda);
  const z: number[] = [];
  const limits: [number, number][] = [];
  let before = mu;
  for (const [i, value] of x.entries()) {
    before = lambda * value + (1 - lambda) * before;
    z.push(before);
    const reach = L * sigma * Math.sqrt((lambda / (2 - lambda)) * (1 - (1 - lambda) ** (2 * (i + 1))));
    limits.push([mu - reach, mu + reach]);
  }
  return { z, limits, signals: beyond(z, (i) => limits[i] as [number, number]) };
}
