import type { SnapshotDecision, SnapshotResult } from "../publication/snapshot.ts";
import { limitTitles, placeNames } from "./es/limit-titles.ts";
import { verdictSentences as spanish } from "./es/verdicts.ts";
import { boundText, chancesText, plainDate, withUnit } from "./formats.ts";
import type { ByLanguage, Language, Sentences } from "./language.ts";

export type Verdict = SnapshotDecision["verdict"];

/** The verdicts, word for word. No other words are used for them anywhere. */
export const verdictWords: Record<Verdict, string> = {
  above: "above the limit",
  below: "below the limit",
  "too-close": "too close to call",
  "not-detected": "not detected",
  "cannot-say": "cannot be compared",
};

/** How far the limit itself was checked against the rule's own text. */
export const checkedText: Record<SnapshotDecision["checked"], string> = {
  verified: "read in the rule's own text",
  "second-hand": "read in a text about the rule, not in the rule itself",
  "from memory": "from memory, not checked against the rule",
};

/** Which day's rules the verdict goes by. A published page stays as it is, so "today" would soon be wrong. */
export const whichDayText: Record<SnapshotDecision["which"], string> = {
  "test-day": "the day of the test",
  today: "the day this page was made",
  both: "the day of the test; the same on the day this page was made",
};

const english = {
  verdicts: verdictWords,
  thatItIsAbove: (chances: string) => `${chances} that it is above`,
  testDayRules: (day: string) => `; by the rules of the day of the test, ${day}`,
  laterRules: (day: string) => `; by the rules of ${day}, after the test`,
  /** Said after a limit that is only held beside the value. */
  reference: " (only to compare; this limit does not apply here)",
  referenceBeside: " (only to compare)",
  checked: checkedText,
  whichDay: whichDayText,
};
export type VerdictSentences = Sentences<typeof english>;
export const verdictsIn: ByLanguage<VerdictSentences> = { en: english, es: spanish };

type Named = Pick<SnapshotDecision, "title" | "jurisdiction">;

/** A limit's title and place in the language of the page; one from a newer table is shown as it stands. */
export const limitTitle = (title: string, language: Language = "en"): string =>
  language === "en" ? title : (limitTitles[title] ?? title);
export const placeName = (place: string, language: Language = "en"): string =>
  language === "en" ? place : (placeNames[place] ?? place);

/** "United States, Lead in keys": the place comes first where the title does not say it. */
export function placedTitle({ title, jurisdiction }: Named, language: Language = "en"): string {
  const words = limitTitle(title, language);
  return title.includes(jurisdiction) ? words : `${placeName(jurisdiction, language)}, ${words}`;
}

/**
 * A limit's name and number: "US children's products, 100 mg/kg". The place comes first where the title does not say it, and a
 * title that ends in its own number ("…, 100") does not say it twice.
 */
export function limitName(
  limit: Pick<SnapshotDecision, "title" | "jurisdiction" | "value" | "unit">,
  language: Language = "en",
): string {
  const number = limit.value === null ? null : String(limit.value);
  const ending = number === null ? "" : `, ${number}`;
  const named = placedTitle(limit, language);
  const once = ending !== "" && limit.title.endsWith(ending) ? named.slice(0, -ending.length) : named;
  return number === null ? named : `${once}, ${withUnit(number, limit.unit, language)}`;
}

/** What stands in brackets after the verdict: how sure it is. Null where no probability was worked out. */
export function sureness(
  decision: Pick<SnapshotDecision, "verdict" | "probabilityAbove">,
  language: Language = "en",
): string | null {
  const p = decision.probabilityAbove;
  if (p === null) return null;
  switch (decision.verdict) {
    case "above":
      return chancesText(p, language);
    case "below":
      return chancesText(1 - p, language);
    case "too-close":
    case "not-detected":
      return verdictsIn[language].thatItIsAbove(chancesText(p, language));
    case "cannot-say":
      return null;
  }
}

/**
 * The verdict with its probability and its limit's name, in one line.
 *
 * @example
 * "above the limit (at least 99 chances in 100): US children's products, 100 mg/kg"
 * "too close to call (about 72 chances in 100 that it is above): US paint on children's goods, 90 mg/kg"
 * "not detected (below 5 mg/kg; at most 1 chance in 100 that it is above): EU cadmium in plastics, 100 mg/kg"
 */
export function verdictText(decision: SnapshotDecision, result: SnapshotResult, language: Language = "en"): string {
  const words = verdictsIn[language];
  const bound = decision.verdict === "not-detected" ? boundText(result, language) : null;
  const inside = [bound, sureness(decision, language)].filter((text) => text).join("; ");
  const verdict = words.verdicts[decision.verdict];
  const reference = decision.applies === "for-reference" ? words.reference : "";
  return `${verdict}${inside === "" ? "" : ` (${inside})`}: ${limitName(decision, language)}${reference}${dayNote(decision, language)}`;
}

/**
 * Said after a verdict by a limit that did not stand alike on the day of the test and on the day of judging; empty where it did.
 *
 * @example "; by the rules of the day of the test, 1 June 2018"
 * @example "; by the rules of 24 November 2026, after the test"
 */
export const dayNote = ({ which, day }: Pick<SnapshotDecision, "which" | "day">, language: Language = "en"): string =>
  which === "both"
    ? ""
    : which === "test-day"
      ? verdictsIn[language].testDayRules(plainDate(day, language))
      : verdictsIn[language].laterRules(plainDate(day, language));

/** A limit's name where its verdict stands beside it: "US children's products, 100 mg/kg (only to compare)". */
export const limitBeside = (decision: SnapshotDecision, language: Language = "en"): string =>
  `${limitName(decision, language)}${decision.applies === "for-reference" ? verdictsIn[language].referenceBeside : ""}`;
