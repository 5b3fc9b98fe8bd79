import { DomainError } from "../quantity/domain-error.ts";
import { bracketedRoot } from "./bracketed-root.ts";
import { requireNumbers } from "./checks.ts";
import { moments } from "./moments.ts";
import { requireNotNegative, requireSameLength } from "./require-number.ts";
import type { Line } from "./weighted-line.ts";

export type York = Line & {
  /** The least sum of squares Σ(y − a − bx)²/(u(y)² + b²u(x)²), to be compared with n − 2. */
  s: number;
};

/**
 * Straight line with independent errors in both variables (York, Evensen, López Martínez and De Basabe Delgado,
 * Am. J. Phys. 72 (2004) 367, unified equations with r = 0).
 *
 * W = 1/(u(y)² + b²u(x)²); U = x − x̄, V = y − ȳ from W-weighted means; β = W(U·u(y)² + bV·u(x)²);
 * b = ΣWβV/ΣWβU from ordinary least squares until it stands still; a = ȳ − b·x̄. With few points and very unequal errors S
 * can have two hollows and that iteration end in the shallower one, or nowhere: all directions of the line are searched
 * as well, and the least S counts. Standard errors from the adjusted points x* = x̄ + β:
 * se²(b) = 1/ΣW(x* − x̄*)², se²(a) = 1/ΣW + x̄*²·se²(b), cov = −x̄*·se²(b); not scaled by the fit. Other authors' error
 * formulas (Kalantar, Mahon) differ in the second or third digit.
 *
 * x, y: two or more finite values each; ux, uy: standard uncertainties, 0 or more, not both 0 at any point. The points
 * must spread in x.
 *
 * @throws DomainError `length-mismatch`, `empty`, `too-few`, `not-finite`, `negative`, `no-uncertainty`, `no-spread-in-x`,
 * `no-line` (the best line is upright, or level through points whose y is exact, or none is better than its neighbours)
 * @example york([17.3, 50.1, 148, 400, 1162], [19, 48.2, 155, 389, 1190], [0.4, 1, 5, 12, 31], [2, 2.5, 6, 10, 22])
 * // { intercept: 0.42897, slope: 1.00404, seIntercept: 1.84931, seSlope: 0.0240274, cov: -0.0229824, s: 2.866848 }
 */
export function york(x: readonly number[], y: readonly number[], ux: readonly number[], uy: readonly number[]): York {
  checkPoints(x, y, ux, uy);
  const ofX = moments(x);
  const ofY = moments(y);
  // In units of each variable's own spread, about its mean: any magnitudes then meet the same arithmetic.
  const unitX = ofX.sd;
  const unitY = ofY.sd > 0 ? ofY.sd : Math.max(...uy) || 1;
  const points = x.map((value, i) => ({
    x: (value - ofX.mean) / unitX,
    y: ((y[i] as number) - ofY.mean) / unitY,
    vx: ((ux[i] as number) / unitX) ** 2,
    vy: ((uy[i] as number) / unitY) ** 2,
  }));
  const slope = bestSlope(points);
  const { fit, sumWeights, xMean, yMean } = weigh(points, slope);
  const adjustedMean = xMean + fit.reduce((sum, point) => sum + point.w * point.beta, 0) / sumWeights;
  const spread = fit.reduce((sum, point) => sum + point.w * (xMean + point.beta - adjustedMean) ** 2, 0);
  const slopeVariance = 1 / spread;
  // No weight is finite on a level line through points whose y is exact; no slope is better than another where all of them are.
  if (!Number.isFinite(slopeVariance)) throw new DomainError("no-line", "the points fix no finite slope", slope);
  const scale = unitY / unitX;
  // Back from the scaled, centred points to the caller's axes.
  const leverage = adjustedMean + ofX.mean / unitX;
  return {
    intercept: ofY.mean + unitY * (yMean - slope * xMean) - scale * slope * ofX.mean,
    slope: scale * slope,
    seIntercept: unitY * Math.sqrt(1 / sumWeights + leverage * leverage * slopeVariance),
    seSlope: scale * Math.sqrt(slopeVariance),
    cov: -unitY * scale * leverage * slopeVariance,
    s: fit.reduce((sum, point) => sum + point.w * (point.v - slope * point.u) ** 2, 0),
  };
}

