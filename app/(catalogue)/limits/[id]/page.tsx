import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { connection } from "next/server";
import { asWritten } from "@/app/_components/as-written.tsx";
import { PageHead } from "@/app/_components/entry.tsx";
import { Facts } from "@/app/_components/facts.tsx";
import { alternates } from "@/app/_site/alternates.ts";
import { findLimit, historyOf } from "@/lib/limits/limits-in-force.ts";
import { publicLimit } from "@/lib/limits/list-limits.ts";
import { systemClock } from "@/lib/platform/clock.ts";
import { paths } from "@/lib/platform/paths.ts";
import { elementTitle } from "@/lib/wording/elements.ts";
import { listed } from "@/lib/wording/formats.ts";
import { labelOf, labelsIn } from "@/lib/wording/labels.ts";
import type { Language } from "@/lib/wording/language.ts";
import { limitPeriodInFull, timelineIn } from "@/lib/wording/limit-timeline.ts";
import { limitTold } from "@/lib/wording/limit-told.ts";
import { limitNumber, limitWordsIn } from "@/lib/wording/limit-words.ts";
import { limitsPageIn } from "@/lib/wording/limits-page.ts";
import { pathsIn } from "@/lib/wording/localized-paths.ts";
import { verdictsIn } from "@/lib/wording/verdicts.ts";
import { HistoryFigure } from "./history-figure.tsx";

type Props = { params: Promise<{ id: string }>; language?: Language };

const load = async ({ params, language = "en" }: Props) => {
  const row = findLimit(decodeURIComponent((await params).id));
  return row ? limitTold(publicLimit(row), language) : null;
};

export async function generateMetadata(props: Props): Promise<Metadata> {
  const limit = await load(props);
  if (!limit) return {};
  return {
    title: `${limit.title}, ${limit.jurisdiction}`,
    description: limit.scope,
    alternates: alternates(paths.limit(limit.id), props.language ?? "en"),
  };
}

/** One limit: the number, what it covers and does not, its dates, its source and how far that was checked. */
export default async function LimitPage(props: Props) {
  await connection();
  const limit = await load(props);
  if (!limit) notFound();
  const { language = "en" } = props;
  const [page, words, history] = [limitsPageIn[language], limitWordsIn[language], timelineIn[language]];
  const names = page.facts;
  const family = historyOf(limit.family).map(publicLimit);
  const today = systemClock().toISOString().slice(0, 10);
  return (
    <div className="flow">
      <PageHead
        title={limit.title}
        kicker={
          <>
            <a href={pathsIn[language].limits()}>{page.title}</a> · {limit.jurisdiction}
          </>
        }
      >
        <p className="answer">
          {listed(
            limit.substances.map((symbol) => elementTitle(symbol, language)),
            language,
          )}
          : {limitNumber(limit, language)}
        </p>
      </PageHead>
      <Facts
        facts={[
          { name: names.quantity, value: labelOf(labelsIn[language].quantity, limit.quantity) },
          { name: names.sum, value: limit.sum ? limit.substances.join(" + ") : null },
          { name: names.fails, value: limit.value === null ? null : words.fails[limit.failsAt] },
          { name: names.rule, value: limit.rule },
          { name: names.statistic, value: limit.statistic },
          { name: names.scope, value: limit.scope },
          { name: names.period, value: limitPeriodInFull(limit, today, language) },
          { name: names.nature, value: words.nature[limit.nature] },
          { name: names.source, value: asWritten(limit.citation, language) },
          { name: names.checked, value: `${verdictsIn[language].checked[limit.checked]}. ${limit.checkedNote}` },
          { name: names.note, value: limit.note },
          { name: names.id, value: <code>{limit.id}</code> },
        ]}
      />
      <h2>{history.heading}</h2>
      <HistoryFigure family={family} here={limit.id} today={today} language={language} />
      {family.length === 1 ? <p>{history.alone}</p> : null}
      <p className="soft">{page.caution}</p>
    </div>
  );
}
