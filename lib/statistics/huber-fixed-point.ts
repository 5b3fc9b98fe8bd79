import { moments } from "./moments.ts";

/** Where the shared iteration ended: location and scale at the fixed point, and how many rounds it took. */
export type HuberFixedPoint = { mean: number; sd: number; iterations: number };

const ROUND_LIMIT = 100_000;
const STILL = 1e-15;

/** Whether a median absolute deviation is 0 but for the rounding of the values themselves. */
export const isRoundingOnly = (mad: number, median: number): boolean => mad <= 4 * Number.EPSILON * Math.abs(median);

/**
 * The iteration Algorithm A and Huber's proposal 2 share: values beyond `mean ± clip·sd` are moved to that edge, then
 * mean = average of the moved values, sd = √(Σ(moved − mean)²/(n − 1))·`scale`, until neither changes by more than
 * 1e-15 of itself. It converges linearly, and slowly when one value in four is an outlier, hence the limit
 * of 100,000 rounds: stopping after 30 can be far off. Works on deviations from the start so that a large offset costs
 * no digits.
 */
export function huberFixedPoint(
  values: readonly number[],
  start: { mean: number; sd: number },
  rule: { clip: number; scale: number },
): HuberFixedPoint {
  const deviations = values.map((value) => value - start.mean);
  const moved = new Float64Array(values.length);
  let mean = 0;
  let sd = start.sd;
  let iterations = 0;
  while (iterations < ROUND_LIMIT) {
    iterations += 1;
    const reach = rule.clip * sd;
    for (let i = 0; i < moved.length; i++) moved[i] = Math.min(Math.max(deviations[i]!, mean - reach), mean + reach);
    const next = moments(moved);
    const nextSd = next.sd * rule.scale;
    const meanStands = Math.abs(next.mean - mean) <= STILL * Math.max(Math.abs(start.mean + next.mean), nextSd);
    const sdStands = Math.abs(nextSd - sd) <= STILL * nextSd;
    mean = next.mean;
    sd = nextSd;
    if (meanStands && sdStands) break;
  }
  return { mean: start.mean + mean, sd, iterations };
}
