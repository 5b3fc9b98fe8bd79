import type { SnapshotResult } from "../publication/snapshot.ts";
import type { AgeGroup, ItemCategory, Material } from "../quantity/item-words.ts";
import type { QuantityKind } from "../quantity/kinds.ts";
import { labels as spanish } from "./es/labels.ts";
import type { ByLanguage, Sentences } from "./language.ts";

/** Names for people of every closed list. The compiler keeps each list whole. */
export const categoryLabels: Record<ItemCategory, string> = {
  "mug-or-cup": "Mug or cup",
  "plate-or-bowl": "Plate or bowl",
  "pot-or-pan": "Pot or pan",
  "baking-dish": "Baking dish",
  "cutlery-or-utensil": "Cutlery or kitchen tool",
  glassware: "Glassware",
  "food-storage": "Food storage",
  toy: "Toy",
  "soft-toy-or-textile": "Soft toy or textile",
  "bib-or-baby-gear": "Bib or baby gear",
  "puzzle-or-blocks": "Puzzle or blocks",
  "jewellery-or-key-ring": "Jewellery or key ring",
  ornament: "Ornament",
  other: "Something else",
};

export const ageGroupLabels: Record<AgeGroup, string> = {
  "child-under-3": "Children under 3",
  "child-3-to-12": "Children from 3 to 12",
  teen: "Teenagers",
  adult: "Adults",
  unknown: "Not known",
};

export const materialLabels: Record<Material, string> = {
  glaze: "Glaze",
  enamel: "Enamel",
  paint: "Paint",
  brass: "Brass",
  "zinc-alloy": "Zinc alloy",
  solder: "Solder",
  steel: "Steel",
  aluminium: "Aluminium",
  copper: "Copper",
  pvc: "Vinyl (PVC)",
  abs: "ABS plastic",
  "other-plastic": "Other plastic",
  glass: "Glass",
  crystal: "Crystal glass",
  "ceramic-body": "Ceramic body",
  wood: "Wood",
  textile: "Textile",
  "textile-print": "Print on textile",
  other: "Something else",
};

export const formLabels: Record<"bulk" | "coating", string> = {
  bulk: "Solid through and through",
  coating: "Layer on something else",
};

export const quantityLabels: Record<QuantityKind, string> = {
  "bulk-mass-fraction": "Content of a solid part",
  "coating-mass-fraction": "Content of a coating",
  "coating-areal": "Amount on an area of coating",
  "dust-loading": "Amount in settled dust, by area",
  leachate: "Amount that came out into a liquid",
  migration: "Amount that moves out of the material",
  intake: "Amount taken in each day",
  mass: "Mass",
  "soil-mass-fraction": "Content of soil",
  "water-concentration": "Amount in drinking water",
  "food-mass-fraction": "Content of food",
};

/** Units said out: read aloud, and explained once on each page. */
export const unitWords: Record<string, string> = {
  "mg/kg": "milligrams in each kilogram",
  ppm: "parts in a million, by weight",
  "%": "parts in a hundred, by weight",
  "mg/cm²": "milligrams on each square centimetre",
  "µg/cm²": "millionths of a gram on each square centimetre",
  "µg/ft²": "millionths of a gram on each square foot",
  "µg/mL": "millionths of a gram in each millilitre",
  "µg/day": "millionths of a gram each day",
  "mg/L": "milligrams in each litre",
  "µg/kg": "millionths of a gram in each kilogram",
  mg: "milligrams",
};

export type Fitness = "fit" | "fit-with-correction" | "not-fit" | "not-shown";
export const fitnessLabels: Record<Fitness, string> = {
  fit: "Checked, and fit to measure",
  "fit-with-correction": "Checked, and corrected",
  "not-fit": "Checked, and found not fit",
  "not-shown": "Not shown: no check standard was read",
};

export const stateLabels: Record<SnapshotResult["state"], string> = {
  quantified: "Measured",
  "range-only": "Measured, differing from spot to spot",
  "not-quantified": "Seen, but too little to put a number on",
  "not-detected": "Not detected",
  "no-readings": "No result",
};

export type RevisionKind = "first" | "correction" | "update" | "withdrawal";
export const revisionLabels: Record<RevisionKind, string> = {
  first: "First publication",
  correction: "Correction of an error",
  update: "Update with new readings",
  withdrawal: "Withdrawn",
};

export const roleLabels: Record<"owner" | "tester" | "reviewer", string> = {
  owner: "Owner",
  tester: "Tester",
  reviewer: "Reviewer",
};

const english = {
  category: categoryLabels,
  ageGroup: ageGroupLabels,
  material: materialLabels,
  form: formLabels,
  quantity: quantityLabels,
  unit: unitWords,
  fitness: fitnessLabels,
  state: stateLabels,
  revision: revisionLabels,
};
export type Labels = Sentences<typeof english>;
/** The lists that readers' pages print, in each language. */
export const labelsIn: ByLanguage<Labels> = { en: english, es: spanish };

/** What a person must see where a code has no name yet: the code itself, its hyphens as spaces. */
export const readable = (code: string): string => {
  const words = code.replaceAll("-", " ");
  return `${words.charAt(0).toUpperCase()}${words.slice(1)}`;
};

/** The label of a code from one of the lists above; a code from a newer version is shown as it stands, never hidden. */
export const labelOf = (labels: Readonly<Record<string, string>>, code: string): string =>
  Object.hasOwn(labels, code) ? labels[code]! : readable(code);
