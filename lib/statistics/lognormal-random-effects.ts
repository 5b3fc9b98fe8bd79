import { requireFlags, requireLevel, requireReadings } from "./checks.ts";
import { normalHazardBelow, normalHazardSlope, normalLogCdf } from "./distributions.ts";
import { generalisedQ, tau2AtQ } from "./generalised-q.ts";
import { lognormalPart, type ReadingPart } from "./lognormal-nodes.ts";
import { type Local, newtonProfileEnd } from "./newton-profile-end.ts";
import { type Cut, devianceCut, profileEnd } from "./profile-interval.ts";

export type LognormalRandomEffects =
  | {
      status: "ok";
      /** M = exp(θ + σ²/2), the mean content. */
      mean: number;
      theta: number;
      sigma: number;
      interval: [number, number];
      logLikelihood: number;
    }
  | { status: "at-zero"; mean: 0; theta: null; sigma: null; interval: [number, number]; logLikelihood: number }
  | { status: "all-censored"; mean: null; theta: null; sigma: null; interval: null; logLikelihood: null };

type Data = { x: readonly number[]; u: readonly number[]; censored: readonly boolean[] };
/** Every reading's part of the likelihood; readings alike in all count as one, `times` over. */
type Parts = { part: ReadingPart; times: number }[];

export const partsOf = ({ x, u, censored }: Data): Parts => {
  const parts: Parts = [];
  const first: number[] = [];
  for (let i = 0; i < x.length; i++) {
    const alike = first.findIndex((j) => x[i] === x[j] && u[i] === u[j] && censored[i] === censored[j]);
    if (alike >= 0) parts[alike]!.times += 1;
    else {
      first.push(i);
      parts.push({ part: lognormalPart(x[i]!, u[i]!, censored[i]!), times: 1 });
    }
  }
  return parts;
};

/** No spread: every content is M, and the likelihood has a closed form. Slopes in λ only, and the slope in σ² at σ = 0. */
export const withoutSpread = ({ x, u, censored }: Data, lambda: number) => {
  const c = Math.exp(lambda);
  const at = { l: 0, gLambda: 0, hLambda: 0, gSigma2: 0 };
  for (let i = 0; i < x.length; i++) {
    const z = (x[i]! - c) / u[i]!;
    const s = c / u[i]!;
    if (censored[i]) {
      const hazard = normalHazardBelow(z);
      at.l += normalLogCdf(z);
      at.gLambda -= hazard * s;
      at.hLambda -= hazard * s + normalHazardSlope(z) * s * s;
      at.gSigma2 -= 0.5 * hazard * z * s * s;
    } else {
      at.l -= 0.5 * z * z + Math.log(u[i]!) + 0.5 * Math.log(2 * Math.PI);
      at.gLambda += z * s;
      at.hLambda += z * s - s * s;
      at.gSigma2 += 0.5 * (z * z - 1) * s * s;
    }
  }
  return at;
};

/**
 * Slopes are expectations of the complete-data slopes given the readings, and second slopes follow by Louis' identity
 * (J. R. Statist. Soc. B 44 (1982) 226): no differences are taken. With e = (ln c − θ)/σ and θ = λ − σ²/2 the complete-data slopes are
 * S_λ = e/σ and S_ρ = e² − 1 − σe.
 */
export const likelihood = (parts: Parts, lambda: number, rho: number): Local => {
  const s = Math.exp(rho);
  const t = s * s;
  const at: Local = { l: 0, gM: 0, gR: 0, hMM: 0, hRR: 0, hMR: 0 };
  for (const { part, times } of parts) {
    const { logf, m1, m2, m3, m4 } = part(lambda - t / 2, s);
    const score = m2 - 1 - s * m1;
    at.l += times * logf;
    at.gM += (times * m1) / s;
    at.gR += times * score;
    at.hMM += (times * (m2 - m1 * m1 - 1)) / t;
    at.hRR += times * (2 * s * m1 - 2 * m2 - t + (m4 - 2 * s * m3 + (t - 2) * m2 + 2 * s * m1 + 1) - score * score);
    at.hMR += times * (1 - (2 * m1) / s + (m3 - m1 - s * m2 - m1 * score) / s);
  }
  return at;
};

