import { censoredMeanAndSpread, censoredRandomEffects } from "../statistics/censored-random-effects.ts";
import { coverageFactor } from "../statistics/coverage-factor.ts";
import { lognormalRandomEffects } from "../statistics/lognormal-random-effects.ts";
import { weightedMean } from "../statistics/weighted-mean.ts";
import { evennessIsHidden, onLogScale } from "./evenness.ts";
import { fewSpotsBound } from "./few-spots-bound.ts";
import { emptyFit, type Fit } from "./fit.ts";
import { nonDetectU } from "./non-detect-u.ts";
import type { DetectedSpot, MissedSpot } from "./spots.ts";
import type { Policy } from "./types.ts";

/** An undetected spot that says how far it saw. */
export type LimitedSpot = MissedSpot & { limit: number };

type Lists = { x: number[]; u: number[]; censored: boolean[]; errorsKnown: boolean };

/**
 * Detected and undetected spots as the likelihoods take them; the limit stands where a value is censored.
 *
 * A non-detect's u is that of `nonDetectU`, with the largest error among the part's own detected shots.
 *
 * A detected spot with unknown u enters with the uncertainty of its last written digit alone (δ/√12): the model's own
 * spread then takes up its counting error too, and nothing is guessed.
 */
function lists(detected: readonly DetectedSpot[], missed: readonly LimitedSpot[]): Lists {
  const shots = detected.flatMap((spot) => spot.shots.filter((shot) => shot.detected));
  const largest = Math.max(...shots.map((shot) => shot.u ?? lastDigit(shot.resolution)));
  return {
    x: [...detected.map((spot) => spot.value), ...missed.map((spot) => spot.limit)],
    u: [
      ...detected.map((spot) => spot.u ?? lastDigit(spot.resolution)),
      ...missed.map((spot) => nonDetectU(spot.limit, largest)),
    ],
    censored: [...detected.map(() => false), ...missed.map(() => true)],
    errorsKnown: detected.every((spot) => spot.u !== null),
  };
}

const lastDigit = (resolution: number): number => resolution / Math.sqrt(12);

/**
 * Some spots not detected, at least two and at least half detected: left-censored likelihood, normal where the part is even
 * (τ/mean ≤ 0.15), lognormal where it is not, with the small-sample profile interval. An uneven part's lower end is the lower of both
 * models' (where the normal one stays above zero): ten evenly spread spots, half of them unseen, lay wholly below the lognormal one's
 * interval in 8 parts of 100. An even part whose errors hide unevenness takes its upper arm on the log scale (`evenness`).
 */
export function censoredFit(
  detected: readonly DetectedSpot[],
  missed: readonly LimitedSpot[],
  policy: Policy,
  most: number,
): Fit {
  const { x, u, censored, errorsKnown } = lists(detected, missed);
  const normal = censoredMeanAndSpread(x, u, censored);
  const relative = normal.mean > 0 ? normal.tau / normal.mean : 0;
  const uneven = normal.mean <= 0 || relative > policy.unevenFrom;
  const test = errorsKnown ? weightedMean(x.slice(0, detected.length), u.slice(0, detected.length)) : null;
  const scatter = test === null ? null : { q: test.q, df: test.df, p: test.p!, tau: normal.tau, relative };
  const options = { level: policy.level, cut: "small-sample" } as const;
  // Two values or more were seen: the deviance grows without bound on both sides, so both ends are there.
  const [lo, hi] = censoredRandomEffects(x, u, censored, options).interval!;
  if (uneven) {
    const fit = lognormalFit(x, u, censored, policy, most);
    if (fit !== null && fit.interval === null) return { ...fit, scatter };
    if (fit !== null && fit.interval !== null) {
      // The shape of what was not seen decides how low the mean can be: the lower of the two models' ends, where contents
      // spread normally could be at all.
      const [low, high] = fit.interval;
      const interval: [number, number] = [lo > 0 ? Math.min(low, lo) : low, high];
      return { ...fit, model: "censored-lognormal", interval, scatter };
    }
  }
  const factor = coverageFactor(x.length - 1, policy.level);
  return {
    ...emptyFit,
    state: "quantified",
    model: "censored-normal",
    value: normal.mean,
    u: (hi - lo) / (2 * factor),
    nu: x.length - 1,
    interval: [lo, evennessIsHidden(normal.mean, u, policy) ? Math.min(most, onLogScale(normal.mean, hi)) : hi],
    asymmetric: true,
    scatter,
    uneven,
  };
}

