import { decide, heldOf } from "../../lib/limits/decide.ts";
import { defaultPolicy, type ReconcileResult } from "../../lib/reconcile/types.ts";

/** Step 9 for a simulated part, by the registry's own decision; "open" is too close to call, or nothing to call. */
export function verdictAgainst(result: ReconcileResult, limit: number): "above" | "below" | "open" {
  const held = heldOf(result);
  const { verdict } = decide(held, { value: limit, failsAt: ">", anyReportedValue: false }, defaultPolicy.decisionRisk);
  return verdict === "above" || verdict === "below" ? verdict : "open";
}
