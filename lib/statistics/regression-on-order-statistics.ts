import { DomainError } from "../quantity/domain-error.ts";
import { requireFlags, requireNumbers } from "./checks.ts";
import { normalQuantile } from "./distributions.ts";
import { leastForSecondOpinion } from "./kaplan-meier.ts";
import { medianMad } from "./median-mad.ts";
import { moments } from "./moments.ts";

export type RegressionOnOrderStatistics =
  | {
      status: "ok";
      /** Mean, standard deviation (n − 1) and median of the seen values together with the filled-in ones, in the unit of the values. */
      mean: number;
      sd: number;
      median: number;
      /** The line through the seen values: mean and standard deviation on the scale worked on (of ln x unless log is false). */
      intercept: number;
      slope: number;
      /** The values in the order given; where censored, what the line puts in its place. Not data: never shown as readings. */
      filled: number[];
    }
  /** Under ten values; fewer than two different seen values; nothing seen. */
  | {
      status: "too-few" | "no-spread" | "all-censored";
      mean: null;
      sd: null;
      median: null;
      intercept: null;
      slope: null;
      filled: null;
    };

/**
 * Robust regression on order statistics: mean, standard deviation and median of values some of which are only known to lie
 * below a limit. The seen values stand as they are; a line through them on normal quantiles fills in the rest.
 *
 * With limits L_1 < … < L_m, A_j values seen from L_j to under L_{j+1} and B_j values or limits known to lie below L_j:
 * P(X ≥ L_j) = P(X ≥ L_{j+1}) + A_j/(A_j + B_j)·(1 − P(X ≥ L_{j+1})). Seen values in a band have the plotting positions
 * (1 − P_j) + (P_j − P_{j+1})·(r − a)/(n + 1 − 2a) by rank r of n, the values below L_j (1 − P_j)(r − a)/(n + 1 − 2a). Least
 * squares of y = ln x (x where log is false) on z = Φ⁻¹(position) over the seen values; the censored ones become exp(intercept + slope·z).
 * a = `plottingConstant`: 0 (Weibull) or 0.375 (Blom).
 *
 * A second opinion beside the likelihood, for ten values or more; fewer give the status "too-few".
 *
 * values hold the limit where `censored` is true; finite, above 0 unless log is false, one unit; plottingConstant from 0 to 0.5.
 *
 * Sources: Helsel and Cohn, Water Resour. Res. 24 (1988) 1997; Hirsch and Stedinger, Water Resour. Res. 23 (1987) 715; Helsel, Statistics for
 * Censored Environmental Data, 2nd ed. (2012) chapter 6.
 *
 * @throws DomainError `empty`, `not-finite`, `length-mismatch`, `not-a-flag`, `not-positive`, `out-of-range`
 * @example regressionOnOrderStatistics([1, 2, 3, 4, 5, 6, 7, 8, 9, 10], [true, false, true, false, false, false, false, false, false, false])
 * // { status: "ok", mean: 5.48043, sd: 3.01919, median: 5.5, intercept: 1.5351, slope: 0.72932 }
 */
export function regressionOnOrderStatistics(
  values: readonly number[],
  censored: readonly boolean[],
  { log = true, plottingConstant = 0 }: { log?: boolean; plottingConstant?: number } = {},
): RegressionOnOrderStatistics {
  requireNumbers("values", values);
  requireFlags(values, censored);
  if (!(plottingConstant >= 0 && plottingConstant <= 0.5))
    throw new DomainError("out-of-range", "plottingConstant must lie from 0 to 0.5", plottingConstant);
  if (log)
    for (const value of values)
      if (value <= 0) throw new DomainError("not-positive", "a logarithm needs values above zero", value);
  const nothing = { mean: null, sd: null, median: null, intercept: null, slope: null, filled: null };
  if (values.length < leastForSecondOpinion) return { status: "too-few", ...nothing };
  const seen = [...values.keys()].filter((i) => !censored[i]);
  const first = seen[0];
  if (first === undefined) return { status: "all-censored", ...nothing };
  if (seen.every((i) => values[i] === values[first])) return { status: "no-spread", ...nothing };
  const z = plottingPositions(values, censored, plottingConstant).map(normalQuantile);
  const y = values.map((value) => (log ? Math.log(value) : value));
  const { intercept, slope } = leastSquares(
    seen.map((i) => z[i] as number),
    seen.map((i) => y[i] as number),
  );
  const filled = values.map((value, i) => {
    if (!censored[i]) return value;
    const onLine = intercept + slope * (z[i] as number);
    return log ? Math.exp(onLine) : onLine;
  });
  const { mean, sd } = moments(filled);
  return { status: "ok", mean, sd, median: medianMad(filled).median, intercept, slope, filled };
}

function leastSquares(x: readonly number[], y: readonly number[]): { intercept: number; slope: number } {
  const ofX = moments(x);
  const ofY = moments(y);
  const slope = x.reduce((sum, each, i) => sum + (each - ofX.mean) * ((y[i] as number) - ofY.mean), 0) / ofX.sumSquares;
  return { intercept: ofY.mean - slope * ofX.mean, slope };
}

/** Probability of lying below, for every value in the order given (Hirsch and Stedinger 1987, several limits). */
function plottingPositions(values: readonly number[], censored: readonly boolean[], a: number): number[] {
  const indices = [...values.keys()];
  const at = (i: number) => values[i] as number;
  const limits = [...new Set(indices.filter((i) => censored[i]).map(at))].sort((x, y) => x - y);
  const positions = new Array<number>(values.length).fill(0);
  const spread = (members: number[], from: number, width: number) =>
    members.forEach((i, rank) => {
      positions[i] = from + (width * (rank + 1 - a)) / (members.length + 1 - 2 * a);
    });
  let above = 0;
  let ceiling = Number.POSITIVE_INFINITY;
  for (const floor of [...limits].reverse().concat(Number.NEGATIVE_INFINITY)) {
    const band = indices.filter((i) => !censored[i] && at(i) >= floor && at(i) < ceiling).sort((i, j) => at(i) - at(j));
    const known = indices.filter((i) => (censored[i] ? at(i) <= floor : at(i) < floor)).length;
    const share = band.length + known === 0 ? 0 : band.length / (band.length + known);
    // Below the lowest limit everything left is in the band, also where nothing was seen there.
    const from = floor === Number.NEGATIVE_INFINITY ? 1 : above + share * (1 - above);
    spread(band, 1 - from, from - above);
    spread(
      indices.filter((i) => censored[i] && at(i) === floor),
      0,
      1 - from,
    );
    above = from;
    ceiling = floor;
  }
  return positions;
}
