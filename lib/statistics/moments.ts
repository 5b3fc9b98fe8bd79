/** Mean and spread of a list in two passes, with the correction that keeps digits when all values share a large offset. */
export type Moments = { n: number; mean: number; sumSquares: number; sd: number };

/**
 * Mean x̄ = Σx/n, sum of squared deviations S = Σ(x − x̄)² − (Σ(x − x̄))²/n, and s = √(S/(n − 1)); s is 0 for one value.
 * The two-pass form with its remainder is from Chan, Golub and LeVeque, The American Statistician 37 (1983) 242.
 *
 * @example moments([1, 2, 3, 4]) // { n: 4, mean: 2.5, sumSquares: 5, sd: 1.2909944487358056 }
 */
export function moments(values: ArrayLike<number>): Moments {
  const n = values.length;
  const anchor = values[0]!;
  let sum = 0;
  for (let i = 0; i < n; i++) sum += values[i]! - anchor;
  const shift = sum / n;
  let remainder = 0;
  let squares = 0;
  for (let i = 0; i < n; i++) {
    const deviation = values[i]! - anchor - shift;
    remainder += deviation;
    squares += deviation * deviation;
  }
  const sumSquares = Math.max(0, squares - (remainder * remainder) / n);
  return { n, mean: anchor + (shift + remainder / n), sumSquares, sd: n > 1 ? Math.sqrt(sumSquares / (n - 1)) : 0 };
}
