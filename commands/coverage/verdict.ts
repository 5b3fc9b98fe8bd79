import { defaultPolicy, type ReconcileResult } from "../../lib/reconcile/types.ts";
import { normalUpperTail, tUpperTail } from "../../lib/statistics/distributions.ts";

/**
 * Step 9 for a simulated part: "above", "below" or "open" (too close to call, or nothing to call). The probability that the true
 * value is on the failing side is from t with ν_eff, lognormal where the stated interval is asymmetric; an uneven part is "below"
 * only when the upper end of its interval is; a part that was not detected, or not quantified, only when its bound is.
 */
export function verdictAgainst(result: ReconcileResult, limit: number): "above" | "below" | "open" {
  const bound = result.state === "not-detected" ? result.below : result.upperBound;
  if (result.state !== "quantified") return bound !== null && bound < limit ? "below" : "open";
  const { value, u, interval } = result;
  if (value === null || u === null || interval === null) return "open";
  const p = probabilityAbove(result, limit);
  if (p >= 1 - defaultPolicy.decisionRisk) return "above";
  if (p > defaultPolicy.decisionRisk) return "open";
  return result.flags.includes("uneven") && interval[1] >= limit ? "open" : "below";
}

function probabilityAbove({ value, u, nuEff, asymmetric }: ReconcileResult, limit: number): number {
  const [x, s] = [value ?? 0, u ?? 0];
  if (asymmetric && x > 0) return normalUpperTail(Math.log(limit / x) / Math.sqrt(Math.log1p((s / x) ** 2)));
  const distance = (limit - x) / s;
  return nuEff === null ? normalUpperTail(distance) : tUpperTail(distance, nuEff);
}
