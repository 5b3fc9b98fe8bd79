import type { SnapshotDepth, SnapshotResult } from "../publication/snapshot.ts";
import { elementName } from "./elements.ts";
import { depthSentences as spanish } from "./es/depth.ts";
import { significant, withUnit } from "./formats.ts";
import { labelOf, labelsIn } from "./labels.ts";
import type { ByLanguage, Language, Sentences } from "./language.ts";

const english = {
  sees: (element: string, depth: string, material: string) =>
    `The analyser sees ${element} about ${depth} deep in ${material}.`,
  caution: "This depth is worked out for a typical recipe of the material; the real one can be more or less.",
  thicker: "The part is thicker than that, so more of it would not change the number.",
  thinner: (share: string) =>
    `The part is thinner than that: it gives ${share} of the signal that a thick one would, and the analyser also sees what lies behind it.`,
  underOne: "less than 1 in 100 parts",
  about: (parts: number) => `about ${parts} in 100 parts`,
  /** Materials that begin with letters of their own inside a sentence. */
  materials: { pvc: "vinyl (PVC)", abs: "ABS plastic" },
};
export type DepthSentences = Sentences<typeof english>;
const depthIn: ByLanguage<DepthSentences> = { en: english, es: spanish };

/** Two digits where the first is a 1, else one: a depth made from a typical recipe is no finer than that. */
export function roughly(value: number): string {
  const one = significant(value, 1);
  return value > 0 && /^[0.]*1/.test(significant(value, 2)) ? significant(value, 2) : one;
}

/** "The analyser sees lead about 0.9 mm deep in glaze." */
export const depthSentence = (
  element: string,
  { material, mm }: Pick<SnapshotDepth, "material" | "mm">,
  language: Language = "en",
): string =>
  depthIn[language].sees(
    elementName(element, language),
    withUnit(roughly(mm), "mm", language),
    inMaterial(material, language),
  );

/** What the depth was made from, so that nobody takes it for a measurement. */
export const depthCaution = english.caution;

/** What the part's own thickness means beside it; null where the thickness is not known. */
export function thicknessSentence(
  { ofThick, share }: Pick<SnapshotDepth, "ofThick" | "share">,
  language: Language = "en",
): string | null {
  const say = depthIn[language];
  if (ofThick === null) return null;
  if (ofThick >= share) return say.thicker;
  return say.thinner(ofThick < 0.01 ? say.underOne : say.about(Math.min(98, Math.round(ofThick * 100))));
}

/** The depth, the thickness beside it and the caution as the page prints them; null where no depth is known. */
export function depthWords(
  { element, depth }: Pick<SnapshotResult, "element" | "depth">,
  language: Language = "en",
): string | null {
  if (!depth) return null;
  return [depthSentence(element, depth, language), thicknessSentence(depth, language), depthIn[language].caution]
    .filter((s) => s !== null)
    .join(" ");
}

const inMaterial = (material: string, language: Language): string => {
  const own: Record<string, string> = depthIn[language].materials;
  return own[material] ?? labelOf(labelsIn[language].material, material).toLowerCase();
};
