import * as z from "zod";
import { geometryShapes } from "./geometry.ts";

/**
 * The calculator's state, as it stands in the address: every input is text, empty where nothing was entered. A quantity is
 * written "12" (exact), "12 ± 0.5" (95 %), "10 to 14" (anywhere between), with the word triangular, normal or lognormal after
 * the range for another shape, or "< 5" (below).
 */
const text = z.string().max(60).catch("");

export const amountSources = ["shape", "weight", "coat", "amount", "none"] as const;
export type AmountSource = (typeof amountSources)[number];

export const lengthUnits = ["mm", "cm", "in"] as const;
export const areaUnits = ["cm²", "mm²", "m²", "ft²"] as const;
export const weightUnits = ["g", "mg", "kg", "oz"] as const;
export const contentUnits = ["ppm", "mg/kg", "%"] as const;
export const arealUnits = ["mg/cm²", "µg/cm²"] as const;
export const amountUnits = ["mg", "g", "µg"] as const;
export const loadingUnits = ["µg/ft²", "mg/m²"] as const;
export const densitySources = ["material", "alloy", "entered"] as const;

/** Every size any shape asks for; the form shows those of its shape (`geometries[shape].dimensions`). */
export const dimensionNames = [
  "diameter",
  "outerDiameter",
  "innerDiameter",
  "baseDiameter",
  "bottomDiameter",
  "topDiameter",
  "length",
  "width",
  "height",
  "thickness",
  "wall",
  "area",
] as const;
export type DimensionName = (typeof dimensionNames)[number];

const dimensionFields = Object.fromEntries(dimensionNames.map((name) => [name, text])) as Record<
  DimensionName,
  typeof text
>;

export const amountsSchema = z.object({
  /** Chemical symbol. */
  element: z
    .string()
    .regex(/^[A-Z][a-z]?$/)
    .catch("Pb"),
  /** Where the amount comes from: shape × density × content, weight × content, a coat, an amount entered, or none. */
  from: z.enum(amountSources).catch("shape"),
  shape: z.enum(geometryShapes as [(typeof geometryShapes)[number], ...typeof geometryShapes]).catch("disc"),
  ...dimensionFields,
  lengthUnit: z.enum(lengthUnits).catch("mm"),
  areaUnit: z.enum(areaUnits).catch("cm²"),
  densityFrom: z.enum(densitySources).catch("material"),
  /** id of one of `materialDensities`; empty: none chosen. */
  material: text,
  /** The other metal of an alloy, by symbol. */
  rest: text,
  /** g/cm³ */
  density: text,
  content: text,
  contentUnit: z.enum(contentUnits).catch("ppm"),
  weight: text,
  weightUnit: z.enum(weightUnits).catch("g"),
  /** Coat: `area` × `coatLoading`, or `area` × `coatThickness` × density × content. */
  coatLoading: text,
  coatLoadingUnit: z.enum(arealUnits).catch("mg/cm²"),
  /** µm */
  coatThickness: text,
  amount: text,
  amountUnit: z.enum(amountUnits).catch("mg"),
  /** Weight of the whole object, g. */
  itemWeight: text,
  /** "yes": a part nobody can reach; sizes and composition are guesses. */
  sealed: z.enum(["yes", ""]).catch(""),
  loading: text,
  loadingUnit: z.enum(loadingUnits).catch("µg/ft²"),
  /** The area asked about. */
  over: text,
  overUnit: z.enum(areaUnits).catch("ft²"),
  /** A leach test: what it drew out, µg/mL, and how much the vessel holds, mL. */
  leached: text,
  volume: text,
  /** ISO day whose published loadings to use; empty: all of them. */
  day: text,
});

export type AmountsState = z.output<typeof amountsSchema>;

/** The state of an address; unknown keys fall away, a value that is no choice becomes the usual one, repeated keys count once. */
export function parseAmounts(search: Record<string, string | string[] | undefined> | URLSearchParams): AmountsState {
  const given = search instanceof URLSearchParams ? Object.fromEntries(search) : search;
  const first = Object.entries(given).map(([key, value]) => [key, Array.isArray(value) ? value[0] : value]);
  return amountsSchema.parse(Object.fromEntries(first));
}

/** The address of a state: only what differs from an untouched form, in the schema's order. `parseAmounts` reads it back. */
export function serialiseAmounts(state: AmountsState): string {
  const untouched = parseAmounts({});
  const kept = (Object.keys(untouched) as (keyof AmountsState)[]).filter((key) => state[key] !== untouched[key]);
  return new URLSearchParams(kept.map((key) => [key, state[key]])).toString();
}
