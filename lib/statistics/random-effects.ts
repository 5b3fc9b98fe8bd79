import { DomainError } from "../quantity/domain-error.ts";
import { requireLevel, requireReadings, scaleOf } from "./checks.ts";
import { chiSquareQuantile, normalQuantile, tUpperQuantile } from "./distributions.ts";
import { generalisedQ, sharedWeight, tau2AtQ } from "./generalised-q.ts";
import { tau2Reml } from "./tau2-reml.ts";

export type RandomEffects = {
  mean: number;
  /** 1/√Σ 1/(u² + τ²), before any Hartung–Knapp factor. */
  se: number;
  tau2: number;
  q: number;
  df: number;
  i2: number;
  hkQ: number;
  interval: [number, number];
  tau2Interval: [number, number];
};

export type RandomEffectsMean = Omit<RandomEffects, "tau2Interval">;

export type RandomEffectsOptions = {
  tau2: "PM" | "DL" | "REML";
  interval?: "HK" | "HK-adhoc" | "normal";
  level?: number;
};

/**
 * Readings centred on the most certain one and scaled by a power of two near its u (unscaled ppm values upset the solvers), with their
 * variances.
 */
const centred = (x: readonly number[], u: readonly number[]) => {
  const n = x.length;
  let best = 0;
  for (let i = 1; i < n; i++) if (u[i]! < u[best]!) best = i;
  const scale = scaleOf(u[best]!);
  const origin = x[best]!;
  const y = x.map((value) => (value - origin) / scale);
  const v = u.map((uncertainty) => (uncertainty / scale) ** 2);
  return { y, v, scale, origin };
};

/**
 * The mean of `randomEffects(x, u, { tau2: "PM" })` alone, to the same digits, for those who ask for many (leaving one spot out in
 * turn) and need no interval. Refuses what `randomEffects` refuses.
 *
 * @example pauleMandelMean([100, 110], [3, 4]) // 104.65
 */
export const pauleMandelMean = (x: readonly number[], u: readonly number[]): number => {
  requireReadings(x, u, 2);
  const { y, v, scale, origin } = centred(x, u);
  const fixed = generalisedQ(y, v, 0);
  const tau2 = tau2AtQ(y, v, x.length - 1, fixed);
  return origin + scale * (tau2 === 0 ? fixed : generalisedQ(y, v, tau2)).mean;
};

const fitted = (x: readonly number[], u: readonly number[], options: RandomEffectsOptions) => {
  const { tau2: estimator, interval = "HK-adhoc", level = 0.95 } = options;
  requireReadings(x, u, 2);
  requireLevel(level);
  const df = x.length - 1;
  const { y, v, scale, origin } = centred(x, u);
  const fixed = generalisedQ(y, v, 0);
  let tau2: number;
  if (estimator === "PM") tau2 = tau2AtQ(y, v, df, fixed);
  else if (estimator === "DL") tau2 = Math.max(0, (fixed.q - df) / sharedWeight(v, 0));
  else if (estimator === "REML") tau2 = tau2Reml(y, v);
  else throw new DomainError("bad-estimator", 'tau2 must be "PM", "DL" or "REML"', estimator);
  const fit = tau2 === 0 ? fixed : generalisedQ(y, v, tau2);
  const mean = origin + scale * fit.mean;
  const se = scale / Math.sqrt(fit.sumW);
  const hkQ = fit.q / df;
  const tail = (1 - level) / 2;
  let half: number;
  if (interval === "normal") half = -normalQuantile(tail) * se;
  else if (interval === "HK") half = tUpperQuantile(tail, df) * se * Math.sqrt(hkQ);
  else if (interval === "HK-adhoc") half = tUpperQuantile(tail, df) * se * Math.sqrt(Math.max(1, hkQ));
  else throw new DomainError("bad-interval", 'interval must be "HK", "HK-adhoc" or "normal"', interval);
  const found: RandomEffectsMean = {
    mean,
    se,
    tau2: tau2 * scale * scale,
    q: fixed.q,
    df,
    i2: fixed.q > df ? (fixed.q - df) / fixed.q : 0,
    hkQ,
    interval: [mean - half, mean + half],
  };
  return { found, y, v, unit: scale * scale, df, tail };
};

/**
 * `randomEffects` without the interval of τ², for those who have no use for it: that takes as long as all the rest. Refuses what
 * `randomEffects` refuses.
 *
 * @example randomEffectsMean([100, 110], [3, 4], { tau2: "PM", interval: "HK" }) // { mean: 104.65, tau2: 37.5, interval: [41.27, 168.03] }
 */
export const randomEffectsMean = (
  x: readonly number[],
  u: readonly number[],
  options: RandomEffectsOptions,
): RandomEffectsMean => fitted(x, u, options).found;

/**
 * Random-effects mean of readings x with known standard uncertainties u: xᵢ = μ + δᵢ + εᵢ, δ with variance τ², ε with variance uᵢ².
 *
 * mean = Σwx/Σw, w = 1/(u² + τ²); se = 1/√Σw; q, df, i2 as in `weightedMean` (τ² = 0);
 * hkQ = Σw(x − mean)²/(n − 1) at the estimated τ².
 * - `tau2`: "PM" Paule–Mandel (Q(τ²) = n − 1), "DL" DerSimonian–Laird, "REML" (highest maximum); all held at 0 or more.
 * - `interval`: "HK" Hartung–Knapp, mean ± t(n−1)·se·√hkQ, of zero width where all readings agree; "HK-adhoc" (default) the same
 *   with the factor hkQ held at 1 or more; "normal" mean ± z·se.
 * - `level` 0.95 unless given, for both intervals.
 * - tau2Interval: Q-profile, Q(τ²) = χ² quantiles, ends held at 0; both ends 0 where even Q(0) is below the lower quantile.
 *
 * Units: mean, se and interval in the unit of x, tau2 in its square. Refuses (DomainError) fewer than two readings, lists of
 * different length, numbers that are not finite, u of zero or less, a level outside (0, 1).
 *
 * Sources: Paule and Mandel, J. Res. NBS 87 (1982) 377; DerSimonian and Laird (1986); Viechtbauer (2005, 2007);
 * Hartung and Knapp (2001); Sidik and Jonkman (2002); Knapp and Hartung (2003) for the factor held at 1.
 *
 * @example randomEffects([100, 110], [3, 4], { tau2: "PM", interval: "HK" }) // { mean: 104.65, tau2: 37.5, interval: [41.27, 168.03] }
 */
export const randomEffects = (
  x: readonly number[],
  u: readonly number[],
  options: RandomEffectsOptions,
): RandomEffects => {
  const { found, y, v, unit, df, tail } = fitted(x, u, options);
  return {
    ...found,
    tau2Interval: [
      tau2AtQ(y, v, chiSquareQuantile(1 - tail, df)) * unit,
      tau2AtQ(y, v, chiSquareQuantile(tail, df)) * unit,
    ],
  };
};
