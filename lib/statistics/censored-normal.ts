import { DomainError } from "../quantity/domain-error.ts";
import { requireFlags, requireNumbers, scaleOf } from "./checks.ts";
import { normalHazardBelow, normalHazardSlope, normalLogCdf } from "./distributions.ts";
import { devianceCut, profileEnd } from "./profile-interval.ts";

export type CensoredNormal =
  | {
      status: "ok";
      mean: number;
      sd: number;
      seMean: number;
      profile: [number, number];
      logLikelihood: number;
    }
  | { status: "all-censored"; mean: null; sd: null; seMean: null; profile: null; logLikelihood: null }
  | { status: "no-spread"; mean: number; sd: 0; seMean: null; profile: null; logLikelihood: null };

type Data = { seen: number[]; below: number[] };
type Point = { a: number; b: number };

/**
 * Log-likelihood with a = mean/sd and b = 1/sd, in which it is concave (Olsen, Econometrica 46 (1978) 1211), with gradient and
 * second derivatives; without the constant −(n/2)·ln 2π.
 */
export const likelihood = ({ seen, below }: Data, { a, b }: Point) => {
  let l = seen.length * Math.log(b);
  let ga = 0;
  let gb = seen.length / b;
  let haa = -seen.length;
  let hab = 0;
  let hbb = -seen.length / (b * b);
  for (const y of seen) {
    const r = b * y - a;
    l -= 0.5 * r * r;
    ga += r;
    gb -= r * y;
    hab += y;
    hbb -= y * y;
  }
  for (const limit of below) {
    const z = b * limit - a;
    const hazard = normalHazardBelow(z);
    const slope = normalHazardSlope(z);
    l += normalLogCdf(z);
    ga -= hazard;
    gb += hazard * limit;
    haa -= slope;
    hab += slope * limit;
    hbb -= slope * limit * limit;
  }
  return { l, ga, gb, haa, hab, hbb };
};

/** Newton with step halving; the likelihood is concave, so it cannot go astray. At b ≤ 0 it is NaN or −∞, and the step is halved. */
const maximise = (data: Data, start: Point): Point => {
  let at = start;
  let here = likelihood(data, at);
  for (let i = 0; i < 300; i++) {
    // Next to the maximum the likelihood is flat to its last digits; the step is still good to all of its own.
    const least = here.l - 1e-13 * (1 + Math.abs(here.l));
    const determinant = here.haa * here.hbb - here.hab * here.hab;
    const da = (here.hab * here.gb - here.hbb * here.ga) / determinant;
    const db = (here.hab * here.ga - here.haa * here.gb) / determinant;
    let share = 1;
    let next = at;
    let there = here;
    for (; share > 1e-12; share /= 2) {
      next = { a: at.a + share * da, b: at.b + share * db };
      there = likelihood(data, next);
      if (there.l >= least) break;
    }
    if (!(there.l >= least)) break;
    const moved = Math.abs(next.a - at.a) / (1 + Math.abs(at.a)) + Math.abs(next.b - at.b) / at.b;
    at = next;
    here = there;
    if (moved < 1e-13) break;
  }
  return at;
};

/** The largest log-likelihood for a stated mean: one-dimensional and concave in b. */
const profileAt = ({ seen, below }: Data, mean: number, start: number): { l: number; b: number } => {
  let squares = 0;
  for (const y of seen) squares += (y - mean) ** 2;
  const value = (b: number) => {
    let l = seen.length * Math.log(b) - 0.5 * b * b * squares;
    for (const limit of below) l += normalLogCdf(b * (limit - mean));
    return l;
  };
  let b = start;
  for (let i = 0; i < 300; i++) {
    let g = seen.length / b - b * squares;
    let h = -seen.length / (b * b) - squares;
    for (const limit of below) {
      const d = limit - mean;
      g += normalHazardBelow(b * d) * d;
      h -= normalHazardSlope(b * d) * d * d;
    }
    const next = Math.min(Math.max(b - g / h, b / 8), 8 * b);
    const moved = Math.abs(next - b);
    b = next;
    if (moved <= 1e-14 * b) break;
  }
  return { l: value(b), b };
};

