import type { Draft } from "@/app/_draft/load-draft.ts";
import { leadingDecision, openNonDetect } from "@/lib/publication/leading-decision.ts";
import type { SnapshotResult } from "@/lib/publication/snapshot.ts";
import { boundPlans } from "@/lib/reconcile/bound-plans.ts";
import type { ReconcileResult } from "@/lib/reconcile/types.ts";
import { type Plan, whatNext } from "@/lib/reconcile/what-next.ts";
import { elementTitle } from "@/lib/wording/elements.ts";
import { boundPlanText, planText } from "@/lib/wording/review.ts";

/**
 * For every result too close to call, or not detected with a bound over the limit: what would settle it, the cheapest plan that is likely
 * enough to; where none is, the one that brings most, or a laboratory. Sentences, each with its part and element.
 */
export function settlingPlans({ assessed, placed }: Draft): string[] {
  const parts = assessed.specimens.flatMap((s) => s.parts);
  return parts.flatMap((part) =>
    part.results.flatMap(({ reconciled }) => {
      const shown = placed.find((p) => p.part.id === part.id && p.result.inputsDigest === reconciled.inputsDigest);
      const sentence = shown ? whatSettles(reconciled, shown.result) : null;
      return sentence === null ? [] : [`${elementTitle(reconciled.element)} in ${part.name}: ${sentence}.`];
    }),
  );
}

function whatSettles(reconciled: ReconcileResult, shown: SnapshotResult): string | null {
  const decision = leadingDecision(shown);
  if (decision?.verdict === "too-close" && decision.value !== null) {
    const { plans, cheapest } = whatNext(reconciled, decision.value);
    const best = cheapest ?? mostPromising(plans);
    return best && planText(best, reconciled.unit);
  }
  const open = openNonDetect(shown);
  if (open === null) return null;
  const { plans, cheapest } = boundPlans(reconciled, open.value!, { failsAt: open.failsAt });
  const best = cheapest ?? plans.at(-1);
  return best ? boundPlanText(best, reconciled.unit) : null;
}

const mostPromising = (plans: readonly Plan[]): Plan | null =>
  plans.reduce<Plan | null>(
    (best, plan) => (best === null || (plan.chance ?? 0) > (best.chance ?? 0) ? plan : best),
    null,
  );
