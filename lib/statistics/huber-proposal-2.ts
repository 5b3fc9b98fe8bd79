import { requireNumbers } from "./checks.ts";
import { normalUpperTail } from "./distributions.ts";
import { huberFixedPoint, isRoundingOnly } from "./huber-fixed-point.ts";
import { medianMad } from "./median-mad.ts";
import { requirePositive } from "./require-number.ts";

export type HuberProposal2 = {
  /** Location, unit of x. */
  mean: number;
  /** Scale, consistent for the normal distribution, unit of x. */
  sd: number;
  /** True where half the values or more are equal: proposal 2 has no start, `mean` is the median and `sd` is 0. */
  degenerate: boolean;
};

/**
 * Huber's proposal 2: location and scale estimated together (Huber 1964; Venables and Ripley 2002, 5.5, "hubers";
 * "H15" of the Analytical Methods Committee for k = 1.5).
 *
 * Solves Σψ((xᵢ − μ)/s) = 0 and Σψ²((xᵢ − μ)/s) = (n − 1)β, ψ(z) = z cut at ±k,
 * β = E ψ²(Z) = θ + k²(1 − θ) − 2kφ(k), θ = 2Φ(k) − 1, from median and 1.4826·MAD, to the fixed point.
 *
 * x: two or more finite values in one unit; k > 0, without unit. Where MAD = 0: `degenerate`, as in Algorithm A.
 *
 * @throws DomainError `too-few`, `not-finite`, `not-positive`
 * @example huberProposal2([4.5, 4.9, 5.6, 4.2, 6.2, 5.2, 9.9]) // { mean: 5.386139, sd: 1.144555, degenerate: false }
 */
export function huberProposal2(x: readonly number[], { k = 1.5 }: { k?: number } = {}): HuberProposal2 {
  requireNumbers("x", x, 2);
  requirePositive("k", k);
  const { median, mad } = medianMad(x);
  const start = 1.4826 * mad;
  if (isRoundingOnly(mad, median)) return { mean: median, sd: 0, degenerate: true };
  const end = huberFixedPoint(x, { mean: median, sd: start }, { clip: k, scale: 1 / Math.sqrt(secondMoment(k)) });
  return { mean: end.mean, sd: end.sd, degenerate: false };
}

/** β = E ψ²(Z) for a standard normal Z cut at ±k. */
function secondMoment(k: number): number {
  const outside = 2 * normalUpperTail(k);
  const density = Math.exp((-k * k) / 2) / Math.sqrt(2 * Math.PI);
  return 1 - outside + k * k * outside - 2 * k * density;
}
