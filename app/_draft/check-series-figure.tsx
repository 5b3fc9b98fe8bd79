import { ControlChart } from "@/app/_components/control-chart.tsx";
import { DataTable } from "@/app/_components/data-table.tsx";
import type { CheckSeries } from "@/lib/consistency/check-series.ts";
import { checkPointWords, seriesName, seriesSentences, seriesTitle } from "@/lib/wording/consistency.ts";
import { amountText, plainDate, significant } from "@/lib/wording/formats.ts";

/** A check standard over its sessions: the chart where there can be one, every reading in a table, and what they say. */
export function CheckSeriesFigure({ series }: { series: CheckSeries }) {
  const { chart, checks, unit } = series;
  const table = (
    <DataTable
      caption={`Read on the standard: ${seriesName(series)}; certified ${amountText(series.certified, unit)}`}
      rows={checks}
      rowKey={(check) => check.id}
      columns={[
        { key: "on", head: "On", nowrap: true, cell: (check) => plainDate(check.takenAt) },
        {
          key: "value",
          head: "Read",
          numeric: true,
          cell: (check) => (check.value === null ? "below detection" : amountText(check.value, unit)),
        },
        { key: "u", head: "u", numeric: true, cell: (check) => (check.u === null ? "–" : significant(check.u, 2)) },
        { key: "operator", head: "Operator", nowrap: true, cell: (check) => check.operator ?? "not named" },
      ]}
    />
  );
  const sentences = (
    <ul>
      {seriesSentences(series).map((sentence) => (
        <li key={sentence}>{sentence}</li>
      ))}
    </ul>
  );
  if (chart.status !== "ok")
    return (
      <>
        {sentences}
        {table}
      </>
    );
  const spoken = new Set([...chart.signals.individuals, ...chart.signals.ewma, ...chart.signals.cusum]);
  return (
    <>
      <ControlChart
        title={seriesTitle(series)}
        note="Read over certified, in the order of time. A ringed square: a chart speaks up there."
        input={{
          points: chart.points.map((point) => ({
            id: point.id,
            label: point.takenAt.slice(0, 10),
            value: point.recovery,
            signal: spoken.has(point.id),
            words: checkPointWords(point, spoken.has(point.id)),
          })),
          center: chart.center,
          limits: chart.limits,
        }}
        table={table}
      />
      {sentences}
    </>
  );
}
