import { moments } from "./moments.ts";
import { leastDevianceRatio } from "./variance-ratio-search.ts";

export type GroupSummary = { n: number; mean: number };
export type OneWayReml = { within: number; between: number; mean: number; seMean: number };

/**
 * Restricted maximum likelihood for yᵢⱼ = μ + aᵢ + eᵢⱼ from group sizes, group means and the sum of squares within.
 *
 * With θ = between/within, wᵢ = nᵢ/(1 + nᵢθ), μ = Σwᵢȳᵢ/Σwᵢ and Q = SSW + Σwᵢ(ȳᵢ − μ)²:
 * −2ℓ(θ) = (N − 1)ln Q + Σln(1 + nᵢθ) + ln Σwᵢ, within = Q/(N − 1), both variances zero or more; se(μ) = √(within/Σwᵢ)
 * (Patterson and Thompson 1971; Searle, Casella and McCulloch, Variance Components, 1992, chapter 6).
 *
 * Where SSW = 0 the likelihood has no bound as within goes to 0; its limit is returned: within 0 and between the
 * variance of the group means.
 *
 * @example oneWayReml([{ n: 2, mean: 10 }, { n: 2, mean: 20 }], 4) // { within: 2, between: 49, mean: 15, seMean: 5 }
 */
export function oneWayReml(groups: readonly GroupSummary[], sumSquaresWithin: number): OneWayReml {
  const total = groups.reduce((sum, group) => sum + group.n, 0);
  if (sumSquaresWithin === 0) {
    const { mean, sd } = moments(groups.map((group) => group.mean));
    return { within: 0, between: sd * sd, mean, seMean: sd / Math.sqrt(groups.length) };
  }
  const anchor = groups.reduce((sum, group) => sum + group.n * group.mean, 0) / total;
  const weighted = (ratio: number) => {
    const weights = groups.map((group) => group.n / (1 + group.n * ratio));
    const sumWeights = weights.reduce((sum, weight) => sum + weight, 0);
    const centre =
      groups.reduce((sum, group, i) => sum + (weights[i] as number) * (group.mean - anchor), 0) / sumWeights;
    const parts = groups.map((group, i) => ({ n: group.n, w: weights[i] as number, d: group.mean - anchor - centre }));
    const quadratic = sumSquaresWithin + parts.reduce((sum, part) => sum + part.w * part.d * part.d, 0);
    return { parts, sumWeights, centre, quadratic };
  };
  const deviance = (ratio: number) => {
    const { parts, sumWeights, quadratic } = weighted(ratio);
    const determinant = parts.reduce((sum, part) => sum + Math.log1p(part.n * ratio), 0);
    return (total - 1) * Math.log(quadratic) + determinant + Math.log(sumWeights);
  };
  const slope = (ratio: number) => {
    const { parts, sumWeights, quadratic } = weighted(ratio);
    let squares = 0;
    let spread = 0;
    for (const { w, d } of parts) {
      squares += w * w;
      spread += w * w * d * d;
    }
    return sumWeights - squares / sumWeights - ((total - 1) * spread) / quadratic;
  };
  const spreadOfMeans = moments(groups.map((group) => group.mean)).sumSquares;
  const largestGroup = Math.max(...groups.map((group) => group.n));
  const highest = 1e3 * (1 + (total * spreadOfMeans) / sumSquaresWithin);
  const ratio = leastDevianceRatio({ deviance, slope }, 1e-9 / largestGroup, highest);
  const { sumWeights, centre, quadratic } = weighted(ratio);
  const within = quadratic / (total - 1);
  return { within, between: ratio * within, mean: anchor + centre, seMean: Math.sqrt(within / sumWeights) };
}
