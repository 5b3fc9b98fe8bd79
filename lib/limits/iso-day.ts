import { DomainError } from "../quantity/domain-error.ts";

/** A calendar day as ISO 8601 writes it, refused (DomainError "bad-day") where there is no such day. ISO days sort as text. */
export const isoDay = (day: string): string => {
  const match = /^(\d{4})-(\d{2})-(\d{2})$/.exec(day);
  const date = match ? new Date(`${day}T00:00:00Z`) : null;
  if (!date || Number.isNaN(date.getTime()) || date.toISOString().slice(0, 10) !== day)
    throw new DomainError("bad-day", "a day must be written YYYY-MM-DD and exist", day);
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

/** "2011-08-14" as a sentence says it: "14 August 2011". */
export const dayInWords = (day: string): string => {
  const [year, month, date] = isoDay(day).split("-");
  return `${Number(date)} ${months[Number(month) - 1]} ${year}`;
};

/**
 * First and last day that a date of making may mean: "2010" is the whole of that year, "2010-05" the whole of that month.
 * Null where nothing, or nothing readable, is recorded.
 */
export const madeBetween = (madeOn: string | null): { first: string; last: string } | null => {
  const match = madeOn === null ? null : /^(\d{4})(?:-(\d{2}))?(?:-(\d{2}))?$/.exec(madeOn.trim());
  if (!match) return null;
  const [, year, month, date] = match;
  if (month !== undefined && (Number(month) < 1 || Number(month) > 12)) return null;
  if (date !== undefined) return { first: isoDay(`${year}-${month}-${date}`), last: `${year}-${month}-${date}` };
  if (month !== undefined) {
    const last = new Date(Date.UTC(Number(year), Number(month), 0)).getUTCDate();
    return { first: `${year}-${month}-01`, last: `${year}-${month}-${String(last).padStart(2, "0")}` };
  }
  return { first: `${year}-01-01`, last: `${year}-12-31` };
};
