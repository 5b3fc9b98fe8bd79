import { normalUpperTail } from "./distributions.ts";
import { lognormalReading, type Moments } from "./lognormal-reading.ts";

// The same integral as `lognormalReading`, for those who ask it of one reading for many θ and σ. Over y = ln(content) the reading's own
// factor k(y) does not depend on θ and σ: it is worked out once on fixed nodes, and each call then sums k(y)·φ((y − θ)/σ), whose Gaussian
// runs along equal steps by two multiplications a node. No exponential is taken within the sum.

/** Ask again and again for one reading's part of the likelihood; the moments are those of `lognormalReading`. */
export type ReadingPart = (theta: number, sigma: number) => Moments;

const logRoot2Pi = 0.5 * Math.log(2 * Math.PI);
/** Standard deviations of the model that are summed, and counting errors that k(y) is followed for: what is left out is below 1e-18. */
const reach = 9;
/** A sum smaller than this, beside k's maximum, is left to `lognormalReading`: what the nodes leave out might show in it. */
const leastSum = Math.log(1e-6);
const mostNodes = 1500;

/** Values of k at y = top − j·step, j = 0, 1, … */
type Nodes = { step: number; k: number[] };

/** Σ k·exp(−z²/2)·(1, z, z², z³, z⁴) over the nodes `from` to `to`, run from the model's centre outwards; logf without its constants. */
const sumOver = (k: readonly number[], from: number, to: number, first: number, start: number, d: number): Moments => {
  const shrink = Math.exp(-d * d);
  const half = Math.exp(-0.5 * d * d);
  const turn = Math.exp(start * d);
  let s0 = 0;
  let s1 = 0;
  let s2 = 0;
  let s3 = 0;
  let s4 = 0;
  let z = start;
  let g = 1;
  let ratio = turn * half;
  for (let j = first; j <= to; j++) {
    const w = k[j]! * g;
    const wz = w * z;
    const wzz = wz * z;
    s0 += w;
    s1 += wz;
    s2 += wzz;
    s3 += wzz * z;
    s4 += wzz * z * z;
    g *= ratio;
    ratio *= shrink;
    z -= d;
  }
  ratio = half / turn;
  g = ratio;
  z = start + d;
  for (let j = first - 1; j >= from; j--) {
    ratio *= shrink;
    const w = k[j]! * g;
    const wz = w * z;
    const wzz = wz * z;
    s0 += w;
    s1 += wz;
    s2 += wzz;
    s3 += wzz * z;
    s4 += wzz * z * z;
    g *= ratio;
    z += d;
  }
  return { logf: Math.log(s0 * d) - 0.5 * start * start, m1: s1 / s0, m2: s2 / s0, m3: s3 / s0, m4: s4 / s0 };
};

/** Nodes of y from `top` downwards, a list for each octave of σ² while σ is not wide beside k's own width 1/√curvature. */
const onNodes = (
  k: (y: number) => number,
  [bottom, top]: readonly [number, number],
  curvature: number,
  constant: number,
  otherwise: ReadingPart,
): ReadingPart => {
  const lists = new Map<number, Nodes>();
  const nodesFor = (sigma: number): Nodes => {
    const octave = Math.floor(2 * Math.log2(sigma));
    const wide = 2 ** octave * curvature > 16;
    const key = wide ? Number.POSITIVE_INFINITY : octave;
    let nodes = lists.get(key);
    if (nodes === undefined) {
      // 0.7 of the narrowest scale, as in `lognormalReading`.
      const step = 0.7 / Math.sqrt((wide ? curvature / 16 : 2 ** -octave) + curvature);
      nodes = { step, k: [] };
      lists.set(key, nodes);
    }
    return nodes;
  };
  return (theta, sigma) => {
    const { step, k: kept } = nodesFor(sigma);
    const from = Math.max(0, Math.ceil((top - theta - reach * sigma) / step));
    const to = Math.floor((top - Math.max(bottom, theta - reach * sigma)) / step);
    if (!(to >= from && to <= mostNodes)) return otherwise(theta, sigma);
    for (let j = kept.length; j <= to; j++) kept.push(k(top - j * step));
    const first = Math.max(from, Math.min(to, Math.round((top - theta) / step)));
    const moments = sumOver(kept, from, to, first, (top - first * step - theta) / sigma, step / sigma);
    if (!(moments.logf > leastSum)) return otherwise(theta, sigma);
    moments.logf += constant;
    return moments;
  };
};

