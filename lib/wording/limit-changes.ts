import type { FamilyChange } from "../limits/changes-for.ts";
import { plainDate } from "./formats.ts";
import { limitNumber } from "./limit-words.ts";
import { limitName } from "./verdicts.ts";

/** The words about limits that changed since an item was tested. */
export const changesPanel = {
  title: "Limits since the test",
  caution:
    "The verdicts on this page hold the result against the limits of the day of the test and of the day of publication. What changed after that is only listed here.",
  beside: "only to compare",
} as const;

/** "None of the limits for these parts and elements has changed from the day of the test, 14 November 2026, to 24 November 2026." */
export const noChange = (testedOn: string, today: string): string =>
  testedOn >= today
    ? `The test was on ${plainDate(testedOn)}. No limit has changed since.`
    : `No limit that we know for these parts and elements has changed from the day of the test, ${plainDate(testedOn)}, to ${plainDate(today)}.`;

export const changesLead = (testedOn: string): string =>
  `These limits changed after the day of the test, ${plainDate(testedOn)}:`;

/**
 * One change in one sentence.
 *
 * @example "On 14 August 2011: US, Total lead in children's products, 100 mg/kg. Before, it was 300 mg/kg."
 * @example "New on 1 January 2026: Washington, Lead in aluminium and brass cookware, 2026, 90 mg/kg."
 * @example "Ended on 6 January 2020: …"
 */
export function changeSentence({ before, after, on, applies }: FamilyChange): string {
  const note = applies === "for-reference" ? ` (${changesPanel.beside})` : "";
  const day = plainDate(on);
  if (after !== null && before !== null)
    return `On ${day}: ${limitName(after)}${note}. Before, it was ${limitNumber(before)}.`;
  if (after !== null) return `New on ${day}: ${limitName(after)}${note}.`;
  return before === null ? `Changed on ${day}.` : `Ended on ${day}: ${limitName(before)}${note}.`;
}