/**
 * The lognormal model: mean M = exp(θ + σ²/2) by maximum likelihood and its profile interval with the small-sample cut. The
 * standard uncertainty for the budget is taken on the log scale from the interval's own width,
 * u = M·ln(hi/lo) / (2t), t with n−1 degrees of freedom: the symmetric part of what the interval says.
 * `most` is the largest content there can be (1,000,000 mg/kg for a mass fraction, otherwise Infinity): few very uneven spots can put
 * the upper end beyond it. Where the interval has no upper end at all the state is `range-only`. An interval that reaches down to zero has no log width; there
 * u = (hi − M)/t. Null where the likelihood is highest at no content at all: the normal model serves there.
 */
export function lognormalFit(x: number[], u: number[], censored: boolean[], policy: Policy, most: number): Fit | null {
  const fit = lognormalRandomEffects(x, u, censored, {
    level: unevenLevel(x.length, policy),
    cut: "small-sample",
    upTo: most,
  });
  if (fit.status !== "ok") return null;
  const [lo] = fit.interval;
  const hi = Math.min(fit.interval[1], most);
  if (!Number.isFinite(hi) || fit.mean >= hi) return cannotServe;
  const nu = x.length - 1;
  const factor = coverageFactor(nu, unevenLevel(x.length, policy));
  return {
    ...emptyFit,
    state: "quantified",
    model: "lognormal",
    value: fit.mean,
    u: lo > 0 ? (fit.mean * Math.log(hi / lo)) / (2 * factor) : (hi - fit.mean) / factor,
    nu,
    interval: [lo, hi],
    asymmetric: true,
    uneven: true,
  };
}

/** Few spots tell so little of an uneven part's spread that their interval is taken at a higher level (policy). */
const unevenLevel = (spots: number, { level, threeSpotsLevel, fiveSpotsLevel }: Policy): number =>
  spots <= 3 ? threeSpotsLevel : spots <= 5 ? fiveSpotsLevel : level;

/**
 * Detected in too few spots to state a value: an upper 95 % bound for the part's mean, one-sided, as the upper end of the
 * two-sided 90 % small-sample profile; lognormal where the part is uneven. Where the spread is as good as unknown (one spot detected, or
 * errors that hide it) no lower than `fewSpotsBound` allows. No bound where the likelihood has none, or none below `most`.
 */
export function notQuantified(
  detected: readonly DetectedSpot[],
  missed: readonly LimitedSpot[],
  policy: Policy,
  most: number,
): Fit {
  const { x, u, censored } = lists(detected, missed);
  const options = { level: 1 - 2 * (1 - policy.level), cut: "small-sample" } as const;
  const normal = censoredMeanAndSpread(x, u, censored);
  const uneven = normal.mean <= 0 || normal.tau / normal.mean > policy.unevenFrom;
  const chosen = (uneven ? lognormalRandomEffects : censoredRandomEffects)(x, u, censored, { ...options, upTo: most });
  const modelled = chosen.interval![1]; // something was seen at one spot at least
  // One detected spot says nothing of the spread, and neither do several whose errors hide it.
  const spreadUnknown = detected.length < 2 || evennessIsHidden(normal.mean, u, policy);
  const limit = Math.max(...missed.map((spot) => spot.limit));
  const under = missed.length + detected.filter((spot) => spot.value < limit).length;
  const upper = spreadUnknown ? Math.max(modelled, fewSpotsBound(limit, under, x.length, policy)) : modelled;
  const upperBound = Number.isFinite(upper) && upper > 0 && upper < most ? upper : null;
  return {
    ...emptyFit,
    state: "not-quantified",
    upperBound,
    uneven,
    notes: upperBound === null ? ["no-upper-bound"] : [],
  };
}

/** The likelihood of an uneven part states no value or no upper end: the part is stated by its range. */
const cannotServe: Fit = { ...emptyFit, state: "range-only", uneven: true, notes: ["model-cannot-serve"] };
