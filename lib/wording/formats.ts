import type { Snapshot, SnapshotResult } from "../publication/snapshot.ts";
import { DomainError } from "../quantity/domain-error.ts";
import { formatWords as spanish } from "./es/formats.ts";
import type { ByLanguage, Language } from "./language.ts";

/**
 * Numbers, units and dates as people read them, by language and never by the machine's locale. A number is never printed
 * without its unit, and never rounded here where reconcile has already stated its digits.
 */
const english = {
  /** Between whole and fraction. */
  decimal: ".",
  to: "to",
  and: (_next: string) => "and",
  months: "January February March April May June July August September October November December".split(" "),
  date: (day: number, month: string, year: string) => `${day} ${month} ${year}`,
  monthOf: (month: string, year: string) => `${month} ${year}`,
  below: (amount: string) => `below ${amount}`,
  notDetected: "not detected",
  differing: "differing from spot to spot",
  seenAt: (seen: number, spots: number) => `detected at ${seen} of ${spots} spots`,
  atMost: (amount: string) => `at most ${amount}`,
  noResult: "no result",
  or: (one: string, other: string) => `${one}, or ${other}`,
  chances: {
    atLeast: "at least 99 chances in 100",
    atMost: "at most 1 chance in 100",
    about: (whole: number) => `about ${whole} chances in 100`,
  },
  revision: (revision: number, date: string) => `revision ${revision}, ${date}`,
  /** Units that hold a word; symbols are the same in every language. */
  units: {} as Readonly<Record<string, string>>,
};
export type FormatWords = typeof english;
export const formatWordsIn: ByLanguage<FormatWords> = { en: english, es: spanish };

const thinSpace = "\u202F";

/**
 * Thousands in groups of three from five digits on, parted by a narrow no-break space (SI Brochure 9th ed., 5.4.4:
 * neither dots nor commas are used for it), and the decimal sign of the language.
 *
 * @example groupDigits("12400.5") // "12 400.5"
 * @example groupDigits("12400.5", "es") // "12 400,5"
 */
export function groupDigits(text: string, language: Language = "en"): string {
  const [, sign = "", whole = "", rest = ""] = /^([-+−]?)(\d+)(.*)$/.exec(text) ?? [];
  const grouped = whole.length < 5 ? text : `${sign}${whole.replace(/\B(?=(\d{3})+$)/g, thinSpace)}${rest}`;
  const { decimal } = formatWordsIn[language];
  return decimal === "." ? grouped : grouped.replace(/(?<=\d)\.(?=\d)/g, decimal);
}

/** A stated number and its unit: "412 mg/kg". */
export const withUnit = (text: string, unit: string, language: Language = "en"): string =>
  `${groupDigits(text, language)} ${unitText(unit, language)}`;

/** A unit as the language writes it: "µg/day" is "µg/día" in Spanish. */
export const unitText = (unit: string, language: Language = "en"): string =>
  formatWordsIn[language].units[unit] ?? unit;

/** A number that reconcile did not state, as `significant` rounds it, written for a reader. */
export const numberText = (value: number, digits = 3, language: Language = "en"): string =>
  groupDigits(significant(value, digits), language);

/**
 * A number that reconcile did not state, to three significant digits (or as given), never with an exponent.
 *
 * @example significant(412.86) // "413"
 * @example significant(0.041286) // "0.0413"
 */
export function significant(value: number, digits = 3): string {
  const text = toDigits(value, digits);
  return text.includes(".") ? text.replace(/\.?0+$/, "") : text;
}

/**
 * A number to as many significant digits as its uncertainty earns, zeros at its end included, never with an exponent.
 *
 * @example toDigits(1.04, 2) // "1.0"
 * @example toDigits(7312, 2) // "7300"
 */
export function toDigits(value: number, digits: number): string {
  if (!Number.isFinite(value)) throw new DomainError("not-finite", "a number to print must be finite", value);
  const rounded = Number(value.toPrecision(digits));
  if (rounded === 0) return "0";
  const places = Math.min(100, Math.max(0, digits - 1 - Math.floor(Math.log10(Math.abs(rounded)))));
  return rounded.toFixed(places);
}

