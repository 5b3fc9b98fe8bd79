import { DomainError } from "../quantity/domain-error.ts";
import { requireFlags, requireLevel, requireReadings, scaleOf } from "./checks.ts";
import { normalHazardBelow, normalHazardSlope, normalLogCdf } from "./distributions.ts";
import { highestMaximum, logGrid } from "./highest-maximum.ts";
import { type Local, newtonProfileEnd } from "./newton-profile-end.ts";
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

/** Readings alike in all stand once, `times` over. */
type Data = {
  x: readonly number[];
  v: readonly number[];
  censored: readonly boolean[];
  times: readonly number[];
};

/**
 * Log-likelihood of xᵢ ~ N(μ, uᵢ² + τ²) with left-censored readings, whole (with its 2π): seen readings by their density, censored ones
 * by Φ((L − μ)/√(u² + τ²)). v = u².
 */
export const censoredLogLikelihood = (
  { x, v, censored, times }: Omit<Data, "times"> & Partial<Pick<Data, "times">>,
  mean: number,
  tau2: number,
): number => {
  let l = 0;
  for (let i = 0; i < x.length; i++) {
    const variance = v[i]! + tau2;
    const d = x[i]! - mean;
    l +=
      (times?.[i] ?? 1) *
      (censored[i]
        ? normalLogCdf(d / Math.sqrt(variance))
        : -0.5 * (Math.log(2 * Math.PI * variance) + (d * d) / variance));
  }
  return l;
};

/** Slope of the log-likelihood in τ² at a stated mean. */
const slopeInTau2 = ({ x, v, censored, times }: Data, mean: number, tau2: number): number => {
  let g = 0;
  for (let i = 0; i < x.length; i++) {
    const variance = v[i]! + tau2;
    const d = x[i]! - mean;
    if (censored[i]) {
      const z = d / Math.sqrt(variance);
      g -= (times[i]! * normalHazardBelow(z) * z) / variance;
    } else g += (times[i]! * ((d * d) / variance - 1)) / variance;
  }
  return 0.5 * g;
};

