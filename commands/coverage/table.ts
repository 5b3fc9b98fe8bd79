import { shortfallsOf } from "../../lib/reconcile/honest-intervals.ts";
import { type Cell, type CellResult, resultOf } from "./cells.ts";
import type { FinishedBlock } from "./kept-blocks.ts";

const aimWords = { covered: "covered", unsafe: "unsafe", wrongBelow: 'wrong "below"' };

/** What a cell falls short of, beyond what its number of trials could explain; empty where it meets the aims. */
export function shortfalls(cell: CellResult): string[] {
  return shortfallsOf({ ...cell, wrongBelow: Math.max(...cell.wrongBelow) })
    .filter(({ explained }) => !explained)
    .map(({ aim, share }) => {
      const from = aim === "wrongBelow" ? ` (${cell.wrongByBound.toFixed(3)} from a bound)` : "";
      return `${aimWords[aim]} ${share.toFixed(3)}${from}`;
    });
}

const share = (number: number): string => (Number.isFinite(number) ? number.toFixed(3) : "–").padStart(6);
const percent = (number: number): string => `${Math.round(number * 100)} %`.padStart(5);

const lineOf = (cell: CellResult): string =>
  [
    cell.shape.padEnd(9),
    String(cell.spots).padStart(5),
    cell.spread.toFixed(2).padStart(6),
    percent(cell.u),
    percent(cell.below),
    share(cell.stated),
    share(cell.covered),
    share(cell.unsafe),
    (Number.isFinite(cell.medianWidth) ? cell.medianWidth.toPrecision(3) : "–").padStart(7),
    ...cell.wrongBelow.map(share),
    ...cell.wrongAbove.map(share),
  ].join("  ");

const heading = [
  "contents   spots  spread     u  below  stated  covered unsafe    width  below the limit   above the limit",
  "                                of mean  det.                    median  0.5 ×   0.9 ×     1.1 ×   2 ×  (all wrong)",
];

const nameOf = ({ shape, spots, spread, u, below }: Cell): string => [shape, spots, spread, u, below].join(" ");

/** The cells of a grid from their finished blocks; a cell without any is left out. */
export function resultsOf(cells: readonly Cell[], blocks: readonly FinishedBlock[]): CellResult[] {
  const byCell = new Map<string, FinishedBlock["tally"][]>();
  for (const { ask, tally } of blocks) {
    const name = nameOf(ask.cell);
    const tallies = byCell.get(name);
    if (tallies) tallies.push(tally);
    else byCell.set(name, [tally]);
  }
  return cells.flatMap((cell) => {
    const tallies = byCell.get(nameOf(cell));
    return tallies === undefined ? [] : [resultOf(cell, tallies)];
  });
}

export function printTable(cells: readonly CellResult[]): void {
  const trials = cells.map((cell) => cell.trials);
  const [least, most] = [Math.min(...trials), Math.max(...trials)];
  const lines = [
    `Honest intervals: ${cells.length} cells of ${least === most ? most : `${least} to ${most}`} parts each`,
    "",
    ...heading,
    ...cells.map(lineOf),
    "",
  ];
  const short = cells.map((cell) => ({ cell, why: shortfalls(cell) })).filter(({ why }) => why.length > 0);
  lines.push(`${cells.length - short.length} of ${cells.length} cells meet the aims.`);
  for (const { cell, why } of short)
    lines.push(
      `  falls short: ${cell.shape}, ${cell.spots} spots, spread ${cell.spread}, u ${cell.u}, below detection ${cell.below}: ${why.join(", ")} (${cell.trials} parts)`,
    );
  process.stdout.write(`${lines.join("\n")}\n`);
}
