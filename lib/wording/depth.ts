import type { SnapshotDepth, SnapshotResult } from "../publication/snapshot.ts";
import { elementName } from "./elements.ts";
import { significant, withUnit } from "./formats.ts";
import { labelOf, materialLabels } from "./labels.ts";

/** Two digits where the first is a 1, else one: a depth made from a typical recipe is no finer than that. */
export function roughly(value: number): string {
  const one = significant(value, 1);
  return value > 0 && /^[0.]*1/.test(significant(value, 2)) ? significant(value, 2) : one;
}

/** "The analyser sees lead about 0.9 mm deep in glaze." */
export const depthSentence = (element: string, { material, mm }: Pick<SnapshotDepth, "material" | "mm">): string =>
  `The analyser sees ${elementName(element)} about ${withUnit(roughly(mm), "mm")} deep in ${inMaterial(material)}.`;

/** What the depth was made from, so that nobody takes it for a measurement. */
export const depthCaution =
  "This depth is worked out for a typical recipe of the material; the real one can be more or less.";

/** What the part's own thickness means beside it; null where the thickness is not known. */
export function thicknessSentence({ ofThick, share }: Pick<SnapshotDepth, "ofThick" | "share">): string | null {
  if (ofThick === null) return null;
  if (ofThick >= share) return "The part is thicker than that, so more of it would not change the number.";
  const part =
    ofThick < 0.01 ? "less than 1 in 100 parts" : `about ${Math.min(98, Math.round(ofThick * 100))} in 100 parts`;
  return `The part is thinner than that: it gives ${part} of the signal that a thick one would, and the analyser also sees what lies behind it.`;
}

/** The depth, the thickness beside it and the caution as the page prints them; null where no depth is known. */
export function depthWords({ element, depth }: Pick<SnapshotResult, "element" | "depth">): string | null {
  if (!depth) return null;
  return [depthSentence(element, depth), thicknessSentence(depth), depthCaution].filter((s) => s !== null).join(" ");
}

const acronyms: Record<string, string> = { pvc: "vinyl (PVC)", abs: "ABS plastic" };
const inMaterial = (material: string): string => acronyms[material] ?? labelOf(materialLabels, material).toLowerCase();
