import type { FlagCode } from "../reconcile/types.ts";
import { flagWords as spanish } from "./es/flags.ts";
import { readable } from "./labels.ts";
import type { ByLanguage, Language } from "./language.ts";

export type FlagWords = { label: string; sentence: string };

/** What each flag means for a reader. One plain sentence, and a label short enough for a table. */
export const flagWords: Record<FlagCode, FlagWords> = {
  "one-spot": {
    label: "One spot only",
    sentence: "Only one spot of this part was measured, so we cannot say how the rest of it is.",
  },
  "few-readings": {
    label: "Few readings",
    sentence: "There are fewer than three readings, so the result is less sure than it could be.",
  },
  "scatter-beyond-counting": {
    label: "Spots differ",
    sentence: "The spots differ by more than the analyser's own error can explain; the stated range takes that in.",
  },
  uneven: {
    label: "Uneven",
    sentence: "The amount differs a lot from spot to spot, so look at the range and the highest spot first.",
  },
  "outlier-candidate": {
    label: "One reading stands apart",
    sentence: "At least one reading stands far from the others; nobody removed it, and a person should look at it.",
  },
  "drift-in-session": {
    label: "Readings drifted",
    sentence: "The readings moved in one direction during the session, which can mean that the analyser drifted.",
  },
  "short-count": {
    label: "Short shot",
    sentence: "At least one shot was shorter than the time set for this analyser, so its error is larger.",
  },
  "check-missing": {
    label: "No check standard",
    sentence:
      "No check standard shows how well the analyser read this element that day, so its accuracy is taken from a stated default.",
  },
  "check-failed": {
    label: "Check failed",
    sentence:
      "The analyser read a check standard wrongly before or after some of these readings; they are left out, or the page says why they are used.",
  },
  "screening-only": {
    label: "Screening only",
    sentence: "The X‑rays also saw what lies under the coating, so the number is a guide and no exact content.",
  },
  "not-infinitely-thick": {
    label: "Thin part",
    sentence: "The part is thinner than the X‑rays reach, so the number can be too low or too high.",
  },
  "smaller-than-window": {
    label: "Smaller than the window",
    sentence: "The part is smaller than the analyser's window, so the analyser also saw what lies around it.",
  },
  "lead-arsenic-overlap": {
    label: "Lead hides arsenic",
    sentence: "Lead and arsenic look alike to the analyser; beside this much lead, an arsenic number means little.",
  },
  "outside-calibrated-range": {
    label: "Outside the calibrated range",
    sentence: "The value lies outside the range for which the analyser was calibrated.",
  },
  "error-unknown": {
    label: "Error not given",
    sentence: "The file gives no error for at least one reading, so its part of the range comes from the spread alone.",
  },
  "mixed-detection": {
    label: "Found in some spots",
    sentence:
      "It was found in some spots and not in others; the spots without it count as below their detection limit.",
  },
  "near-detection-limit": {
    label: "Near the detection limit",
    sentence: "The value lies close to the least the analyser can see, so it is less sure.",
  },
  "excluded-readings": {
    label: "Readings set aside",
    sentence:
      "At least one reading was left out, with the reason written beside it; the value with it is shown beside the result.",
  },
  "no-spots-named": {
    label: "Spots not named",
    sentence: "The file does not say where each shot was taken, so each one counts as a spot of its own.",
  },
};

export const flagWordsIn: ByLanguage<Record<FlagCode, FlagWords>> = { en: flagWords, es: spanish };

/** The words for a flag; a code from a newer version is shown as it stands, never hidden. */
export function wordsForFlag(code: string, language: Language = "en"): FlagWords {
  const words: Record<string, FlagWords> = flagWordsIn[language];
  return words[code] ?? { label: readable(code), sentence: `${readable(code)}.` };
}
