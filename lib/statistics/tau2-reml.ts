import { generalisedQ, sharedWeight } from "./generalised-q.ts";
import { highestMaximum, logGrid } from "./highest-maximum.ts";

/**
 * Restricted maximum likelihood τ², held at zero or more.
 *
 * ℓ(τ²) = −½[Σ ln(v + τ²) + ln Σw + Q], slope ½[Σw²(x − μ)² − (Σw − Σw²/Σw)]. The restricted likelihood can have more than one
 * maximum where the u differ much; the highest is taken. x and v should be centred and scaled by the caller.
 *
 * Source: Viechtbauer, J. Educ. Behav. Stat. 30 (2005) 261.
 */
export const tau2Reml = (x: ArrayLike<number>, v: ArrayLike<number>): number => {
  let smallest = Number.POSITIVE_INFINITY;
  let largest = 0;
  let low = Number.POSITIVE_INFINITY;
  let high = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < x.length; i++) {
    smallest = Math.min(smallest, v[i]!);
    largest = Math.max(largest, v[i]!);
    low = Math.min(low, x[i]!);
    high = Math.max(high, x[i]!);
  }
  if (low === high) return 0;
  const logLikelihood = (tau2: number): number => {
    const { sumW, q } = generalisedQ(x, v, tau2);
    let sum = Math.log(sumW) + q;
    for (let i = 0; i < v.length; i++) sum += Math.log(v[i]! + tau2);
    return -0.5 * sum;
  };
  const slope = (tau2: number): number => generalisedQ(x, v, tau2).slope - sharedWeight(v, tau2);
  // Beyond the square of the range and the largest v the slope is negative for good.
  const grid = logGrid(smallest * 1e-3, 10 * Math.max((high - low) ** 2, largest), 6);
  return highestMaximum(logLikelihood, slope, grid).at;
};
