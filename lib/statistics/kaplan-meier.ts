import { requireFlags, requireNumbers } from "./checks.ts";
import { medianMad } from "./median-mad.ts";

export type KaplanMeier =
  | {
      status: "ok";
      mean: number;
      /** Standard deviation of the estimated distribution, without a factor for the number of values. */
      sd: number;
      /** Null with a single seen value. */
      seMean: number | null;
      /** Null where half the values or more may lie below the lowest limit. */
      median: number | null;
      /** The share of the distribution that no seen value accounts for, put at the lowest limit in the mean; 0 if none. */
      shareBelow: number;
    }
  /** Under ten values the estimate is too rough for a second opinion. "all-censored": nothing seen to estimate from. */
  | { status: "too-few" | "all-censored"; mean: null; sd: null; seMean: null; median: null; shareBelow: null };

/** No second opinion from fewer values than this (policy; Helsel names no number but warns below ten). */
export const leastForSecondOpinion = 10;

/**
 * Kaplan–Meier estimate of mean, standard deviation and median of values some of which are only known to lie below a limit. No
 * distribution is assumed; several limits are welcome.
 *
 * Seen values x_j from the highest down, n_j = how many values and limits are at most x_j, d_j = how many are seen at x_j:
 * P(X < x_j) = Π_{x_i ≥ x_j}(1 − d_i/n_i). A "< x_j" counts among the n_j. mean = Σ x_j·mass_j; what mass is left below the lowest seen
 * value is put at the lowest limit (Efron's rule), so the mean is then too high by at most shareBelow × that limit, and is an upper
 * estimate. median: the lowest seen value with P(X ≤ x) ≥ ½; with nothing censored, the ordinary median.
 * seMean² = d/(d − 1)·Σ A_j²·d_j/(n_j(n_j − d_j)), A_j = ∫ P(X ≤ x) dx up to x_j, d seen values in all (Greenwood): s/√n with
 * nothing censored.
 *
 * A second opinion beside the likelihood, for ten values or more; fewer give the status "too-few".
 *
 * values hold the limit where `censored` is true; finite, one unit.
 *
 * Sources: Kaplan and Meier, J. Am. Stat. Assoc. 53 (1958) 457; Helsel, Statistics for Censored Environmental Data, 2nd ed. (2012)
 * chapter 6; Efron 1967 for the lowest limit.
 *
 * @throws DomainError `empty`, `not-finite`, `length-mismatch`, `not-a-flag`
 * @example kaplanMeier([1, 2, 3, 4, 5, 6, 7, 8, 9, 10], [true, false, true, false, false, false, false, false, false, false])
 * // { status: "ok", mean: 5.35, sd: 3.03768, seMean: 1.02901, median: 5, shareBelow: 0.15 }
 */
export function kaplanMeier(values: readonly number[], censored: readonly boolean[]): KaplanMeier {
  requireNumbers("values", values);
  requireFlags(values, censored);
  const nothing = { mean: null, sd: null, seMean: null, median: null, shareBelow: null };
  if (values.length < leastForSecondOpinion) return { status: "too-few", ...nothing };
  const seen = values.filter((_, i) => !censored[i]);
  if (seen.length === 0) return { status: "all-censored", ...nothing };
  const steps = stepsDown(values, seen);
  const shareBelow = (steps.at(-1) as Step).below;
  const bottom = Math.min(...values);
  const masses = steps.map(({ x, upTo, below }) => ({ x, mass: upTo - below }));
  if (shareBelow > 0) masses.push({ x: bottom, mass: shareBelow });
  const mean = bottom + masses.reduce((sum, { x, mass }) => sum + mass * (x - bottom), 0);
  const sd = Math.sqrt(masses.reduce((sum, { x, mass }) => sum + mass * (x - mean) ** 2, 0));
  const half = [...steps].reverse().find((step) => step.upTo >= 0.5 - 1e-12);
  const median =
    seen.length === values.length
      ? medianMad(values).median
      : shareBelow >= 0.5 - 1e-12
        ? null
        : (half as { x: number }).x;
  return { status: "ok", mean, sd, seMean: greenwood(steps, bottom, seen.length), median, shareBelow };
}

/** One seen value: how many values are at most x and how many are seen there; P(X ≤ x) and P(X < x). */
type Step = { x: number; atMost: number; here: number; upTo: number; below: number };

function stepsDown(values: readonly number[], seen: readonly number[]): Step[] {
  let upTo = 1;
  return [...new Set(seen)]
    .sort((a, b) => b - a)
    .map((x) => {
      const atMost = values.filter((value) => value <= x).length;
      const here = seen.filter((value) => value === x).length;
      // The last of all values takes the whole rest: no rounding is left over as mass below it.
      const below = here === atMost ? 0 : upTo * (1 - here / atMost);
      const step = { x, atMost, here, upTo, below };
      upTo = below;
      return step;
    });
}

function greenwood(steps: readonly Step[], bottom: number, seenCount: number): number | null {
  if (seenCount < 2) return null;
  let area = 0;
  let variance = 0;
  let from = bottom;
  // From the lowest step up: P(X ≤ x) between two seen values is the lower one's.
  for (const { x, atMost, here, below } of [...steps].reverse()) {
    area += below * (x - from);
    from = x;
    if (atMost > here) variance += (area * area * here) / (atMost * (atMost - here));
  }
  return Math.sqrt((variance * seenCount) / (seenCount - 1));
}