/** The best mean for a stated τ²: the likelihood is concave in the mean, so Newton with step halving finds it. */
const meanAt = (data: Data, tau2: number, start: number): number => {
  const { x, v, censored, times } = data;
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
        g -= (times[j]! * normalHazardBelow(z)) / Math.sqrt(variance);
        h -= (times[j]! * normalHazardSlope(z)) / variance;
      } else {
        g += (times[j]! * d) / variance;
        h -= times[j]! / variance;
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

/** Log-likelihood with slopes and second slopes at a mean and r = ln(v₀ + τ²), v₀ the smallest u². */
export const localAt = ({ x, v, censored, times }: Data, v0: number, mean: number, r: number): Local => {
  const e = Math.exp(r);
  let [l, gM, gV, hMM, hVV, hMV] = [0, 0, 0, 0, 0, 0];
  for (let i = 0; i < x.length; i++) {
    const w = times[i]!;
    const variance = e + (v[i]! - v0);
    const d = x[i]! - mean;
    if (censored[i]) {
      const s = Math.sqrt(variance);
      const z = d / s;
      const hazard = normalHazardBelow(z);
      const bend = normalHazardSlope(z);
      l += w * normalLogCdf(z);
      gM -= (w * hazard) / s;
      hMM -= (w * bend) / variance;
      gV -= (w * hazard * z) / (2 * variance);
      hVV += (w * (3 * hazard * z - bend * z * z)) / (4 * variance * variance);
      hMV += (w * (hazard - bend * z)) / (2 * variance * s);
    } else {
      const square = (d * d) / variance;
      l -= 0.5 * w * (Math.log(2 * Math.PI * variance) + square);
      gM += (w * d) / variance;
      hMM -= w / variance;
      gV += (0.5 * w * (square - 1)) / variance;
      hVV += (w * (0.5 - square)) / (variance * variance);
      hMV -= (w * d) / (variance * variance);
    }
  }
  return { l, gM, gR: e * gV, hMM, hRR: e * (e * hVV + gV), hMR: e * hMV };
};

/**
 * The maximum by Newton in the mean and r together, from a start; for readings of one u, whose likelihood is concave in 1/√(v + τ²) and
 * mean/√(v + τ²) (Olsen, Econometrica 46 (1978) 1211, from memory), so that any maximum is the only one. Null where Newton does not settle.
 */
const onlyMaximum = (data: Data, v0: number, mean: number, r: number): { mean: number; tau2: number } | null => {
  const least = Math.log(v0);
  let m = mean;
  let s = Math.max(least, r);
  let here = localAt(data, v0, m, s);
  for (let round = 0; round < 60; round++) {
    const pinned = s <= least && here.gR <= 0;
    const determinant = here.hMM * here.hRR - here.hMR * here.hMR;
    let dM = -here.gM / here.hMM;
    let dS = pinned ? 0 : here.hRR < 0 ? -here.gR / here.hRR : Math.sign(here.gR);
    if (!pinned && determinant > 0 && here.hMM < 0) {
      dM = (here.hMR * here.gR - here.hRR * here.gM) / determinant;
      dS = (here.hMR * here.gM - here.hMM * here.gR) / determinant;
    }
    const size = Math.abs(dM) * Math.sqrt(-here.hMM) + Math.abs(dS);
    const shrink = Math.min(1, 2 / Math.abs(dS));
    dM *= shrink;
    dS *= shrink;
    const [fromM, fromS, enough] = [m, s, here.l - 1e-13 * (1 + Math.abs(here.l))];
    for (let halving = 0; halving < 30; halving++, dM /= 2, dS /= 2) {
      m = fromM + dM;
      s = Math.max(least, fromS + dS);
      here = localAt(data, v0, m, s);
      if (here.l >= enough) break;
    }
    if (!(here.l >= enough)) return null;
    if (size <= 1e-9) return { mean: m, tau2: s <= least ? 0 : Math.exp(s) - v0 };
  }
  return null;
};

/** Readings alike in all, counted. */
const counted = (x: readonly number[], v: readonly number[], censored: readonly boolean[]): Data => {
  const data = { x: [] as number[], v: [] as number[], censored: [] as boolean[], times: [] as number[] };
  for (let i = 0; i < x.length; i++) {
    const alike = data.x.findIndex(
      (other, j) => other === x[i] && data.v[j] === v[i] && data.censored[j] === censored[i],
    );
    if (alike >= 0) data.times[alike]! += 1;
    else {
      data.x.push(x[i]!);
      data.v.push(v[i]!);
      data.censored.push(censored[i]!);
      data.times.push(1);
    }
  }
  return data;
};

/** τ² worth looking at: from far below the smallest u² to well past the square of the range. */
const tau2Grid = ({ x, v }: Data, perDecade: number): number[] => {
  const range = Math.max(...x) - Math.min(...x);
  return logGrid(Math.min(...v) * 1e-3, 100 * Math.max(range * range, ...v), perDecade);
};

type Maximum = {
  data: Data;
  seen: number;
  origin: number;
  scale: number;
  mean: number;
  tau2: number;
  l: number;
  single: boolean;
};

/** Where the likelihood is highest, on readings centred on the surest and scaled. Null where none was seen. */
const maximumOf = (x: readonly number[], u: readonly number[], censored: readonly boolean[]): Maximum | null => {
  const seen = x.map((_, i) => i).filter((i) => !censored[i]);
  if (seen.length === 0) return null;
  const best = seen.reduce((a, b) => (u[b]! < u[a]! ? b : a));
  const origin = x[best]!;
  const scale = scaleOf(u[best]!);
  const data = counted(
    x.map((value) => (value - origin) / scale),
    u.map((value) => (value / scale) ** 2),
    censored,
  );
  const found = { data, seen: seen.length, origin, scale };
  const v0 = Math.min(...data.v);
  const single = data.v.every((v) => v === v0);
  if (single) {
    const middle = seen.reduce((sum, i) => sum + (x[i]! - origin) / scale, 0) / seen.length;
    const spread = seen.reduce((sum, i) => sum + ((x[i]! - origin) / scale - middle) ** 2, 0) / seen.length;
    const only = onlyMaximum(data, v0, middle, Math.log(v0 + spread));
    if (only !== null) return { ...found, ...only, l: censoredLogLikelihood(data, only.mean, only.tau2), single };
  }
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
  return { ...found, mean: meanAt(data, fit.at, mean), tau2: fit.at, l: fit.value, single };
};

/**
 * The mean and τ of `censoredRandomEffects` without its interval, for those who first ask whether a part is even. Refuses
 * what that refuses, and (DomainError `all-censored`) readings none of which was seen.
 *
 * @example censoredMeanAndSpread([412, 655, 501, 398, 890], [9, 13, 11, 8, 18], [false, false, false, false, false]).mean // 570.69592
 */
export const censoredMeanAndSpread = (
  x: readonly number[],
  u: readonly number[],
  censored: readonly boolean[],
): { mean: number; tau: number } => {
  requireReadings(x, u);
  requireFlags(x, censored);
  const found = maximumOf(x, u, censored);
  if (found === null)
    throw new DomainError("all-censored", "no reading was seen, so there is no likeliest mean", x.length);
  return { mean: found.origin + found.scale * found.mean, tau: found.scale * Math.sqrt(found.tau2) };
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
  const found = maximumOf(x, u, censored);
  if (found === null)
    return { status: "all-censored", mean: null, tau: null, tauOnBoundary: null, interval: null, logLikelihood: null };
  const { data, seen, origin, scale, mean, tau2, l, single } = found;
  const grid = tau2Grid(data, 3);
  const deviance = (m: number) => {
    const profile = highestMaximum(
      (t) => censoredLogLikelihood(data, m, t),
      (t) => slopeInTau2(data, m, t),
      grid,
    );
    return 2 * (l - profile.value);
  };
  let information = 0;
  for (let i = 0; i < data.x.length; i++) if (!data.censored[i]) information += data.times[i]! / (data.v[i]! + tau2);
  const step = 2 / Math.sqrt(information);
  const far = 1e12 * (Math.abs(mean) + step + Math.max(...data.x.map(Math.abs)));
  const v0 = Math.min(...data.v);
  const top = { l, m: mean, r: Math.log(v0 + tau2), drift: 0 };
  /**
   * Newton's end. With one u the likelihood is concave after Olsen, so its profile falls away on both sides and there is no other crossing;
   * with several, the whole search over τ² must agree there, and at two and four times the distance. Else step by step.
   */
  const end = (side: -1 | 1): number => {
    const at = (m: number, r: number) => localAt(data, v0, m, r);
    const bounds = { least: Math.log(v0), most: 700, bounded: true, reach: side * far };
    const ended = newtonProfileEnd(at, top, side * step, limit, bounds);
    if (ended !== null) {
      const beyond = (times: number) => deviance(mean + times * (ended.m - mean)) > limit;
      if (single || (Math.abs(deviance(ended.m) - limit) <= 1e-9 && beyond(2) && beyond(4))) return ended.m;
    }
    return profileEnd(deviance, mean, side * step, limit, side * far, side * Number.POSITIVE_INFINITY);
  };
  return {
    status: "ok",
    mean: origin + scale * mean,
    tau: scale * Math.sqrt(tau2),
    tauOnBoundary: tau2 === 0,
    interval: [origin + scale * end(-1), origin + scale * end(1)],
    logLikelihood: l - seen * Math.log(scale),
  };
};