/** `drift`: how ρ's best value moves with λ, dρ/dλ. */
type Point = { l: number; lambda: number; rho: number; drift: number };
const noSpread = Number.NEGATIVE_INFINITY;
/** ln σ beyond which no search need go: at e⁴ the mean is e¹⁴⁹⁰ medians, more than a computer can hold. */
const widest = 4;
const distance = (from: Point, lambda: number, rho: number) =>
  Math.abs(lambda - from.lambda) + Math.abs(rho - from.rho);
const clamp = (step: number, most: number) => Math.max(-most, Math.min(most, step));

/** The best λ without spread: Newton with step halving, λ held above `floor`. */
const bestWithoutSpread = (data: Data, start: number, floor: number): Point => {
  let lambda = start;
  let here = withoutSpread(data, lambda);
  for (let i = 0; i < 200; i++) {
    const newton = here.hLambda < 0 ? -here.gLambda / here.hLambda : Math.sign(here.gLambda);
    let step = clamp(newton, 1);
    let there = here;
    for (let halving = 0; halving < 50; halving++, step /= 2) {
      there = withoutSpread(data, Math.max(floor, lambda + step));
      if (there.l >= here.l) break;
    }
    if (!(there.l >= here.l)) break;
    lambda = Math.max(floor, lambda + step);
    here = there;
    if (Math.abs(step) <= 1e-13 || (lambda === floor && here.gLambda < 0)) break;
  }
  return { l: here.l, lambda, rho: noSpread, drift: 0 };
};

/**
 * Climbs from a start to a maximum in λ and ρ by Newton with step halving, or in ρ alone where `fixed`. Stops where σ has become
 * too small to matter; the case without spread is looked at apart. A climb that joins the `known` maximum ends there.
 */
const climb = (
  parts: Parts,
  from: Point,
  { fixed, floor, least, known }: { fixed: boolean; floor: number; least: number; known?: Point },
): Point => {
  let { lambda, rho } = from;
  let here = likelihood(parts, lambda, rho);
  for (let i = 0; i < 100; i++) {
    const determinant = here.hMM * here.hRR - here.hMR * here.hMR;
    const peaked = here.hMM < 0 && determinant > 0;
    let dLambda = 0;
    let dRho = here.hRR < 0 ? -here.gR / here.hRR : Math.sign(here.gR);
    if (!fixed && peaked) {
      dLambda = (here.hMR * here.gR - here.hRR * here.gM) / determinant;
      dRho = (here.hMR * here.gM - here.hMM * here.gR) / determinant;
    } else if (!fixed) dLambda = here.hMM < 0 ? -here.gM / here.hMM : Math.sign(here.gM);
    const curved = fixed ? here.hRR < 0 : peaked;
    if (curved && Math.abs(dLambda) + Math.abs(dRho) <= (fixed ? 1e-4 : 1e-6) && lambda + dLambda >= floor) {
      // A last step of δ leaves an error of the order of δ² in the place and δ³ in the likelihood.
      here.l += 0.5 * (here.gM * dLambda + here.gR * dRho);
      lambda += dLambda;
      rho += dRho;
      break;
    }
    // On the known hill: Newton aims at its top from nearby.
    const aims = peaked && known && distance(known, lambda + dLambda, rho + dRho) < 0.02;
    if (aims && distance(known, lambda, rho) < 0.3) return known;
    const shrink = Math.min(1, 2 / Math.max(Math.abs(dLambda), Math.abs(dRho)));
    dLambda *= shrink;
    dRho *= shrink;
    const enough = here.l - 1e-13 * (1 + Math.abs(here.l));
    let there = here;
    for (let halving = 0; halving < 30; halving++, dLambda /= 2, dRho /= 2) {
      there = likelihood(parts, Math.max(floor, lambda + dLambda), rho + dRho);
      if (there.l >= enough) break;
    }
    if (!(there.l >= enough)) break;
    lambda = Math.max(floor, lambda + dLambda);
    rho += dRho;
    here = there;
    if (rho < least || rho > widest) break;
  }
  return { l: here.l, lambda, rho, drift: here.hRR < 0 ? -here.hMR / here.hRR : 0 };
};

