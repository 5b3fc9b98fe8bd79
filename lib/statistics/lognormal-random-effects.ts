import { requireFlags, requireLevel, requireReadings } from "./checks.ts";
import { normalHazardBelow, normalHazardSlope, normalLogCdf } from "./distributions.ts";
import { generalisedQ, tau2AtQ } from "./generalised-q.ts";
import { lognormalReading } from "./lognormal-reading.ts";
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
/** Log-likelihood at λ = ln M and ρ = ln σ with its slopes g and second slopes h. */
type Likelihood = { l: number; gLambda: number; gRho: number; hLambda: number; hRho: number; hCross: number };

/** No spread: every content is M, and the likelihood has a closed form. Slopes in λ only, and the slope in σ² at σ = 0. */
const withoutSpread = ({ x, u, censored }: Data, lambda: number) => {
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
const likelihood = ({ x, u, censored }: Data, lambda: number, rho: number): Likelihood => {
  const s = Math.exp(rho);
  const t = s * s;
  const at: Likelihood = { l: 0, gLambda: 0, gRho: 0, hLambda: 0, hRho: 0, hCross: 0 };
  for (let i = 0; i < x.length; i++) {
    const { logf, m1, m2, m3, m4 } = lognormalReading(x[i]!, u[i]!, censored[i]!, lambda - t / 2, s);
    const score = m2 - 1 - s * m1;
    at.l += logf;
    at.gLambda += m1 / s;
    at.gRho += score;
    at.hLambda += (m2 - m1 * m1 - 1) / t;
    at.hRho += 2 * s * m1 - 2 * m2 - t + (m4 - 2 * s * m3 + (t - 2) * m2 + 2 * s * m1 + 1) - score * score;
    at.hCross += 1 - (2 * m1) / s + (m3 - m1 - s * m2 - m1 * score) / s;
  }
  return at;
};

/** `drift`: how ρ's best value moves with λ, dρ/dλ. */
type Point = { l: number; lambda: number; rho: number; drift: number };
const noSpread = Number.NEGATIVE_INFINITY;
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
 * too small to matter; the case without spread is looked at apart.
 */
const climb = (data: Data, from: Point, fixed: boolean, floor: number, least: number): Point => {
  let { lambda, rho } = from;
  let here = likelihood(data, lambda, rho);
  for (let i = 0; i < 100; i++) {
    const determinant = here.hLambda * here.hRho - here.hCross * here.hCross;
    const peaked = here.hLambda < 0 && determinant > 0;
    let dLambda = 0;
    let dRho = here.hRho < 0 ? -here.gRho / here.hRho : Math.sign(here.gRho);
    if (!fixed && peaked) {
      dLambda = (here.hCross * here.gRho - here.hRho * here.gLambda) / determinant;
      dRho = (here.hCross * here.gLambda - here.hLambda * here.gRho) / determinant;
    } else if (!fixed) dLambda = here.hLambda < 0 ? -here.gLambda / here.hLambda : Math.sign(here.gLambda);
    const shrink = Math.min(1, 2 / Math.max(Math.abs(dLambda), Math.abs(dRho)));
    dLambda *= shrink;
    dRho *= shrink;
    let there = here;
    for (let halving = 0; halving < 30; halving++, dLambda /= 2, dRho /= 2) {
      there = likelihood(data, Math.max(floor, lambda + dLambda), rho + dRho);
      if (there.l >= here.l) break;
    }
    if (!(there.l >= here.l)) break;
    lambda = Math.max(floor, lambda + dLambda);
    rho += dRho;
    here = there;
    // A step of δ leaves an error of the order of δ⁴ in the likelihood and δ² in the place.
    const settled = Math.abs(dLambda) + Math.abs(dRho) <= (fixed ? 1e-4 : 1e-8);
    if (settled || rho < least) break;
  }
  return { l: here.l, lambda, rho, drift: here.hRho < 0 ? -here.hCross / here.hRho : 0 };
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
const maximise = (data: Data, floor: number, least: number): Point => {
  const { lambda, rho } = firstGuess(data);
  let best = bestWithoutSpread(data, lambda, floor);
  const further = data.censored.some((flag) => flag) ? [-1, 0.5] : [];
  for (const start of [rho, rho + 1.6, rho - 1.6, ...further]) {
    const reached = climb(data, { l: 0, lambda, rho: Math.max(start, least), drift: 0 }, false, floor, least);
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
 * The upper end can be Infinity where few, very uneven spots put no bound on the mean that a computer can hold. Where the readings do
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
  options: { level?: number; cut?: Cut } = {},
): LognormalRandomEffects => {
  const { level = 0.95, cut = "small-sample" } = options;
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
  const fit = maximise(data, floor, least);
  // As the content goes to zero the likelihood goes to that of readings of nothing, whatever the spread.
  const zero = withoutSpread(data, Number.NEGATIVE_INFINITY).l;
  const highest = Math.max(zero, fit.l);
  const guess = Math.max(firstGuess(data).rho, least);
  const begin: Point = fit.rho === noSpread ? { ...fit, rho: guess } : fit;
  let last = begin;
  const deviance = (lambda: number): number => {
    const none = withoutSpread(data, lambda).l;
    const rho = last.rho + clamp(last.drift * (lambda - last.lambda), 1);
    const spread = climb(data, { ...last, lambda, rho: Math.max(rho, least) }, true, floor, least);
    // Where the spread has vanished the next search starts from the first guess again.
    last = spread.rho > least ? spread : { ...spread, rho: guess, drift: 0 };
    const l = Math.max(none, spread.l);
    return Number.isNaN(l) ? Number.POSITIVE_INFINITY : 2 * (highest - l);
  };
  const curvature = -(fit.rho === noSpread ? withoutSpread(data, fit.lambda) : likelihood(data, fit.lambda, fit.rho))
    .hLambda;
  const step = Math.min(1, curvature > 0 ? 2 / Math.sqrt(curvature) : 1);
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
  // A mean without bound can hide in spots too rare to be shot while those shot hold next to nothing: where readings of nothing
  // are within the cut, so are all means.
  let [lower, upper] = [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY];
  if (2 * (highest - zero) > limit) {
    upper = profileEnd(deviance, fit.lambda, step, limit, 705, upper);
    last = begin;
    lower = profileEnd(deviance, fit.lambda, -step, limit, -705, lower);
  }
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
