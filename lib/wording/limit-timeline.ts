import { isInForce } from "../limits/limits-in-force.ts";
import type { PublicLimit } from "../limits/list-limits.ts";
import { plainDate } from "./formats.ts";
import { limitNumber, limitPeriod } from "./limit-words.ts";

/** The words of a limit's history: what its drawing says, its table, and the one line of a list. */

const yearOf = (iso: string): string => iso.slice(0, 4);

/** A limit's time in years only: "2001 to 2020", "since 2025", "from 2028", "until 2014", "never took effect". */
export function limitYears(limit: PublicLimit, today: string): string {
  if (limit.neverTookEffect) return "never took effect";
  const start = limit.fromKnown === "unknown" ? null : yearOf(limit.from);
  if (limit.until === null) return start === null ? "now" : `${limit.from > today ? "from" : "since"} ${start}`;
  const end = yearOf(limit.until);
  return start === null ? `until ${end}` : start === end ? `in ${start}` : `${start} to ${end}`;
}

/** A limit's time in words, with the day compliance is asked from: "since 13 January 2025; asked for from 12 January 2026". */
export function limitPeriodInFull(limit: PublicLimit, today: string): string {
  if (limit.neverTookEffect) return `never took effect: replaced before ${plainDate(limit.from)}`;
  const period = limitPeriod(limit);
  const coming = limit.from > today && period.startsWith("since ") ? `from ${period.slice(6)}` : period;
  return limit.complianceFrom === null ? coming : `${coming}; asked for from ${plainDate(limit.complianceFrom)}`;
}

/** The first day as a table says it. */
export const firstDay = (limit: PublicLimit): string => {
  if (limit.neverTookEffect) return `${plainDate(limit.from)} was planned`;
  if (limit.fromKnown === "unknown") return "start not known";
  if (limit.fromKnown === "year") return `in ${yearOf(limit.from)}; day not known`;
  if (limit.fromKnown === "month") return `in ${plainDate(limit.from).split(" ").slice(1).join(" ")}; day not known`;
  return plainDate(limit.from);
};

/** The last day as a table says it. */
export const lastDay = (limit: PublicLimit, today: string): string => {
  if (limit.neverTookEffect) return "never took effect";
  if (limit.until === null) return limit.from > today ? "not yet in force" : "in force";
  return plainDate(limit.until);
};

/** A number and no unit where the unit is the same all along. */
const bare = (limit: PublicLimit): string => (limit.value === null ? "a rule without a number" : String(limit.value));

/** Equal neighbours told once. */
const withoutRepeats = (rows: readonly PublicLimit[]): PublicLimit[] =>
  rows.filter((row, at) => at === 0 || row.value !== rows[at - 1]?.value || row.unit !== rows[at - 1]?.unit);

/**
 * The title of the drawing, saying what it shows.
 *
 * @example "The number went from 600 to 300 to 100 mg/kg"
 * @example "90 mg/kg today; 10 mg/kg from 1 January 2028"
 */
export function timelineTitle(family: readonly PublicLimit[], today: string): string {
  const taken = family.filter((limit) => !limit.neverTookEffect);
  const begun = withoutRepeats(taken.filter((limit) => limit.from <= today));
  const coming = withoutRepeats(taken.filter((limit) => limit.from > today)).filter(
    (limit) => limit.value !== begun.at(-1)?.value,
  );
  const unit = begun.findLast((limit) => limit.value !== null)?.unit ?? "";
  const path = begun.map((limit, at) => {
    const lastNumber = limit.value !== null && begun.slice(at + 1).every((later) => later.value === null);
    return lastNumber ? `${bare(limit)} ${unit}` : bare(limit);
  });
  const now = taken.some((limit) => isInForce(limit, today));
  const first =
    path.length === 0
      ? "Not yet in force"
      : path.length === 1
        ? `${path[0]} ${now ? "today" : "in the past"}`
        : `The number went from ${path.join(" to ")}`;
  const next = coming.map((limit) => `${limitNumber(limit)} from ${plainDate(limit.from)}`);
  return [first, ...next].join("; ");
}

export const timelineWords = {
  heading: "The same limit over time",
  alone: "We know of no earlier and no later number for this.",
  tableCaption: "The same in figures",
  today: "today",
  signs: {
    now: "A black bar is in force today.",
    past: "A hollow bar is over.",
    coming: "A dashed bar is still to come.",
    waiting: "A shaded bar was in effect, but nobody was asked to keep it yet.",
    never: "A cross never took effect.",
    openLeft: "A bar without a left end began on a day we do not know.",
  },
} as const;

/** How a limit's number came about, in one line of a list: "before: 600, 300 mg/kg"; null for a number that stood alone. */
export function historyLine(limit: PublicLimit, family: readonly PublicLimit[]): string | null {
  const at = family.findIndex((row) => row.id === limit.id);
  const before = family.slice(0, at).filter((row) => !row.neverTookEffect);
  const after = family.slice(at + 1).filter((row) => !row.neverTookEffect);
  const parts = [
    before.length > 0 ? `before: ${before.map((row) => limitNumber(row)).join(", ")}` : "",
    after.length > 0 ? `after: ${after.map((row) => `${limitNumber(row)} (${plainDate(row.from)})`).join(", ")}` : "",
  ].filter((part) => part !== "");
  return parts.length === 0 ? null : parts.join("; ");
}
