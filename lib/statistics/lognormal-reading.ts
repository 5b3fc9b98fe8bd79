import { normalHazardBelow, normalHazardSlope, normalLogCdf } from "./distributions.ts";

// One reading's part in the lognormal model: true content c = exp(θ + σe), e standard normal; reading x = c + u·ε, ε standard normal.
// Its likelihood is an integral over the counting error with no closed form. The integrand is analytic, so the trapezoidal rule,
// centred on the integrand's own peak and stepped by its own width, converges exponentially whatever u is beside the spread.

/** ln of the reading's likelihood, and the first four moments of e given the reading. */
export type Moments = { logf: number; m1: number; m2: number; m3: number; m4: number };

/** Terms this far below the peak (e⁻³² ≈ 1e-14) add nothing. */
const negligible = 32;
const maxNodes = 4000;
const logRoot2Pi = 0.5 * Math.log(2 * Math.PI);

type Integrand = (e: number) => number;
type Sums = { top: number; sums: number[]; reach: [number, number] };

/** A maximum of h between lo (slope ≥ 0) and hi (slope ≤ 0): Newton on the slope, kept inside the bracket. */
const peakBetween = (lo: number, hi: number, start: number, slopes: (e: number) => [number, number]): number => {
  let a = lo;
  let b = hi;
  let e = start;
  for (let i = 0; i < 100; i++) {
    const [first, second] = slopes(e);
    if (first === 0) return e;
    if (first > 0) a = e;
    else b = e;
    let next = second < 0 ? e - first / second : Number.NaN;
    // Every eighth step halves the bracket: where the slope is exponential Newton creeps. Not sooner: beside a peak Newton needs six
    // steps at most, and halving would leave it for another.
    if (!(next > a && next < b) || i % 8 === 7) next = 0.5 * (a + b);
    // A hundredth of the peak's own width is near enough: the grid need not sit on it exactly.
    if (Math.abs(next - e) * Math.sqrt(Math.max(1, -second)) <= 0.01) return next;
    e = next;
  }
  return e;
};

const inside = (taken: readonly number[], e: number): boolean => e >= taken[0]! && e <= taken[1]!;

/**
 * Uphill from `from` in strides that double while they gain and halve when they do not, never into `taken`. Very far out, where a stride
 * is below the spacing of the numbers, it begins with one that moves.
 */
const uphill = (h: Integrand, from: number, stride: number, taken: readonly number[]): number => {
  let e = from;
  let here = h(e);
  const least = Math.max(Math.abs(stride), 2 ** -50 * Math.abs(from));
  let reach = Math.sign(stride) * least;
  while (Math.abs(reach) >= least) {
    const there = inside(taken, e + reach) ? Number.NEGATIVE_INFINITY : h(e + reach);
    if (there > here) {
      e += reach;
      here = there;
      reach *= 2;
    } else reach /= 2;
  }
  return e;
};

/**
 * Sums of exp(h − h(peak))·(1, e, e², e³, e⁴) on a grid from the peak outwards, and how far the grid went; never into `taken`, the
 * stretch another grid has summed. Where the hill goes on rising, a point far up instead.
 */
const sumsAround = (
  h: Integrand,
  peak: number,
  step: number,
  taken: readonly number[],
): Sums | { higher: number; stride: number } => {
  const top = h(peak);
  const sums = [1, peak, peak ** 2, peak ** 3, peak ** 4];
  const reach: [number, number] = [peak, peak];
  for (const side of [0, 1]) {
    const stride = side === 0 ? -step : step;
    for (let k = 1; k <= maxNodes; k++) {
      const e = peak + k * stride;
      const drop = h(e) - top;
      reach[side] = e;
      if (!(drop > -negligible) || inside(taken, e)) break;
      // Far above the start: the peak was not found where it was looked for, and lies here or beyond.
      if (drop > 20) return { higher: e, stride };
      const w = Math.exp(drop);
      sums[0]! += w;
      sums[1]! += w * e;
      sums[2]! += w * e * e;
      sums[3]! += w * e * e * e;
      sums[4]! += w * e * e * e * e;
    }
  }
  return { top, sums, reach };
};

/** The same, from wherever the top turns out to be. Each climb ends at a higher hill, so a few are enough. */
const sumsFrom = (
  h: Integrand,
  start: number,
  step: number,
  taken: readonly number[] = [Number.NaN, Number.NaN],
): Sums => {
  let peak = start;
  for (;;) {
    const found = sumsAround(h, peak, step, taken);
    if ("sums" in found) return found;
    peak = uphill(h, found.higher, found.stride, taken);
  }
};

const momentsOf = (top: number, sums: readonly number[], step: number): Moments => {
  const s0 = sums[0]!;
  return {
    logf: top + Math.log(s0 * step),
    m1: sums[1]! / s0,
    m2: sums[2]! / s0,
    m3: sums[3]! / s0,
    m4: sums[4]! / s0,
  };
};

