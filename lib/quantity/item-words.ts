/** The closed lists an item and its parts are described with. Labels for people stand in lib/wording. */
export const itemCategories = [
  "mug-or-cup",
  "plate-or-bowl",
  "pot-or-pan",
  "baking-dish",
  "cutlery-or-utensil",
  "glassware",
  "food-storage",
  "toy",
  "soft-toy-or-textile",
  "bib-or-baby-gear",
  "puzzle-or-blocks",
  "jewellery-or-key-ring",
  "ornament",
  "other",
] as const;
export type ItemCategory = (typeof itemCategories)[number];

export const ageGroups = ["child-under-3", "child-3-to-12", "teen", "adult", "unknown"] as const;
export type AgeGroup = (typeof ageGroups)[number];

export const materials = [
  "glaze",
  "enamel",
  "paint",
  "brass",
  "zinc-alloy",
  "solder",
  "steel",
  "aluminium",
  "copper",
  "pvc",
  "abs",
  "other-plastic",
  "glass",
  "crystal",
  "ceramic-body",
  "wood",
  "textile",
  "textile-print",
  "other",
] as const;
export type Material = (typeof materials)[number];
