import { ControlChart } from "../control-chart.tsx";
import type { ControlPoint } from "../control-chart-layout.ts";
import { DataTable } from "../data-table.tsx";
import { ReadingsChart } from "../readings-chart.tsx";
import type { SpotChartInput } from "../spot-chart-layout.ts";
import type { Example } from "./example.ts";

const input: SpotChartInput = {
  limits: [
    { id: "child", value: 400, label: "an old number, only to compare" },
    { id: "paint", value: 90, label: "paint on children’s goods" },
  ],
  rows: [
    {
      spot: "A, near the rim",
      mean: 401,
      points: [
        { id: "1", value: 398, half: 24, below: null, setAside: false },
        { id: "2", value: 404, half: 24, below: null, setAside: false },
      ],
    },
    {
      spot: "B",
      mean: 423,
      points: [
        { id: "3", value: 421, half: 26, below: null, setAside: false },
        { id: "4", value: 425, half: null, below: null, setAside: false },
      ],
    },
    {
      spot: "C, foot",
      mean: null,
      points: [
        { id: "5", value: 12, half: 6, below: null, setAside: true },
        { id: "6", value: null, half: null, below: 60, setAside: false },
      ],
    },
  ],
};

const recoveries = [0.99, 1.01, 1.0, 0.98, 1.02, 1.0, 0.99, 1.01, 1.03, 1.09, 1.02];
const days = ["1", "5", "8", "12", "15", "19", "22", "26", "29", "30", "31"];
const points: ControlPoint[] = recoveries.map((value, index) => {
  const label = `${days[index]} October`;
  const signal = value > 1.05;
  return {
    id: `c${index}`,
    label,
    value,
    signal,
    words: `${label}: read ${value.toFixed(2)} of the certified value${signal ? "; beyond the upper limit" : ""}`,
  };
});

const chartTable = (rows: ControlPoint[]) => (
  <DataTable
    caption="The same in figures"
    rows={rows}
    rowKey={(p) => p.id}
    columns={[
      { key: "day", head: "Day", cell: (p) => p.label },
      { key: "value", head: "Read over certified", numeric: true, cell: (p) => p.value.toFixed(2) },
      { key: "signal", head: "Chart", cell: (p) => (p.signal ? "beyond the upper limit" : "within its limits") },
    ]}
  />
);

/** Figures that answer to pointer and keys; each over a still one of the same size. */
export const liveFigureExamples: Example[] = [
  {
    id: "readings-chart",
    title: "Readings by spot, for the bench",
    show: (
      <ReadingsChart
        input={input}
        unit="mg/kg"
        interval={[377, 447]}
        title="Two spots agree; the foot was not detected"
        note="mg/kg. The grey band is the interval. Walk along the readings with the arrow keys."
      />
    ),
  },
  {
    id: "readings-chart-none",
    title: "Readings by spot without limit or interval",
    show: (
      <ReadingsChart
        input={{ limits: [], rows: input.rows.slice(2) }}
        unit="mg/kg"
        interval={null}
        title="Nothing was seen at the one spot that counts"
      />
    ),
  },
  {
    id: "control-chart",
    title: "Control chart that speaks up once",
    show: (
      <ControlChart
        input={{ points, center: 1.003, limits: [0.956, 1.05] }}
        title="On 30 October the analyser read too high"
        note="Read over certified value, lead in the check standard. The upright scale names the centre, a thin line, and the limits, dashed, three standard deviations from it. A ringed square is beyond them."
        table={chartTable(points)}
      />
    ),
  },
  {
    id: "control-chart-quiet",
    title: "Control chart with two points",
    show: (
      <ControlChart
        input={{ points: points.slice(0, 2), center: 1, limits: [0.947, 1.053] }}
        title="Both check readings lie within the limits"
        table={chartTable(points.slice(0, 2))}
      />
    ),
  },
];