/** 0.7 of the integrand's narrowest scale: for a Gaussian the trapezoidal rule then errs by 2·exp(−2π²/0.7²), less than 1e-17. */
const stepFor = (...curvatures: number[]): number => 0.7 / Math.sqrt(Math.max(1, ...curvatures));

/** A place at or below 0 where the slope is not negative: `from` lowered by 3/σ, 6/σ, 12/σ … (the content by e³, e⁶ …). */
const risingBelow = (slopes: (e: number) => [number, number], from: number, sigma: number): number => {
  let e = Math.min(0, from);
  for (let depth = 3 / sigma; slopes(e)[0] < 0; depth *= 2) e = Math.min(0, from) - depth;
  return e;
};

/** A detected reading, summed over the content: density of x. */
const seenByContent = (x: number, u: number, theta: number, sigma: number): Moments => {
  const h: Integrand = (e) => {
    const r = (x - Math.exp(theta + sigma * e)) / u;
    return -0.5 * (r * r + e * e);
  };
  const slopes = (e: number): [number, number] => {
    const c = Math.exp(theta + sigma * e);
    const s = (sigma * c) / u;
    return [s * ((x - c) / u) - e, sigma * s * ((x - 2 * c) / u) - 1];
  };
  // Peaks lie between the model's centre (e = 0) and the reading's own content; where the reading is not positive, above a content
  // so small beside u that the slope there is the model's alone.
  const own = x > 0 ? (Math.log(x) - theta) / sigma : risingBelow(slopes, (Math.log(u) - theta) / sigma, sigma);
  const lo = Math.min(0, own);
  const hi = Math.max(0, own);
  let peak = peakBetween(lo, hi, own, slopes);
  // The integrand can have two peaks only where (σx/u)² > 8.
  let second = x > 0 && sigma * x > 2.8 * u ? peakBetween(lo, hi, 0, slopes) : peak;
  if (h(second) > h(peak)) [peak, second] = [second, peak];
  // Widths: at the peak, and where the reading cuts the content off from above, as far as the model reaches there.
  const stepAt = (e: number): number => {
    const cut = Math.min(Math.max(x, 0) + 2 * u, Math.exp(theta + sigma * (e + 7)));
    return stepFor(-slopes(e)[1], 1 + ((sigma * sigma * cut) / u) * (Math.max(0, 2 * cut - x) / u));
  };
  // The valley between two peaks may not be deep enough to end the first grid: it then walks over the second, narrower one, and must
  // be fine enough for both. Very narrow ones stand alone.
  const lesserStep = stepAt(second);
  const step = Math.min(stepAt(peak), lesserStep > 0.01 ? lesserStep : Number.POSITIVE_INFINITY);
  const main = sumsFrom(h, peak, step);
  const [left, right] = main.reach;
  if (second < left || second > right) {
    // Two peaks with nothing between them: the lesser one has its own grid.
    const lesser = sumsFrom(h, second, lesserStep, main.reach);
    const weight = (Math.exp(lesser.top - main.top) * lesserStep) / step;
    for (let k = 0; k < 5; k++) main.sums[k]! += weight * lesser.sums[k]!;
  }
  const moments = momentsOf(main.top, main.sums, step);
  return { ...moments, logf: moments.logf - 2 * logRoot2Pi - Math.log(u) };
};

/** A censored reading, summed over the content: P(reading < limit) = ∫ Φ((limit − c)/u) φ(e) de. */
const belowByContent = (limit: number, u: number, theta: number, sigma: number): Moments => {
  const h: Integrand = (e) => normalLogCdf((limit - Math.exp(theta + sigma * e)) / u) - 0.5 * e * e;
  const slopes = (e: number): [number, number] => {
    const c = Math.exp(theta + sigma * e);
    const z = (limit - c) / u;
    const s = (sigma * c) / u;
    const hazard = normalHazardBelow(z);
    return [-hazard * s - e, -normalHazardSlope(z) * s * s - hazard * s * sigma - 1];
  };
  // The peak lies below the model's centre, above the slope there, and not far below the content the limit stands for.
  const near = (Math.log(Math.max(limit, u)) - 3 - theta) / sigma;
  const lowest = Math.max(slopes(0)[0], near < 0 && slopes(near)[0] > 0 ? near : Number.NEGATIVE_INFINITY);
  const peak = peakBetween(lowest, 0, Math.max(lowest, -1), slopes);
  const cut = Math.min(Math.max(limit, 0) + 2 * u, Math.exp(theta + sigma * (peak + 7)));
  const step = stepFor(-slopes(peak)[1], 1 + ((sigma * cut) / u) ** 2);
  const { top, sums } = sumsFrom(h, peak, step);
  const moments = momentsOf(top, sums, step);
  return { ...moments, logf: moments.logf - logRoot2Pi };
};

/**
 * A detected reading, summed over the counting error: f = ∫ g(x − uε) φ(ε) dε, g the lognormal density. It serves where u is small
 * beside the content and the spread, down to u of no size at all.
 */
