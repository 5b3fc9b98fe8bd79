import { type Column, DataTable } from "@/app/_components/data-table.tsx";
import type { Draft } from "@/app/_draft/load-draft.ts";
import { leadingDecision, openNonDetect } from "@/lib/publication/leading-decision.ts";
import type { SnapshotDecision } from "@/lib/publication/snapshot.ts";
import { boundPlans } from "@/lib/reconcile/bound-plans.ts";
import type { ReconcileResult } from "@/lib/reconcile/types.ts";
import { whatNext } from "@/lib/reconcile/what-next.ts";
import { elementTitle } from "@/lib/wording/elements.ts";
import { amountText, chancesText } from "@/lib/wording/formats.ts";
import { planEffort, planName, planWords, unseenSettles } from "@/lib/wording/plans.ts";
import { limitName } from "@/lib/wording/verdicts.ts";

/** For each result that a limit leaves open: what more work would bring, the least of it first. */
export function WhatNext({ partId, draft }: { partId: string; draft: Draft }) {
  const results = draft.assessed.specimens.flatMap((s) => s.parts).find((part) => part.id === partId)?.results ?? [];
  return results.map(({ reconciled }) => {
    const shown = draft.placed.find((p) => p.part.id === partId && p.result.inputsDigest === reconciled.inputsDigest);
    const decision = shown ? leadingDecision(shown.result) : null;
    if (decision?.verdict === "too-close")
      return <Plans key={reconciled.inputsDigest} reconciled={reconciled} decision={decision} />;
    const open = shown ? openNonDetect(shown.result) : null;
    return open && <BoundPlans key={reconciled.inputsDigest} reconciled={reconciled} decision={open} />;
  });
}

type Asked = { reconciled: ReconcileResult; decision: SnapshotDecision };

const caption = ({ reconciled, decision }: Asked): string =>
  planWords.title(elementTitle(reconciled.element).toLowerCase(), limitName(decision));

type Plan = Parameters<typeof planName>[0] & Parameters<typeof planEffort>[0];

/** The first few plans, the cheapest that settles it and the laboratory; each with what it costs and what `columns` say of it. */
function PlanTable<P extends Plan>({
  asked,
  plans,
  cheapest,
  words,
  columns,
}: {
  asked: Asked;
  plans: readonly P[];
  cheapest: P | null;
  words: { cheapest: string; note: string; none: string };
  columns: Column<P>[];
}) {
  const few = plans.filter((plan, at) => at < 5 || plan === cheapest || plan.kind === "laboratory");
  return few.length === 0 ? null : (
    <div className="flow">
      <DataTable
        caption={caption(asked)}
        rows={few}
        rowKey={(plan) => `${plan.kind} ${plan.amount}`}
        rowNote={(plan) => (plan === cheapest ? words.cheapest : null)}
        columns={[
          { key: "plan", head: "Plan", cell: (plan) => planName(plan) },
          { key: "effort", head: "Work", cell: (plan) => planEffort(plan) },
          ...columns,
        ]}
      />
      <p className="soft small">
        {words.note}
        {cheapest === null ? ` ${words.none}` : ""}
      </p>
    </div>
  );
}

/** A value too close to call. */
function Plans(asked: Asked) {
  const { reconciled, decision } = asked;
  return (
    <PlanTable
      asked={asked}
      {...whatNext(reconciled, decision.value)}
      words={planWords}
      columns={[
        { key: "u", head: "Expanded uncertainty then", cell: (plan) => amountText(plan.expectedU, reconciled.unit) },
        {
          key: "chance",
          head: "Settled",
          cell: (plan) => (plan.chance === null ? "–" : `in ${chancesText(plan.chance)}`),
        },
      ]}
    />
  );
}

/** Nothing seen, and the bound not under the limit. */
function BoundPlans(asked: Asked) {
  const { reconciled, decision } = asked;
  return (
    <PlanTable
      asked={asked}
      {...boundPlans(reconciled, decision.value!, { failsAt: decision.failsAt })}
      words={{ cheapest: planWords.cheapestUnseen, note: planWords.ifUnseen, none: planWords.noneUnseen }}
      columns={[
        {
          key: "bound",
          head: "Upper bound then",
          cell: (plan) => (plan.bound === null ? planWords.laboratoryBound : amountText(plan.bound, reconciled.unit)),
        },
        { key: "settles", head: "Settled", cell: (plan) => unseenSettles(plan) },
      ]}
    />
  );
}