function checkPoints(x: readonly number[], y: readonly number[], ux: readonly number[], uy: readonly number[]): void {
  requireNumbers("x", x, 2);
  requireNumbers("y", y, 2);
  for (const [name, list] of [
    ["y", y],
    ["ux", ux],
    ["uy", uy],
  ] as const)
    requireSameLength(`x and ${name}`, x, list);
  for (const each of ux) requireNotNegative("ux", each);
  for (const each of uy) requireNotNegative("uy", each);
  const bare = x.findIndex((_, i) => ux[i] === 0 && uy[i] === 0);
  if (bare >= 0) throw new DomainError("no-uncertainty", "a point without any uncertainty cannot be weighed", bare);
  if (x.every((value) => value === x[0]))
    throw new DomainError("no-spread-in-x", "all x are equal: no line goes through them", x[0]);
}

type Point = { x: number; y: number; vx: number; vy: number };

/** Weights, weighted means, deviations and York's β at one slope. */
function weigh(points: readonly Point[], slope: number) {
  const weights = points.map((point) => 1 / (point.vy + slope * slope * point.vx));
  const sumWeights = weights.reduce((sum, weight) => sum + weight, 0);
  const xMean = points.reduce((sum, point, i) => sum + (weights[i] as number) * point.x, 0) / sumWeights;
  const yMean = points.reduce((sum, point, i) => sum + (weights[i] as number) * point.y, 0) / sumWeights;
  const fit = points.map((point, i) => {
    const w = weights[i] as number;
    const u = point.x - xMean;
    const v = point.y - yMean;
    return { w, u, v, beta: w * (u * point.vy + slope * v * point.vx), vx: point.vx };
  });
  return { fit, sumWeights, xMean, yMean };
}

const ROUND_LIMIT = 2000;

/** York's iteration from the ordinary least-squares slope; null where it does not settle. */
function iteratedSlope(points: readonly Point[]): number | null {
  let slope =
    points.reduce((sum, point) => sum + point.x * point.y, 0) / points.reduce((sum, point) => sum + point.x ** 2, 0);
  for (let round = 0; round < ROUND_LIMIT; round++) {
    const { fit } = weigh(points, slope);
    let top = 0;
    let bottom = 0;
    let spread = 0;
    for (const { w, u, v, beta } of fit) {
      top += w * beta * v;
      bottom += w * beta * u;
      spread += w * beta * beta;
    }
    const next = top / bottom;
    if (!Number.isFinite(next)) return null;
    const change = Math.abs(next - slope);
    slope = next;
    if (change <= 4 * Number.EPSILON * Math.abs(slope) || change <= 1e-14 / Math.sqrt(spread)) return slope;
  }
  return null;
}

/** The least sum of squares a line of this slope can have. */
const sumAt = (points: readonly Point[], slope: number): number =>
  weigh(points, slope).fit.reduce((sum, { w, u, v }) => sum + w * (v - slope * u) ** 2, 0);

/** The slope of the least S. Where York's iteration reaches it too, its answer is taken: it keeps a digit or two more. */
function bestSlope(points: readonly Point[]): number {
  const iterated = iteratedSlope(points);
  const searched = searchedSlope(points);
  if (searched === null) {
    if (iterated === null) throw new DomainError("no-line", "the points fix no finite slope", null);
    return iterated;
  }
  if (iterated === null) return searched;
  return sumAt(points, iterated) <= sumAt(points, searched) * (1 + 1e-9) ? iterated : searched;
}

const DIRECTIONS = 360;

/** The slope of the least S among all directions, by the sign of its derivative; null where S has no hollow. */
function searchedSlope(points: readonly Point[]): number | null {
  const derivative = (angle: number) => {
    const slope = Math.tan(angle);
    return weigh(points, slope).fit.reduce((sum, { w, u, v, vx }) => {
      const residual = v - slope * u;
      return sum - w * residual * u - slope * vx * (w * residual) ** 2;
    }, 0);
  };
  let best: number | null = null;
  // Half a step off the axes, where a slope of 0 or of infinity would leave points without weight.
  const angleOf = (step: number) => -Math.PI / 2 + ((step + 0.5) * Math.PI) / DIRECTIONS;
  let before = derivative(angleOf(0));
  for (let step = 1; step < DIRECTIONS; step++) {
    const here = derivative(angleOf(step));
    if (before < 0 && here >= 0) {
      const slope = Math.tan(bracketedRoot(derivative, angleOf(step - 1), angleOf(step)));
      if (best === null || sumAt(points, slope) < sumAt(points, best)) best = slope;
    }
    before = here;
  }
  return best;
}
