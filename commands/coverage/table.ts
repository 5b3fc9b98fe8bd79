import { type Cell, type CellResult, resultOf } from "./cells.ts";
import type { FinishedBlock } from "./kept-blocks.ts";

/** The aims of the method: coverage at least 0.94, unsafe misses at most 0.035, wrong "below" at most 0.05. */
export const aims = { covered: 0.94, unsafe: 0.035, wrongBelow: 0.05 };

/** Sampling error of the simulation itself: two standard errors of a share. */
const slack = (share: number, trials: number): number => 2 * Math.sqrt((share * (1 - share)) / Math.max(trials, 1));

/** What a cell falls short of, beyond what its number of trials could explain; empty where it meets the aims. */
export function shortfalls(cell: CellResult): string[] {
  const stated = cell.stated * cell.trials;
  const wrong = Math.max(...cell.wrongBelow);
  return [
    ...(cell.covered < aims.covered - slack(aims.covered, stated) ? [`covered ${cell.covered.toFixed(3)}`] : []),
    ...(cell.unsafe > aims.unsafe + slack(aims.unsafe, stated) ? [`unsafe ${cell.unsafe.toFixed(3)}`] : []),
    ...(wrong > aims.wrongBelow + slack(aims.wrongBelow, cell.trials)
      ? [`wrong "below" ${wrong.toFixed(3)} (${cell.wrongByBound.toFixed(3)} from a bound)`]
      : []),
  ];
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
