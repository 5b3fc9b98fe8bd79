import { DataTable } from "@/app/_components/data-table.tsx";
import { LimitTimeline } from "@/app/_components/limit-timeline.tsx";
import type { TimelineInput } from "@/app/_components/limit-timeline-layout.ts";
import { isInForce } from "@/lib/limits/limits-in-force.ts";
import type { PublicLimit } from "@/lib/limits/list-limits.ts";
import { paths } from "@/lib/platform/paths.ts";
import { plainDate } from "@/lib/wording/formats.ts";
import {
  firstDay,
  lastDay,
  limitPeriodInFull,
  limitYears,
  timelineTitle,
  timelineWords,
} from "@/lib/wording/limit-timeline.ts";
import { limitNumber } from "@/lib/wording/limit-words.ts";
import { checkedText } from "@/lib/wording/verdicts.ts";

/** What the drawing needs of a family of limits, words and days. */
export function timelineInput(family: readonly PublicLimit[], today: string): TimelineInput {
  return {
    today,
    marks: [{ id: "today", day: today, text: timelineWords.today }],
    steps: family.map((limit) => ({
      id: limit.id,
      number: limitNumber(limit),
      period: limitPeriodInFull(limit, today),
      years: limitYears(limit, today),
      from: limit.fromKnown === "unknown" ? null : limit.from,
      until: limit.until,
      never: limit.neverTookEffect,
      complianceFrom: limit.complianceFrom,
    })),
  };
}

/** How to read the signs that occur, and no others. */
function signsOf(family: readonly PublicLimit[], today: string): string {
  const { signs } = timelineWords;
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

/** A limit's family through time: the drawing and the table behind it. `here` is the limit whose page it is. */
export function HistoryFigure({
  family,
  here,
  today,
}: {
  family: readonly PublicLimit[];
  here: string;
  today: string;
}) {
  return (
    <LimitTimeline
      title={timelineTitle(family, today)}
      input={timelineInput(family, today)}
      note={signsOf(family, today)}
      table={
        <DataTable
          caption={timelineWords.tableCaption}
          rows={family}
          rowKey={(limit) => limit.id}
          columns={[
            {
              key: "number",
              head: "Number",
              nowrap: true,
              cell: (limit) =>
                limit.id === here ? (
                  `${limitNumber(limit)} (this page)`
                ) : (
                  <a href={paths.limit(limit.id)}>{limitNumber(limit)}</a>
                ),
            },
            { key: "first", head: "First day", nowrap: true, cell: firstDay },
            { key: "last", head: "Last day", nowrap: true, cell: (limit) => lastDay(limit, today) },
            {
              key: "asked",
              head: "Asked for from",
              nowrap: true,
              cell: (limit) => (limit.complianceFrom === null ? "its first day" : plainDate(limit.complianceFrom)),
            },
            { key: "checked", head: "Checked", roomy: true, cell: (limit) => checkedText[limit.checked] },
          ]}
        />
      }
    />
  );
}
