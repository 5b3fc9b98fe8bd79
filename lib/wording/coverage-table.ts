import { type CoverageCell, coverageAims, shortfallsOf } from "../reconcile/honest-intervals.ts";
import table from "./coverage-cells.json" with { type: "json" };
import { coverageSentences as spanish } from "./es/coverage-table.ts";
import { counted, groupDigits } from "./formats.ts";
import type { ByLanguage, Language, Sentences } from "./language.ts";

/** The simulated cells that the methods page shows, as `npm run coverage -- --json` printed them. */
export const coverageCells: readonly CoverageCell[] = table.rows.map(
  (row) => Object.fromEntries(table.columns.map((name, place) => [name, row[place]])) as unknown as CoverageCell,
);
/** The version of the method and of its policy that was simulated. */
export const coverageMadeBy = { version: table.version, policy: table.policy };

const english = {
  title: "How often the range is right",
  lead: (parts: string, each: string, kinds: number, meeting: number) =>
    `We made up ${parts} parts whose true content we knew and put each through the whole method, ${each} for each of ${kinds} kinds of part. Of these kinds, ${meeting} meet our aims.`,
  aims: (covered: string, unsafe: string, wrongBelow: string) =>
    `The aims: of the stated ranges at least ${covered} in 100 hold the true mean, no more than ${unsafe} in 100 lie wholly below it (the unsafe side), and no more than ${wrongBelow} in 100 parts are called “below” a limit that they are in truth above.`,
  onPaper: "The tables behind this fill many sheets and are left out on paper. They stand on this page on a screen.",
  made: (version: string, policy: string) =>
    `Simulated with method version ${version}, policy ${policy}. Anyone can run it again: npm run coverage. `,
  atEdge: (kinds: number) =>
    `${kinds} of the kinds that meet the aims were measured just on the wrong side of one, by less than chance alone explains at this number of parts.`,
  shortTitle: "Kinds of part that fall short",
  reading:
    "In each cell: of the stated ranges, how many held the true mean and how many were too low; of all parts, how many were wrongly called “below” a limit; how many got a range at all; and the typical width of a range, as a multiple of the mean. Spread is how much the places of a part differ, error the analyser's own, both beside the mean; “not seen” is the share of readings below detection.",
  columns: { spots: "Spots", spread: "Spread", error: "Error", parts: "Parts each" },
  allSeen: "All spots seen",
  notSeen: (share: string) => `${share} % not seen`,
  group: (shape: string, kinds: number, short: number) =>
    `${shape}: ${counted(kinds, "kind")} of part, ${short === 0 ? "all meet the aims" : `${short} of them short`}`,
  shapes: {
    even: "The same everywhere",
    normal: "Uneven, as often above the mean as below (normal)",
    lognormal: "Uneven, a few places high (lognormal)",
    gamma: "Uneven, many places low (gamma)",
  },
  missed: {
    covered: (times: string) => `the range held the truth ${times} times in 100`,
    unsafe: (times: string) => `the range was too low ${times} times in 100`,
    wrongBelow: (times: string) => `“below” was wrong ${times} times in 100`,
  },
  edge: "At the edge: chance alone could explain it",
  short: (missed: string) => `Falls short: ${missed}`,
  cell: (covered: string, unsafe: string, wrongBelow: string, stated: string, width: string) =>
    `held ${covered}, too low ${unsafe}, wrongly “below” ${wrongBelow}; stated ${stated}, width ${width}`,
  over100: "over 100",
  to: (least: string, most: string) => `${least} to ${most}`,
  kind: (shape: string, spots: number, spread: string, error: string, below: string) =>
    `${shape}, ${counted(spots, "spot")}, spread ${spread} %, counting error ${error} %, ${below} % not seen`,
  inParts: (said: string, parts: number) => `${said} (${counted(parts, "part")}).`,
};
export type CoverageSentences = Sentences<typeof english>;
export const coverageWordsIn: ByLanguage<CoverageSentences> = { en: english, es: spanish };

const shares = [0, 0.2, 0.4, 0.5] as const;
const shapes = ["even", "normal", "lognormal", "gamma"] as const;

