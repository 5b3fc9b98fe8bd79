import { probabilityAbove } from "../../lib/limits/probability-above.ts";
import { defaultPolicy, type ReconcileResult } from "../../lib/reconcile/types.ts";

/**
 * Step 9 for a simulated part: "above", "below" or "open" (too close to call, or nothing to call). The probability that the true
 * value is on the failing side is from t with ν_eff, lognormal where the stated interval is asymmetric; an uneven part is "below"
 * only when the upper end of its interval is; a part that was not detected, or not quantified, only when its bound is.
 */
export function verdictAgainst(result: ReconcileResult, limit: number): "above" | "below" | "open" {
  const bound = result.state === "not-detected" ? result.below : result.upperBound;
  if (result.state !== "quantified") return bound !== null && bound < limit ? "below" : "open";
  const { value, u, nuEff: nu, interval, asymmetric } = result;
  if (value === null || u === null || interval === null) return "open";
  const p = probabilityAbove({ value, u, nu, shape: asymmetric && value > 0 ? "lognormal" : "t" }, limit);
  if (p >= 1 - defaultPolicy.decisionRisk) return "above";
  if (p > defaultPolicy.decisionRisk) return "open";
  return result.flags.includes("uneven") && interval[1] >= limit ? "open" : "below";
}
