import { DomainError } from "../quantity/domain-error.ts";
import { requireNumbers } from "./checks.ts";
import { moments } from "./moments.ts";
import { type NestedReml, nestedReml } from "./nested-reml.ts";
import { requireLabel } from "./require-number.ts";

/** One reading: its a (say, specimen), its b within that a (say, spot), and the value. The same b under two a's is two b's. */
export type NestedReading = { a: string | number; b: string | number; y: number };
export type NestedAnova = {
  /** Variance between a's, cut at 0. Squared unit of y. */
  a: number;
  /** Variance between b's of one a, cut at 0. */
  b: number;
  /** Variance of repeats at one b. */
  error: number;
  aRaw: number;
  bRaw: number;
  reml: NestedReml;
};

/**
 * Two-stage nested random-effects analysis of variance, balanced or not: yᵢⱼₖ = μ + aᵢ + bᵢⱼ + eᵢⱼₖ
 * (Searle, Casella and McCulloch, Variance Components, 1992, 3.5 and chapter 6; NIST/SEMATECH e-Handbook 3.2.3.3).
 *
 * From the sums of squares in sequence (type I), with I a's, J b's in all and N readings:
 * error = MSE, bRaw = (MSB − MSE)/k₁, aRaw = (MSA − k₂·bRaw − MSE)/k₃,
 * k₁ = (N − ΣᵢΣⱼnᵢⱼ²/nᵢ)/(J − I), k₂ = (ΣᵢΣⱼnᵢⱼ²/nᵢ − ΣΣnᵢⱼ²/N)/(I − 1), k₃ = (N − Σnᵢ²/N)/(I − 1).
 * `a` and `b` are the raw ones cut at 0 (the raw b enters aRaw uncut). `reml`: restricted maximum likelihood with all
 * three variances held at 0 or more, its mean and the mean's standard error.
 *
 * @throws DomainError `too-few-groups` (fewer than two a's), `no-nesting` (no a with two b's), `no-repeats` (no b with
 * two readings), `not-finite`, `too-few`
 * @example nestedAnova([{ a: 1, b: 1, y: 10 }, { a: 1, b: 1, y: 12 }, { a: 1, b: 2, y: 15 }, { a: 2, b: 1, y: 20 }, { a: 2, b: 2, y: 23 }])
 * // { error: 2, bRaw: 4.78571, aRaw: 38.65476, reml: { a: 34.16985, b: 4.85729, error: 1.8901, mean: 17.16 } }
 */
export function nestedAnova(readings: readonly NestedReading[]): NestedAnova {
  requireNumbers(
    "y",
    readings.map((reading) => reading.y),
    2,
  );
  for (const { a, b } of readings) {
    requireLabel("a", a);
    requireLabel("b", b);
  }
  const levels = grouped(readings, (reading) => reading.a).map((ofA) =>
    grouped(ofA, (reading) => reading.b).map((ofB) => ofB.map((reading) => reading.y)),
  );
  const countA = levels.length;
  const countB = levels.flat().length;
  const total = readings.length;
  if (countA < 2) throw new DomainError("too-few-groups", "two or more levels of a are needed", countA);
  if (countB === countA) throw new DomainError("no-nesting", "at least one a needs two b's", countB);
  if (total === countB) throw new DomainError("no-repeats", "at least one b needs two values", total);
  const cells = levels.map((ofA) => ofA.map((values) => moments(values)));
  const ofA = levels.map((values) => moments(values.flat()));
  const grand = moments(readings.map((reading) => reading.y));
  const sumSquaresError = cells.flat().reduce((sum, cell) => sum + cell.sumSquares, 0);
  let sumSquaresB = 0;
  let sumSquaresA = 0;
  let sizesWithinA = 0;
  for (const [i, row] of cells.entries()) {
    const level = ofA[i] as (typeof ofA)[number];
    sumSquaresA += level.n * (level.mean - grand.mean) ** 2;
    for (const cell of row) {
      sumSquaresB += cell.n * (cell.mean - level.mean) ** 2;
      sizesWithinA += (cell.n * cell.n) / level.n;
    }
  }
  const squaredCells = cells.flat().reduce((sum, cell) => sum + cell.n * cell.n, 0);
  const squaredLevels = ofA.reduce((sum, level) => sum + level.n * level.n, 0);
  const k1 = (total - sizesWithinA) / (countB - countA);
  const k2 = (sizesWithinA - squaredCells / total) / (countA - 1);
  const k3 = (total - squaredLevels / total) / (countA - 1);
  const error = sumSquaresError / (total - countB);
  const bRaw = (sumSquaresB / (countB - countA) - error) / k1;
  const aRaw = (sumSquaresA / (countA - 1) - k2 * bRaw - error) / k3;
  return {
    a: Math.max(0, aRaw),
    b: Math.max(0, bRaw),
    error,
    aRaw,
    bRaw,
    reml: nestedReml(cells, sumSquaresError),
  };
}

/** The readings split by a label, in the order the labels first appear. */
function grouped<T>(items: readonly T[], label: (item: T) => string | number): T[][] {
  const groups = new Map<string | number, T[]>();
  for (const item of items) {
    const group = groups.get(label(item));
    if (group) group.push(item);
    else groups.set(label(item), [item]);
  }
  return [...groups.values()];
}
