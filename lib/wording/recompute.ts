import type { RevisionCheck } from "../publication/check-revision.ts";
import type { FigureDifference, RecomputedResult } from "../publication/recompute.ts";
import type { SnapshotResult } from "../publication/snapshot.ts";
import { elementTitle } from "./elements.ts";
import { recomputeSentences as spanish } from "./es/recompute.ts";
import { counted, resultText } from "./formats.ts";
import { readable } from "./labels.ts";
import type { ByLanguage, Language, Sentences } from "./language.ts";
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
  refused: "The method refused the inputs",
  difference: (where: string, published: string, recomputed: string): string =>
    `${where}: published ${published}, made again ${recomputed}`,
  nothing: "nothing",
  quote: (text: string): string => `“${text}”`,
  figuresAgree: (n: number): string => `${counted(n, "figure")} agree${n === 1 ? "s" : ""}`,
  figuresDiffer: (n: number, of: number): string => `${n} of ${counted(of, "figure")} differ${n === 1 ? "s" : ""}`,
  needsSecure:
    "Hashes were not checked: browsers make them only on a page that came over https, or from this very machine.",
  noResult: "This revision states no result, so there is nothing to work out.",
  allSame: (figures: number, results: number): string =>
    `All ${counted(figures, "published figure")} of ${counted(results, "result")} come out the same.`,
  notSame: (differing: number, results: number): string =>
    `${counted(differing, "result")} of ${results} do not come out as published.`,
  partly: (n: number): string =>
    `${counted(n, "result")} of this revision came out before inputs were kept with it: budget sizes were taken as published, and flags were not compared.`,
  fitness: "Whether the instrument was fit is taken as published: it follows from its check readings, not from these.",
  sameRows: (rows: number): string => `readings.csv holds the same ${counted(rows, "row")} as the revision.`,
  otherRows: (cells: number, row: number, column: string): string =>
    `readings.csv differs from the revision in ${counted(cells, "cell")}, first in row ${row}, column ${column}.`,
  sameInputs: (n: number): string =>
    `The inputs of ${n === 1 ? "the result" : `all ${n} results`} have the published SHA-256.`,
  otherInputs: (n: number): string =>
    `The inputs of ${counted(n, "result")} have another SHA-256 than the published one.`,
  notListed: "The publication log does not list this revision.",
  sealed: (seq: number, entries: number): string =>
    `This revision’s bytes have the SHA-256 that entry ${seq} of the log holds, and ${entries === 1 ? "that entry is sealed" : `all ${entries} entries are sealed and follow one another`}.`,
  signed: (seq: number | string): string =>
    `The signature of entry ${seq}, the log’s head, holds with the registry’s key.`,
  cannotSign:
    "The head’s signature was not checked: this browser does not know Ed25519. The log’s page says how to do it by hand.",
  notSigned: "The log’s head is not signed.",
} as const;
export type RecomputeSentences = Sentences<typeof recomputeWords>;
export const recomputeIn: ByLanguage<RecomputeSentences> = { en: recomputeWords, es: spanish };

export const reproduceCommand = (address: string): string => `npm run assay -- reproduce ${address}`;

/** "glaze, inside: Lead (Pb)", the object named where there are several. */
export const recomputedTitle = (
  { specimen, part, published }: RecomputedResult,
  several: boolean,
  language: Language = "en",
): string => `${several ? `${specimen}, ` : ""}${part}: ${elementTitle(published.element, language)}`;

/** Whether a report is about more than one object. */
export const severalObjects = (results: readonly RecomputedResult[]): boolean =>
  new Set(results.map((one) => one.specimen)).size > 1;

/** The result made anew, in the line in which pages print it. */
export const remadeText = ({ recomputed }: RecomputedResult, language: Language = "en"): string =>
  recomputed === null
    ? recomputeIn[language].notMade
    : resultText({ ...recomputed, readings: [], decisions: [] } as SnapshotResult, language);

/** "412 figures agree" · "3 of 412 figures differ" */
export const figuresText = (
  { figures, differences }: Pick<RecomputedResult, "figures" | "differences">,
  language: Language = "en",
): string =>
  differences.length === 0
    ? recomputeIn[language].figuresAgree(figures)
    : recomputeIn[language].figuresDiffer(differences.length, figures);

/** "stated value: published “412”, made again “413”" */
export function differenceText({ where, published, recomputed }: FigureDifference, language: Language = "en"): string {
  const say = recomputeIn[language];
  const shown = (value: unknown): string =>
    value === undefined || value === null
      ? say.nothing
      : typeof value === "string"
        ? say.quote(value)
        : JSON.stringify(value);
  const place = where === "" ? say.refused : readable(where.replaceAll(".", " "));
  return say.difference(place, shown(published), shown(recomputed));
}

const line = (verdict: CheckLine["verdict"], text: string): CheckLine => ({ verdict, text });

/**
 * The report in lines, the whole of it first. `readings`: a readings.csv was there to be compared; `noLog`: why the log was
 * not looked at.
 */
export function reportLines(
  report: RecomputeReport,
  { readings: withReadings = true, noLog }: { readings?: boolean; noLog?: string } = {},
  language: Language = "en",
): CheckLine[] {
  const say = recomputeIn[language];
  const { results, changedInputs, readings, log } = report;
  const figures = results.reduce((n, one) => n + one.figures, 0);
  const differing = results.filter((one) => one.differences.length > 0);
  const partly = results.filter((one) => !one.whole).length;
  return [
    results.length === 0
      ? line("not-checked", say.noResult)
      : differing.length === 0
        ? line("agrees", say.allSame(figures, results.length))
        : line("differs", say.notSame(differing.length, results.length)),
    ...(partly > 0 ? [line("not-checked", say.partly(partly))] : []),
    ...(results.some((one) => one.published.fitness !== undefined) ? [line("not-checked", say.fitness)] : []),
    ...(withReadings ? [readingsLine(readings, say)] : []),
    ...(changedInputs === null ? [] : inputLines(results, changedInputs, say)),
    ...(log === null ? [line("not-checked", noLog ?? say.needsSecure)] : logLines(log, language)),
  ];
}

const readingsLine = ({ rows, differing }: RecomputeReport["readings"], say: RecomputeSentences): CheckLine => {
  const [first] = differing;
  return first === undefined
    ? line("agrees", say.sameRows(rows))
    : line("differs", say.otherRows(differing.length, first.row, first.column));
};

function inputLines(
  results: readonly RecomputedResult[],
  changed: readonly RecomputedResult[],
  say: RecomputeSentences,
): CheckLine[] {
  const whole = results.filter((one) => one.inputsText !== null).length;
  if (whole === 0) return [];
  return [
    changed.length === 0 ? line("agrees", say.sameInputs(whole)) : line("differs", say.otherInputs(changed.length)),
  ];
}

function logLines({ entry, entries, faults, signature, head }: RevisionCheck, language: Language): CheckLine[] {
  const say = recomputeIn[language];
  if (entry === null) return [line("differs", say.notListed)];
  return [
    ...faults.map((fault) => line("differs", logFaultSentence(fault, language))),
    ...(faults.length === 0 ? [line("agrees", say.sealed(entry.seq, entries))] : []),
    ...(signature === "agrees"
      ? [line("agrees", say.signed(head!.seq))]
      : signature === "unable"
        ? [line("not-checked", say.cannotSign)]
        : signature === "none"
          ? [line("not-checked", say.notSigned)]
          : []),
  ];
}
