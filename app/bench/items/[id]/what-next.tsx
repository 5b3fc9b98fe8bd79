import { DataTable } from "@/app/_components/data-table.tsx";
import type { Draft } from "@/app/_draft/load-draft.ts";
import { leadingDecision } from "@/lib/publication/leading-decision.ts";
import { whatNext } from "@/lib/reconcile/what-next.ts";
import { elementTitle } from "@/lib/wording/elements.ts";
import { amountText, chancesText } from "@/lib/wording/formats.ts";
import { planEffort, planName, planWords } from "@/lib/wording/plans.ts";
import { limitName } from "@/lib/wording/verdicts.ts";

/** For each result of a part that is too close to call: what more work would bring, the least of it first. */
export function WhatNext({ partId, draft }: { partId: string; draft: Draft }) {
  const results = draft.assessed.specimens.flatMap((s) => s.parts).find((part) => part.id === partId)?.results ?? [];
  return results.map(({ reconciled }) => {
    const shown = draft.placed.find((p) => p.part.id === partId && p.result.inputsDigest === reconciled.inputsDigest);
    const decision = shown ? leadingDecision(shown.result) : null;
    if (decision?.verdict !== "too-close" || decision.value === null) return null;
    const { plans, cheapest } = whatNext(reconciled, decision.value);
    const few = plans.filter((plan, at) => at < 5 || plan === cheapest || plan.kind === "laboratory");
    return few.length === 0 ? null : (
      <div key={reconciled.inputsDigest} className="flow">
        <DataTable
          caption={planWords.title(elementTitle(reconciled.element).toLowerCase(), limitName(decision))}
          rows={few}
          rowKey={(plan) => `${plan.kind} ${plan.amount}`}
          rowNote={(plan) => (plan === cheapest ? planWords.cheapest : null)}
          columns={[
            { key: "plan", head: "Plan", cell: (plan) => planName(plan) },
            { key: "effort", head: "Work", cell: (plan) => planEffort(plan) },
            {
              key: "u",
              head: "Expanded uncertainty then",
              cell: (plan) => amountText(plan.expectedU, reconciled.unit),
            },
            {
              key: "chance",
              head: "Settled",
              cell: (plan) => (plan.chance === null ? "–" : `in ${chancesText(plan.chance)}`),
            },
          ]}
        />
        <p className="soft small">
          {planWords.note}
          {cheapest === null ? ` ${planWords.none}` : ""}
        </p>
      </div>
    );
  });
}
