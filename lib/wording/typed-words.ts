import type { Problem } from "../quantity/problem.ts";
import type { WrittenQuantity } from "../quantity/written-quantity.ts";
import { plainDate, significant, withUnit } from "./formats.ts";
import { type ProblemWords, quoted } from "./problem-sentence.ts";

/** What a field says back while somebody types: what was understood, before anything is sent. */
export const typedProblems: ProblemWords = {
  "number-empty": () => "Give a number.",
  "unit-other-kind": (p) =>
    `${quoted(p.found)} is no unit for this figure. Give it in ${p.allowed ?? "another unit"} or another unit of the same kind.`,
};

/**
 * What cannot be understood, to somebody who is still typing: no cell, no row, and a way to write it.
 *
 * @example typedSentence({ code: "number-ambiguous", found: "1,234", allowed: "1234, or 1.2340" })
 * // "“1,234” can be read in two ways. Write 1234, or 1.2340."
 */
export function typedSentence(problem: Problem): string {
  const { code, found, allowed } = problem;
  if (code === "number-ambiguous" && allowed?.includes(", or "))
    return `${quoted(found)} can be read in two ways. Write ${allowed}.`;
  if (code === "not-a-number" || code === "number-ambiguous")
    return `${quoted(found)} is not read as a number. Write one such as 12.5.`;
  if (code === "number-too-large" || code === "number-too-small")
    return `${quoted(found)} is out of all proportion. Check the power of ten.`;
  return typedProblems[code]?.(problem) ?? `${quoted(found)} is not understood.`;
}

/**
 * "Understood: 0.05 %, which is 500 mg/kg." The second half only where the unit differs from the one asked for.
 * A power of ten or many digits are said in full, as they will be used.
 */
export function understoodQuantity(
  { number, unit, inWanted }: WrittenQuantity,
  wanted: string,
  uncertainty: WrittenQuantity | null = null,
): string {
  const plusMinus = (value: string, u: string | null, unitText: string) =>
    u === null ? withUnit(value, unitText) : `${value} ± ${withUnit(u, unitText)}`;
  const digits = (value: number): string => significant(value, 12);
  const sameUnit = uncertainty === null || uncertainty.unit === unit;
  const asTyped =
    uncertainty === null || sameUnit
      ? plusMinus(digits(number.value), uncertainty ? digits(uncertainty.number.value) : null, unit)
      : `${withUnit(digits(number.value), unit)} ± ${withUnit(digits(uncertainty.number.value), uncertainty.unit)}`;
  if (unit === wanted && sameUnit) return `Understood: ${asTyped}.`;
  return `Understood: ${asTyped}, which is ${plusMinus(digits(inWanted), uncertainty ? digits(uncertainty.inWanted) : null, wanted)}.`;
}

export type TypedMoment = { date: string; time: string; zone: string };

/** What a date, a time and a zone say together; `offset` as the zone's clock answers, null where the zone is not known. */
export function understoodMoment(
  { date, time, zone }: TypedMoment,
  offset: string | "twice" | "never" | null,
): string | null {
  if (date === "" || time === "") return null;
  const when = `${plainDate(date)}, ${time}`;
  const place = zone.replaceAll("_", " ");
  if (zone === "") return `${when}, and no zone yet: the hour could be anywhere.`;
  if (offset === null) return `“${place}” is no time zone we know.`;
  if (offset === "twice")
    return `${when} came twice in ${place}: the clocks went back that night. Choose an offset instead.`;
  if (offset === "never") return `${when} never came in ${place}: the clocks went forward that night.`;
  return `Understood: ${when}, ${place} (UTC${offset}).`;
}

/** The sentences of the file drop. */
export const dropWords = {
  choose: "Choose a file first.",
  waiting: "waiting",
  sending: (percent: number) => `${percent} % sent`,
  reading: "sent; being read",
  taken: "taken",
  refused: "not taken",
  broke: (name: string) => `${name} did not arrive: the connection broke. Nothing was kept; send it again.`,
  tooLarge: (name: string, bytes: number, most: number) =>
    `${name} is too large (${(bytes / 1e6).toFixed(1)} MB). Allowed: up to ${(most / 1e6).toFixed(0)} MB. It was not sent.`,
  noAnswer: (name: string, status: number) => `${name} was not taken (answer ${status}). Nothing was kept; try again.`,
  tally: (done: number, total: number) => `${done} of ${total} files sent`,
} as const;

/** The sentences of the table in which rows are ticked. */
export const tickWords = {
  keys: "Space ticks a row. Shift and an arrow key, or Shift and a click, tick the rows between. Click a heading to sort.",
  count: (ticked: number, all: number) => `${ticked} of ${all} ticked`,
  all: "Tick all rows",
} as const;