/** Parts alike in spots, spread and error: one line, with a cell for each share of readings not seen. */
export type CoverageLine = {
  key: string;
  spots: string;
  spread: string;
  error: string;
  parts: string;
  cells: string[];
};

/** The words of the methods page for cells measured by some version of the method. */
export function coverageTableOf(
  coverageCells: readonly CoverageCell[],
  madeBy = coverageMadeBy,
  language: Language = "en",
) {
  const say = coverageWordsIn[language];
  const tenths = (share: number): string => groupDigits(String(Number((100 * share).toFixed(1))), language);
  const per100 = (share: number): string => `${groupDigits((100 * share).toFixed(1), language)}\u00A0%`;
  const whole = (number: number): string =>
    language === "en" ? number.toLocaleString("en") : groupDigits(String(number), language);
  const rangeOf = (numbers: readonly number[]): string => {
    const [least, most] = [Math.min(...numbers), Math.max(...numbers)].map(whole) as [string, string];
    return least === most ? most : say.to(least, most);
  };
  /** What of a cell's aims is missed by more than chance. */
  const missedBy = (cell: CoverageCell): string =>
    shortfallsOf(cell)
      .filter(({ explained }) => !explained)
      .map(({ aim, share }) => say.missed[aim](tenths(share)))
      .join("; ");
  const atEdge = (cell: CoverageCell): boolean => shortfallsOf(cell).length > 0 && missedBy(cell) === "";

  const cellText = (cell: CoverageCell): string => {
    const width = cell.medianWidth > 100 ? say.over100 : groupDigits(cell.medianWidth.toPrecision(2), language);
    const numbers = say.cell(
      per100(cell.covered),
      per100(cell.unsafe),
      per100(cell.wrongBelow),
      per100(cell.stated),
      width,
    );
    const missed = missedBy(cell);
    const standing = missed !== "" ? say.short(missed) : atEdge(cell) ? say.edge : null;
    return standing === null ? numbers : `${standing}. ${numbers}`;
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
      spread: `${tenths(alike[0]!.spread)} %`,
      error: `${tenths(alike[0]!.u)} %`,
      parts: rangeOf(alike.map((cell) => cell.trials)),
      cells: shares.map((share) =>
        alike
          .filter((cell) => cell.below === share)
          .map(cellText)
          .join(""),
      ),
    }));
  }

  const shortCells = coverageCells.filter((cell) => missedBy(cell) !== "");
  const edges = coverageCells.filter(atEdge).length;
  const trials = coverageCells.map((cell) => cell.trials);
  const parts = trials.reduce((sum, number) => sum + number, 0);
  return {
    title: say.title,
    lead: say.lead(whole(parts), rangeOf(trials), coverageCells.length, coverageCells.length - shortCells.length),
    aims: say.aims(tenths(coverageAims.covered), tenths(coverageAims.unsafe), tenths(coverageAims.wrongBelow)),
    onPaper: say.onPaper,
    made: `${say.made(madeBy.version, madeBy.policy)}${edges === 0 ? "" : say.atEdge(edges)}`,
    shortTitle: shortCells.length === 0 ? null : say.shortTitle,
    short: shortCells.map((cell) => {
      const kind = say.kind(
        say.shapes[cell.shape],
        cell.spots,
        tenths(cell.spread),
        tenths(cell.u),
        tenths(cell.below),
      );
      return say.inParts(`${kind}: ${missedBy(cell)}`, cell.trials);
    }),
    reading: say.reading,
    columns: say.columns,
    shareColumns: shares.map((share) => (share === 0 ? say.allSeen : say.notSeen(tenths(share)))),
    groups: shapes.map((shape) => {
      const cells = coverageCells.filter((cell) => cell.shape === shape);
      const short = cells.filter((cell) => shortCells.includes(cell)).length;
      return { shape, title: say.group(say.shapes[shape], cells.length, short), lines: linesOf(cells) };
    }),
  };
}

/** How often the stated ranges hold the truth, measured, in words for the methods page. */
export const coverageTableIn: ByLanguage<ReturnType<typeof coverageTableOf>> = {
  en: coverageTableOf(coverageCells),
  es: coverageTableOf(coverageCells, coverageMadeBy, "es"),
};