/** A first guess of ln σ from the spread beyond counting of the detected readings (Paule–Mandel). */
const firstGuess = (data: Data): { lambda: number; rho: number } => {
  const seen = data.x.map((_, i) => i).filter((i) => !data.censored[i]);
  const x = seen.map((i) => data.x[i]!);
  const v = seen.map((i) => data.u[i]! ** 2);
  const tau2 = tau2AtQ(x, v, Math.max(1, x.length - 1));
  const mean = Math.max(generalisedQ(x, v, tau2).mean, Math.min(...data.u), 1e-3 * Math.max(...x));
  const relative2 = Math.max(tau2, 0.1 * Math.min(...v)) / mean ** 2;
  return { lambda: Math.log(mean), rho: 0.5 * Math.log(Math.log1p(relative2)) };
};

/** The highest of the maxima reached from three spreads a factor of five apart, from two more where limits say of spread, and from none. */
const maximise = (data: Data, parts: Parts, floor: number, least: number): Point => {
  const { lambda, rho } = firstGuess(data);
  const without = bestWithoutSpread(data, lambda, floor);
  let best = without;
  const further = data.censored.some((flag) => flag) ? [-1, 0.5] : [];
  for (const start of [rho, rho + 1.6, rho - 1.6, ...further]) {
    const from = { l: 0, lambda, rho: Math.max(start, least), drift: 0 };
    const reached = climb(parts, from, { fixed: false, floor, least, ...(best === without ? {} : { known: best }) });
    if (reached.l > best.l + 1e-12) best = reached;
  }
  return best;
};

/**
 * Mean content of a part whose true contents differ from spot to spot as a lognormal, read with normal counting errors of known u.
 *
 * cᵢ lognormal(θ, σ²), xᵢ ~ N(cᵢ, uᵢ²); `x` holds the limit where `censored` is true and the term is P(reading < limit). The mean is
 * M = exp(θ + σ²/2) at the maximum of the likelihood over θ and σ ≥ 0; `interval` is the profile interval of M: the values whose deviance
 * is within `cut`, "small-sample" (default; n·ln(1 + t²/(n − 1))) or "chi2". A detected reading may be zero or negative (counting error).
 * x, u, mean and interval in one unit; theta is ln of the median content in that unit. sigma is exactly 0 where the readings
 * agree within their counting errors.
 *
 * The upper end is Infinity where it lies beyond `upTo` (a content that cannot be; unless given, none), or where few, very uneven spots put no bound
 * on the mean that a computer can hold. Where the readings do
 * not rule out no content at all the interval is [0, Infinity]: a lognormal can hide any mean in spots too rare to be shot.
 * status "at-zero": the likelihood is highest at no content; mean 0, the same interval. status
 * "all-censored": no maximum; all null. Refuses (DomainError) empty or unequal lists, numbers that are not finite, u of zero or less,
 * one reading alone with the small-sample cut.
 *
 * Sources: the project's method, step 3; Louis (1982) for the slopes; trapezoidal rule after Trefethen and Weideman, SIAM Review 56
 * (2014) 385 (from memory).
 *
 * @example lognormalRandomEffects([100, 100], [5, 5], [false, false]) // { status: "ok", mean: 100, sigma: 0 }
 */