/** An amount that reconcile did not state: "413 mg/kg". */
export const amountText = (value: number, unit: string, language: Language = "en"): string =>
  withUnit(significant(value), unit, language);

/** "81 to 129 mg/kg". */
export const intervalText = ([low, high]: readonly [string, string], unit: string, language: Language = "en"): string =>
  `${groupDigits(low, language)} ${formatWordsIn[language].to} ${withUnit(high, unit, language)}`;

/** "not detected (below 5 mg/kg)". */
export const notDetectedText = (below: string, unit: string, language: Language = "en"): string => {
  const words = formatWordsIn[language];
  return `${words.notDetected} (${words.below(withUnit(below, unit, language))})`;
};

/** What of a result is needed to print it in one line. */
export type PrintedResult = Pick<
  SnapshotResult,
  "state" | "stated" | "unit" | "asymmetric" | "range" | "below" | "upperBound"
> & { counts: Pick<SnapshotResult["counts"], "spots" | "spotsDetected"> };

/** The digits to print as the bound of a non-detect (as stated) or of too few detections (three digits). */
function boundDigits(result: PrintedResult): string | null {
  if (result.state === "not-detected")
    return result.stated.below ?? (result.below === null ? null : significant(result.below));
  return result.upperBound === null ? null : significant(result.upperBound);
}

/** "below 5 mg/kg": the bound of a result in which nothing was seen; null where there is none. */
export function boundText(result: PrintedResult, language: Language = "en"): string | null {
  const bound = result.state === "not-detected" ? boundDigits(result) : null;
  return bound === null ? null : formatWordsIn[language].below(withUnit(bound, result.unit, language));
}

/**
 * A result in one line, as every table, feed and heading prints it. Complete over the states:
 * "412 ± 36 mg/kg" · "102 mg/kg (73 to 159 mg/kg)" · "61 to 148 mg/kg, differing from spot to spot" ·
 * "detected at 1 of 3 spots; at most 19 mg/kg" · "not detected (below 5 mg/kg)" · "no result".
 */
export function resultText(result: PrintedResult, language: Language = "en"): string {
  const { stated, unit, counts } = result;
  const words = formatWordsIn[language];
  switch (result.state) {
    case "quantified": {
      if (stated.U !== null && !result.asymmetric)
        return `${groupDigits(stated.value, language)} ± ${withUnit(stated.U, unit, language)}`;
      if (stated.interval === null) return withUnit(stated.value, unit, language);
      return `${withUnit(stated.value, unit, language)} (${intervalText(stated.interval, unit, language)})`;
    }
    case "range-only":
      return result.range === null
        ? words.differing
        : `${intervalText([significant(result.range[0]), significant(result.range[1])], unit, language)}, ${words.differing}`;
    case "not-quantified": {
      const bound = boundDigits(result);
      const seen = words.seenAt(counts.spotsDetected, counts.spots);
      return bound === null ? seen : `${seen}; ${words.atMost(withUnit(bound, unit, language))}`;
    }
    case "not-detected": {
      const bound = boundDigits(result);
      return bound === null ? words.notDetected : notDetectedText(bound, unit, language);
    }
    case "no-readings":
      return words.noResult;
  }
}

/**
 * A mass fraction said in other units people meet: ppm always, per cent from 1000 mg/kg (0.1 %) on. Null for other units.
 *
 * @example alsoAs("412", 412, "mg/kg") // "412 ppm"
 * @example alsoAs("12400", 12400, "mg/kg") // "12 400 ppm, or 1.24 %"
 */
export function alsoAs(stated: string, value: number, unit: string, language: Language = "en"): string | null {
  if (unit !== "mg/kg") return null;
  const ppm = withUnit(stated, "ppm", language);
  return Math.abs(value) < 1000
    ? ppm
    : formatWordsIn[language].or(ppm, withUnit(significant(value / 10_000), "%", language));
}

