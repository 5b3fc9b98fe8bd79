import type { Material } from "../quantity/item-words.ts";
import { infiniteThickness, signalShare, usualShare } from "./depth.ts";
import { type LineName, lineNames, lineOf } from "./mass-attenuation.ts";
import { hasTypicalRecipe } from "./matter.ts";

/** How deep an element is read in a material: `share` of the signal comes from the top `mm`. */
export type ReadingDepth = { material: Exclude<Material, "other">; line: LineName; mm: number; share: number };

/**
 * The depth from which 99 % of an element's signal comes in a listed material of typical recipe and density, in and out
 * at 45°. Of the element's lines the one that is seen deepest is taken: which one an analyser reads is not in its file,
 * and a part thicker than this is thick enough for any. Null for "other" and for an element without a line in the table.
 *
 * @example readingDepth("glaze", "Pb") // { material: "glaze", line: "Pb Lβ", mm: 0.936, share: 0.99 }
 */
export function readingDepth(material: string, element: string): ReadingDepth | null {
  if (!hasTypicalRecipe(material)) return null;
  const depths = lineNames
    .filter((line) => lineOf(line).element === element)
    .map((line) => ({ material, line, mm: infiniteThickness(material, line), share: usualShare }));
  return depths.reduce<ReadingDepth | null>((deepest, one) => (deepest && deepest.mm >= one.mm ? deepest : one), null);
}

/** `readingDepth` in mm alone, for the flag "not-infinitely-thick"; null where nothing is known. */
export const infiniteThicknessMm = (material: string, element: string): number | null =>
  readingDepth(material, element)?.mm ?? null;

/** Share (0 … 1) of a thick part's signal that a part of this thickness gives, at the line of its reading depth. */
export const shareOfThick = ({ material, line }: ReadingDepth, thicknessMm: number): number =>
  signalShare(thicknessMm, material, line);
