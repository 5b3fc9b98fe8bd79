import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { connection } from "next/server";
import { PageHead } from "@/app/_components/entry.tsx";
import { Facts } from "@/app/_components/facts.tsx";
import { findLimit, historyOf } from "@/lib/limits/limits-in-force.ts";
import { publicLimit } from "@/lib/limits/list-limits.ts";
import { systemClock } from "@/lib/platform/clock.ts";
import { paths } from "@/lib/platform/paths.ts";
import { limitsPage } from "@/lib/wording/catalogue.ts";
import { elementTitle } from "@/lib/wording/elements.ts";
import { listed } from "@/lib/wording/formats.ts";
import { labelOf, quantityLabels } from "@/lib/wording/labels.ts";
import { limitPeriodInFull, timelineWords } from "@/lib/wording/limit-timeline.ts";
import { failsText, limitNumber, natureWords } from "@/lib/wording/limit-words.ts";
import { checkedText } from "@/lib/wording/verdicts.ts";
import { HistoryFigure } from "./history-figure.tsx";

type Props = { params: Promise<{ id: string }> };

const load = async ({ params }: Props) => {
  const row = findLimit(decodeURIComponent((await params).id));
  return row ? publicLimit(row) : null;
};

export async function generateMetadata(props: Props): Promise<Metadata> {
  const limit = await load(props);
  return limit ? { title: `${limit.title}, ${limit.jurisdiction}`, description: limit.scope } : {};
}

/** One limit: the number, what it covers and does not, its dates, its source and how far that was checked. */
export default async function LimitPage(props: Props) {
  await connection();
  const limit = await load(props);
  if (!limit) notFound();
  const family = historyOf(limit.family).map(publicLimit);
  const today = systemClock().toISOString().slice(0, 10);
  return (
    <div className="flow">
      <PageHead
        title={limit.title}
        kicker={
          <>
            <a href={paths.limits()}>{limitsPage.title}</a> · {limit.jurisdiction}
          </>
        }
      >
        <p className="answer">
          {listed(limit.substances.map((symbol) => elementTitle(symbol)))}: {limitNumber(limit)}
        </p>
      </PageHead>
      <Facts
        facts={[
          { name: "What the number is about", value: labelOf(quantityLabels, limit.quantity) },
          { name: "Sum of these elements", value: limit.sum ? limit.substances.join(" + ") : null },
          { name: "A result fails", value: limit.value === null ? null : failsText[limit.failsAt] },
          { name: "The rule", value: limit.rule },
          { name: "What must be held against it", value: limit.statistic },
          { name: "What it covers", value: limit.scope },
          { name: "In force", value: limitPeriodInFull(limit, today) },
          { name: "Kind of rule", value: natureWords[limit.nature] },
          { name: "Source", value: limit.citation },
          { name: "How far we checked it", value: `${checkedText[limit.checked]}. ${limit.checkedNote}` },
          { name: "Note", value: limit.note },
          { name: "Name in the data", value: <code>{limit.id}</code> },
        ]}
      />
      <h2>{timelineWords.heading}</h2>
      <HistoryFigure family={family} here={limit.id} today={today} />
      {family.length === 1 ? <p>{timelineWords.alone}</p> : null}
      <p className="soft">{limitsPage.caution}</p>
    </div>
  );
}
