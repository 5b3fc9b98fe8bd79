import { DomainError } from "../quantity/domain-error.ts";

/**
 * Lower triangle L of a symmetric matrix with L·Lᵀ = matrix (Cholesky), by rows.
 *
 * Worked on the matrix scaled to a diagonal of ones, so that quantities of very different size meet the same arithmetic. A pivot of zero to
 * rounding (two inputs fully correlated, or one that does not vary) gives a column of zeros: the matrix may be singular, but not
 * indefinite. Unit: the square root of the matrix's.
 *
 * matrix: n × n, n ≥ 1, finite, diagonal 0 or more, symmetric to 12 digits.
 *
 * Source: JCGM 101:2008 C.5 (drawing from a multivariate normal distribution).
 *
 * @throws DomainError `empty`, `not-square`, `not-finite`, `not-symmetric`, `not-positive-semidefinite`
 * @example cholesky([[4, 2], [2, 5]]) // [[2, 0], [1, 2]]
 */
export function cholesky(matrix: readonly (readonly number[])[]): number[][] {
  requireSquare(matrix);
  const n = matrix.length;
  const sizes = matrix.map((row, i) => {
    if ((row[i] as number) < 0) throw indefinite(matrix);
    return Math.sqrt(row[i] as number);
  });
  // Where one of the two does not vary there is nothing to scale by, and only 0 fits.
  const scaled = (i: number, j: number) => {
    const element = matrix[i]?.[j] as number;
    const [a, b] = [sizes[i] as number, sizes[j] as number];
    return a > 0 && b > 0 ? element / a / b : element;
  };
  const rounding = 1e-12 * n;
  const lower = matrix.map((row) => row.map(() => 0));
  for (let j = 0; j < n; j++) {
    const column = lower[j] as number[];
    const pivot = scaled(j, j) - column.reduce((sum, element) => sum + element * element, 0);
    if (pivot < -rounding) throw indefinite(matrix);
    const singular = pivot <= rounding;
    column[j] = singular ? 0 : Math.sqrt(pivot);
    for (let i = j + 1; i < n; i++) {
      if (Math.abs(scaled(i, j) - scaled(j, i)) > rounding)
        throw new DomainError("not-symmetric", "the matrix must equal its mirror image", [
          matrix[i]?.[j],
          matrix[j]?.[i],
        ]);
      const row = lower[i] as number[];
      const rest = scaled(i, j) - column.slice(0, j).reduce((sum, element, k) => sum + element * (row[k] as number), 0);
      if (!singular) row[j] = rest / (column[j] as number);
      // Where nothing of one quantity is left to vary, nothing can be left that varies with it.
      else if (Math.abs(rest) > Math.sqrt(rounding)) throw indefinite(matrix);
    }
  }
  return lower.map((row, i) => row.map((element) => element * (sizes[i] as number)));
}

const indefinite = (matrix: unknown) =>
  new DomainError("not-positive-semidefinite", "no quantities can have these covariances", matrix);

function requireSquare(matrix: readonly (readonly number[])[]): void {
  if (matrix.length === 0) throw new DomainError("empty", "a matrix needs at least one row", 0);
  for (const row of matrix) {
    if (row.length !== matrix.length)
      throw new DomainError("not-square", "every row must be as long as the matrix is high", row.length);
    for (const element of row)
      if (!Number.isFinite(element)) throw new DomainError("not-finite", "an element is not a finite number", element);
  }
}
