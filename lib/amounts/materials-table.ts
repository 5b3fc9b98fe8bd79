import { type MaterialDensity, materialDensities } from "../quantity/material-densities.ts";
import type { UncertainInput } from "./types.ts";

/** The entry of the list of densities by its id, with its density as the calculator takes it; null for a word that is no id. */
export function findDensityMaterial(
  id: string,
): (Omit<MaterialDensity, "density"> & { density: UncertainInput }) | null {
  const found = materialDensities.find((one) => one.id === id);
  if (found === undefined) return null;
  const { density } = found;
  return { ...found, density: "min" in density ? { ...density, shape: "rectangular" } : density };
}

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
