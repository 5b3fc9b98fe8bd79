import { ControlChart } from "@/app/_components/control-chart.tsx";
import { DataTable } from "@/app/_components/data-table.tsx";
import { Disclosure } from "@/app/_components/disclosure.tsx";
import { type CheckPoint, checkFigure } from "@/lib/wording/check-charts.ts";

/** One standard and element over time: the chart, and behind it the same in figures. */
export function CheckHistory({
  standard,
  element,
  mode,
  points,
}: {
  standard: string;
  element: string;
  mode: string | null;
  points: readonly CheckPoint[];
}) {
  const figure = checkFigure({ standard, element, mode }, points);
  const table = (
    <DataTable
      caption={`${standard}, ${element}${mode === null ? "" : `, ${mode}`}: every check`}
      rows={figure.rows}
      rowKey={(row) => row.id}
      columns={[
        { key: "when", head: "When", nowrap: true, cell: (row) => row.when },
        { key: "recovery", head: "Read over certified", numeric: true, cell: (row) => row.recovery },
        { key: "average", head: "Moving average", numeric: true, cell: (row) => row.average },
        { key: "judged", head: "Within 20 %", cell: (row) => row.judged },
        { key: "says", head: "The charts say", roomy: true, cell: (row) => row.says },
      ]}
    />
  );
  if (figure.input === null)
    return (
      <div className="flow">
        <p>{figure.title}</p>
        {table}
      </div>
    );
  return (
    <ControlChart
      input={figure.input}
      title={figure.title}
      note={figure.note}
      table={<Disclosure summary="The same in figures">{table}</Disclosure>}
    />
  );
}
