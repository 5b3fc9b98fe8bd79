import { DomainError } from "../quantity/domain-error.ts";
import { requireNumbers } from "./checks.ts";
import { moments } from "./moments.ts";
import { requireLabel } from "./require-number.ts";

export type LabReading = { lab: string | number; y: number };
export type Repeatability = {
  /** Repeatability standard deviation: repeats in one laboratory. Unit of y. */
  sr: number;
  /** Between-laboratory standard deviation, 0 where laboratories scatter less than repeats explain. */
  sL: number;
  /** Reproducibility standard deviation, never below sr. */
  sR: number;
  /** Mean of all readings. */
  generalMean: number;
  /** Mandel's h of each laboratory, in the order laboratories first appear; null where all laboratory means agree. */
  h: (number | null)[];
  /** Mandel's k of each laboratory; null for one with a single reading, and for all where repeats agree exactly. */
  k: (number | null)[];
};

/**
 * Repeatability and reproducibility of one level, with Mandel's consistency statistics (ISO 5725-2:1994 7.4; ASTM E691).
 *
 * sr² = Σ(nᵢ − 1)sᵢ²/Σ(nᵢ − 1); sL² = max(0, (s_d² − sr²)/n̿), s_d² = Σnᵢ(ȳᵢ − m)²/(p − 1),
 * n̿ = (N − Σnᵢ²/N)/(p − 1), m = Σnᵢȳᵢ/N; sR² = sL² + sr². For equal n this is sL² = s_ȳ² − sr²/n, and the rule of
 * E691 that sR is not below sr holds.
 * hᵢ = (ȳᵢ − mean of the ȳ)/s_ȳ; kᵢ = sᵢ/sr. With unequal n, h is taken from the plain mean of laboratory means.
 *
 * "lab" may as well be a spot or a session. Two or more labs, at least one with two readings; finite values, one unit.
 *
 * @throws DomainError `too-few-groups`, `no-repeats`, `not-finite`, `too-few`
 * @example repeatability([{ lab: 1, y: 10 }, { lab: 1, y: 12 }, { lab: 2, y: 15 }, { lab: 2, y: 17 }])
 * // { sr: 1.41421, sL: 3.39116, sR: 3.67423, generalMean: 13.5, h: [-0.70711, 0.70711], k: [1, 1] }
 */
export function repeatability(readings: readonly LabReading[]): Repeatability {
  const values = readings.map((reading) => reading.y);
  requireNumbers("y", values, 2);
  const byLab = new Map<string | number, number[]>();
  for (const { lab, y } of readings) {
    requireLabel("lab", lab);
    byLab.set(lab, [...(byLab.get(lab) ?? []), y]);
  }
  const labs = [...byLab.values()].map((ofLab) => moments(ofLab));
  const p = labs.length;
  const total = values.length;
  if (p < 2) throw new DomainError("too-few-groups", "two or more labs are needed", p);
  if (total === p) throw new DomainError("no-repeats", "at least one lab needs two values", total);
  const repeatVariance = labs.reduce((sum, lab) => sum + lab.sumSquares, 0) / (total - p);
  const generalMean = moments(values).mean;
  const betweenSquare = labs.reduce((sum, lab) => sum + lab.n * (lab.mean - generalMean) ** 2, 0) / (p - 1);
  const effectiveSize = (total - labs.reduce((sum, lab) => sum + lab.n * lab.n, 0) / total) / (p - 1);
  const labVariance = Math.max(0, (betweenSquare - repeatVariance) / effectiveSize);
  const sr = Math.sqrt(repeatVariance);
  const ofMeans = moments(labs.map((lab) => lab.mean));
  return {
    sr,
    sL: Math.sqrt(labVariance),
    sR: Math.sqrt(labVariance + repeatVariance),
    generalMean,
    h: labs.map((lab) => (ofMeans.sd === 0 ? null : (lab.mean - ofMeans.mean) / ofMeans.sd)),
    k: labs.map((lab) => (sr === 0 || lab.n < 2 ? null : lab.sd / sr)),
  };
}
