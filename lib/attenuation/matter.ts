import { DomainError } from "../quantity/domain-error.ts";
import { type ElementFractions, elementFractions } from "../quantity/element-fractions.ts";
import type { Material } from "../quantity/item-words.ts";
import { typicalMaterial, type typicalMaterials } from "../quantity/typical-materials.ts";

/** What X-rays pass through: mass fractions by symbol, adding to 1, and a density in g/cm³. */
export type Matter = { fractions: ElementFractions; density: number };

const known = new Map<string, Matter>();

/**
 * A listed material in its typical recipe and density (`typicalMaterials`, each with its source), or the matter given.
 * Refuses (DomainError) `no-typical-material` ("other"), `density-not-positive`, `fractions-do-not-add-up` (more than
 * 1e-4 from 1: tables round) and `not-a-fraction`.
 *
 * @example matterOf("aluminium") // { fractions: { Al: 1 }, density: 2.7 }
 */
export function matterOf(material: Material | Matter): Matter {
  if (typeof material !== "string") return checked(material);
  const kept = known.get(material);
  if (kept) return kept;
  const typical = typicalMaterial(material);
  if (!typical)
    throw new DomainError("no-typical-material", "nothing is known of what this material is made of", material);
  const matter = { fractions: elementFractions(typical.ingredients), density: typical.density };
  known.set(material, matter);
  return matter;
}

/** Whether a word names a material of which a recipe is known. */
export const hasTypicalRecipe = (material: string): material is keyof typeof typicalMaterials =>
  typicalMaterial(material) !== null;

function checked(matter: Matter): Matter {
  if (!(Number.isFinite(matter.density) && matter.density > 0))
    throw new DomainError("density-not-positive", "a density must be above zero", matter.density);
  let sum = 0;
  for (const fraction of Object.values(matter.fractions)) {
    if (!(fraction >= 0 && fraction <= 1))
      throw new DomainError("not-a-fraction", "a mass fraction lies within 0 and 1", fraction);
    sum += fraction;
  }
  if (Math.abs(sum - 1) > 1e-4)
    throw new DomainError("fractions-do-not-add-up", "the mass fractions must add to 1", sum);
  return matter;
}
