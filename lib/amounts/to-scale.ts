import { DomainError } from "../quantity/domain-error.ts";

const positive = (name: string, value: number): number => {
  if (!Number.isFinite(value) || value <= 0)
    throw new DomainError("not-positive", `${name} must be a number above zero`, value);
  return value;
};

/**
 * Diameter in mm of a ball of a mass (mg) at a density (g/cm³): d = ∛(6m/(πρ)); 1 g/cm³ is 1 mg/mm³.
 *
 * @example grainDiameter(23.75, 11.34) // 1.587 mm
 */
export const grainDiameter = (massMg: number, density: number): number =>
  Math.cbrt((6 * positive("mass", massMg)) / (Math.PI * positive("density", density)));

/** Side in m of a square of an area in ft² (1 ft² = 0.09290304 m² exactly). @example areaSide(100) // 3.048 m */
export const areaSide = (areaFt2: number): number => Math.sqrt(positive("area", areaFt2) * 0.09290304);

/** Sides in m of a rectangle of an area (ft²) whose longer side is `ratio` times the shorter: to lay beside a court. */
export const areaRectangle = (areaFt2: number, ratio = 1): [number, number] => {
  const short = areaSide(areaFt2) / Math.sqrt(positive("ratio", ratio));
  return [short * ratio, short];
};
