import { type SolidShape, volumeFormula } from "./solid-volume.ts";
import type { GeometryShape } from "./types.ts";

/** What a dimension is: a length in mm, or an area in cm². */
export type DimensionKind = "length" | "area";

type Sizes = Record<string, number>;

/** Sizes that no body has, by the code of the problem. */
export type GeometryFlaw = "ring-without-rim" | "wall-too-thick";

/** A shape as a person with a calliper measures it: diameters, walls, thicknesses. Volumes in mm³. */
export type Geometry = {
  dimensions: Record<string, DimensionKind>;
  /** Why sizes like these cannot be, or null. */
  flaw: (sizes: Sizes) => GeometryFlaw | null;
  /** mm³; zero where a draw of the sizes leaves no body (a wall thinner than nothing). */
  volume: (sizes: Sizes) => number;
};

/** Each letter of a solid as a sum of multiples of what is measured. */
type Reading = Record<string, Record<string, number>>;

const ofSolid = (
  shape: SolidShape,
  reading: Reading,
  flaw: (sizes: Sizes) => GeometryFlaw | null = () => null,
): Geometry => {
  const names = [...new Set(Object.values(reading).flatMap((terms) => Object.keys(terms)))];
  const volume = volumeFormula(shape);
  const letters = Object.entries(reading).map(([letter, terms]) => [letter, Object.entries(terms)] as const);
  const dimensions: Sizes = {};
  return {
    dimensions: Object.fromEntries(names.map((name) => [name, "length"])),
    flaw,
    volume: (sizes) => {
      for (const [letter, terms] of letters) {
        let sum = 0;
        for (const [name, factor] of terms) sum += factor * sizes[name]!;
        dimensions[letter] = sum;
      }
      // An inner radius below zero is a wall that fills the tube: its square would take away what is not there.
      if ("r" in dimensions) dimensions.r = Math.max(0, dimensions.r as number);
      return Math.max(0, volume(dimensions));
    },
  };
};

const half = (name: string) => ({ [name]: 0.5 });
const whole = (name: string) => ({ [name]: 1 });

/**
 * The shapes of the calculator. Formulas are those of `solidVolume`; here they are read from what one measures.
 *
 * @example geometries.disc.volume({ diameter: 17.91, thickness: 1.35 }) // 340.1 mm³
 */
export const geometries: Record<GeometryShape, Geometry> = {
  disc: ofSolid("cylinder_diameter", { d: whole("diameter"), h: whole("thickness") }),
  ring: ofSolid(
    "annulus_radii",
    { R: half("outerDiameter"), r: half("innerDiameter"), h: whole("thickness") },
    ({ outerDiameter = 0, innerDiameter = 0 }) => (innerDiameter >= outerDiameter ? "ring-without-rim" : null),
  ),
  cylinder: ofSolid("cylinder_diameter", { d: whole("diameter"), h: whole("length") }),
  tube: ofSolid(
    "annulus_radii",
    { R: half("outerDiameter"), r: { outerDiameter: 0.5, wall: -1 }, h: whole("length") },
    ({ outerDiameter = 0, wall = 0 }) => (2 * wall >= outerDiameter ? "wall-too-thick" : null),
  ),
  sphere: ofSolid("sphere_radius", { r: half("diameter") }),
  cap: ofSolid("cap_base_radius", { a: half("baseDiameter"), h: whole("height") }),
  "half-ellipsoid": ofSolid("half_ellipsoid", { a: half("length"), b: half("width"), c: whole("height") }),
  box: ofSolid("box", { a: whole("length"), b: whole("width"), c: whole("height") }),
  frustum: ofSolid("frustum_radii", { R: half("bottomDiameter"), r: half("topDiameter"), h: whole("height") }),
  wire: ofSolid("cylinder_diameter", { d: whole("diameter"), h: whole("length") }),
  sheet: {
    dimensions: { area: "area", thickness: "length" },
    flaw: () => null,
    volume: ({ area = Number.NaN, thickness = Number.NaN }) => 100 * area * thickness,
  },
};

export const geometryShapes = Object.keys(geometries) as GeometryShape[];
