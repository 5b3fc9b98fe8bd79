import type { FamilyChange } from "../limits/changes-for.ts";
import { limitChangeSentences as spanish } from "./es/limit-changes.ts";
import { plainDate } from "./formats.ts";
import type { ByLanguage, Language, Sentences } from "./language.ts";
import { limitNumber } from "./limit-words.ts";
import { limitName } from "./verdicts.ts";

/** The words about limits that changed since an item was tested. */
export const changesPanel = {
  title: "Limits since the test",
  caution:
    "The verdicts on this page hold the result against the limits of the day of the test and of the day of publication. What changed after that is only listed here.",
  beside: "only to compare",
  noneSince: (tested: string): string => `The test was on ${tested}. No limit has changed since.`,
  noneFromTo: (tested: string, today: string): string =>
    `No limit that we know for these parts and elements has changed from the day of the test, ${tested}, to ${today}.`,
  lead: (tested: string): string => `These limits changed after the day of the test, ${tested}:`,
  replaced: (day: string, after: string, before: string): string => `On ${day}: ${after}. Before, it was ${before}.`,
  begun: (day: string, limit: string): string => `New on ${day}: ${limit}.`,
  changed: (day: string): string => `Changed on ${day}.`,
  ended: (day: string, limit: string): string => `Ended on ${day}: ${limit}.`,
  about: (what: string): string => `For ${what}.`,
  elementIn: (element: string, part: string): string => `${element} in ${part}`,
} as const;
export type LimitChangeSentences = Sentences<typeof changesPanel>;
export const changesPanelIn: ByLanguage<LimitChangeSentences> = { en: changesPanel, es: spanish };

/** "None of the limits for these parts and elements has changed from the day of the test, 14 November 2026, to 24 November 2026." */
export const noChange = (testedOn: string, today: string, language: Language = "en"): string => {
  const say = changesPanelIn[language];
  const tested = plainDate(testedOn, language);
  return testedOn >= today ? say.noneSince(tested) : say.noneFromTo(tested, plainDate(today, language));
};

export const changesLead = (testedOn: string, language: Language = "en"): string =>
  changesPanelIn[language].lead(plainDate(testedOn, language));

/**
 * One change in one sentence.
 *
 * @example "On 14 August 2011: US, Total lead in children's products, 100 mg/kg. Before, it was 300 mg/kg."
 * @example "New on 1 January 2026: Washington, Lead in aluminium and brass cookware, 2026, 90 mg/kg."
 * @example "Ended on 6 January 2020: …"
 */
export function changeSentence({ before, after, on, applies }: FamilyChange, language: Language = "en"): string {
  const say = changesPanelIn[language];
  const note = applies === "for-reference" ? ` (${say.beside})` : "";
  const day = plainDate(on, language);
  const named = (limit: NonNullable<typeof after>): string => `${limitName(limit, language)}${note}`;
  if (after !== null && before !== null) return say.replaced(day, named(after), limitNumber(before, language));
  if (after !== null) return say.begun(day, named(after));
  return before === null ? say.changed(day) : say.ended(day, named(before));
}
