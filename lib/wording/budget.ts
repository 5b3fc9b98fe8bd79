import { budgetWords as spanish } from "./es/budget.ts";
import { readable } from "./labels.ts";
import type { ByLanguage, Language } from "./language.ts";

/** Names of what the uncertainty is made of, by code. */
const names: Record<string, string> = {
  "scatter-and-counting": "Spread between spots, and counting",
  scatter: "Spread between spots",
  counting: "Counting in the analyser",
  calibration: "Calibration of the analyser",
  "certified-value": "Certified value of the check standard",
  recovery: "What the check standard showed",
  "matrix-geometry": "Material and shape of the part",
  matrix: "Material of the part",
  geometry: "Shape of the part",
  thickness: "Thickness of the part",
};

/** Where a contribution comes from, by code; a source written out by a person is shown as it stands. */
const sources: Record<string, string> = {
  "instrument-default": "stated by the tester for this analyser; no check standard has shown it yet",
  "check-standard-certificate": "the certificate of the check standard",
  "check-standard-difference":
    "the check standard was read so far from its certified value; readings are not corrected for it",
  "check-standard-corrected": "the readings of the check standard, by which these readings are corrected",
  "one-spot": "the readings at the one spot",
  "random-effects": "the spots and how much they differ",
  lognormal: "the spots and how much they differ, as amounts that spread more to the high side",
  "censored-normal": "the spots, those below detection counted as such",
  "censored-lognormal": "the spots, those below detection counted as such",
  "mean-of-spots": "how much the spots differ; the file gives no errors",
};
/** How a contribution was found (GUM 4.2 and 4.3). */
export const evaluationWords: Record<"A" | "B", string> = {
  A: "from the readings themselves (type A)",
  B: "from other knowledge (type B)",
};

export type BudgetWords = {
  names: Record<string, string>;
  sources: Record<string, string>;
  evaluation: Record<"A" | "B", string>;
  underOne: string;
  shared: (session: string) => string;
};
export const budgetIn: ByLanguage<BudgetWords> = {
  en: {
    names,
    sources,
    evaluation: evaluationWords,
    underOne: "under 1 %",
    shared: (session) =>
      `; the same for every result of the session ${session}, so it is left out where two of them are compared`,
  },
  es: spanish,
};

/** "Calibration of the analyser" for "calibration"; a code without a name as it stands. */
export const contributionName = (code: string, language: Language = "en"): string =>
  budgetIn[language].names[code] ?? readable(code);

/** "87 %" of the variance; at least "under 1 %" where it is small and not nothing. */
export const shareText = (share: number, language: Language = "en"): string =>
  share > 0 && share < 0.01 ? budgetIn[language].underOne : `${Math.round(share * 100)} %`;

/** `shared`: the session whose results all have it in common, so that it cancels where two of them are compared. */
export const contributionSource = (source: string, shared?: string, language: Language = "en"): string =>
  `${budgetIn[language].sources[source] ?? source}${shared === undefined ? "" : budgetIn[language].shared(shared)}`;
