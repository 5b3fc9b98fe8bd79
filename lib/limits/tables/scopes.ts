import type { AgeGroup, ItemCategory, Material } from "../../quantity/item-words.ts";
import type { Criteria } from "../types.ts";

/** Groups of the registry's own words that several limits' scopes share. */
export const upTo12: readonly AgeGroup[] = ["child-under-3", "child-3-to-12"];
export const under3: readonly AgeGroup[] = ["child-under-3"];

export const toys: readonly ItemCategory[] = ["toy", "soft-toy-or-textile", "puzzle-or-blocks"];
export const plainToys: readonly ItemCategory[] = ["toy", "puzzle-or-blocks"];
export const cups: readonly ItemCategory[] = ["mug-or-cup"];
export const cookware: readonly ItemCategory[] = ["pot-or-pan", "baking-dish"];
export const jewellery: readonly ItemCategory[] = ["jewellery-or-key-ring"];

export const metals: readonly Material[] = ["brass", "zinc-alloy", "solder", "steel", "aluminium", "copper"];
export const plastics: readonly Material[] = ["pvc", "abs", "other-plastic"];
export const ceramic: readonly Material[] = ["glaze", "ceramic-body"];

export const softToyUnsure = {
  categories: ["soft-toy-or-textile"] as readonly ItemCategory[],
  why: "soft toys are covered; a textile that is not a toy is not, and the record's class holds both",
};
export const jewelleryUnsure = {
  categories: jewellery,
  why: "jewellery is covered and a key ring is not; the record's class holds both",
};
export const teenUnsure = {
  ages: ["teen"] as readonly AgeGroup[],
  why: "toys for children under 14 are covered; the record's age group also holds older ones",
};

/** Packaging rules: of the registry's classes only food storage may be packaging, and the record does not say. */
export const packagingCriteria: readonly Criteria[] = [
  {
    categories: [],
    categoriesUnsure: {
      categories: ["food-storage"],
      why: "packaging is covered; a box sold empty for the kitchen is not",
    },
  },
];
