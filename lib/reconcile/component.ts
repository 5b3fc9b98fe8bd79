import { coverageFactor } from "../statistics/coverage-factor.ts";
import { chiSquareUpperTail } from "../statistics/distributions.ts";
import { randomEffectsMean } from "../statistics/random-effects.ts";
import { compareNumbers } from "./canonical-order.ts";
import { censoredFit, type LimitedSpot, lognormalFit, notQuantified } from "./censored-component.ts";
import { evennessIsHidden, onLogScale } from "./evenness.ts";
import { fewSpotsBound } from "./few-spots-bound.ts";
import { emptyFit, type Fit } from "./fit.ts";
import { type DetectedSpot, plainMean, type Spot } from "./spots.ts";
import type { Policy } from "./types.ts";

type KnownSpot = DetectedSpot & { u: number };

/**
 * Step 3 (with the switch of step 4): the component's value from its spots.
 *
 * | spots                                                     | model |
 * |---|---|
 * | one, detected                                             | `one-spot`: that spot's value and u |
 * | two or more, all detected, one or more with unknown u     | `mean-of-spots`: mean, s/√n, t with n−1 |
 * | two or more, all detected, u known, τ/mean ≤ 0.15         | `random-effects`: Paule–Mandel, Hartung–Knapp with the factor at 1 or more |
 * | the same, τ/mean > 0.15                                   | `lognormal`: lognormal contents, normal counting errors, profile interval |
 * | some not detected, at least two and at least half detected | `censored-normal` or `censored-lognormal`, by the same switch |
 * | fewer detected than that                                  | state `not-quantified`: an upper 95 % bound where there is one |
 * | none detected                                             | state `not-detected`: below the highest over spots of the lowest limit reached; decided by the `upperBound` of `fewSpotsBound` |
 *
 * Where counting errors hide whether the part is even, the upper arm of `random-effects` is taken on the log scale and the interval is stated
 * by its ends (`evenness`).
 *
 * A spot with unknown u beside others with known u makes the whole component `mean-of-spots`: the scatter between spots
 * holds counting error too, so that interval is right whatever the unknown errors are, and nothing is guessed. There the
 * spread of the spots stands in for τ when asking whether the part is uneven, since it cannot be less.
 *
 * A non-detect without a limit bounds nothing: with any such spot, the state is `not-quantified` without a bound, or
 * `not-detected` without `below` (note `non-detect-without-limit`).
 */
export function fitComponent(spots: readonly Spot[], policy: Policy, most = Infinity): Fit {
  if (spots.length === 0) return emptyFit;
  const detected = spots
    .filter((spot) => spot.detected)
    .sort((a, b) => compareNumbers(a.value, b.value) || compareNumbers(a.u, b.u));
  const missed = spots
    .filter((spot) => !spot.detected && spot.limit !== null)
    .map((spot) => spot as LimitedSpot)
    .sort((a, b) => a.limit - b.limit);
  const withoutLimit = detected.length + missed.length < spots.length;
  const notes = withoutLimit ? ["non-detect-without-limit"] : [];
  if (detected.length === 0) {
    const below = withoutLimit ? null : Math.max(...missed.map((spot) => spot.limit));
    const upperBound = below === null ? null : fewSpotsBound(below, spots.length, spots.length, policy);
    return { ...emptyFit, state: "not-detected", below, upperBound, notes };
  }
  if (spots.length === 1) return oneSpot(detected[0]!, policy);
  if (detected.length === spots.length) {
    const known = detected.filter((spot): spot is KnownSpot => spot.u !== null);
    return known.length < detected.length ? meanOfSpots(detected, policy) : allDetected(known, policy, most);
  }
  if (withoutLimit) return { ...emptyFit, state: "not-quantified", notes };
  if (detected.length < 2 || 2 * detected.length < spots.length) return notQuantified(detected, missed, policy, most);
  return censoredFit(detected, missed, policy, most);
}

/** One spot: its value; the interval uses t where u came from scatter, the normal factor where it came from counting. */
function oneSpot(spot: DetectedSpot, policy: Policy): Fit {
  const value = spot.value;
  const half = spot.u === null ? null : coverageFactor(spot.nu, policy.level) * spot.u;
  return {
    ...emptyFit,
    state: "quantified",
    model: "one-spot",
    value,
    u: spot.u,
    nu: spot.nu,
    interval: half === null ? null : [value - half, value + half],
  };
}

/** Mean of spots, s/√n and t with n−1: what can be said when errors are unknown. */
function meanOfSpots(spots: readonly DetectedSpot[], policy: Policy): Fit {
  const resolution = Math.min(...spots.map((spot) => spot.resolution));
  const mean = plainMean(
    spots.map((spot) => spot.value),
    resolution,
  );
  const { value, nu } = mean;
  const u = mean.u!; // two spots or more
  const half = coverageFactor(nu, policy.level) * u;
  const spread = u * Math.sqrt(spots.length);
  return {
    ...emptyFit,
    state: "quantified",
    model: "mean-of-spots",
    value,
    u,
    nu,
    interval: [value - half, value + half],
    uneven: value > 0 && spread / value > policy.unevenFrom,
  };
}

/** Random effects where the part is even, the lognormal model where it is not. */
function allDetected(spots: readonly KnownSpot[], policy: Policy, most: number): Fit {
  const x = spots.map((spot) => spot.value);
  const u = spots.map((spot) => spot.u);
  const even = randomEffectsMean(x, u, { tau2: "PM", interval: "HK-adhoc", level: policy.level });
  const tau = Math.sqrt(even.tau2);
  const relative = even.mean === 0 ? 0 : tau / Math.abs(even.mean);
  const scatter = { q: even.q, df: even.df, p: chiSquareUpperTail(even.q, even.df), tau, relative };
  // A mean at or below zero, or a likelihood highest at no content, has no lognormal description; the normal model stays.
  const uneven = even.mean > 0 && relative > policy.unevenFrom;
  const censored = x.map(() => false);
  const [lo, hi] = even.interval;
  const hidden = evennessIsHidden(even.mean, u, policy);
  const lognormal = uneven ? lognormalFit(x, u, censored, policy, most) : null;
  if (lognormal !== null) return { ...lognormal, scatter };
  return {
    ...emptyFit,
    state: "quantified",
    model: "random-effects",
    value: even.mean,
    u: even.se * Math.sqrt(Math.max(1, even.hkQ)),
    nu: x.length - 1,
    interval: [lo, hidden ? Math.min(most, onLogScale(even.mean, hi)) : hi],
    asymmetric: hidden,
    scatter,
    uneven,
  };
}
