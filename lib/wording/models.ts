import type { SnapshotResult } from "../publication/snapshot.ts";
import { failedCheckReason } from "../reconcile/part-inputs.ts";
import type { ReconcileResult } from "../reconcile/types.ts";
import { modelSentences as spanish } from "./es/models.ts";
import { counted } from "./formats.ts";
import { readable } from "./labels.ts";
import type { ByLanguage, Language } from "./language.ts";

type Model = ReconcileResult["model"];

/** How the spots became one number, by the model used: one plain sentence each, with the field's own name at its end. */
const sentences: Record<Model, string> = {
  "one-spot": "Only one spot was measured, so its value stands for the part.",
  "random-effects":
    "The spots were put together so that surer spots count for more, and the range allows for the spots differing (random effects, Paule–Mandel with Hartung–Knapp).",
  lognormal:
    "The spots differ a lot, so the range reaches further up than down (lognormal random effects, profile likelihood).",
  "censored-normal":
    "Some spots were below what the analyser can see; they count as “below that”, never as zero (censored normal, profile likelihood).",
  "censored-lognormal":
    "The spots differ a lot and some were below what the analyser can see; they count as “below that”, never as zero (censored lognormal, profile likelihood).",
  "mean-of-spots":
    "The file gives no errors, so the plain mean of the spots is stated, and its range comes from how much they differ.",
  none: "No single number could be stated.",
};

/** The name of a model in one or two words, for a table. */
export const modelLabels: Record<Model, string> = {
  "one-spot": "One spot",
  "random-effects": "Random effects",
  lognormal: "Lognormal",
  "censored-normal": "Censored normal",
  "censored-lognormal": "Censored lognormal",
  "mean-of-spots": "Mean of spots",
  none: "None",
};

const notes: Record<string, string> = {
  "interval-from-zero": "The range would reach below zero. No content can, so it is stated from zero.",
  "interval-to-whole":
    "The range would reach beyond the whole of the part. It is cut there, which says that the spots set no useful upper end: more spots are needed.",
  "model-cannot-serve":
    "The spots differ so much, and are so few, that no range can be worked out. We state the lowest and the highest spot.",
  "no-upper-bound": "No upper bound could be worked out from so few detections.",
  "non-detect-without-limit":
    "At least one spot was reported as not detected without saying below what, so no bound can be stated from it.",
};

const listedAllTheSame = (n: number): string => `${n === 1 ? "It is" : "They are"} listed all the same.`;
const steps = {
  took: (readings: number, spots: number): string =>
    `We took ${counted(readings, "reading")} at ${counted(spots, "spot")}.`,
  sameSpot:
    "Readings at the same spot became one value for that spot. If they differ by more than their errors explain, the spot's error grew to match.",
  notDetected:
    "Nothing was seen at any spot. We state the highest of the spots' detection limits: every spot was below it.",
  fewSpots:
    "So few spots may have missed places that hold more, so a limit is held against a higher bound, which allows for a part as uneven as policy has it.",
  notQuantified:
    "It was seen at too few spots to put one number on the part. We say where it was seen, and how much there can be at most.",
  budget: "Then we added the other sources of error, such as the analyser's calibration.",
  range: "The range is made so that it holds the true value about 19 times out of 20.",
  byPerson: (n: number): string =>
    `A person set ${counted(n, "reading")} aside and wrote down why. ${listedAllTheSame(n)}`,
  nearFailedCheck: (n: number): string =>
    `${counted(n, "reading")} near a failed check of the analyser ${n === 1 ? "was" : "were"} left out. ${listedAllTheSame(n)}`,
  noneLeftOut: "No reading was left out.",
  corrected: "Readings were corrected for what the analyser read on a check standard of the same material.",
  method: (name: string, version: number | string, policy: number | string): string =>
    `${name}, version ${version}, policy ${policy}`,
};

export type ModelSentences = {
  sentences: Record<Model, string>;
  labels: Record<Model, string>;
  notes: Record<string, string>;
  steps: typeof steps;
};
export const modelsIn: ByLanguage<ModelSentences> = {
  en: { sentences, labels: modelLabels, notes, steps },
  es: spanish,
};

/** A note of reconcile as a sentence; a code without one as it stands. */
export const noteSentence = (code: string, language: Language = "en"): string =>
  modelsIn[language].notes[code] ?? `${readable(code)}.`;

/**
 * What was done to the readings of one result, step by step in plain words. The steps are those of the method
 * `result.method` names; the methods page tells them in full.
 */
export function methodSteps(result: SnapshotResult, language: Language = "en"): string[] {
  const { counts } = result;
  const { steps: say, sentences: models } = modelsIn[language];
  const byModel: Record<string, string> = models;
  const few = result.upperBound !== null && result.below !== null && result.upperBound > result.below;
  const joined =
    result.state === "not-detected"
      ? `${say.notDetected}${few ? ` ${say.fewSpots}` : ""}`
      : result.state === "not-quantified"
        ? say.notQuantified
        : (byModel[result.model] ?? `${readable(result.model)}.`);
  return [
    say.took(counts.readings, counts.spots),
    ...leftOut(result, language),
    say.sameSpot,
    joined,
    ...(result.budget.length > 0 ? [say.budget] : []),
    ...(result.U !== null || result.interval !== null ? [say.range] : []),
    ...result.notes.map((code) => noteSentence(code, language)),
  ];
}

/** Who left out how many readings, and what the sessions' checks changed. */
function leftOut({ counts, readings }: SnapshotResult, language: Language): string[] {
  const say = modelsIn[language].steps;
  const failed = readings.filter((r) => r.setAside?.reason === failedCheckReason).length;
  const byPerson = counts.setAside - failed;
  const factors = new Set(readings.flatMap((r) => r.factor ?? []));
  return [
    ...(byPerson > 0 ? [say.byPerson(byPerson)] : []),
    ...(failed > 0 ? [say.nearFailedCheck(failed)] : []),
    ...(counts.setAside === 0 ? [say.noneLeftOut] : []),
    ...(factors.size > 0 ? [say.corrected] : []),
  ];
}

/** "cupboard-assay-reconcile, version 1, policy 1". */
export const methodName = ({ method }: Pick<SnapshotResult, "method">, language: Language = "en"): string =>
  modelsIn[language].steps.method(method.name, method.version, method.policy);
