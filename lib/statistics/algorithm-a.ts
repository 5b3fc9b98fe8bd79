import { requireNumbers } from "./checks.ts";
import { huberFixedPoint, isRoundingOnly } from "./huber-fixed-point.ts";
import { medianMad } from "./median-mad.ts";

export type AlgorithmA = {
  /** Robust mean x*, unit of x. */
  mean: number;
  /** Robust standard deviation s*, unit of x. */
  sd: number;
  /** Rounds until neither changed by more than 1e-15 of itself; rounding can move the count by one. */
  iterations: number;
  /** True where half the values or more are equal: the starting s* is 0 and the algorithm says nothing about spread. */
  degenerate: boolean;
};

/**
 * Robust mean and standard deviation by Algorithm A, ISO 13528:2015 C.3 (ISO 5725-5:1998).
 *
 * Start: x* = median, s* = 1.483·median|xᵢ − x*|. Round: δ = 1.5 s*; values below x* − δ or above x* + δ are moved to
 * that edge; x* = mean of the moved values, s* = 1.134·√(Σ(moved − x*)²/(n − 1)). Iterated to the fixed point, not to
 * the standard's third figure, with the standard's rounded factors 1.483 and 1.134.
 *
 * x: two or more finite values in one unit. Where the median absolute deviation is 0 the algorithm collapses:
 * `degenerate` is true, `mean` is the median and `sd` is 0, which is a flag and no estimate of spread. One value in four
 * far off is about what it can bear.
 *
 * @throws DomainError `too-few`, `not-finite`
 * @example algorithmA([24.14, 20.155, 19.5, 20.3, 20.705, 17.57, 20.1, 20.94, 21.185]) // { mean: 20.4121429, sd: 1.0698397 }
 */
export function algorithmA(x: readonly number[]): AlgorithmA {
  requireNumbers("x", x, 2);
  const { median, mad } = medianMad(x);
  const start = 1.483 * mad;
  if (isRoundingOnly(mad, median)) return { mean: median, sd: 0, iterations: 1, degenerate: true };
  const end = huberFixedPoint(x, { mean: median, sd: start }, { clip: 1.5, scale: 1.134 });
  return { ...end, degenerate: false };
}
