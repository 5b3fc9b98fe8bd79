import { foldWord } from "./chemical-symbol.ts";
import { readOffset } from "./zone-offset.ts";

export type DateOrder = "day-first" | "month-first";
export type WrittenDate = { year: number; month: number; day: number };
export type WrittenClock = { hour: number; minute: number; second: number; offset: number | null };

/** A text read as a date, a time of day, or both. `order` says what a numeric date shows about day and month. */
export type WrittenMoment = { date: WrittenDate | null; clock: WrittenClock | null };
export type OrderEvidence = "day-first" | "month-first" | "either" | "unneeded";

const months: ReadonlyMap<string, number> = new Map(
  [
    "jan january januar janner janv janvier ene enero",
    "feb february februar fev fevr fevrier febrero",
    "mar march marz maerz mrz mars marzo",
    "apr april avr avril abr abril",
    "may mai mayo",
    "jun june juni juin junio",
    "jul july juli juil juillet julio",
    "aug august aout ago agosto",
    "sep sept september septembre septiembre",
    "oct october okt oktober octobre octubre",
    "nov november novembre noviembre",
    "dec december dez dezember decembre dic diciembre",
  ].flatMap((names, index) => names.split(" ").map((name): [string, number] => [name, index + 1])),
);

const clockPattern =
  /^(\d{1,2}):(\d{2})(?::(\d{2})(?:[.,]\d{1,9})?)?\s*([ap]\.?\s?m\.?)?\s*(z|utc|gmt|(?:utc|gmt)?\s*[+\u2212-]\d{1,2}(?::?\d{2})?)?$/i;
const yearFirst = /^(\d{4})([-/.])(\d{1,2})\2(\d{1,2})$/;
const yearLast = /^(\d{1,2})([-/.])(\d{1,2})\2(\d{4}|\d{2})$/;
const dayMonthName = /^(\d{1,2})[.\s-]*\s*(?:de\s+)?(\p{L}{3,10})\.?[,\s-]*(?:de\s+)?(\d{4}|\d{2})$/u;
const monthNameDay = /^(\p{L}{3,10})\.?\s+(\d{1,2})(?:st|nd|rd|th)?,?\s+(\d{4})$/u;

const fullYear = (year: string): number => (year.length === 2 ? 2000 + Number(year) : Number(year));

/** Refuses 31 June and hour 25. */
const realDate = (date: WrittenDate): WrittenDate | null => {
  const made = new Date(Date.UTC(date.year, date.month - 1, date.day));
  const same =
    made.getUTCFullYear() === date.year && made.getUTCMonth() === date.month - 1 && made.getUTCDate() === date.day;
  return same ? date : null;
};

/** "14:05", "14:05:06.5+02:00", "2:05 PM" → clock time with its offset if stated. */
export function readClock(text: string): WrittenClock | null {
  const match = clockPattern.exec(text.trim());
  if (!match) return null;
  let hour = Number(match[1]);
  const half = match[4]?.toLowerCase()[0];
  if (half && (hour < 1 || hour > 12)) return null;
  if (half) hour = (hour % 12) + (half === "p" ? 12 : 0);
  const minute = Number(match[2]);
  const second = Number(match[3] ?? "0");
  if (hour > 23 || minute > 59 || second > 59) return null;
  const offset = match[5] ? readOffset(match[5]) : null;
  if (match[5] && offset === null) return null;
  return { hour, minute, second, offset };
}

/** What a date text shows about the order of day and month. "25/03/2026" → day-first; "04/03/2026" → either; "04.03.2026" → unneeded. */
export function orderEvidence(text: string): OrderEvidence {
  const match = yearLast.exec(splitMoment(text)[0]);
  if (!match || match[2] === "." || match[1] === match[3]) return "unneeded";
  const first = Number(match[1]);
  const second = Number(match[3]);
  if (first > 12 && second <= 12) return "day-first";
  if (second > 12 && first <= 12) return "month-first";
  return first > 12 ? "unneeded" : "either";
}

/** Reads a date: ISO, 3.5.2026 (dots put the day first), 3/5/2026 by the stated order, "3 May 2026". Two-digit years are 20xx. */
export function readDate(text: string, order: DateOrder | null): WrittenDate | null {
  const iso = yearFirst.exec(text);
  if (iso) return realDate({ year: Number(iso[1]), month: Number(iso[3]), day: Number(iso[4]) });
  const numeric = yearLast.exec(text);
  if (numeric) {
    const [, one, mark, two, year] = numeric as unknown as [string, string, string, string, string];
    const effective = mark === "." ? "day-first" : one === two ? "day-first" : order;
    if (!effective) return null;
    const [day, month] = effective === "day-first" ? [one, two] : [two, one];
    return realDate({ year: fullYear(year), month: Number(month), day: Number(day) });
  }
  const named = dayMonthName.exec(text);
  const swapped = named ? null : monthNameDay.exec(text);
  const month = months.get(foldWord(named?.[2] ?? swapped?.[1] ?? ""));
  if (!month) return null;
  return realDate({ year: fullYear(named?.[3] ?? swapped![3]!), month, day: Number(named?.[1] ?? swapped![2]) });
}

/** Divides "3.5.2026, 14:05 Uhr" into its date and its clock text. */
function splitMoment(text: string): [string, string] {
  const tidy = text
    .trim()
    .replace(/\s*Uhr$/i, "")
    .replace(/\s+/g, " ");
  const at = tidy.search(/\d{1,2}:\d{2}/);
  if (at < 0) return [tidy, ""];
  return [
    tidy
      .slice(0, at)
      .replace(/[T,\s]+$/, "")
      .replace(/\s(?:um|at|à|a las)$/i, "")
      .trim(),
    tidy.slice(at),
  ];
}

/**
 * Reads a text as date, clock time or both. Null where any part of it cannot be read.
 * Examples: "2026-05-03T14:05:06+02:00"; "03.05.2026 14:05"; "5/3/2026 2:05 PM" with month-first.
 */
export function readMoment(text: string, order: DateOrder | null): WrittenMoment | null {
  if (text.length > 60) return null;
  const [dateText, clockText] = splitMoment(text);
  const date = dateText === "" ? null : readDate(dateText, order);
  const clock = clockText === "" ? null : readClock(clockText);
  if ((dateText !== "" && !date) || (clockText !== "" && !clock) || (!date && !clock)) return null;
  return { date, clock };
}
