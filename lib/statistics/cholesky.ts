import { DomainError } from "../quantity/domain-error.ts";

/**
 * Lower triangle L of a symmetric matrix with L·Lᵀ = matrix (Cholesky–Crout), by rows.
 *
 * A pivot of zero to rounding (two inputs fully correlated) gives a column of zeros: the matrix may be singular, but not
 * indefinite. No unit of its own: that of the square root of the matrix.
 *
 * matrix: n × n, n ≥ 1, finite, symmetric to 12 digits of its largest element.
 *
 * Source: JCGM 101:2008 C.5 (drawing from a multivariate normal distribution).
 *
 * @throws DomainError `empty`, `not-square`, `not-finite`, `not-symmetric`, `not-positive-semidefinite`
 * @example cholesky([[4, 2], [2, 5]]) // [[2, 0], [1, 2]]
 */
export function cholesky(matrix: readonly (readonly number[])[]): number[][] {
  const n = matrix.length;
  if (n === 0) throw new DomainError("empty", "a matrix needs at least one row", 0);
  const at = (i: number, j: number) => matrix[i]?.[j] as number;
  let largest = 0;
  for (const row of matrix) {
    if (row.length !== n)
      throw new DomainError("not-square", "every row must be as long as the matrix is high", row.length);
    for (const element of row) {
      if (!Number.isFinite(element)) throw new DomainError("not-finite", "an element is not a finite number", element);
      largest = Math.max(largest, Math.abs(element));
    }
  }
  const rounding = 1e-12 * largest;
  const lower = matrix.map((row) => row.map(() => 0));
  for (let j = 0; j < n; j++) {
    const column = lower[j] as number[];
    const pivot = at(j, j) - column.reduce((sum, element) => sum + element * element, 0);
    if (pivot < -rounding * n)
      throw new DomainError("not-positive-semidefinite", "no quantities can have these covariances", matrix);
    const singular = pivot <= rounding * n;
    column[j] = singular ? 0 : Math.sqrt(pivot);
    for (let i = j + 1; i < n; i++) {
      if (Math.abs(at(i, j) - at(j, i)) > rounding)
        throw new DomainError("not-symmetric", "the matrix must equal its mirror image", [at(i, j), at(j, i)]);
      const row = lower[i] as number[];
      let rest = at(i, j);
      for (let k = 0; k < j; k++) rest -= (row[k] as number) * (column[k] as number);
      if (!singular) row[j] = rest / (column[j] as number);
      // Where nothing of one quantity is left to vary, nothing can be left that varies with it.
      else if (Math.abs(rest) > Math.sqrt(rounding * largest) * n)
        throw new DomainError("not-positive-semidefinite", "no quantities can have these covariances", matrix);
    }
  }
  return lower;
}
