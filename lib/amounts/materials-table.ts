import type { Material } from "../quantity/item-words.ts";
import type { UncertainInput } from "./types.ts";

/** How far a figure was checked; "not settled": a placeholder, and the page says so. */
export type DensityChecked = "verified" | "second-hand" | "from memory" | "not settled";

export type DensityMaterial = {
  id: string;
  name: string;
  /** g/cm³ */
  density: UncertainInput;
  source: string;
  checked: DensityChecked;
  /** The registry's materials that this stands for, where it is the usual one. */
  materials?: readonly Material[];
};

const range = (min: number, max: number): UncertainInput => ({ min, max, shape: "rectangular" });
/** Two tables of solder densities differ by up to 0.06; hence 0.03. */
const solder = (tin: number, lead: number, value: number): DensityMaterial => ({
  id: `solder-${tin}-${lead}`,
  name: `tin-lead solder ${tin}/${lead} (${tin} % tin, ${lead} % lead)`,
  density: { value, u: 0.03 },
  source: "a published table of solder alloys; u from its differences to a second table",
  checked: "verified",
});
const tables = "tables of element densities, read in public physics data";
const memory = "from memory, no source read";

/** Densities the calculator offers. */
export const densityMaterials: readonly DensityMaterial[] = [
  {
    id: "lead",
    name: "lead",
    density: range(11.33, 11.35),
    source: `${tables} (11.33, 11.34 and 11.35)`,
    checked: "second-hand",
  },
  { id: "tin", name: "tin", density: range(7.265, 7.31), source: `${tables} (7.265 to 7.31)`, checked: "second-hand" },
  solder(63, 37, 8.4),
  solder(60, 40, 8.5),
  solder(55, 45, 8.68),
  solder(50, 50, 8.87),
  solder(45, 55, 9.07),
  solder(40, 60, 9.28),
  solder(90, 10, 7.55),
  {
    id: "lead-crystal",
    name: "lead crystal (24 % lead oxide or more)",
    density: range(2.9, 3.2),
    source: "the lower end is the minimum of the European rule on crystal names, read; the upper end is from memory",
    checked: "from memory",
    materials: ["crystal"],
  },
  {
    id: "full-lead-crystal",
    name: "full lead crystal (30 % lead oxide or more)",
    density: range(3, 3.2),
    source: "the lower end is the minimum of the European rule on crystal names, read; the upper end is from memory",
    checked: "from memory",
  },
  {
    id: "lead-glass",
    name: "dense lead glass (shielding glass)",
    density: range(3.86, 6.22),
    source: "two compositions in public physics data",
    checked: "second-hand",
  },
  {
    id: "lead-glaze",
    name: "fired glaze with lead",
    density: range(3, 4.5),
    source: memory,
    checked: "from memory",
    materials: ["glaze"],
  },
  {
    id: "soda-lime-glass",
    name: "ordinary (soda-lime) glass",
    density: range(2.45, 2.55),
    source: "2.5 from memory; the range about it is our assumption",
    checked: "from memory",
    materials: ["glass"],
  },
  {
    id: "brass",
    name: "free-machining brass",
    density: range(8.4, 8.6),
    source: "8.5 from memory; the range about it is our assumption",
    checked: "from memory",
    materials: ["brass"],
  },
  { id: "stainless-steel", name: "stainless steel", density: range(7.9, 8), source: memory, checked: "from memory" },
  { id: "iron", name: "iron", density: range(7.86, 7.87), source: tables, checked: "second-hand" },
  {
    id: "aluminium",
    name: "aluminium",
    density: { value: 2.7, u: 0.005 },
    source: `${tables}; u from its last digit`,
    checked: "second-hand",
    materials: ["aluminium"],
  },
  { id: "zinc", name: "zinc", density: range(7.11, 7.14), source: tables, checked: "second-hand" },
  {
    id: "copper",
    name: "copper",
    density: range(8.94, 8.96),
    source: tables,
    checked: "second-hand",
    materials: ["copper"],
  },
  {
    id: "pewter",
    name: "pewter, modern to old leaded",
    density: range(7.3, 8),
    source: memory,
    checked: "from memory",
  },
  { id: "pvc-rigid", name: "rigid vinyl (PVC)", density: range(1.38, 1.41), source: memory, checked: "from memory" },
  {
    id: "pvc-flexible",
    name: "flexible vinyl (PVC)",
    density: range(1.2, 1.35),
    source: memory,
    checked: "from memory",
    materials: ["pvc"],
  },
  {
    id: "abs",
    name: "ABS plastic",
    density: range(1.03, 1.07),
    source: memory,
    checked: "from memory",
    materials: ["abs"],
  },
  {
    id: "stoneware",
    name: "stoneware",
    density: range(2.2, 2.5),
    source: memory,
    checked: "from memory",
    materials: ["ceramic-body"],
  },
  { id: "porcelain", name: "porcelain", density: range(2.3, 2.5), source: memory, checked: "from memory" },
  { id: "earthenware", name: "earthenware", density: range(1.8, 2.2), source: memory, checked: "from memory" },
  {
    id: "paint",
    name: "dried paint, modern",
    density: range(1.2, 1.8),
    source: memory,
    checked: "from memory",
    materials: ["paint"],
  },
  {
    id: "white-lead-paint",
    name: "dried paint with white lead",
    density: range(2, 4),
    source: memory,
    checked: "from memory",
  },
  {
    id: "lead-oxide",
    name: "lead oxide (PbO), solid",
    density: range(9.13, 9.6),
    source: "trade and museum sheets: 9.53, with 9.13 to 9.6 by crystal form",
    checked: "second-hand",
  },
  {
    id: "lead-carbonate",
    name: "basic lead carbonate (white lead)",
    density: range(6.1, 6.8),
    source: memory,
    checked: "from memory",
  },
  {
    id: "house-dust",
    name: "house dust",
    density: range(0.5, 1),
    source: "placeholder: one abstract says the particles may be well below 1; no bulk figure was read",
    checked: "not settled",
  },
];

export const findDensityMaterial = (id: string): DensityMaterial | null =>
  densityMaterials.find((one) => one.id === id) ?? null;

/** The usual density for a registry's material, or null where it could be many things (solder, zinc alloy, steel, wood, …). */
export const densityMaterialFor = (material: string): DensityMaterial | null =>
  densityMaterials.find((one) => one.materials?.some((known) => known === material)) ?? null;

/** Pure metals for the ideal-volume rule, g/cm³ at room temperature. Source: tables of element densities, second-hand. */
export const metalDensities: Readonly<Record<string, number>> = {
  Pb: 11.34,
  Sn: 7.29,
  Cu: 8.96,
  Zn: 7.13,
  Al: 2.7,
  Fe: 7.87,
};
export const metals = Object.keys(metalDensities);