/** Every seen value the same and no limit below it: the likelihood grows without end as the spread shrinks. */
const withoutSpread = ({ seen, below }: Data): boolean =>
  seen.every((y) => y === seen[0]) && below.every((limit) => limit >= seen[0]!);

/**
 * Maximum likelihood mean and standard deviation of a normal sample with left-censored values.
 *
 * `values` hold the limit where `censored` is true. ℓ = Σ ln φ((x − μ)/σ)/σ over seen values + Σ ln Φ((L − μ)/σ) over censored ones.
 * seMean from the observed information; profile: 95 % profile-likelihood interval of the mean (χ² cut).
 * log: true works on ln x: mean, sd, profile and logLikelihood are those of ln x (no Jacobian).
 * Unit of the values (or of their logarithm).
 *
 * status "all-censored": the likelihood has no maximum; all numbers are null. status "no-spread": the seen values agree and no
 * limit lies below them; mean is that value, sd 0, the rest null. Refuses (DomainError) empty or unequal lists, numbers that are
 * not finite, values of zero or less with log: true.
 *
 * Sources: Cohen, Technometrics 1 (1959) 217; Helsel, Statistics for Censored Environmental Data, 2nd ed. (2012) chapter 6.
 *
 * @example censoredNormal([10, 10, 30], [true, true, false]) // { status: "ok", mean: 1.861346, sd: 23.722839 }
 */
export const censoredNormal = (
  values: readonly number[],
  censored: readonly boolean[],
  options: { log?: boolean } = {},
): CensoredNormal => {
  requireNumbers("values", values);
  requireFlags(values, censored);
  if (options.log)
    for (const value of values)
      if (value <= 0) throw new DomainError("not-positive", "a logarithm needs values above zero", value);
  const x = options.log ? values.map((value) => Math.log(value)) : values;
  const raw: Data = { seen: x.filter((_, i) => !censored[i]), below: x.filter((_, i) => censored[i]) };
  if (raw.seen.length === 0)
    return { status: "all-censored", mean: null, sd: null, seMean: null, profile: null, logLikelihood: null };
  if (withoutSpread(raw))
    return { status: "no-spread", mean: raw.seen[0]!, sd: 0, seMean: null, profile: null, logLikelihood: null };
  const n = raw.seen.length;
  const origin = raw.seen[0]!;
  let spread = 0;
  for (const value of x) spread = Math.max(spread, Math.abs(value - origin));
  const scale = scaleOf(spread);
  const scaled = (list: number[]) => list.map((value) => (value - origin) / scale);
  const data: Data = { seen: scaled(raw.seen), below: scaled(raw.below) };
  const fit = maximise(data, { a: data.seen.reduce((sum, y) => sum + y, 0) / n, b: 1 });
  const { l, haa, hab, hbb } = likelihood(data, fit);
  const mean = fit.a / fit.b;
  // Delta method from (a, b) to mean = a/b with the inverse of the observed information.
  const determinant = haa * hbb - hab * hab;
  const variance = -(hbb + 2 * mean * hab + mean * mean * haa) / determinant / (fit.b * fit.b);
  const seMean = Math.sqrt(variance);
  let b = fit.b;
  const deviance = (m: number) => {
    const at = profileAt(data, m, b);
    b = at.b;
    return 2 * (l - at.l);
  };
  const cut = devianceCut("chi2", x.length, 0.95);
  const far = 1e15 * (Math.abs(mean) + seMean);
  const lo = profileEnd(deviance, mean, -2 * seMean, cut, -far, Number.NEGATIVE_INFINITY);
  b = fit.b;
  const hi = profileEnd(deviance, mean, 2 * seMean, cut, far, Number.POSITIVE_INFINITY);
  return {
    status: "ok",
    mean: origin + scale * mean,
    sd: scale / fit.b,
    seMean: scale * seMean,
    profile: [origin + scale * lo, origin + scale * hi],
    logLikelihood: l - n * (0.5 * Math.log(2 * Math.PI) + Math.log(scale)),
  };
};