export const lognormalRandomEffects = (
  x: readonly number[],
  u: readonly number[],
  censored: readonly boolean[],
  options: { level?: number; cut?: Cut; upTo?: number } = {},
): LognormalRandomEffects => {
  const { level = 0.95, cut = "small-sample", upTo = Number.POSITIVE_INFINITY } = options;
  requireReadings(x, u);
  requireFlags(x, censored);
  requireLevel(level);
  const limit = devianceCut(cut, x.length, level);
  if (censored.every((flag) => flag))
    return { status: "all-censored", mean: null, theta: null, sigma: null, interval: null, logLikelihood: null };
  // In units of the largest value or error; only the logarithms shift.
  const scale = Math.max(...x.map(Math.abs), ...u);
  const seen = x.length - censored.filter((flag) => flag).length;
  const data: Data = { x: x.map((value) => value / scale), u: u.map((value) => value / scale), censored };
  // Spreads far below the smallest relative error cannot be told from none.
  const relative = data.u.map((value, i) => value / Math.max(Math.abs(data.x[i]!), value));
  const least = Math.log(Math.max(1e-11, 0.01 * Math.min(...relative)));
  const floor = Math.log(Math.min(...data.u)) - 25;
  const parts = partsOf(data);
  const fit = maximise(data, parts, floor, least);
  // As the content goes to zero the likelihood goes to that of readings of nothing, whatever the spread.
  const zero = withoutSpread(data, Number.NEGATIVE_INFINITY).l;
  const highest = Math.max(zero, fit.l);
  const guess = Math.max(firstGuess(data).rho, least);
  const begin: Point = fit.rho === noSpread ? { ...fit, rho: guess } : fit;
  let last = begin;
  const deviance = (lambda: number): number => {
    const none = withoutSpread(data, lambda).l;
    const rho = last.rho + clamp(last.drift * (lambda - last.lambda), 1);
    const from = { ...last, lambda, rho: Math.max(rho, least) };
    const spread = climb(parts, from, { fixed: true, floor, least });
    // Where the spread has vanished the next search starts from the first guess again.
    last = spread.rho > least ? spread : { ...spread, rho: guess, drift: 0 };
    const l = Math.max(none, spread.l);
    return Number.isNaN(l) ? Number.POSITIVE_INFINITY : 2 * (highest - l);
  };
  const logLikelihood = highest - seen * Math.log(scale);
  if (zero >= fit.l - 1e-12)
    return {
      status: "at-zero",
      mean: 0,
      theta: null,
      sigma: null,
      interval: [0, Number.POSITIVE_INFINITY],
      logLikelihood,
    };
  const around = fit.rho === noSpread ? null : likelihood(parts, fit.lambda, fit.rho);
  const curvature = -(around === null ? withoutSpread(data, fit.lambda).hLambda : around.hMM);
  const step = Math.min(1, curvature > 0 ? 2 / Math.sqrt(curvature) : 1);
  const reach = Math.max(fit.lambda + 1e-6, Math.min(705, Math.log(upTo / scale)));
  /** Newton's end where it settles and the profile stays beyond the cut at two and four times the distance; else step by step. */
  const end = (side: -1 | 1): number => {
    const top = { l: highest, m: fit.lambda, r: begin.rho, drift: begin.drift };
    const stiff = around === null ? curvature : curvature + around.hMR ** 2 / around.hRR;
    const first = side * Math.min(1, Math.sqrt(limit / Math.max(stiff, 1e-3)));
    const at = (lambda: number, rho: number) => likelihood(parts, lambda, rho);
    const found = newtonProfileEnd(at, top, first, limit, {
      ...{ least, most: widest, bounded: false, reach: side < 0 ? -705 : reach },
    });
    if (found !== null && 2 * (highest - withoutSpread(data, found.m).l) >= limit) {
      const settled = { l: 0, lambda: found.m, rho: found.r, drift: found.drift };
      const isBeyond = (times: number): boolean => {
        const lambda = fit.lambda + times * (found.m - fit.lambda);
        const rho = Math.min(widest, found.r + clamp(found.drift * (lambda - found.m), 1));
        // Most often one look is enough: r's best is near, and what it would still gain is small beside what is wanted.
        const { l, gR, hRR } = at(lambda, rho);
        const none = withoutSpread(data, lambda).l;
        const nearBest = hRR < 0 && Math.abs(gR / hRR) < 0.5;
        if (nearBest && 2 * (highest - l + (2 * gR * gR) / hRR) > limit && 2 * (highest - none) > limit) return true;
        last = settled;
        return deviance(fit.lambda + times * (found.m - fit.lambda)) > limit;
      };
      if (isBeyond(2) && isBeyond(4)) return found.m;
    }
    last = begin;
    return profileEnd(
      deviance,
      fit.lambda,
      side * step,
      limit,
      side < 0 ? -705 : reach,
      side * Number.POSITIVE_INFINITY,
    );
  };
  // A mean without bound can hide in spots too rare to be shot while those shot hold next to nothing: where readings of nothing
  // are within the cut, so are all means.
  const bounded = 2 * (highest - zero) > limit;
  const lower = bounded ? end(-1) : Number.NEGATIVE_INFINITY;
  const upper = bounded ? end(1) : Number.POSITIVE_INFINITY;
  const t = Math.exp(2 * fit.rho);
  return {
    status: "ok",
    mean: scale * Math.exp(fit.lambda),
    theta: fit.lambda - t / 2 + Math.log(scale),
    sigma: Math.sqrt(t),
    interval: [scale * Math.exp(lower), scale * Math.exp(upper)],
    logLikelihood,
  };
};
