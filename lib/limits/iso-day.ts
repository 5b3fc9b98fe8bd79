import { DomainError } from "../quantity/domain-error.ts";
import type { Problem } from "../quantity/problem.ts";

const isDay = (day: string): boolean => {
  const date = /^\d{4}-\d{2}-\d{2}$/.test(day) ? new Date(`${day}T00:00:00Z`) : null;
  return date !== null && !Number.isNaN(date.getTime()) && date.toISOString().slice(0, 10) === day;
};

/**
 * A calendar day as ISO 8601 writes it, refused (DomainError "bad-day") where there is no such day. ISO days sort as text.
 *
 * @example isoDay("2026-11-24") // "2026-11-24"
 */
export const isoDay = (day: string): string => {
  if (!isDay(day)) throw new DomainError("bad-day", "a day must be written YYYY-MM-DD and exist", day);
  return day;
};

const months = [
  "January",
  "February",
  "March",
  "April",
  "May",
  "June",
  "July",
  "August",
  "September",
  "October",
  "November",
  "December",
];

/**
 * "2011-08-14" as a sentence says it: "14 August 2011".
 *
 * @example dayInWords("2011-08-14") // "14 August 2011"
 */
export const dayInWords = (day: string): string => {
  const [year, month, date] = isoDay(day).split("-");
  return `${Number(date)} ${months[Number(month) - 1]} ${year}`;
};

/**
 * First and last day that a date of making may mean: "2010" is the whole of that year, "2010-05" the whole of that month.
 * Null where nothing, or nothing readable, is recorded.
 *
 * @example madeBetween("2010-05") // { first: "2010-05-01", last: "2010-05-31" }
 */
export const madeBetween = (madeOn: string | null): { first: string; last: string } | null => {
  const match = madeOn === null ? null : /^(\d{4})(?:-(\d{2}))?(?:-(\d{2}))?$/.exec(madeOn.trim());
  if (!match) return null;
  const [, year, month, date] = match;
  if (month !== undefined && (Number(month) < 1 || Number(month) > 12)) return null;
  if (date !== undefined) {
    const day = `${year}-${month}-${date}`;
    return isDay(day) ? { first: day, last: day } : null;
  }
  if (month !== undefined) {
    const last = new Date(Date.UTC(Number(year), Number(month), 0)).getUTCDate();
    return { first: `${year}-${month}-01`, last: `${year}-${month}-${String(last).padStart(2, "0")}` };
  }
  return { first: `${year}-01-01`, last: `${year}-12-31` };
};

/** First and last day on which a subject can have been made; null at an end that nothing bounds. */
export type Making = { first: string | null; last: string | null };

/**
 * Between which days a subject was made: by its date of making as far as it is known, and no later than the day on which the
 * tester got it. A date of making after that day is taken as it stands, since a form refuses the two together.
 *
 * @example makingOf({ madeOn: null, gotOn: "2010-05-01" }) // { first: null, last: "2010-05-01" }
 * @example makingOf({ madeOn: "2010", gotOn: "2010-05-01" }) // { first: "2010-01-01", last: "2010-05-01" }
 */
export const makingOf = ({ madeOn, gotOn = null }: { madeOn: string | null; gotOn?: string | null }): Making => {
  const made = madeBetween(madeOn);
  if (!made) return { first: null, last: gotOn };
  return { first: made.first, last: gotOn !== null && gotOn >= made.first && gotOn < made.last ? gotOn : made.last };
};

/**
 * What is wrong with a date of making as a tester wrote it: `made-on-unreadable` where it is no year, month or day, `made-after-got`
 * where it lies after the day on which the thing was got.
 */
export const makingProblem = ({ madeOn, gotOn }: { madeOn: string | null; gotOn: string }): Problem | null => {
  if (madeOn === null) return null;
  const where = { field: "madeOn" };
  const made = madeBetween(madeOn);
  if (!made) return { code: "made-on-unreadable", where, found: madeOn };
  return made.first > gotOn ? { code: "made-after-got", where, found: madeOn, allowed: gotOn } : null;
};

/** "2011-08-14", "2011-08" or "2011" after its preposition: "on 14 August 2011", "in August 2011", "in 2011". */
export const madeInWords = (madeOn: string): string => {
  const [year, month, date] = madeOn.trim().split("-");
  if (month === undefined) return `in ${year}`;
  return date === undefined ? `in ${months[Number(month) - 1]} ${year}` : `on ${dayInWords(madeOn.trim())}`;
};
