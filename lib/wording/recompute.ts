import type { RevisionCheck } from "../publication/check-revision.ts";
import type { FigureDifference, RecomputedResult } from "../publication/recompute.ts";
import type { SnapshotResult } from "../publication/snapshot.ts";
import { elementTitle } from "./elements.ts";
import { counted, resultText } from "./formats.ts";
import { readable } from "./labels.ts";
import { logFaultSentence } from "./log-faults.ts";

/** Everything that a stranger's check of one revision found. */
export type RecomputeReport = {
  results: RecomputedResult[];
  /** Results whose inputs give another digest than the published one; null where this machine cannot hash. */
  changedInputs: RecomputedResult[] | null;
  readings: { rows: number; differing: { row: number; column: string }[] };
  /** Null where this machine cannot hash. */
  log: RevisionCheck | null;
};

/** A line of the report: agrees, does not, or could not be looked at here. */
export type CheckLine = { verdict: "agrees" | "differs" | "not-checked"; text: string };

export const recomputeWords = {
  title: "Recompute it yourself",
  lead: "Your own browser fetches this revision’s readings and the publication log, works every result out again by the published method, and holds each published figure beside its own. Nothing is sent anywhere.",
  withoutScripts:
    "Recomputing in the browser needs scripts. The same is done at the command line, from the public files alone:",
  button: "Fetch the readings and recompute",
  busy: "Fetching and recomputing …",
  again: "Recompute again",
  failed: (why: string) => `It could not be done: ${why}`,
  notThere: (path: string, status: number) => `${path} answered with status ${status}.`,
  unreadable: (path: string) => `${path} could not be read.`,
  noAnswer: "the registry did not answer. Are you connected?",
  caption: "Each result, as published and as your browser makes it",
  tableCaption: "Results made again",
  columns: { what: "Part and element", published: "Published", recomputed: "Made again", figures: "Figures compared" },
  agrees: "agrees",
  differs: "differs",
  notMade: "not made",
  verdictWords: { agrees: "Agrees", differs: "Differs", "not-checked": "Not checked" },
} as const;

export const reproduceCommand = (address: string): string => `npm run assay -- reproduce ${address}`;

/** "glaze, inside: Lead (Pb)", the object named where there are several. */
export const recomputedTitle = ({ specimen, part, published }: RecomputedResult, several: boolean): string =>
  `${several ? `${specimen}, ` : ""}${part}: ${elementTitle(published.element)}`;

/** Whether a report is about more than one object. */
export const severalObjects = (results: readonly RecomputedResult[]): boolean =>
  new Set(results.map((one) => one.specimen)).size > 1;

/** The result made anew, in the line in which pages print it. */
export const remadeText = ({ recomputed }: RecomputedResult): string =>
  recomputed === null
    ? recomputeWords.notMade
    : resultText({ ...recomputed, readings: [], decisions: [] } as SnapshotResult);

/** "412 figures agree" · "3 of 412 figures differ" */
export const figuresText = ({ figures, differences }: Pick<RecomputedResult, "figures" | "differences">): string =>
  differences.length === 0
    ? `${counted(figures, "figure")} agree${figures === 1 ? "s" : ""}`
    : `${differences.length} of ${counted(figures, "figure")} differ${differences.length === 1 ? "s" : ""}`;

/** "stated value: published “412”, made again “413”" */
export const differenceText = ({ where, published, recomputed }: FigureDifference): string =>
  `${where === "" ? "The method refused the inputs" : readable(where.replaceAll(".", " "))}: published ${shown(published)}, made again ${shown(recomputed)}`;

const shown = (value: unknown): string =>
  value === undefined || value === null ? "nothing" : typeof value === "string" ? `“${value}”` : JSON.stringify(value);

const line = (verdict: CheckLine["verdict"], text: string): CheckLine => ({ verdict, text });

const needsSecure =
  "Hashes were not checked: browsers make them only on a page that came over https, or from this very machine.";

/**
 * The report in lines, the whole of it first. `readings`: a readings.csv was there to be compared; `noLog`: why the log was
 * not looked at.
 */
export function reportLines(
  report: RecomputeReport,
  { readings: withReadings = true, noLog = needsSecure }: { readings?: boolean; noLog?: string } = {},
): CheckLine[] {
  const { results, changedInputs, readings, log } = report;
  const figures = results.reduce((n, one) => n + one.figures, 0);
  const differing = results.filter((one) => one.differences.length > 0);
  const partly = results.filter((one) => !one.whole).length;
  return [
    results.length === 0
      ? line("not-checked", "This revision states no result, so there is nothing to work out.")
      : differing.length === 0
        ? line(
            "agrees",
            `All ${counted(figures, "published figure")} of ${counted(results.length, "result")} come out the same.`,
          )
        : line("differs", `${counted(differing.length, "result")} of ${results.length} do not come out as published.`),
    ...(partly > 0
      ? [
          line(
            "not-checked",
            `${counted(partly, "result")} of this revision came out before inputs were kept with it: budget sizes were taken as published, and flags were not compared.`,
          ),
        ]
      : []),
    ...(results.some((one) => one.published.fitness !== undefined)
      ? [
          line(
            "not-checked",
            "Whether the instrument was fit is taken as published: it follows from its check readings, not from these.",
          ),
        ]
      : []),
    ...(withReadings ? [readingsLine(readings)] : []),
    ...(changedInputs === null ? [] : inputLines(results, changedInputs)),
    ...(log === null ? [line("not-checked", noLog)] : logLines(log)),
  ];
}

const readingsLine = (readings: RecomputeReport["readings"]): CheckLine =>
  readings.differing.length === 0
    ? line("agrees", `readings.csv holds the same ${counted(readings.rows, "row")} as the revision.`)
    : line(
        "differs",
        `readings.csv differs from the revision in ${counted(readings.differing.length, "cell")}, first in row ${readings.differing[0]!.row}, column ${readings.differing[0]!.column}.`,
      );

function inputLines(results: readonly RecomputedResult[], changed: readonly RecomputedResult[]): CheckLine[] {
  const whole = results.filter((one) => one.inputsText !== null).length;
  if (whole === 0) return [];
  return [
    changed.length === 0
      ? line(
          "agrees",
          `The inputs of ${whole === 1 ? "the result" : `all ${whole} results`} have the published SHA-256.`,
        )
      : line(
          "differs",
          `The inputs of ${counted(changed.length, "result")} have another SHA-256 than the published one.`,
        ),
  ];
}

function logLines({ entry, entries, faults, signature, head }: RevisionCheck): CheckLine[] {
  if (entry === null) return [line("differs", "The publication log does not list this revision.")];
  return [
    ...faults.map((fault) => line("differs", logFaultSentence(fault))),
    ...(faults.length === 0
      ? [
          line(
            "agrees",
            `This revision’s bytes have the SHA-256 that entry ${entry.seq} of the log holds, and ${entries === 1 ? "that entry is sealed" : `all ${entries} entries are sealed and follow one another`}.`,
          ),
        ]
      : []),
    ...(signature === "agrees"
      ? [line("agrees", `The signature of entry ${head!.seq}, the log’s head, holds with the registry’s key.`)]
      : signature === "unable"
        ? [
            line(
              "not-checked",
              "The head’s signature was not checked: this browser does not know Ed25519. The log’s page says how to do it by hand.",
            ),
          ]
        : signature === "none"
          ? [line("not-checked", "The log’s head is not signed.")]
          : []),
  ];
}
