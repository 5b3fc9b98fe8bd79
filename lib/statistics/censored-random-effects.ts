import { requireFlags, requireLevel, requireReadings, scaleOf } from "./checks.ts";
import { normalHazardBelow, normalHazardSlope, normalLogCdf } from "./distributions.ts";
import { highestMaximum, logGrid } from "./highest-maximum.ts";
import { type Cut, devianceCut, profileEnd } from "./profile-interval.ts";

export type CensoredRandomEffects =
  | {
      status: "ok";
      mean: number;
      tau: number;
      tauOnBoundary: boolean;
      interval: [number, number];
      logLikelihood: number;
    }
  | { status: "all-censored"; mean: null; tau: null; tauOnBoundary: null; interval: null; logLikelihood: null };

type Data = { x: readonly number[]; v: readonly number[]; censored: readonly boolean[] };

/**
 * Log-likelihood of xᵢ ~ N(μ, uᵢ² + τ²) with left-censored readings, whole (with its 2π): seen readings by their density, censored ones
 * by Φ((L − μ)/√(u² + τ²)). v = u².
 */
export const censoredLogLikelihood = ({ x, v, censored }: Data, mean: number, tau2: number): number => {
  let l = 0;
  for (let i = 0; i < x.length; i++) {
    const variance = v[i]! + tau2;
    const d = x[i]! - mean;
    l += censored[i]
      ? normalLogCdf(d / Math.sqrt(variance))
      : -0.5 * (Math.log(2 * Math.PI * variance) + (d * d) / variance);
  }
  return l;
};

/** Slope of the log-likelihood in τ² at a stated mean. */
const slopeInTau2 = ({ x, v, censored }: Data, mean: number, tau2: number): number => {
  let g = 0;
  for (let i = 0; i < x.length; i++) {
    const variance = v[i]! + tau2;
    const d = x[i]! - mean;
    if (censored[i]) {
      const z = d / Math.sqrt(variance);
      g -= (normalHazardBelow(z) * z) / variance;
    } else g += ((d * d) / variance - 1) / variance;
  }
  return 0.5 * g;
};

/** The best mean for a stated τ²: the likelihood is concave in the mean, so Newton with step halving finds it. */
const meanAt = (data: Data, tau2: number, start: number): number => {
  const { x, v, censored } = data;
  let mean = start;
  let l = censoredLogLikelihood(data, mean, tau2);
  for (let i = 0; i < 200; i++) {
    let g = 0;
    let h = 0;
    for (let j = 0; j < x.length; j++) {
      const variance = v[j]! + tau2;
      const d = x[j]! - mean;
      if (censored[j]) {
        const z = d / Math.sqrt(variance);
        g -= normalHazardBelow(z) / Math.sqrt(variance);
        h -= normalHazardSlope(z) / variance;
      } else {
        g += d / variance;
        h -= 1 / variance;
      }
    }
    let step = -g / h;
    let next = l;
    for (let halving = 0; halving < 60; halving++) {
      next = censoredLogLikelihood(data, mean + step, tau2);
      if (next >= l - 1e-13 * (1 + Math.abs(l))) break;
      step /= 2;
    }
    if (!(next >= l - 1e-13 * (1 + Math.abs(l)))) break;
    mean += step;
    l = next;
    // Close to the maximum the Newton step squares its error: one small step more and the digits are done.
    if (Math.abs(step * h) <= 1e-15 * Math.sqrt(-h) || Math.abs(step) <= 1e-16 * Math.abs(mean)) break;
  }
  return mean;
};

/** τ² worth looking at: from far below the smallest u² to well past the square of the range. */
const tau2Grid = ({ x, v }: Data, perDecade: number): number[] => {
  const range = Math.max(...x) - Math.min(...x);
  return logGrid(Math.min(...v) * 1e-3, 100 * Math.max(range * range, ...v), perDecade);
};

/**
 * Maximum likelihood mean and between-spot spread τ of readings with known standard uncertainties u, some of them below a limit.
 *
 * xᵢ ~ N(μ, uᵢ² + τ²), τ ≥ 0; `x` holds the limit L where `censored` is true and the term is Φ((L − μ)/√(u² + τ²)). `interval` is the profile
 * interval of μ over τ ≥ 0 at `level` (0.95): the values whose deviance is within `cut`, "chi2" (default) or "small-sample",
 * n·ln(1 + t²/(n − 1)) with n all readings. Where the likelihood has several maxima the highest is taken. Unit of x.
 *
 * status "all-censored": no maximum exists and all numbers are null (see `upperBoundAllCensored`). Refuses (DomainError) empty or
 * unequal lists, numbers that are not finite, u of zero or less, one reading alone with the small-sample cut.
 *
 * Sources: Pawitan, In All Likelihood (2001) chapters 3 and 11 (from memory); the small-sample cut is derived in `devianceCut`.
 *
 * @example censoredRandomEffects([412, 655, 501, 398, 890], [9, 13, 11, 8, 18], [false, false, false, false, false])
 * // { status: "ok", mean: 570.69592, tau: 182.97323, interval: [373.665, 768.268] }
 */
export const censoredRandomEffects = (
  x: readonly number[],
  u: readonly number[],
  censored: readonly boolean[],
  options: { level?: number; cut?: Cut } = {},
): CensoredRandomEffects => {
  const { level = 0.95, cut = "chi2" } = options;
  requireReadings(x, u);
  requireFlags(x, censored);
  requireLevel(level);
  const limit = devianceCut(cut, x.length, level);
  const seen = x.map((_, i) => i).filter((i) => !censored[i]);
  if (seen.length === 0)
    return { status: "all-censored", mean: null, tau: null, tauOnBoundary: null, interval: null, logLikelihood: null };
  const best = seen.reduce((a, b) => (u[b]! < u[a]! ? b : a));
  const origin = x[best]!;
  const scale = scaleOf(u[best]!);
  const data: Data = {
    x: x.map((value) => (value - origin) / scale),
    v: u.map((value) => (value / scale) ** 2),
    censored,
  };
  let mean = 0;
  const bestMean = (tau2: number) => {
    mean = meanAt(data, tau2, mean);
    return mean;
  };
  const fit = highestMaximum(
    (tau2) => censoredLogLikelihood(data, bestMean(tau2), tau2),
    (tau2) => slopeInTau2(data, bestMean(tau2), tau2),
    tau2Grid(data, 6),
  );
  mean = meanAt(data, fit.at, mean);
  const grid = tau2Grid(data, 3);
  const deviance = (m: number) => {
    const profile = highestMaximum(
      (tau2) => censoredLogLikelihood(data, m, tau2),
      (tau2) => slopeInTau2(data, m, tau2),
      grid,
    );
    return 2 * (fit.value - profile.value);
  };
  let information = 0;
  for (const i of seen) information += 1 / (data.v[i]! + fit.at);
  const step = 2 / Math.sqrt(information);
  const far = 1e12 * (Math.abs(mean) + step + Math.max(...data.x.map(Math.abs)));
  return {
    status: "ok",
    mean: origin + scale * mean,
    tau: scale * Math.sqrt(fit.at),
    tauOnBoundary: fit.at === 0,
    interval: [
      origin + scale * profileEnd(deviance, mean, -step, limit, -far, Number.NEGATIVE_INFINITY),
      origin + scale * profileEnd(deviance, mean, step, limit, far, Number.POSITIVE_INFINITY),
    ],
    logLikelihood: fit.value - seen.length * Math.log(scale),
  };
};
