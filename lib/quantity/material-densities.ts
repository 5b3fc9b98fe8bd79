import type { Material } from "./item-words.ts";

/** How far a figure was checked; "not settled": a placeholder, and the page says so. */
export type DensityChecked = "verified" | "second-hand" | "from memory" | "not settled";

export type MaterialDensity = {
  id: string;
  name: string;
  /** g/cm³: a range within which it lies, or a figure with its standard uncertainty. */
  density: { min: number; max: number } | { value: number; u: number };
  source: string;
  checked: DensityChecked;
  /** The registry's material that it is a kind of; null for what no part is described as. */
  material: Material | null;
};

const memory = "from memory, no source read";
const tables = "tables of element densities, read in public physics data";

type Said = Pick<MaterialDensity, "source" | "checked">;
const fromTables: Said = { source: tables, checked: "second-hand" };
const fromMemory: Said = { source: memory, checked: "from memory" };
const crystalRule: Said = {
  source: "the lower end is the minimum of the European rule on crystal names, read; the upper end is from memory",
  checked: "from memory",
};

const entry = (
  id: string,
  name: string,
  material: Material | null,
  min: number,
  max: number,
  said: Said = fromMemory,
): MaterialDensity => ({ id, name, density: { min, max }, ...said, material });

/** Two tables of solder densities differ by up to 0.06; hence 0.03. */
const solder = (tin: number, lead: number, value: number): MaterialDensity => ({
  id: `solder-${tin}-${lead}`,
  name: `tin-lead solder ${tin}/${lead} (${tin} % tin, ${lead} % lead)`,
  density: { value, u: 0.03 },
  source: "a published table of solder alloys; u from its differences to a second table",
  checked: "verified",
  material: "solder",
});

/**
 * The one list of densities: the calculator offers all of it, and the range of a listed material is that of its entries
 * (`densityRangeOf`). In the order in which a person looks: metals, glass and ceramics, coats, plastics, the rest.
 */
export const materialDensities: readonly MaterialDensity[] = [
  entry("lead", "lead", null, 11.33, 11.35, { ...fromTables, source: `${tables} (11.33, 11.34 and 11.35)` }),
  entry("tin", "tin", "solder", 7.265, 7.31, { ...fromTables, source: `${tables} (7.265 to 7.31)` }),
  solder(63, 37, 8.4),
  solder(60, 40, 8.5),
  solder(55, 45, 8.68),
  solder(50, 50, 8.87),
  solder(45, 55, 9.07),
  solder(40, 60, 9.28),
  solder(90, 10, 7.55),
  entry("pewter", "pewter, modern to old leaded", null, 7.3, 8),
  entry("brass", "brass, also free-machining", "brass", 8.4, 8.7),
  entry("zinc-alloy", "die-cast zinc alloy", "zinc-alloy", 6.6, 6.8),
  entry("zinc", "zinc", "zinc-alloy", 7.11, 7.14, fromTables),
  entry("copper", "copper", "copper", 8.94, 8.96, fromTables),
  {
    id: "aluminium",
    name: "aluminium",
    density: { value: 2.7, u: 0.005 },
    source: `${tables}; u from its last digit`,
    checked: "second-hand",
    material: "aluminium",
  },
  entry("aluminium-alloy", "aluminium alloy, rolled or cast", "aluminium", 2.65, 2.8),
  entry("stainless-steel", "stainless steel", "steel", 7.9, 8),
  entry("steel", "plain steel", "steel", 7.8, 7.87),
  entry("iron", "iron", null, 7.86, 7.87, fromTables),
  entry("soda-lime-glass", "ordinary (soda-lime) glass", "glass", 2.45, 2.55, {
    source: "2.5 from memory; the range about it is our assumption",
    checked: "from memory",
  }),
  entry("lead-crystal", "lead crystal (24 % lead oxide or more)", "crystal", 2.9, 3.2, crystalRule),
  entry("full-lead-crystal", "full lead crystal (30 % lead oxide or more)", "crystal", 3, 3.2, crystalRule),
  entry("lead-glass", "dense lead glass (shielding glass)", null, 3.86, 6.22, {
    source: "two compositions in public physics data",
    checked: "second-hand",
  }),
  entry("earthenware", "earthenware", "ceramic-body", 1.8, 2.2),
  entry("stoneware", "stoneware", "ceramic-body", 2.2, 2.5),
  entry("porcelain", "porcelain", "ceramic-body", 2.3, 2.5),
  entry("glaze", "fired glaze without lead", "glaze", 2.3, 2.7),
  entry("lead-glaze", "fired glaze with lead", "glaze", 3, 4.5),
  entry("enamel", "vitreous enamel on metal", "enamel", 2.4, 2.9),
  entry("paint", "dried paint, modern", "paint", 1.2, 1.8),
  entry("white-lead-paint", "dried paint with white lead", "paint", 2, 4),
  entry("pvc-rigid", "rigid vinyl (PVC)", "pvc", 1.38, 1.41),
  entry("pvc-flexible", "flexible vinyl (PVC)", "pvc", 1.2, 1.35),
  entry("abs", "ABS plastic", "abs", 1.03, 1.07),
  entry("polyethylene", "polyethylene and polypropylene", "other-plastic", 0.9, 0.97),
  entry(
    "heavier-plastic",
    "heavier plastics without chlorine (polystyrene, nylon, polyester)",
    "other-plastic",
    1.04,
    1.4,
  ),
  entry("wood", "dry wood", "wood", 0.4, 0.8),
  entry("textile", "cloth, with the air in it", "textile", 0.2, 0.9),
  entry("textile-print", "vinyl print on cloth", "textile-print", 1.1, 1.4),
  entry("lead-oxide", "lead oxide (PbO), solid", null, 9.13, 9.6, {
    source: "trade and museum sheets: 9.53, with 9.13 to 9.6 by crystal form",
    checked: "second-hand",
  }),
  entry("lead-carbonate", "basic lead carbonate (white lead)", null, 6.1, 6.8),
  entry("house-dust", "house dust", null, 0.5, 1, {
    source: "placeholder: one abstract says the particles may be well below 1; no bulk figure was read",
    checked: "not settled",
  }),
];

export type DensityRange = { min: number; max: number; checked: DensityChecked };

const weakest: readonly DensityChecked[] = ["not settled", "from memory", "second-hand", "verified"];
const ends = ({ density }: MaterialDensity): [number, number] =>
  "min" in density ? [density.min, density.max] : [density.value, density.value];

/**
 * Lowest and highest density, g/cm³, of what a listed material may be, and how well the weakest of its figures is checked; null for
 * "other" and for a word that is not on the list.
 *
 * @example densityRangeOf("paint") // { min: 1.2, max: 4, checked: "from memory" }
 */
export function densityRangeOf(material: string): DensityRange | null {
  const kinds = materialDensities.filter((one) => one.material === material);
  if (kinds.length === 0) return null;
  const checked = weakest.find((word) => kinds.some((one) => one.checked === word))!;
  return {
    min: Math.min(...kinds.map((one) => ends(one)[0])),
    max: Math.max(...kinds.map((one) => ends(one)[1])),
    checked,
  };
}
