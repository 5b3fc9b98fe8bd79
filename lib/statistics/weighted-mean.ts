import { requireReadings, scaleOf } from "./checks.ts";
import { chiSquareUpperTail } from "./distributions.ts";

export type WeightedMean = {
  mean: number;
  uInternal: number;
  q: number;
  df: number;
  /** P(χ²_df ≥ Q); null for a single reading. */
  p: number | null;
  birge: number | null;
  uExternal: number | null;
  i2: number | null;
};

/**
 * Inverse-variance weighted mean of readings x with known standard uncertainties u, and the test of their consistency.
 *
 * w = 1/u²; mean = Σwx/Σw; uInternal = 1/√Σw; Q = Σw(x − mean)², df = n − 1, p = P(χ²_df ≥ Q);
 * Birge ratio = √(Q/df); uExternal = uInternal · Birge (not held at 1 or more: the caller decides);
 * I² = max(0, (Q − df)/Q) as 0 … 1, and 0 where Q = 0. Units: mean and both uncertainties in the unit of x.
 *
 * A single reading has no scatter: p, birge, uExternal and i2 are null. Refuses (DomainError) empty or unequal lists, numbers
 * that are not finite, u of zero or less.
 *
 * Sources: R. T. Birge, Phys. Rev. 40 (1932) 207; Cochran's Q (1954); Higgins and Thompson (2002) for I².
 *
 * @example weightedMean([100, 110], [3, 4]) // { mean: 103.6, uInternal: 2.4, q: 4, birge: 2, uExternal: 4.8, i2: 0.75 }
 */
export const weightedMean = (x: readonly number[], u: readonly number[]): WeightedMean => {
  requireReadings(x, u);
  const n = x.length;
  // Weights relative to the smallest uncertainty, and values relative to its reading: neither overflows nor cancels.
  let best = 0;
  for (let i = 1; i < n; i++) if (u[i]! < u[best]!) best = i;
  const scale = scaleOf(u[best]!);
  const origin = x[best]!;
  let sumW = 0;
  let sumWx = 0;
  for (let i = 0; i < n; i++) {
    const relative = scale / u[i]!;
    const w = relative * relative;
    sumW += w;
    sumWx += w * (x[i]! - origin);
  }
  const shift = sumWx / sumW;
  let q = 0;
  for (let i = 0; i < n; i++) {
    const residual = (x[i]! - origin - shift) / u[i]!;
    q += residual * residual;
  }
  const df = n - 1;
  const uInternal = scale / Math.sqrt(sumW);
  if (df === 0) return { mean: origin, uInternal, q: 0, df, p: null, birge: null, uExternal: null, i2: null };
  const birge = Math.sqrt(q / df);
  return {
    mean: origin + shift,
    uInternal,
    q,
    df,
    p: chiSquareUpperTail(q, df),
    birge,
    uExternal: uInternal * birge,
    i2: q > df ? (q - df) / q : 0,
  };
};
