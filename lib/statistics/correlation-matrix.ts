import { DomainError } from "../quantity/domain-error.ts";
import { cholesky } from "./cholesky.ts";

/** The correlation coefficient of two inputs, by name. Pairs not named are independent. */
export type Correlation<Name extends string = string> = { between: readonly [Name, Name]; r: number };

/**
 * The correlation matrix of named inputs from the pairs that are correlated, and its Cholesky factor. No unit.
 *
 * names: the rows, in order. Each pair once, of two different names among them, r from −1 to 1.
 *
 * Source: JCGM 100:2008 5.2.2, equation 14; JCGM 101:2008 6.4.8.
 *
 * @throws DomainError `unknown-input`, `same-input`, `repeated-pair`, `out-of-range` (r), `not-positive-semidefinite` (the coefficients
 * contradict each other)
 * @example correlationMatrix(["a", "b"], [{ between: ["a", "b"], r: 0.6 }]) // { matrix: [[1, 0.6], [0.6, 1]], lower: [[1, 0], [0.6, 0.8]] }
 */
export function correlationMatrix<Name extends string>(
  names: readonly Name[],
  correlations: readonly Correlation<Name>[],
): { matrix: number[][]; lower: number[][] } {
  const matrix = names.map((_, i) => names.map((_, j) => (i === j ? 1 : 0)));
  const done = new Set<string>();
  for (const { between, r } of correlations) {
    const [i, j] = between.map((name) => names.indexOf(name)) as [number, number];
    if (i < 0 || j < 0) throw new DomainError("unknown-input", "a correlation names an input that is none", between);
    if (i === j) throw new DomainError("same-input", "an input cannot be correlated with itself", between);
    if (!(r >= -1 && r <= 1)) throw new DomainError("out-of-range", "r must lie from -1 to 1", r);
    const pair = `${Math.min(i, j)} ${Math.max(i, j)}`;
    if (done.has(pair)) throw new DomainError("repeated-pair", "a pair of inputs is named twice", between);
    done.add(pair);
    (matrix[i] as number[])[j] = r;
    (matrix[j] as number[])[i] = r;
  }
  return { matrix, lower: cholesky(matrix) };
}
