import { DomainError } from "../quantity/domain-error.ts";
import { requireLevel, requireNumbers } from "./checks.ts";
import { tUpperQuantile } from "./distributions.ts";
import { moments } from "./moments.ts";

export type EsdStep = {
  /** Position (from 0, in x as given) of the value farthest from the mean of those left; the first of equals. */
  index: number;
  r: number;
  lambda: number;
};
export type GeneralizedEsd = {
  /** "no-spread": the values left became equal before maxOutliers steps were done; the steps before that stand. */
  status: "ok" | "no-spread";
  /** Positions (from 0) of the outliers, in the order they were taken out. */
  outliers: number[];
  steps: EsdStep[];
};

/**
 * Rosner's generalised extreme Studentised deviate test for up to r outliers (Rosner 1983; NIST/SEMATECH e-Handbook
 * 1.3.5.17.3), which is not misled when outliers hide each other.
 *
 * Step i = 1…r: Rᵢ = max|xⱼ − x̄|/s over the values left, then that value is taken out;
 * λᵢ = (n − i)·t/√((n − i − 1 + t²)(n − i + 1)), t the 1 − α/(2(n − i + 1)) quantile with n − i − 1 degrees of freedom.
 * The outliers are the first m values taken out, m the largest i with Rᵢ > λᵢ. Approximate below about 15 values.
 *
 * x: three or more finite values in one unit; maxOutliers: a whole number from 1 to n − 2.
 *
 * @throws DomainError `too-few`, `not-finite`, `bad-level`, `bad-max-outliers`
 * @example generalizedEsd([310, 305, 318, 299, 311, 307, 2950], { maxOutliers: 2 }).outliers // [6]
 */
export function generalizedEsd(
  x: readonly number[],
  { maxOutliers, alpha = 0.05 }: { maxOutliers: number; alpha?: number },
): GeneralizedEsd {
  requireNumbers("x", x, 3);
  requireLevel(alpha, "alpha");
  const n = x.length;
  if (!(Number.isInteger(maxOutliers) && maxOutliers >= 1 && maxOutliers <= n - 2))
    throw new DomainError("bad-max-outliers", "maxOutliers must be a whole number from 1 to n − 2", maxOutliers);
  const left = x.map((value, index) => ({ value, index }));
  const steps: EsdStep[] = [];
  let status: GeneralizedEsd["status"] = "ok";
  for (let i = 1; i <= maxOutliers; i++) {
    const { mean, sd } = moments(left.map((entry) => entry.value));
    if (sd === 0) {
      status = "no-spread";
      break;
    }
    let farthest = 0;
    const distance = (place: number) => Math.abs((left[place] as { value: number }).value - mean);
    for (let place = 1; place < left.length; place++) if (distance(place) > distance(farthest)) farthest = place;
    const r = distance(farthest) / sd;
    const taken = left.splice(farthest, 1)[0] as { index: number };
    steps.push({ index: taken.index, r, lambda: esdCritical(n, i, alpha) });
  }
  const last = steps.findLastIndex((step) => step.r > step.lambda);
  return { status, outliers: steps.slice(0, last + 1).map((step) => step.index), steps };
}

/** λᵢ for step i of n values. */
function esdCritical(n: number, i: number, alpha: number): number {
  const df = n - i - 1;
  const t = tUpperQuantile(alpha / (2 * (n - i + 1)), df);
  return ((n - i) * t) / Math.sqrt((df + t * t) * (n - i + 1));
}
