import { type CoverageCell, coverageAims, shortfallsOf } from "../reconcile/honest-intervals.ts";
import table from "./coverage-cells.json" with { type: "json" };
import { counted } from "./formats.ts";

/** The simulated cells that the methods page shows, as `npm run coverage -- --json` printed them. */
export const coverageCells: readonly CoverageCell[] = table.rows.map(
  (row) => Object.fromEntries(table.columns.map((name, place) => [name, row[place]])) as unknown as CoverageCell,
);
/** The version of the method and of its policy that was simulated. */
export const coverageMadeBy = { version: table.version, policy: table.policy };

const per100 = (share: number): string => `${(100 * share).toFixed(1)} %`;
const upTo = (share: number): string => String(Number((100 * share).toFixed(1)));

const aimWords = {
  covered: (share: number) => `the range held the truth ${upTo(share)} times in 100`,
  unsafe: (share: number) => `the range was too low ${upTo(share)} times in 100`,
  wrongBelow: (share: number) => `“below” was wrong ${upTo(share)} times in 100`,
};

/** What the last column of a cell says: whether it meets the aims. */
function standing(cell: CoverageCell): string {
  const missed = shortfallsOf(cell);
  if (missed.length === 0) return "meets the aims";
  const short = missed.filter(({ explained }) => !explained);
  if (short.length === 0) return "at the edge: chance alone could explain it";
  return `falls short: ${short.map(({ aim, share }) => aimWords[aim](share)).join("; ")}`;
}

const shapeWords: Record<CoverageCell["shape"], string> = {
  even: "The same everywhere",
  normal: "Uneven, as often above the mean as below (normal)",
  lognormal: "Uneven, a few places high (lognormal)",
  gamma: "Uneven, many places low (gamma)",
};

const shares = [0, 0.2, 0.4, 0.5] as const;

/** Parts alike in spots, spread and error: one line, with a cell for each share of readings not seen. */
export type CoverageLine = {
  key: string;
  spots: string;
  spread: string;
  error: string;
  parts: string;
  cells: string[];
};

const cellText = (cell: CoverageCell): string => {
  const width = cell.medianWidth > 100 ? "over 100" : cell.medianWidth.toPrecision(2);
  const numbers = `held ${per100(cell.covered)}, too low ${per100(cell.unsafe)}, wrongly “below” ${per100(cell.wrongBelow)}; stated ${per100(cell.stated)}, width ${width}`;
  const words = standing(cell);
  return words === "meets the aims" ? numbers : `${words.toUpperCase().slice(0, 1)}${words.slice(1)}. ${numbers}`;
};

const rangeOf = (numbers: readonly number[]): string => {
  const [least, most] = [Math.min(...numbers), Math.max(...numbers)].map((number) => number.toLocaleString("en"));
  return least === most ? `${most}` : `${least} to ${most}`;
};

function linesOf(cells: readonly CoverageCell[]): CoverageLine[] {
  const groups = new Map<string, CoverageCell[]>();
  for (const cell of cells) {
    const key = `${cell.spots} ${cell.spread} ${cell.u}`;
    groups.set(key, [...(groups.get(key) ?? []), cell]);
  }
  return [...groups].map(([key, alike]) => ({
    key,
    spots: String(alike[0]!.spots),
    spread: `${upTo(alike[0]!.spread)} %`,
    error: `${upTo(alike[0]!.u)} %`,
    parts: rangeOf(alike.map((cell) => cell.trials)),
    cells: shares.map((share) =>
      alike
        .filter((cell) => cell.below === share)
        .map(cellText)
        .join(""),
    ),
  }));
}

const describe = (cell: CoverageCell): string =>
  `${shapeWords[cell.shape]}, ${counted(cell.spots, "spot")}, spread ${upTo(cell.spread)} %, counting error ${upTo(cell.u)} %, ${upTo(cell.below)} % not seen: ${standing(cell).replace("falls short: ", "")} (${counted(cell.trials, "part")}).`;

/** The words of the methods page for cells measured by some version of the method. */
export function coverageTableOf(coverageCells: readonly CoverageCell[], madeBy = coverageMadeBy) {
  const shortCells = coverageCells.filter((cell) => shortfallsOf(cell).some(({ explained }) => !explained));
  const edgeCells = coverageCells.filter((cell) => {
    const missed = shortfallsOf(cell);
    return missed.length > 0 && missed.every(({ explained }) => explained);
  });
  const trials = coverageCells.map((cell) => cell.trials);
  const parts = trials.reduce((sum, number) => sum + number, 0).toLocaleString("en");
  return {
    title: "How often the range is right",
    lead: `We made up ${parts} parts whose true content we knew and put each through the whole method, ${rangeOf(trials)} for each of ${coverageCells.length} kinds of part. Of these kinds, ${coverageCells.length - shortCells.length} meet our aims.`,
    aims: `The aims: of the stated ranges at least ${upTo(coverageAims.covered)} in 100 hold the true mean, no more than ${upTo(coverageAims.unsafe)} in 100 lie wholly below it (the unsafe side), and no more than ${upTo(coverageAims.wrongBelow)} in 100 parts are called “below” a limit that they are in truth above.`,
    onPaper: "The tables behind this fill many sheets and are left out on paper. They stand on this page on a screen.",
    made: `Simulated with method version ${madeBy.version}, policy ${madeBy.policy}. Anyone can run it again: npm run coverage. ${
      edgeCells.length === 0
        ? ""
        : `${edgeCells.length} of the kinds that meet the aims were measured just on the wrong side of one, by less than chance alone explains at this number of parts.`
    }`,
    shortTitle: shortCells.length === 0 ? null : "Kinds of part that fall short",
    short: shortCells.map(describe),
    reading:
      "In each cell: of the stated ranges, how many held the true mean and how many were too low; of all parts, how many were wrongly called “below” a limit; how many got a range at all; and the typical width of a range, as a multiple of the mean. Spread is how much the places of a part differ, error the analyser's own, both beside the mean; “not seen” is the share of readings below detection.",
    columns: { spots: "Spots", spread: "Spread", error: "Error", parts: "Parts each" },
    shareColumns: shares.map((share) => (share === 0 ? "All spots seen" : `${upTo(share)} % not seen`)),
    groups: (["even", "normal", "lognormal", "gamma"] as const).map((shape) => {
      const cells = coverageCells.filter((cell) => cell.shape === shape);
      const short = cells.filter((cell) => shortCells.includes(cell)).length;
      return {
        shape,
        title: `${shapeWords[shape]}: ${counted(cells.length, "kind")} of part, ${short === 0 ? "all meet the aims" : `${short} of them short`}`,
        lines: linesOf(cells),
      };
    }),
  };
}

/** How often the stated ranges hold the truth, measured, in words for the methods page. */
export const coverageTable = coverageTableOf(coverageCells);
