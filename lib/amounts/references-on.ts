import { done, type Outcome, refused } from "../quantity/problem.ts";
import type { ReferenceLoading } from "./types.ts";

/**
 * The reference loadings in force on a day (first and last day included); all of them where no day is given.
 *
 * Refused (Problem): `bad-date` (not written YYYY-MM-DD, or no such day), `date-before-any-limit` (before the first of them began).
 *
 * @example referencesOn(referenceLoadings(), "2019-06-01") // floor 40, sill 250, trough 400
 */
export function referencesOn(all: readonly ReferenceLoading[], day: string): Outcome<ReferenceLoading[]> {
  const asked = day.trim();
  if (asked === "" || all.length === 0) return done([...all]);
  const where = { field: "day" };
  if (!isDay(asked)) return refused({ code: "bad-date", where, found: asked, allowed: "a date such as 2026-11-24" });
  const first = all.map((one) => one.from).sort()[0]!;
  if (asked < first)
    return refused({ code: "date-before-any-limit", where, found: asked, allowed: `${first} or later` });
  return done(all.filter((one) => one.from <= asked && (one.until === null || asked <= one.until)));
}

function isDay(text: string): boolean {
  if (!/^\d{4}-\d{2}-\d{2}$/.test(text)) return false;
  const date = new Date(`${text}T00:00:00Z`);
  return !Number.isNaN(date.getTime()) && date.toISOString().slice(0, 10) === text;
}
