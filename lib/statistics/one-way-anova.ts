import { DomainError } from "../quantity/domain-error.ts";
import { requireNumbers } from "./checks.ts";
import { fUpperTail } from "./distributions.ts";
import { moments } from "./moments.ts";
import { type OneWayReml, oneWayReml } from "./one-way-reml.ts";

export type OneWayAnova = {
  /** Variance within groups: mean square within. Squared unit of y. */
  within: number;
  /** Variance between groups, cut at 0. */
  between: number;
  /** The same before the cut: negative where group means scatter less than repeats explain. */
  betweenRaw: number;
  /** Mean of all readings, unit of y. */
  grandMean: number;
  /** Mean square between over mean square within; infinite where repeats agree exactly, null where all readings do. */
  f: number | null;
  p: number | null;
  reml: OneWayReml;
};

/**
 * One-way random-effects analysis of variance, any group sizes (Searle, Casella and McCulloch, Variance Components,
 * 1992, chapters 3 and 6; JCGM 100:2008 H.5 for equal groups).
 *
 * within = MSW, betweenRaw = (MSB − MSW)/n₀, n₀ = (N − Σnᵢ²/N)/(k − 1), between = max(0, betweenRaw);
 * f = MSB/MSW with k − 1 and N − k degrees of freedom. `reml`: restricted maximum likelihood, both variances held at 0
 * or more, with the mean μ = Σwᵢȳᵢ/Σwᵢ and its standard error.
 *
 * groups: two or more lists of finite values in one unit, none empty, at least one with a repeat.
 *
 * @throws DomainError `too-few-groups`, `too-few` (an empty group), `no-repeats`, `not-finite`
 * @example oneWayAnova([[410, 422, 415], [655, 640], [501, 489, 511, 495], [398], [890, 905]])
 * // { within: 80.238, betweenRaw: 37791.087, grandMean: 560.917, f: 1080.34, p: 7.6e-10, reml: { mean: 571.549, seMean: 92.647 } }
 */
export function oneWayAnova(groups: readonly (readonly number[])[]): OneWayAnova {
  if (groups.length < 2) throw new DomainError("too-few-groups", "two or more groups are needed", groups.length);
  for (const [i, group] of groups.entries()) requireNumbers(`groups[${i}]`, group, 1);
  const k = groups.length;
  const total = groups.reduce((sum, group) => sum + group.length, 0);
  if (total === k) throw new DomainError("no-repeats", "at least one group needs two values", total);
  const summaries = groups.map((group) => moments(group));
  const sumSquaresWithin = summaries.reduce((sum, group) => sum + group.sumSquares, 0);
  const grandMean = moments(groups.flat()).mean;
  const sumSquaresBetween = summaries.reduce((sum, group) => sum + group.n * (group.mean - grandMean) ** 2, 0);
  const within = sumSquaresWithin / (total - k);
  const meanSquareBetween = sumSquaresBetween / (k - 1);
  const squaredSizes = summaries.reduce((sum, group) => sum + group.n * group.n, 0);
  const n0 = (total - squaredSizes / total) / (k - 1);
  const betweenRaw = (meanSquareBetween - within) / n0;
  // Dividing by a within of 0 gives infinity, the true limit, unless the group means agree as well.
  const f = within === 0 && meanSquareBetween === 0 ? null : meanSquareBetween / within;
  return {
    within,
    between: Math.max(0, betweenRaw),
    betweenRaw,
    grandMean,
    f,
    p: f === null ? null : fUpperTail(f, k - 1, total - k),
    reml: oneWayReml(summaries, sumSquaresWithin),
  };
}