const detectedPart = (x: number, u: number, otherwise: ReadingPart): ReadingPart => {
  // The largest k is 1, at the content x, or at none where the reading is not positive.
  const least = Math.max(0, -x / u) ** 2;
  const k = (y: number) => {
    const r = (x - Math.exp(y)) / u;
    return Math.exp(0.5 * (least - r * r));
  };
  const bottom = x > 10 * u ? Math.log(x - reach * u) : Number.NEGATIVE_INFINITY;
  const top = Math.log(x > 0 ? x + reach * u : x + Math.sqrt(x * x + (reach * u) ** 2));
  const cut = Math.max(x, 0) + 3 * u;
  const constant = -0.5 * least - 2 * logRoot2Pi - Math.log(u);
  return onNodes(k, [bottom, top], (cut / u) * ((2 * cut - x) / u), constant, otherwise);
};

/** Nodes of the counting error for a limit much sharper than the spread: equal steps of 0.8 out to 8 counting errors. */
const errors = Array.from({ length: 21 }, (_, j) => 0.8 * (j - 10));

/** Φ((ln(limit − uε) − θ)/σ) summed over the counting error ε, where that varies slowly with ε. */
const sharplyBelow = (limit: number, u: number, otherwise: ReadingPart): ReadingPart => {
  const y = errors.map((epsilon) => Math.log(limit - u * epsilon));
  const weights = errors.map((epsilon) => 0.8 * Math.exp(-0.5 * epsilon * epsilon - logRoot2Pi));
  return (theta, sigma) => {
    let s0 = 0;
    let s1 = 0;
    let s2 = 0;
    let s3 = 0;
    let s4 = 0;
    for (let j = 0; j < y.length; j++) {
      const z = (y[j]! - theta) / sigma;
      const below = weights[j]! * normalUpperTail(-z);
      const density = weights[j]! * Math.exp(-0.5 * z * z - logRoot2Pi);
      s0 += below;
      s1 -= density;
      s2 += below - z * density;
      s3 -= (z * z + 2) * density;
      s4 += 3 * below - z * (z * z + 3) * density;
    }
    if (!(s0 > 1e-3)) return otherwise(theta, sigma);
    return { logf: Math.log(s0), m1: s1 / s0, m2: s2 / s0, m3: s3 / s0, m4: s4 / s0 };
  };
};

const censoredPart = (limit: number, u: number, otherwise: ReadingPart): ReadingPart => {
  const k = (y: number) => normalUpperTail((Math.exp(y) - limit) / u);
  const range = [Number.NEGATIVE_INFINITY, Math.log(limit + reach * u)] as const;
  const byContent = onNodes(k, range, ((limit + 3 * u) / u) ** 2, -logRoot2Pi, otherwise);
  if (!(limit > 10 * u)) return byContent;
  const byError = sharplyBelow(limit, u, otherwise);
  return (theta, sigma) => (sigma * limit > 10 * u ? byError : byContent)(theta, sigma);
};

/**
 * `lognormalReading` of one reading as a function of θ and σ, its own factor worked out once. Both agree with a
 * brute sum; this one to 1e-11. It hands over where readings are far surer than analysers are (u under a thousandth), where the spread is small or huge beside u, and where
 * the reading is all but impossible.
 *
 * @example lognormalPart(12, 3, false)(2.3, 0.4).logf // -2.65401
 */
export const lognormalPart = (x: number, u: number, censored: boolean): ReadingPart => {
  const otherwise: ReadingPart = (theta, sigma) => lognormalReading(x, u, censored, theta, sigma);
  if (!(Math.abs(x) < 1000 * u) || (censored && !(x > 0))) return otherwise;
  return censored ? censoredPart(x, u, otherwise) : detectedPart(x, u, otherwise);
};
