import type { Draft } from "@/app/_draft/load-draft.ts";
import { leadingDecision } from "@/lib/publication/leading-decision.ts";
import { type Plan, whatNext } from "@/lib/reconcile/what-next.ts";
import { elementTitle } from "@/lib/wording/elements.ts";
import { planText } from "@/lib/wording/review.ts";

/**
 * For every result too close to call: what would settle it, the cheapest plan that is likely enough to; where none is, the one
 * that brings most. Sentences, each with its part and element.
 */
export function settlingPlans({ assessed, placed }: Draft): string[] {
  const parts = assessed.specimens.flatMap((s) => s.parts);
  return parts.flatMap((part) =>
    part.results.flatMap(({ reconciled }) => {
      const shown = placed.find((p) => p.part.id === part.id && p.result.inputsDigest === reconciled.inputsDigest);
      const decision = shown ? leadingDecision(shown.result) : null;
      if (decision?.verdict !== "too-close" || decision.value === null) return [];
      const { plans, cheapest } = whatNext(reconciled, decision.value);
      const best = cheapest ?? mostPromising(plans);
      return best ? [`${elementTitle(reconciled.element)} in ${part.name}: ${planText(best, reconciled.unit)}.`] : [];
    }),
  );
}

const mostPromising = (plans: readonly Plan[]): Plan | null =>
  plans.reduce<Plan | null>(
    (best, plan) => (best === null || (plan.chance ?? 0) > (best.chance ?? 0) ? plan : best),
    null,
  );
