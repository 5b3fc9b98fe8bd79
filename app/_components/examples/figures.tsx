import { BudgetFigure } from "../budget-figure.tsx";
import { Aligned, DataTable } from "../data-table.tsx";
import { SpotChart } from "../spot-chart.tsx";
import { Verdict } from "../verdict.tsx";
import type { Example } from "./example.ts";

const shots = [
  { id: "1", spot: "A", text: "398", error: "12", aside: null },
  { id: "2", spot: "A", text: "404.5", error: "12.2", aside: null },
  { id: "3", spot: "B", text: "< 5", error: "", aside: null },
  { id: "4", spot: "C", text: "12.25", error: "3", aside: "The nose slipped off the mug during the shot." },
];

const tableNamed = (caption: string) => (
  <DataTable
    caption={caption}
    rows={shots}
    rowKey={(row) => row.id}
    rowNote={(row) => (row.aside ? <>Set aside: {row.aside}</> : null)}
    muted={(row) => row.aside !== null}
    columns={[
      { key: "id", head: "Reading", cell: (row) => row.id },
      { key: "spot", head: "Spot", cell: (row) => row.spot },
      {
        key: "value",
        head: "Value as written (ppm)",
        numeric: true,
        struck: true,
        cell: (row) => <Aligned text={row.text} decimals={2} />,
      },
      { key: "error", head: "Error", numeric: true, cell: (row) => <Aligned text={row.error} decimals={1} /> },
      { key: "used", head: "Used", cell: (row) => (row.aside ? "set aside" : "yes") },
    ]}
  />
);

export const figureExamples: Example[] = [
  { id: "table", title: "Table with a row set aside", show: tableNamed("Readings") },
  {
    id: "table-wide",
    title: "Table wider than the page",
    show: (
      <DataTable
        caption="Twelve elements"
        rows={shots}
        rowKey={(row) => row.id}
        columns={[
          { key: "id", head: "Reading", cell: (row) => row.id },
          ...["Pb", "Cd", "As", "Hg", "Sb", "Cr", "Ba", "Zn", "Cu", "Fe", "Ti", "Sn"].map((symbol) => ({
            key: symbol,
            head: `${symbol} (mg/kg)`,
            numeric: true,
            cell: (row: (typeof shots)[number]) => row.text,
          })),
        ]}
      />
    ),
  },
  {
    id: "spot-chart",
    title: "Readings by spot",
    show: (
      <SpotChart
        title="Three spots agree; one shot was set aside"
        note="mg/kg. A bar is the error as the analyser gives it, two standard uncertainties long to each side."
        input={{
          limits: [
            { id: "child", value: 100, label: "children’s products, US" },
            { id: "paint", value: 90, label: "paint on children’s goods, US" },
          ],
          rows: [
            {
              spot: "A, near the rim",
              mean: 401,
              points: [
                { id: "1", value: 398, half: 12, below: null, setAside: false },
                { id: "2", value: 404, half: 12, below: null, setAside: false },
              ],
            },
            {
              spot: "B",
              mean: 423,
              points: [
                { id: "3", value: 421, half: 13, below: null, setAside: false },
                { id: "4", value: 425, half: null, below: null, setAside: false },
              ],
            },
            {
              spot: "C",
              mean: null,
              points: [
                { id: "5", value: 12, half: 3, below: null, setAside: true },
                { id: "6", value: null, half: null, below: 60, setAside: false },
              ],
            },
          ],
        }}
        table={tableNamed("The same in figures")}
      />
    ),
  },
  {
    id: "budget",
    title: "Uncertainty budget",
    show: (
      <BudgetFigure
        caption="Most of the doubt comes from the calibration"
        unit="mg/kg"
        rows={[
          {
            code: "scatter",
            name: "Scatter and counting",
            u: "6.4",
            nu: "2",
            kind: "A",
            share: 0.13,
            shareText: "13 %",
            source: "3 spots, random effects",
          },
          {
            code: "calibration",
            name: "Calibration",
            u: "16.5",
            nu: "∞",
            kind: "B",
            share: 0.87,
            shareText: "87 %",
            source: "instrument default, stated by the tester; no check-standard session yet",
          },
        ]}
      />
    ),
  },
  {
    id: "verdicts",
    title: "Verdicts",
    show: (
      <ul>
        <li>
          <Verdict verdict="above" words="above the limit" />
        </li>
        <li>
          <Verdict verdict="below" words="below the limit" />
        </li>
        <li>
          <Verdict verdict="too-close" words="too close to call" />
        </li>
        <li>
          <Verdict verdict="not-detected" words="not detected" />
        </li>
        <li>
          <Verdict verdict="cannot-say" words="cannot be compared" />
        </li>
      </ul>
    ),
  },
];
