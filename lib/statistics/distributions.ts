import betainc from "@stdlib/math-base-special-betainc";
import erfc from "@stdlib/math-base-special-erfc";
import erfcx from "@stdlib/math-base-special-erfcx";
import gammainc from "@stdlib/math-base-special-gammainc";
import chiSquareQuantileOf from "@stdlib/stats-base-dists-chisquare-quantile";
import fQuantileOf from "@stdlib/stats-base-dists-f-quantile";
import normalQuantileOf from "@stdlib/stats-base-dists-normal-quantile";
import tQuantileOf from "@stdlib/stats-base-dists-t-quantile";

// Thin typed doors to the distribution functions. Upper tails come from complementary functions (incomplete gamma and
// beta, erfc, erfcx), never from 1 − cdf, so a probability of 1e-185 keeps all its digits.

/** Quantiles asked again and again for the same few degrees of freedom (one per number of readings) are kept. */
const remembered = (f: (p: number, nu: number) => number) => {
  const kept = new Map<number, Map<number, number>>();
  return (p: number, nu: number): number => {
    let row = kept.get(p);
    if (row === undefined) {
      if (kept.size > 64) kept.clear();
      row = new Map();
      kept.set(p, row);
    }
    let quantile = row.get(nu);
    if (quantile === undefined) {
      if (row.size > 512) row.clear();
      quantile = f(p, nu);
      row.set(nu, quantile);
    }
    return quantile;
  };
};

/** Beyond this many degrees of freedom Student's t is the normal distribution to every digit of a double. */
const tIsNormalFrom = 1e16;

/**
 * P(Z > z), Z standard normal.
 * Source: DLMF 7.2 (clause from memory); erfc of @stdlib.
 *
 * @example normalUpperTail(1.959964) // 0.025
 */
export const normalUpperTail = (z: number): number => 0.5 * erfc(z / Math.SQRT2);

/**
 * ln P(Z < z), Z standard normal; exact far in both tails (z = −1e10 gives −5e19).
 *
 * @example normalLogCdf(0) // -0.693147
 */
export const normalLogCdf = (z: number): number =>
  z < -1 ? Math.log(0.5 * erfcx(-z / Math.SQRT2)) - 0.5 * z * z : Math.log1p(-0.5 * erfc(z / Math.SQRT2));

/**
 * φ(z)/Φ(z), the derivative of ln Φ (inverse Mills ratio).
 *
 * @example normalHazardBelow(0) // 0.797885
 */
export const normalHazardBelow = (z: number): number =>
  z < 10 ? Math.sqrt(2 / Math.PI) / erfcx(-z / Math.SQRT2) : Math.exp(-0.5 * z * z) / Math.sqrt(2 * Math.PI);

/**
 * −d²/dz² ln Φ(z) = λ(λ + z), between 0 and 1; the series serves where λ + z cancels.
 *
 * @example normalHazardSlope(0) // 0.63662
 */
export const normalHazardSlope = (z: number): number => {
  if (z < -100) {
    const s = 1 / (z * z);
    return 1 - s * (1 - 6 * s * (1 - (25 / 3) * s));
  }
  const hazard = normalHazardBelow(z);
  return hazard * (hazard + z);
};

/** The library's quantile loses digits below this tail probability (1e-12 is off by 5e-7); Newton on ln Φ serves there. */
const smallTail = 1e-3;
const farTailQuantile = (p: number): number => {
  const target = Math.log(p);
  // ln Φ is concave and the start lies below the root, so the steps rise to it and never pass it.
  let z = -Math.sqrt(-2 * target);
  for (let i = 0; i < 50; i++) {
    const step = (target - normalLogCdf(z)) / normalHazardBelow(z);
    z += step;
    if (Math.abs(step) <= 1e-15 * Math.abs(z)) break;
  }
  return z;
};

/**
 * z with P(Z < z) = p. For an upper tail give the small probability and change the sign.
 *
 * @example normalQuantile(0.025) // -1.959964
 */
export const normalQuantile = (p: number): number =>
  p > 0 && p < smallTail ? farTailQuantile(p) : normalQuantileOf(p, 0, 1);

/**
 * P(T > t), Student's t with nu degrees of freedom (nu real, may be Infinity).
 * Source: DLMF 8.17, incomplete beta (clause from memory); betainc of @stdlib.
 *
 * @example tUpperTail(2.776445, 4) // 0.025
 */
export const tUpperTail = (t: number, nu: number): number => {
  if (nu >= tIsNormalFrom) return normalUpperTail(t);
  const square = t * t;
  // P(|T| < t) = I_y(1/2, nu/2), y = t²/(nu + t²): near the middle it is the small part, and keeps the digits.
  if (square < 1) return 0.5 - Math.sign(t) * 0.5 * betainc(square / (nu + square), 0.5, nu / 2, true, false);
  // P(|T| > t) = I_x(nu/2, 1/2), x = nu/(nu + t²); the other form keeps digits where x rounds to 1.
  const both =
    square < nu
      ? betainc(square / (nu + square), 0.5, nu / 2, true, true)
      : betainc(nu / (nu + square), nu / 2, 0.5, true, false);
  return t > 0 ? both / 2 : 1 - both / 2;
};

const upperT = remembered((upper, nu) => -tQuantileOf(upper, nu));

/**
 * t with P(T > t) = upper (give the small tail: 0.025, not 0.975); nu real, may be Infinity.
 *
 * @example tUpperQuantile(0.025, 4) // 2.776445
 */
export const tUpperQuantile = (upper: number, nu: number): number =>
  nu >= tIsNormalFrom ? -normalQuantile(upper) : upperT(upper, nu);

/**
 * P(X > x), chi-squared with df degrees of freedom.
 * Source: DLMF 8.2, incomplete gamma (clause from memory); gammainc of @stdlib.
 *
 * @example chiSquareUpperTail(3.841459, 1) // 0.05
 */
export const chiSquareUpperTail = (x: number, df: number): number => (x <= 0 ? 1 : gammainc(x / 2, df / 2, true, true));

/**
 * x with P(X < x) = p, chi-squared with df degrees of freedom.
 *
 * @example chiSquareQuantile(0.95, 1) // 3.841459
 */
export const chiSquareQuantile = remembered((p, df) => chiSquareQuantileOf(p, df));

/**
 * P(F > f), Fisher's F with d1 and d2 degrees of freedom.
 *
 * @example fUpperTail(161.4476, 1, 1) // 0.05
 */
export const fUpperTail = (f: number, d1: number, d2: number): number => {
  if (f <= 0) return 1;
  const scaled = d1 * f;
  return scaled < d2
    ? betainc(scaled / (d2 + scaled), d1 / 2, d2 / 2, true, true)
    : betainc(d2 / (d2 + scaled), d2 / 2, d1 / 2, true, false);
};

/**
 * f with P(F < f) = p.
 *
 * @example fQuantile(0.95, 1, 1) // 161.4476
 */
export const fQuantile = (p: number, d1: number, d2: number): number => fQuantileOf(p, d1, d2);