const seenByError = (x: number, u: number, theta: number, sigma: number): Moments => {
  const ratio = u / x;
  const own = (Math.log(x) - theta) / sigma;
  const place = (epsilon: number) => own + Math.log1p(-ratio * epsilon) / sigma;
  const ceiling = 1 / ratio;
  // Where the error would make the content negative h is NaN or −∞, and the sum ends.
  const h: Integrand = (epsilon) => {
    const lg = Math.log1p(-ratio * epsilon);
    const e = own + lg / sigma;
    return -0.5 * (epsilon * epsilon + e * e) - lg;
  };
  const slopes = (epsilon: number): [number, number] => {
    const s = ratio / (1 - ratio * epsilon);
    const e = place(epsilon);
    return [(s * e) / sigma + s - epsilon, s * s * (1 + (e - 1 / sigma) / sigma) - 1];
  };
  const reach = Math.max(-0.9 * ceiling, Math.min(0.9 * ceiling, 2 * slopes(0)[0]));
  const peak = peakBetween(Math.min(0, reach), Math.max(0, reach), reach / 2, slopes);
  const step = stepFor(-slopes(peak)[1]);
  const top = h(peak);
  const sums = [0, 0, 0, 0, 0];
  for (const stride of [-step, step])
    for (let k = stride < 0 ? 1 : 0; k <= maxNodes; k++) {
      const epsilon = peak + k * stride;
      const drop = h(epsilon) - top;
      if (!(drop > -negligible)) break;
      const w = Math.exp(drop);
      const e = place(epsilon);
      const square = e * e;
      sums[0]! += w;
      sums[1]! += w * e;
      sums[2]! += w * square;
      sums[3]! += w * square * e;
      sums[4]! += w * square * square;
    }
  const moments = momentsOf(top, sums, step);
  return { ...moments, logf: moments.logf - 2 * logRoot2Pi - Math.log(sigma * x) };
};

/** Moments of a standard normal e given e < z. */
const truncatedMoments = (z: number): [number, number, number, number] => {
  const hazard = normalHazardBelow(z);
  return [-hazard, 1 - z * hazard, -hazard * (z * z + 2), 3 - hazard * z * (z * z + 3)];
};

/**
 * The same, summed over the counting error: P = ∫ Φ((ln(limit − uε) − θ)/σ) φ(ε) dε. It serves where u is small beside the limit and
 * the spread, so that the cut in the content is too sharp for the other form.
 */
const belowByError = (limit: number, u: number, theta: number, sigma: number): Moments => {
  const edge = (epsilon: number) => (Math.log(limit - u * epsilon) - theta) / sigma;
  const h: Integrand = (epsilon) => normalLogCdf(edge(epsilon)) - 0.5 * epsilon * epsilon;
  const slopes = (epsilon: number): [number, number] => {
    const z = edge(epsilon);
    const d = -u / ((limit - u * epsilon) * sigma);
    const hazard = normalHazardBelow(z);
    return [hazard * d - epsilon, -normalHazardSlope(z) * d * d - hazard * d * d * sigma - 1];
  };
  const lowest = slopes(0)[0];
  const peak = peakBetween(lowest, 0, Math.max(lowest, -1), slopes);
  const step = stepFor(-slopes(peak)[1]);
  const top = h(peak);
  const sums = [0, 0, 0, 0, 0];
  for (const stride of [-step, step])
    for (let k = stride < 0 ? 1 : 0; k <= maxNodes; k++) {
      const epsilon = peak + k * stride;
      const drop = h(epsilon) - top;
      if (!(drop > -negligible)) break;
      const w = Math.exp(drop);
      const [t1, t2, t3, t4] = truncatedMoments(edge(epsilon));
      sums[0]! += w;
      sums[1]! += w * t1;
      sums[2]! += w * t2;
      sums[3]! += w * t3;
      sums[4]! += w * t4;
    }
  const moments = momentsOf(top, sums, step);
  return { ...moments, logf: moments.logf - logRoot2Pi };
};

/**
 * ln of the likelihood of one reading under the lognormal model, with the moments of its standardised log content.
 *
 * Detected: density of x at N(c, u²) mixed over c = exp(θ + σe). Censored: P(reading < x). σ > 0.
 */
export const lognormalReading = (x: number, u: number, censored: boolean, theta: number, sigma: number): Moments => {
  // The counting error is the narrower of the two: sum over it. Otherwise over the content.
  const sharp = x > 10 * u && sigma * x > 2 * u;
  if (censored) return sharp ? belowByError(x, u, theta, sigma) : belowByContent(x, u, theta, sigma);
  // Far above the model, an error of many u down to the model's own contents can be likelier than so rare a content: a second peak
  // that only the sum over the content looks for. Up to six spreads above, or with u under a fiftieth, the two forms agree.
  const own = (Math.log(x) - theta) / sigma;
  const twoPeaks = own > 6 && x < 50 * u;
  return sharp && Math.abs(own) < 15 && !twoPeaks ? seenByError(x, u, theta, sigma) : seenByContent(x, u, theta, sigma);
};
