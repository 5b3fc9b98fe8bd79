import { decide } from "../../lib/limits/decide.ts";
import type { Decisive } from "../../lib/reconcile/reconcile.ts";
import { defaultPolicy } from "../../lib/reconcile/types.ts";

/** Step 9 for a simulated part, by the registry's own decision; "open" is too close to call, or nothing to call. */
export function verdictAgainst(result: Decisive, limit: number): "above" | "below" | "open" {
  const { verdict } = decide(
    result,
    { value: limit, failsAt: ">", anyReportedValue: false },
    defaultPolicy.decisionRisk,
  );
  return verdict === "above" || verdict === "below" ? verdict : "open";
}
