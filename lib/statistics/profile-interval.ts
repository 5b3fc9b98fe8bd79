import { DomainError } from "../quantity/domain-error.ts";
import { normalQuantile, tUpperQuantile } from "./distributions.ts";

export type Cut = "chi2" | "small-sample";

/**
 * How far the deviance 2(ℓ_max − ℓ) may rise within a profile interval.
 *
 * "chi2": z², the chi-squared quantile with one degree of freedom (3.84 at 95 %). "small-sample": n·ln(1 + t²/(n − 1)), t with n − 1
 * degrees of freedom, exact for a normal mean with unknown variance: with it the profile interval is Student's.
 *
 * @throws DomainError `bad-cut`, `too-few` (the small-sample cut of one value)
 * @example devianceCut("chi2", 5, 0.95) // 3.841459
 */
export const devianceCut = (cut: Cut, n: number, level: number): number => {
  const tail = (1 - level) / 2;
  if (cut === "chi2") return normalQuantile(tail) ** 2;
  if (cut !== "small-sample") throw new DomainError("bad-cut", 'cut must be "chi2" or "small-sample"', cut);
  if (n < 2) throw new DomainError("too-few", "the small-sample cut needs two values or more", n);
  return n * Math.log1p(tUpperQuantile(tail, n - 1) ** 2 / (n - 1));
};

/** Where f crosses zero between a (f ≤ 0) and b (f > 0): false position after Anderson and Björck, bisecting where that drags. */
const crossing = (f: (m: number) => number, a: number, b: number, tolerance: number): number => {
  let [lo, hi] = [a, b];
  let [fLo, fHi] = [f(lo), f(hi)];
  let side = 0;
  for (let i = 0; i < 200; i++) {
    const secant = hi - (fHi * (hi - lo)) / (fHi - fLo);
    const inner = i % 8 !== 7 && secant > Math.min(lo, hi) && secant < Math.max(lo, hi);
    const at = inner ? secant : 0.5 * (lo + hi);
    const here = f(at);
    if (Math.abs(here) <= 1e-11 || Math.abs(hi - lo) <= tolerance + 2e-16 * Math.abs(at)) return at;
    if (here <= 0) {
      if (side === -1) fHi *= Math.max(1 - here / fLo, 0) || 0.5;
      [lo, fLo, side] = [at, here, -1];
    } else {
      if (side === 1) fLo *= Math.max(1 - here / fHi, 0) || 0.5;
      [hi, fHi, side] = [at, here, 1];
    }
  }
  return 0.5 * (lo + hi);
};

/**
 * One end of a profile interval: the last m beyond the maximum, going by `step` and doubling it, whose deviance is within the cut.
 * Two further steps are looked at after the first crossing, so that a second hump of the likelihood is not cut off.
 * Returns `end` itself (for instance −Infinity) where the deviance stays within the cut up to `reach`.
 *
 * @example profileEnd((m) => m * m, 0, 1, 4, 1e6, Infinity) // 2
 */
export const profileEnd = (
  deviance: (m: number) => number,
  maximum: number,
  step: number,
  cut: number,
  reach: number,
  end: number,
): number => {
  // The square root of the deviance is nearly a straight line in m, which root finders like.
  const over = (m: number) => Math.sqrt(Math.max(0, deviance(m))) - Math.sqrt(cut);
  const limited = (m: number) => (step > 0 ? Math.min(m, reach) : Math.max(m, reach));
  let inside = maximum;
  let outside: number | null = null;
  let beyond = 0;
  let at = maximum;
  for (let stride = step; at !== reach && beyond < 3; stride *= 2) {
    at = limited(at + stride);
    if (over(at) <= 0) {
      inside = at;
      outside = null;
      beyond = 0;
    } else {
      outside ??= at;
      beyond++;
    }
  }
  return outside === null ? end : crossing(over, inside, outside, 1e-13 * Math.abs(step));
};
