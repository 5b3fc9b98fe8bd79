import { generalisedQ } from "./generalised-q.ts";

/** −2 × the restricted log-likelihood, without its constant. */
const deviance = (x: ArrayLike<number>, v: ArrayLike<number>, tau2: number): number => {
  const { sumW, q } = generalisedQ(x, v, tau2);
  let logs = Math.log(sumW) + q;
  for (let i = 0; i < v.length; i++) logs += Math.log(v[i]! + tau2);
  return logs;
};

/** Twice the slope of the restricted log-likelihood: Σw²(x − μ)² − Σw + Σw²/Σw. */
const score = (x: ArrayLike<number>, v: ArrayLike<number>, tau2: number): number => {
  const { slope, sumW, sumW2 } = generalisedQ(x, v, tau2);
  return slope - sumW + sumW2 / sumW;
};

/** The root of the score between lo (score ≥ 0) and hi (score ≤ 0), by bisection in the log where the ends are far apart. */
const scoreRoot = (x: ArrayLike<number>, v: ArrayLike<number>, from: number, to: number): number => {
  let lo = from;
  let hi = to;
  let scoreLo = score(x, v, lo);
  let scoreHi = score(x, v, hi);
  let side = 0;
  for (let i = 0; i < 200 && hi - lo > 4e-16 * hi; i++) {
    // Illinois false position, with a bisection every third step.
    const secant = (lo * scoreHi - hi * scoreLo) / (scoreHi - scoreLo);
    const middle = lo > 0 && hi > 4 * lo ? Math.sqrt(lo * hi) : 0.5 * (lo + hi);
    const at = i % 3 === 2 || !(secant > lo && secant < hi) ? middle : secant;
    const s = score(x, v, at);
    if (s === 0) return at;
    if (s > 0) {
      lo = at;
      scoreLo = s;
      if (side === 1) scoreHi /= 2;
      side = 1;
    } else {
      hi = at;
      scoreHi = s;
      if (side === -1) scoreLo /= 2;
      side = -1;
    }
  }
  return 0.5 * (lo + hi);
};

/**
 * Restricted maximum likelihood τ², held at zero or more.
 *
 * ℓ(τ²) = −½[Σ ln(v + τ²) + ln Σw + Q]. The restricted likelihood can have more than one maximum where the u differ much,
 * so every rise and fall of the score on a grid of six points a decade is followed and the highest maximum is taken.
 * x should be centred and scaled by the caller.
 *
 * Source: Viechtbauer, J. Educ. Behav. Stat. 30 (2005) 261.
 */
export const tau2Reml = (x: ArrayLike<number>, v: ArrayLike<number>): number => {
  let vMin = Number.POSITIVE_INFINITY;
  let vMax = 0;
  let spread = 0;
  for (let i = 0; i < x.length; i++) {
    vMin = Math.min(vMin, v[i]!);
    vMax = Math.max(vMax, v[i]!);
    for (let j = 0; j < i; j++) spread = Math.max(spread, (x[i]! - x[j]!) ** 2);
  }
  if (spread === 0) return 0;
  let best = 0;
  let bestDeviance = deviance(x, v, 0);
  let before = 0;
  let rising = score(x, v, 0) > 0;
  const ratio = 10 ** (1 / 6);
  // Beyond the largest of spread² and v the score is negative for good; two more decades cost little.
  const end = 100 * Math.max(spread, vMax);
  for (let at = vMin * 1e-3; before < end; at *= ratio) {
    const risingHere = score(x, v, at) > 0;
    if (rising && !risingHere) {
      const root = scoreRoot(x, v, before, at);
      const d = deviance(x, v, root);
      if (d < bestDeviance) {
        best = root;
        bestDeviance = d;
      }
    }
    rising = risingHere;
    before = at;
  }
  return best;
};
