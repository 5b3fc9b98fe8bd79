import type { PlacedResult } from "../publication/leading-decision.ts";
import type { Snapshot } from "../publication/snapshot.ts";
import { itemAnswer } from "./answers.ts";
import { cautions } from "./cautions.ts";
import { elementTitle } from "./elements.ts";
import { shareSentences as spanish } from "./es/share.ts";
import { plainDate, resultText } from "./formats.ts";
import type { ByLanguage, Language, Sentences } from "./language.ts";
import { verdictText } from "./verdicts.ts";

/** Words of the label, the card and the one-page report. */
export const shareWords = {
  title: "To print and to pass on",
  report: "Report on one page",
  labels: "Sheet of labels with a QR code",
  label: "One label (SVG)",
  card: "Card for your own page (SVG)",
  embed: "To show the card on a page of yours, put this in it:",
  labelsTitle: (name: string) => `Labels: ${name}`,
  labelsLead:
    "Twenty-four labels on one A4 page. Print at full size, not “fit to page”. The code leads to the item’s page, which always shows the newest revision.",
  print: "Print with your browser’s own print command.",
  scan: "Scan for the whole result",
  reportTitle: (name: string) => `Report: ${name}`,
  reportOf: (revision: number, day: string) => `Revision ${revision}, published ${day}`,
  more: (n: number) => `${n} more ${n === 1 ? "result stands" : "results stand"} on the item’s page.`,
  method: "How it was worked out",
  columns: { what: "Part and element", result: "Result", verdict: "Against the limit" },
  noLimit: "no limit to compare",
  made: (method: string) =>
    `The leading result is made by ${method}; a range stated here is right about 19 times out of 20.`,
  by: (on: string, testers: string, instruments: string) =>
    `Tested on ${on}${testers ? ` by ${testers}` : ""}${instruments ? ` with ${instruments}` : ""}.`,
  review: (text: string) => `Review: ${text}${text.endsWith(".") ? "" : "."}`,
  codeOf: (address: string) => `QR code of ${address}`,
  sealed: (seq: number) => `Entry ${seq} of the registry’s publication log holds the SHA-256 of this revision’s data:`,
  terms: (licence: string, contact: string | null) =>
    `Data: ${licence}.${contact ? ` Questions and corrections: ${contact}.` : ""}`,
  superseded: (newest: number) => `There is a newer revision: ${newest}.`,
  withdrawn: "This result was withdrawn. Do not use it.",
  invented: "Invented data, made for a demonstration.",
  inventedShort: "Invented for a demonstration.",
  dataset: (name: string): string => `What is in it: ${name}`,
  tested: (day: string): string => `Tested ${day}`,
  testedOn: (day: string, revision: number): string => `Tested ${day}, revision ${revision}.`,
  cautions: {
    total: "XRF shows what is in the material, not what comes out of it or gets into a body.",
    lead: cautions["no-known-level"].text.split(". ")[0]!.concat("."),
    thisOne: "Only the very object that was tested. Others can differ.",
    blood: "Worried about a child? Ask a doctor about a blood lead test.",
    place: "For paint, dust or soil in a home, ask a licensed assessor. Rules differ from place to place.",
  },
} as const;
export type ShareSentences = Sentences<typeof shareWords>;
export const shareIn: ByLanguage<ShareSentences> = { en: shareWords, es: spanish };

/** The cautions that must go wherever a result goes, shortest first needed: beside a label there is room for the first two. */
export function shortCautions(snapshot: Snapshot, language: Language = "en"): string[] {
  const say = shareIn[language].cautions;
  const lead = snapshot.specimens.some((s) => s.parts.some((p) => p.results.some((r) => r.element === "Pb")));
  return [say.total, ...(lead ? [say.lead] : []), say.thisOne, ...(lead ? [say.blood] : []), say.place];
}

/** What a card or a label says first: the page's own headline, or why it must not be used. */
export const shareHeadline = (snapshot: Snapshot, language: Language = "en"): string =>
  itemAnswer(snapshot, language).headline;

/** "Bluebell child's mug: Above the limit: lead in the part “glaze, outside”. Tested 14 November 2026, revision 1." */
export const cardAlt = (snapshot: Snapshot, language: Language = "en"): string =>
  `${snapshot.item.name}: ${shareHeadline(snapshot, language)} ${shareIn[language].testedOn(plainDate(snapshot.testedOn, language), snapshot.revision)}`;

export type ReportRow = { key: string; what: string; result: string; verdict: string };

/** Characters that a column of the report's table holds in a line of print, on the low side. */
const columns = { what: 22, result: 13, verdict: 76 } as const;
/** Lines of print that the table may take, the room between rows counted as a part of one. */
const mostLines = 24;
const rowGap = 0.4;

/** The results that have room on one page, weightiest first, and how many more there are. */
export function reportRows(
  placed: readonly PlacedResult[],
  language: Language = "en",
): { rows: ReportRow[]; more: number } {
  const all = placed.map(
    ({ specimen, part, result, decision }): ReportRow => ({
      key: `${specimen.id} ${part.id} ${result.element} ${result.quantity}`,
      what: `${part.name}: ${elementTitle(result.element, language)}`,
      result: resultText(result, language),
      verdict: decision === null ? shareIn[language].noLimit : verdictText(decision, result, language),
    }),
  );
  const lines = all.map((row) =>
    Math.max(
      Math.ceil(row.what.length / columns.what),
      Math.ceil(row.result.length / columns.result),
      Math.ceil(row.verdict.length / columns.verdict),
    ),
  );
  let room = mostLines;
  const fits = lines.findIndex((n) => {
    room -= n + rowGap;
    return room < 0;
  });
  const kept = fits < 0 ? all.length : fits;
  return { rows: all.slice(0, kept), more: all.length - kept };
}
