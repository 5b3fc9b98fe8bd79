import { DomainError } from "../quantity/domain-error.ts";

// Halving from 1 to the smallest double takes some 1,100 rounds; the method never needs more than a few times that.
const ROUND_LIMIT = 10_000;

/**
 * The zero of f between lo and hi, where f changes sign: Brent's method (Brent, Algorithms for Minimization without
 * Derivatives, 1973, chapter 4), down to the spacing of the numbers themselves.
 *
 * Refused (DomainError `no-sign-change`): f(lo) and f(hi) on the same side of zero.
 *
 * @example bracketedRoot((x) => x * x - 2, 1, 2) // 1.4142135623731
 */
export function bracketedRoot(f: (x: number) => number, lo: number, hi: number): number {
  let a = lo;
  let b = hi;
  let fa = f(a);
  let fb = f(b);
  if (fa === 0) return a;
  if (fb === 0) return b;
  if (!(fa > 0 !== fb > 0)) throw new DomainError("no-sign-change", "the function does not change sign", [fa, fb]);
  let c = a;
  let fc = fa;
  let step = b - a;
  let previous = step;
  for (let i = 0; i < ROUND_LIMIT; i++) {
    if (fb > 0 === fc > 0) {
      c = a;
      fc = fa;
      step = b - a;
      previous = step;
    }
    if (Math.abs(fc) < Math.abs(fb)) {
      [a, b, c] = [b, c, b];
      [fa, fb, fc] = [fb, fc, fb];
    }
    const tolerance = 2 * Number.EPSILON * Math.abs(b) + Number.MIN_VALUE;
    const half = (c - b) / 2;
    if (Math.abs(half) <= tolerance || fb === 0) return b;
    const next =
      Math.abs(previous) < tolerance || Math.abs(fa) <= Math.abs(fb) ? null : interpolated(a, b, c, fa, fb, fc);
    if (
      next !== null &&
      2 * Math.abs(next) < Math.min(3 * Math.abs(half) - tolerance, Math.abs(previous)) &&
      next * half > 0
    ) {
      previous = step;
      step = next;
    } else {
      step = half;
      previous = half;
    }
    a = b;
    fa = fb;
    b += Math.abs(step) > tolerance ? step : Math.sign(half) * tolerance;
    fb = f(b);
  }
  throw new Error(`no root after ${ROUND_LIMIT} rounds, at ${b}`);
}

/** Step from b by the secant (two points) or inverse quadratic interpolation (three). */
function interpolated(a: number, b: number, c: number, fa: number, fb: number, fc: number): number {
  const s = fb / fa;
  if (a === c) return -((c - b) * s) / (1 - s);
  const q = fa / fc;
  const r = fb / fc;
  const p = s * ((c - b) * q * (q - r) - (b - a) * (r - 1));
  return -p / ((q - 1) * (r - 1) * (s - 1));
}
