import { requireNumbers } from "./checks.ts";
import { moments } from "./moments.ts";

/**
 * Limits of detection and quantification by the practice of three and ten standard deviations.
 *
 * detection = x̄ + 3s, quantification = x̄ + 10s, from blanks, on the scale of the readings. A value at this detection limit is missed
 * half the time by a reader who asks for values above it, and the risk of a false claim depends on the number of blanks:
 * `blankLimits` states both risks. All blanks equal: both limits are their mean.
 *
 * blanks: two or more finite readings of blank material in one unit.
 *
 * Source: ACS Committee on Environmental Improvement, Anal. Chem. 55 (1983) 2210 (from memory); IUPAC, Spectrochim. Acta B 33 (1978) 241
 * (from memory).
 *
 * @throws DomainError `empty`, `too-few`, `not-finite`
 * @example threeAndTenSigma([1.2, -0.4, 0.5, 0.9, -0.2]) // { mean: 0.4, sd: 0.689202, detection: 2.46761, quantification: 7.29202 }
 */
export function threeAndTenSigma(blanks: readonly number[]): {
  mean: number;
  sd: number;
  detection: number;
  quantification: number;
} {
  requireNumbers("blanks", blanks, 2);
  const { mean, sd } = moments(blanks);
  return { mean, sd, detection: mean + 3 * sd, quantification: mean + 10 * sd };
}
