import { requireNumbers } from "./checks.ts";
import type { Signals } from "./individuals-chart.ts";
import { requireNotNegative, requireNumber, requirePositive } from "./require-number.ts";

export type Cusum = {
  /** Upper sums, in the unit of x. */
  cPlus: number[];
  /** Lower sums, counted positive, in the unit of x. */
  cMinus: number[];
  /** Positions where either sum is strictly above h·sigma. */
  signals: Signals;
};

/**
 * Tabular cumulative sum chart, two-sided, without reset after a signal (Page 1954; ISO 7870-4; Montgomery,
 * Introduction to Statistical Quality Control, 9.1).
 *
 * C⁺ᵢ = max(0, xᵢ − (mu + k·sigma) + C⁺ᵢ₋₁), C⁻ᵢ = max(0, (mu − k·sigma) − xᵢ + C⁻ᵢ₋₁), both 0 before the first reading.
 *
 * x: finite readings in order; mu, sigma (above 0) in their unit; k (0 or more) and h (above 0) in multiples of sigma.
 *
 * @throws DomainError `too-few`, `not-finite`, `not-positive`, `negative`
 * @example cusum([11.66, 12.16], { mu: 10, sigma: 1, k: 0.5, h: 2.5 }) // { cPlus: [1.16, 2.82], cMinus: [0, 0], signals: [1] }
 */
export function cusum(
  x: readonly number[],
  { mu, sigma, k, h }: { mu: number; sigma: number; k: number; h: number },
): Cusum {
  requireNumbers("x", x, 1);
  requireNumber("mu", mu);
  requirePositive("sigma", sigma);
  requireNotNegative("k", k);
  requirePositive("h", h);
  const cPlus: number[] = [];
  const cMinus: number[] = [];
  let above = 0;
  let below = 0;
  for (const value of x) {
    above = Math.max(0, value - (mu + k * sigma) + above);
    below = Math.max(0, mu - k * sigma - value + below);
    cPlus.push(above);
    cMinus.push(below);
  }
  const decision = h * sigma;
  const signals = x.flatMap((_, i) => ((cPlus[i] as number) > decision || (cMinus[i] as number) > decision ? [i] : []));
  return { cPlus, cMinus, signals };
}
