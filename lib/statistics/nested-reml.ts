import { moments } from "./moments.ts";
import { oneWayReml } from "./one-way-reml.ts";
import { leastDevianceRatio } from "./variance-ratio-search.ts";

/** One cell: the readings of one b within one a. */
export type Cell = { n: number; mean: number };
export type NestedReml = { a: number; b: number; error: number; mean: number; seMean: number };

/**
 * Restricted maximum likelihood for yᵢⱼₖ = μ + aᵢ + bᵢⱼ + eᵢⱼₖ from the cells' sizes and means and the sum of squares of
 * error. All three variances zero or more.
 *
 * With β = b/error, α = a/error: wᵢⱼ = nᵢⱼ/(1 + nᵢⱼβ), sᵢ = Σⱼwᵢⱼ, mᵢ = Σⱼwᵢⱼȳᵢⱼ/sᵢ, Wᵢ = sᵢ/(1 + sᵢα), μ = ΣWᵢmᵢ/ΣWᵢ,
 * Q = SSE + ΣΣwᵢⱼ(ȳᵢⱼ − mᵢ)² + ΣWᵢ(mᵢ − μ)²;
 * −2ℓ = (N − 1)ln Q + ΣΣln(1 + nᵢⱼβ) + Σln(1 + sᵢα) + ln ΣWᵢ, error = Q/(N − 1), se(μ) = √(error/ΣWᵢ).
 * α is profiled out for each β, then β is searched along the profile.
 *
 * Where SSE = 0 the likelihood has no bound as the error goes to 0; its limit is returned: error 0, and a and b from the
 * cell means alone.
 */
export function nestedReml(cellsOfA: readonly (readonly Cell[])[], sumSquaresError: number): NestedReml {
  if (sumSquaresError === 0) return withoutError(cellsOfA);
  const cells = cellsOfA.flat();
  const total = cells.reduce((sum, cell) => sum + cell.n, 0);
  const largestCell = Math.max(...cells.map((cell) => cell.n));
  const spread = moments(cells.map((cell) => cell.mean)).sumSquares;
  const highest = 1e3 * (1 + (total * spread) / sumSquaresError);
  const lowest = 1e-9 / largestCell;
  // Deviations from one shared value, so that a large offset costs no digits.
  const anchor = cells.reduce((sum, cell) => sum + cell.n * cell.mean, 0) / total;
  const centred = cellsOfA.map((row) => row.map((cell) => ({ n: cell.n, mean: cell.mean - anchor })));
  const at = (beta: number, alpha: number) => evaluate(centred, sumSquaresError, total, beta, alpha);
  const bestAlpha = (beta: number) =>
    leastDevianceRatio(
      { deviance: (alpha) => at(beta, alpha).deviance, slope: (alpha) => at(beta, alpha).slopeAlpha },
      lowest / total,
      highest,
    );
  const beta = leastDevianceRatio(
    { deviance: (b) => at(b, bestAlpha(b)).deviance, slope: (b) => at(b, bestAlpha(b)).slopeBeta },
    lowest,
    highest,
  );
  const alpha = bestAlpha(beta);
  const end = at(beta, alpha);
  const error = end.quadratic / (total - 1);
  return {
    a: alpha * error,
    b: beta * error,
    error,
    mean: anchor + end.mean,
    seMean: Math.sqrt(error / end.sumWeights),
  };
}

/** The limit for an error of 0: cell means are then the b effects themselves, one "reading" each. */
function withoutError(cellsOfA: readonly (readonly Cell[])[]): NestedReml {
  const rows = cellsOfA.map((row) => moments(row.map((cell) => cell.mean)));
  const reml = oneWayReml(
    rows,
    rows.reduce((sum, row) => sum + row.sumSquares, 0),
  );
  return { a: reml.between, b: reml.within, error: 0, mean: reml.mean, seMean: reml.seMean };
}

type Evaluation = {
  deviance: number;
  slopeAlpha: number;
  slopeBeta: number;
  quadratic: number;
  sumWeights: number;
  mean: number;
};

/** What one level of a contributes: weight s, mean m, quadratic q, their derivatives by β, and Σln(1 + nβ). */
function levelOfA(row: readonly Cell[], beta: number) {
  let s = 0;
  let weighted = 0;
  let squares = 0;
  let logs = 0;
  let slopeLogs = 0;
  for (const { n, mean } of row) {
    const w = n / (1 + n * beta);
    s += w;
    weighted += w * mean;
    squares += w * w;
    logs += Math.log1p(n * beta);
    slopeLogs += w;
  }
  const m = weighted / s;
  let q = 0;
  let slopeQ = 0;
  let slopeM = 0;
  for (const { n, mean } of row) {
    const w = n / (1 + n * beta);
    const d = mean - m;
    q += w * d * d;
    slopeQ -= w * w * d * d;
    slopeM -= (w * w * d) / s;
  }
  return { s, m, q, logs, slopeS: -squares, slopeM, slopeQ, slopeLogs };
}

/** −2ℓ and its two partial derivatives at (β, α). */
export function evaluate(
  cellsOfA: readonly (readonly Cell[])[],
  sumSquaresError: number,
  total: number,
  beta: number,
  alpha: number,
): Evaluation {
  const levels = cellsOfA.map((row) => levelOfA(row, beta));
  const weights = levels.map((level) => level.s / (1 + level.s * alpha));
  const sumWeights = weights.reduce((sum, weight) => sum + weight, 0);
  const mean = levels.reduce((sum, level, i) => sum + (weights[i] as number) * level.m, 0) / sumWeights;
  let quadratic = sumSquaresError;
  let logs = Math.log(sumWeights);
  let alphaQuadratic = 0;
  let alphaWeights = 0;
  let betaQuadratic = 0;
  let betaWeights = 0;
  let betaLogs = 0;
  for (const [i, level] of levels.entries()) {
    const weight = weights[i] as number;
    const d = level.m - mean;
    quadratic += level.q + weight * d * d;
    logs += level.logs + Math.log1p(level.s * alpha);
    alphaQuadratic -= weight * weight * d * d;
    alphaWeights -= weight * weight;
    const slopeWeight = level.slopeS / (1 + level.s * alpha) ** 2;
    betaQuadratic += level.slopeQ + slopeWeight * d * d + 2 * weight * d * level.slopeM;
    betaWeights += slopeWeight;
    betaLogs += level.slopeLogs + (alpha * level.slopeS) / (1 + level.s * alpha);
  }
  const scale = (total - 1) / quadratic;
  return {
    deviance: (total - 1) * Math.log(quadratic) + logs,
    slopeAlpha: scale * alphaQuadratic + sumWeights + alphaWeights / sumWeights,
    slopeBeta: scale * betaQuadratic + betaLogs + betaWeights / sumWeights,
    quadratic,
    sumWeights,
    mean,
  };
}
