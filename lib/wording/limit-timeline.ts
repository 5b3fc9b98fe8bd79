import { isInForce } from "../limits/limits-in-force.ts";
import type { PublicLimit } from "../limits/list-limits.ts";
import { timelineSentences as spanish } from "./es/limit-timeline.ts";
import { groupDigits, plainDate, plainMonth, unitText } from "./formats.ts";
import type { ByLanguage, Language, Sentences } from "./language.ts";
import { limitNumber, limitPeriod, limitWordsIn } from "./limit-words.ts";

/** The words of a limit's history: what its drawing says, its table, and the one line of a list. */
const english = {
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
  columns: {
    number: "Number",
    first: "First day",
    last: "Last day",
    asked: "Asked for from",
    checked: "Checked",
  },
  thisPage: (number: string): string => `${number} (this page)`,
  fromFirst: "its first day",
  never: "never took effect",
  neverFull: (day: string): string => `never took effect: replaced before ${day}`,
  now: "now",
  inYear: (year: string): string => `in ${year}`,
  askedFrom: (period: string, day: string): string => `${period}; asked for from ${day}`,
  planned: (day: string): string => `${day} was planned`,
  startUnknown: "start not known",
  dayUnknown: (when: string): string => `in ${when}; day not known`,
  notYet: "not yet in force",
  inForce: "in force",
  title: {
    notYet: "Not yet in force",
    today: (number: string): string => `${number} today`,
    past: (number: string): string => `${number} in the past`,
    went: (numbers: readonly string[]): string => `The number went from ${numbers.join(" to ")}`,
    next: (number: string, day: string): string => `${number} from ${day}`,
  },
  before: (numbers: string): string => `before: ${numbers}`,
  after: (numbers: string): string => `after: ${numbers}`,
};
export type TimelineSentences = Sentences<typeof english>;
export const timelineIn: ByLanguage<TimelineSentences> = { en: english, es: spanish };

const yearOf = (iso: string): string => iso.slice(0, 4);

/** A limit's time in years only: "2001 to 2020", "since 2025", "from 2028", "until 2014", "never took effect". */
export function limitYears(limit: PublicLimit, today: string, language: Language = "en"): string {
  const [say, words] = [timelineIn[language], limitWordsIn[language]];
  if (limit.neverTookEffect) return say.never;
  const start = limit.fromKnown === "unknown" ? null : yearOf(limit.from);
  if (limit.until === null) {
    if (start === null) return say.now;
    return limit.from > today ? words.from(start) : words.since(start);
  }
  const end = yearOf(limit.until);
  if (start === null) return words.until(end);
  return start === end ? say.inYear(start) : words.fromTo(start, end);
}

/** A limit's time in words, with the day compliance is asked from: "since 13 January 2025; asked for from 12 January 2026". */
export function limitPeriodInFull(limit: PublicLimit, today: string, language: Language = "en"): string {
  const say = timelineIn[language];
  if (limit.neverTookEffect) return say.neverFull(plainDate(limit.from, language));
  const period = limitPeriod(limit, language, today);
  return limit.complianceFrom === null ? period : say.askedFrom(period, plainDate(limit.complianceFrom, language));
}

/** The first day as a table says it. */
export const firstDay = (limit: PublicLimit, language: Language = "en"): string => {
  const say = timelineIn[language];
  if (limit.neverTookEffect) return say.planned(plainDate(limit.from, language));
  if (limit.fromKnown === "unknown") return say.startUnknown;
  if (limit.fromKnown === "year") return say.dayUnknown(yearOf(limit.from));
  if (limit.fromKnown === "month") return say.dayUnknown(plainMonth(limit.from, language));
  return plainDate(limit.from, language);
};

/** The last day as a table says it. */
export const lastDay = (limit: PublicLimit, today: string, language: Language = "en"): string => {
  const say = timelineIn[language];
  if (limit.neverTookEffect) return say.never;
  if (limit.until === null) return limit.from > today ? say.notYet : say.inForce;
  return plainDate(limit.until, language);
};

/** Equal neighbours told once. */
const withoutRepeats = (rows: readonly PublicLimit[]): PublicLimit[] =>
  rows.filter((row, at) => at === 0 || row.value !== rows[at - 1]?.value || row.unit !== rows[at - 1]?.unit);

/**
 * The title of the drawing, saying what it shows.
 *
 * @example "The number went from 600 to 300 to 100 mg/kg"
 * @example "90 mg/kg today; 10 mg/kg from 1 January 2028"
 */
export function timelineTitle(family: readonly PublicLimit[], today: string, language: Language = "en"): string {
  const say = timelineIn[language].title;
  /** A number and no unit where the unit is the same all along. */
  const bare = ({ value }: PublicLimit): string =>
    value === null ? limitWordsIn[language].noNumber : groupDigits(String(value), language);
  const taken = family.filter((limit) => !limit.neverTookEffect);
  const begun = withoutRepeats(taken.filter((limit) => limit.from <= today));
  const coming = withoutRepeats(taken.filter((limit) => limit.from > today)).filter(
    (limit) => limit.value !== begun.at(-1)?.value,
  );
  const unit = begun.findLast((limit) => limit.value !== null)?.unit ?? "";
  const path = begun.map((limit, at) => {
    const lastNumber = limit.value !== null && begun.slice(at + 1).every((later) => later.value === null);
    return lastNumber ? `${bare(limit)} ${unitText(unit, language)}` : bare(limit);
  });
  const now = taken.some((limit) => isInForce(limit, today));
  const [only = ""] = path;
  const first =
    path.length === 0 ? say.notYet : path.length > 1 ? say.went(path) : now ? say.today(only) : say.past(only);
  const next = coming.map((limit) => say.next(limitNumber(limit, language), plainDate(limit.from, language)));
  return [first, ...next].join("; ");
}

/** How a limit's number came about, in one line of a list: "before: 600, 300 mg/kg"; null for a number that stood alone. */
export function historyLine(
  limit: PublicLimit,
  family: readonly PublicLimit[],
  language: Language = "en",
): string | null {
  const say = timelineIn[language];
  const at = family.findIndex((row) => row.id === limit.id);
  const before = family.slice(0, at).filter((row) => !row.neverTookEffect);
  const after = family.slice(at + 1).filter((row) => !row.neverTookEffect);
  const number = (row: PublicLimit): string => limitNumber(row, language);
  const parts = [
    before.length > 0 ? say.before(before.map(number).join(", ")) : "",
    after.length > 0
      ? say.after(after.map((row) => `${number(row)} (${plainDate(row.from, language)})`).join(", "))
      : "",
  ].filter((part) => part !== "");
  return parts.length === 0 ? null : parts.join("; ");
}