/**
 * A probability in words that never claim more than it says: certainty is cut down to a whole chance in 100, on either
 * side of one half.
 *
 * @example chancesText(0.9994) // "at least 99 chances in 100"
 * @example chancesText(0.7214) // "about 72 chances in 100"
 * @example chancesText(0.0004) // "at most 1 chance in 100"
 */
export function chancesText(probability: number, language: Language = "en"): string {
  if (!(probability >= 0 && probability <= 1))
    throw new DomainError("not-a-probability", "a probability lies from 0 to 1", probability);
  const { chances } = formatWordsIn[language];
  if (probability >= 0.99) return chances.atLeast;
  if (probability <= 0.01) return chances.atMost;
  const hundred = probability * 100;
  const whole = probability >= 0.5 ? Math.floor(hundred + 1e-9) : Math.ceil(hundred - 1e-9);
  return chances.about(whole);
}

function dateParts(iso: string, language: Language): { day: number; month: string; year: string } {
  const [, year, month, day] = /^(\d{4})-(\d{2})-(\d{2})/.exec(iso) ?? [];
  const name = formatWordsIn[language].months[Number(month) - 1];
  if (!year || !day || !name) throw new DomainError("not-a-date", "an ISO date is written 2026-11-24", iso);
  return { day: Number(day), month: name, year };
}

/**
 * A day in words, from an ISO date or from the date part of an ISO time (the day where it was measured).
 *
 * @example plainDate("2026-11-24") // "24 November 2026"
 * @example plainDate("2026-11-24", "es") // "24 de noviembre de 2026"
 */
export function plainDate(iso: string, language: Language = "en"): string {
  const { day, month, year } = dateParts(iso, language);
  return formatWordsIn[language].date(day, month, year);
}

/** "24 Nov 2026": a day where there is little room. */
export function briefDate(iso: string, language: Language = "en"): string {
  const { day, month, year } = dateParts(iso, language);
  return `${day} ${month.slice(0, 3)} ${year}`;
}

/** "November 2026": the month of a date whose day nobody knows. */
export function plainMonth(iso: string, language: Language = "en"): string {
  const { month, year } = dateParts(iso, language);
  return formatWordsIn[language].monthOf(month, year);
}

/**
 * A moment as the wall clock of a zone shows it, the zone named: "24 November 2026, 09:30 (Europe/Berlin)".
 * `iso` carries its offset; `timeZone` is an IANA name.
 */
export function timeInZone(iso: string, timeZone: string, language: Language = "en"): string {
  const moment = new Date(iso);
  if (Number.isNaN(moment.getTime()) || !/(?:Z|[+-]\d{2}:?\d{2})$/.test(iso))
    throw new DomainError("not-a-moment", "an ISO time with its offset", iso);
  const parts = new Intl.DateTimeFormat("en-GB", {
    timeZone,
    year: "numeric",
    month: "2-digit",
    day: "2-digit",
    hour: "2-digit",
    minute: "2-digit",
    hourCycle: "h23",
  }).formatToParts(moment);
  const part = (type: Intl.DateTimeFormatPartTypes) => parts.find((p) => p.type === type)!.value;
  const date = plainDate(`${part("year")}-${part("month")}-${part("day")}`, language);
  return `${date}, ${part("hour")}:${part("minute")} (${timeZone})`;
}

/** The day of a moment in a zone: "24 November 2026". */
export const dateInZone = (iso: string, timeZone: string): string => timeInZone(iso, timeZone).split(",")[0]!;

/** "revision 2, 26 November 2026"; the date is that of the place of publication. */
export const revisionText = (snapshot: Pick<Snapshot, "revision" | "publishedAt">, language: Language = "en"): string =>
  formatWordsIn[language].revision(snapshot.revision, plainDate(snapshot.publishedAt, language));

/** "1 part", "6 parts". The words come in the language of the page. */
export const counted = (n: number, one: string, many = `${one}s`): string => `${n} ${n === 1 ? one : many}`;

/** "A", "A and B", "A, B and C". */
export function listed(words: readonly string[], language: Language = "en"): string {
  const last = words.at(-1) ?? "";
  return words.length < 2 ? last : `${words.slice(0, -1).join(", ")} ${formatWordsIn[language].and(last)} ${last}`;
}
