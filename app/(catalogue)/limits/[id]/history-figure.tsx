import { DataTable } from "@/app/_components/data-table.tsx";
import { LimitTimeline } from "@/app/_components/limit-timeline.tsx";
import type { TimelineInput } from "@/app/_components/limit-timeline-layout.ts";
import { isInForce } from "@/lib/limits/limits-in-force.ts";
import type { PublicLimit } from "@/lib/limits/list-limits.ts";
import { plainDate } from "@/lib/wording/formats.ts";
import type { Language } from "@/lib/wording/language.ts";
import {
  firstDay,
  lastDay,
  limitPeriodInFull,
  limitYears,
  timelineIn,
  timelineTitle,
} from "@/lib/wording/limit-timeline.ts";
import { limitNumber } from "@/lib/wording/limit-words.ts";
import { pathsIn } from "@/lib/wording/localized-paths.ts";
import { verdictsIn } from "@/lib/wording/verdicts.ts";

/** What the drawing needs of a family of limits, words and days. */
export function timelineInput(family: readonly PublicLimit[], today: string, language: Language): TimelineInput {
  return {
    today,
    marks: [{ id: "today", day: today, text: timelineIn[language].today }],
    steps: family.map((limit) => ({
      id: limit.id,
      number: limitNumber(limit, language),
      period: limitPeriodInFull(limit, today, language),
      years: limitYears(limit, today, language),
      from: limit.fromKnown === "unknown" ? null : limit.from,
      until: limit.until,
      never: limit.neverTookEffect,
      complianceFrom: limit.complianceFrom,
    })),
  };
}

/** How to read the signs that occur, and no others. */
function signsOf(family: readonly PublicLimit[], today: string, language: Language): string {
  const { signs } = timelineIn[language];
  const some = (test: (limit: PublicLimit) => boolean) => family.some((limit) => !limit.neverTookEffect && test(limit));
  return [
    some((limit) => isInForce(limit, today)) ? signs.now : "",
    some((limit) => limit.until !== null && limit.until < today) ? signs.past : "",
    some((limit) => limit.from > today) ? signs.coming : "",
    some((limit) => limit.complianceFrom !== null) ? signs.waiting : "",
    family.some((limit) => limit.neverTookEffect) ? signs.never : "",
    some((limit) => limit.fromKnown === "unknown") ? signs.openLeft : "",
  ]
    .filter((sign) => sign !== "")
    .join(" ");
}

type Props = { family: readonly PublicLimit[]; here: string; today: string; language: Language };

/** A limit's family through time: the drawing and the table behind it. `here` is the limit whose page it is. */
export function HistoryFigure({ family, here, today, language }: Props) {
  const words = timelineIn[language];
  const heads = words.columns;
  const number = (limit: PublicLimit): string => limitNumber(limit, language);
  return (
    <LimitTimeline
      title={timelineTitle(family, today, language)}
      input={timelineInput(family, today, language)}
      note={signsOf(family, today, language)}
      table={
        <DataTable
          caption={words.tableCaption}
          rows={family}
          rowKey={(limit) => limit.id}
          columns={[
            {
              key: "number",
              head: heads.number,
              cell: (limit) =>
                limit.id === here ? (
                  words.thisPage(number(limit))
                ) : (
                  <a href={pathsIn[language].limit(limit.id)}>{number(limit)}</a>
                ),
            },
            { key: "first", head: heads.first, nowrap: true, cell: (limit) => firstDay(limit, language) },
            { key: "last", head: heads.last, nowrap: true, cell: (limit) => lastDay(limit, today, language) },
            {
              key: "asked",
              head: heads.asked,
              nowrap: true,
              cell: ({ complianceFrom }) =>
                complianceFrom === null ? words.fromFirst : plainDate(complianceFrom, language),
            },
            {
              key: "checked",
              head: heads.checked,
              roomy: true,
              cell: (limit) => verdictsIn[language].checked[limit.checked],
            },
          ]}
        />
      }
    />
  );
}
