import { bracketedRoot } from "../statistics/bracketed-root.ts";
import { normalHazardBelow, normalHazardSlope } from "../statistics/distributions.ts";
import { nonDetectU } from "./non-detect-u.ts";

/**
 * One spot shot several times, detected by some shots and not by others: the content μ that makes all of it likeliest,
 *
 *   ℓ(μ) = −½ Σ ((xᵢ − μ)/uᵢ)² + Σ ln Φ((Lⱼ − μ)/sⱼ),   sⱼ = min(Lⱼ/3, largest uᵢ),
 *
 * and u = (−ℓ″(μ))^(−1/2). The detected shots are normal with known uᵢ; a non-detect says only that its reading would have been
 * below its limit Lⱼ, with the standard uncertainty Lⱼ/3 (method, step 0) or the largest of the detected shots where that is
 * smaller, since counting error does not shrink as the content grows. ℓ is concave, so the maximum is the one zero of ℓ′. All numbers in one unit, limits and uncertainties above zero.
 *
 * @example censoredSpotMean([12], [4], [10]) // value 9.0206: the non-detect pulls 12 down
 */
export function censoredSpotMean(
  x: readonly number[],
  u: readonly number[],
  limits: readonly number[],
): { value: number; u: number } {
  const largest = Math.max(...u);
  const below = limits.map((limit) => ({ limit, s: nonDetectU(limit, largest) }));
  const weights = u.map((one) => 1 / (one * one));
  const slope = (mu: number): number => {
    let sum = 0;
    for (const [i, one] of x.entries()) sum += (one - mu) * weights[i]!;
    for (const { limit, s } of below) sum -= normalHazardBelow((limit - mu) / s) / s;
    return sum;
  };
  const weight = weights.reduce((sum, w) => sum + w, 0);
  const top = x.reduce((sum, one, i) => sum + one * weights[i]!, 0) / weight;
  const value = slope(top) >= 0 ? top : rootBelow(slope, top, 1 / Math.sqrt(weight));
  const curvature = below.reduce((sum, { limit, s }) => sum + normalHazardSlope((limit - value) / s) / (s * s), weight);
  return { value, u: 1 / Math.sqrt(curvature) };
}

/** The zero below `top`, where the slope is negative. (Where limits lie far above, rounding may leave none: `top` is then the answer.) */
function rootBelow(slope: (mu: number) => number, top: number, first: number): number {
  let step = first;
  while (slope(top - step) <= 0) step *= 2;
  return bracketedRoot(slope, top - step, top);
}
