import { Disclosure } from "@/app/_components/disclosure.tsx";
import { Entry } from "@/app/_components/entry.tsx";
import type { SessionFitness } from "@/lib/consistency/session-fitness.ts";
import type { CheckStandard } from "@/lib/store/check-standards.ts";
import type { Instrument } from "@/lib/store/instruments.ts";
import { aboutElement } from "@/lib/wording/sessions.ts";
import { CheckHistory } from "../check-history.tsx";

/** The standard over time: a chart for each analyser, element and mode, the first one open. */
export function StandardCharts({
  standard,
  overTime,
  instruments,
}: {
  standard: CheckStandard;
  overTime: { instrumentId: string | null; fitness: SessionFitness }[];
  instruments: Instrument[];
}) {
  const charts = overTime.flatMap(({ instrumentId, fitness }) =>
    fitness.elements
      .filter((e) => e.standards.some((v) => v.certified !== null))
      .map((e) => ({
        ...e,
        instrument: instruments.find((i) => i.id === instrumentId)?.name ?? "an analyser that is not known",
      })),
  );
  if (charts.length === 0) return null;
  return (
    <Entry title="Over time" id="over-time">
      {charts.map((chart, at) => {
        const key = `${chart.instrument} ${chart.element} ${chart.mode}`;
        const figure = (
          <CheckHistory
            key={key}
            standard={`${standard.name}, ${chart.instrument}`}
            element={chart.element}
            mode={chart.mode}
            points={chart.standards.flatMap((v) => v.checks)}
          />
        );
        return at === 0 ? (
          figure
        ) : (
          <Disclosure key={key} summary={`${chart.instrument}: ${aboutElement(chart.element, chart.mode)}`}>
            {figure}
          </Disclosure>
        );
      })}
    </Entry>
  );
}
