import type { SnapshotOtherTest } from "../publication/snapshot.ts";
import { elementName } from "./elements.ts";
import { otherTestSentences as spanish } from "./es/other-tests.ts";
import { amountText } from "./formats.ts";
import type { ByLanguage, Language, Sentences } from "./language.ts";
import { allowedText, type ProblemWords, quoted } from "./problem-sentence.ts";

export const otherTestLabels: Record<SnapshotOtherTest["kind"], string> = {
  wipe: "Wipe of a surface",
  leachate: "What came out into a liquid",
  laboratory: "Result of a laboratory",
};

/** What each kind of test is, and what it is not, for whoever has only seen readings of an analyser. */
export const otherTestNotes: Record<SnapshotOtherTest["kind"], string> = {
  wipe: "A damp wipe takes up what is loose on a surface. It says what a hand would pick up, not what is in the object.",
  leachate:
    "A liquid stood in the object and was analysed. It says what came out under those conditions, not what is in it.",
  laboratory: "A piece or a sample was analysed in a laboratory. It says what that sample held.",
};

export const otherTestWords = {
  title: "Other tests",
  lead: "These are tests of other kinds. They are never mixed with the analyser’s readings, and each is held beside limits of its own kind only.",
  blank: "The laboratory’s blank",
  noUncertainty: "no uncertainty stated",
  none: "No wipe, leachate or laboratory result is written down.",
  noLimit: "No limit of this kind in our table covers it.",
  noFigure: "no figure",
  below: (amount: string): string => `below ${amount}`,
  uncertainty: (amount: string): string => `standard uncertainty ${amount}`,
  asWritten: "As the report writes it",
  areaWiped: "Area wiped",
  laboratory: "Laboratory",
  method: "Method",
  reportedOn: "Reported on",
  certificate: "Certificate",
  note: "Note",
  inForceOn: "In force on",
};
const english = { labels: otherTestLabels, notes: otherTestNotes, words: otherTestWords };
export type OtherTestSentences = Sentences<typeof english>;
export const otherTestsIn: ByLanguage<OtherTestSentences> = { en: english, es: spanish };

/** "below 25 µg/ft²", "41 µg/ft², standard uncertainty 3": what a test found, in the unit of its kind. */
export function otherTestText({ result }: Pick<SnapshotOtherTest, "result">, language: Language = "en"): string {
  const { words } = otherTestsIn[language];
  const amount = (value: number): string => amountText(value, result.unit, language);
  if (result.value === null) return result.below === null ? words.noFigure : words.below(amount(result.below));
  const u = result.u === null ? words.noUncertainty : words.uncertainty(amount(result.u));
  return `${amount(result.value)} (${u})`;
}

export const otherTestTitle = (test: Pick<SnapshotOtherTest, "kind" | "element">, language: Language = "en"): string =>
  `${otherTestsIn[language].labels[test.kind]}: ${elementName(test.element, language)}`;

/** What a tester wrote of a test and could not have. */
export const otherTestProblems: ProblemWords = {
  "test-value-unreadable": (p) =>
    `${quoted(p.found)} is no figure of a report. Write a number above zero, such as 12.5, or “< 0.5”, or “ND” with the reporting limit.`,
  "test-limit-unreadable": (p) => `${quoted(p.found)} is no reporting limit. Write a number above zero, such as 0.5.`,
  "test-limit-missing": (p) =>
    `${quoted(p.found)} says that nothing was found, but not how little would have been seen. Add the reporting limit from the report.`,
  "test-two-limits": (p) =>
    `The result says ${quoted(p.found)} and the reporting limit ${quoted(p.allowed)}. Which of the two does the report state?`,
  "test-uncertainty-unreadable": (p) =>
    `${quoted(p.found)} is no uncertainty. Write it in the unit of the result, or leave it empty where the report states none.`,
  "test-unit": (p) => `The unit ${quoted(p.found)} does not go with this kind of test.${allowedText(p)}`,
  "test-without-part": () =>
    "Say which part the sample came from or the liquid stood on. What a limit covers depends on the material.",
  "test-in-future": (p) => `The report cannot be dated ${p.found ?? "later than today"}, which is still to come.`,
  "unknown-test": (p) => `There is no such test ${quoted(p.found)}. Reload the page.`,
};
