import type { Limit, Nature, Precision } from "../limits/types.ts";
import { limitSentences as spanish } from "./es/limit-words.ts";
import { plainDate, plainMonth, withUnit } from "./formats.ts";
import type { ByLanguage, Language, Sentences } from "./language.ts";

export const natureWords: Record<Nature, string> = {
  binding: "binding where and on what it says",
  guidance: "guidance: advice by an authority",
  settlement: "settlement: agreed by certain firms in a court case",
  advisory: "advisory: a level to act on, not a bound",
};

export const failsText: Record<Limit["failsAt"], string> = {
  ">": "above the number; the number itself still passes",
  ">=": "at the number and above",
};

const english = {
  noNumber: "a rule without a number",
  replaced: "replaced before its first day",
  nowUnknown: "now; start not known",
  since: (when: string) => `since ${when}`,
  from: (when: string) => `from ${when}`,
  until: (when: string) => `until ${when}`,
  fromTo: (start: string, end: string) => `${start} to ${end}`,
  nature: natureWords,
  fails: failsText,
};
export type LimitSentences = Sentences<typeof english>;
export const limitWordsIn: ByLanguage<LimitSentences> = { en: english, es: spanish };

/** A limit's own words: its number, its dates, what kind of rule it is. */
export const limitNumber = (limit: Pick<Limit, "value" | "unit">, language: Language = "en"): string =>
  limit.value === null ? limitWordsIn[language].noNumber : withUnit(String(limit.value), limit.unit, language);

const dateWords = (iso: string, known: Precision, language: Language): string => {
  if (known === "year") return iso.slice(0, 4);
  return known === "month" ? plainMonth(iso, language) : plainDate(iso, language);
};

/**
 * When a limit holds, as far as that is known. With `today` a first day that is yet to come is told as such.
 *
 * @example "since 14 August 2011" · "15 June 1978 to 13 August 2009" · "from 1 January 2028" · "now; start not known"
 */
export function limitPeriod(
  limit: { from: string; until: string | null; fromKnown: Precision; neverTookEffect: boolean },
  language: Language = "en",
  today: string | null = null,
): string {
  const say = limitWordsIn[language];
  if (limit.neverTookEffect) return say.replaced;
  const start = limit.fromKnown === "unknown" ? null : dateWords(limit.from, limit.fromKnown, language);
  if (limit.until === null) {
    if (start === null) return say.nowUnknown;
    return today !== null && limit.from > today ? say.from(start) : say.since(start);
  }
  const end = plainDate(limit.until, language);
  return start === null ? say.until(end) : say.fromTo(start, end);
}
