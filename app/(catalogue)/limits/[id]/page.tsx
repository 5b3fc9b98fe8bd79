import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { PageHead } from "@/app/_components/entry.tsx";
import { Facts } from "@/app/_components/facts.tsx";
import { findLimit, historyOf } from "@/lib/limits/limits-in-force.ts";
import { publicLimit } from "@/lib/limits/list-limits.ts";
import { paths } from "@/lib/platform/paths.ts";
import { limitsPage } from "@/lib/wording/catalogue.ts";
import { elementTitle } from "@/lib/wording/elements.ts";
import { listed, plainDate } from "@/lib/wording/formats.ts";
import { labelOf, quantityLabels } from "@/lib/wording/labels.ts";
import { failsText, limitNumber, limitPeriod, natureWords } from "@/lib/wording/limit-words.ts";
import { checkedText } from "@/lib/wording/verdicts.ts";

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
  const limit = await load(props);
  if (!limit) notFound();
  const family = historyOf(limit.family);
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
          {listed(limit.substances.map(elementTitle))}: {limitNumber(limit)}
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
          { name: "In force", value: limitPeriod(limit) },
          {
            name: "Compliance asked from",
            value: limit.complianceFrom === null ? null : plainDate(limit.complianceFrom),
          },
          { name: "Kind of rule", value: natureWords[limit.nature] },
          { name: "Source", value: limit.citation },
          { name: "How far we checked it", value: `${checkedText[limit.checked]}. ${limit.checkedNote}` },
          { name: "Note", value: limit.note },
          { name: "Name in the data", value: <code>{limit.id}</code> },
        ]}
      />
      {family.length > 1 ? (
        <>
          <h2>The same limit over time</h2>
          <ol>
            {family.map((row) => (
              <li key={row.id}>
                {row.id === limit.id ? (
                  <strong>
                    {limitNumber(row)}, {limitPeriod(publicLimit(row))} (this one)
                  </strong>
                ) : (
                  <a href={paths.limit(row.id)}>
                    {limitNumber(row)}, {limitPeriod(publicLimit(row))}
                  </a>
                )}
              </li>
            ))}
          </ol>
        </>
      ) : null}
      <p className="soft">{limitsPage.caution}</p>
    </div>
  );
}
