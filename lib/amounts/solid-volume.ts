import { DomainError } from "../quantity/domain-error.ts";

/** A solid's volume and its derivative by each dimension. `flaw` names what no such solid can have. */
type Solid<Name extends string = string> = {
  dimensions: readonly Name[];
  flaw?: (d: Record<Name, number>) => string | null;
  volume: (d: Record<Name, number>) => number;
  derivatives: (d: Record<Name, number>) => Record<Name, number>;
};

const solid = <Name extends string>(of: Solid<Name>): Solid => of as unknown as Solid;

const wall = (d: { R: number; r: number }) =>
  d.r > d.R ? "the inner radius r is larger than the outer radius R" : null;

/**
 * The solids, by name. Letters: a, b, c edges or half-axes; r, R radii; d diameter; h height. The formulas are those of
 * any handbook of mathematics (Bronshtein and Semendyayev, Handbook of Mathematics, "Stereometry"; from memory).
 */
const solids = {
  /** abc */
  box: solid({
    dimensions: ["a", "b", "c"],
    volume: ({ a, b, c }) => a * b * c,
    derivatives: ({ a, b, c }) => ({ a: b * c, b: a * c, c: a * b }),
  }),
  /** πr²h */
  cylinder_radius: solid({
    dimensions: ["r", "h"],
    volume: ({ r, h }) => Math.PI * r * r * h,
    derivatives: ({ r, h }) => ({ r: 2 * Math.PI * r * h, h: Math.PI * r * r }),
  }),
  /** πd²h/4 */
  cylinder_diameter: solid({
    dimensions: ["d", "h"],
    volume: ({ d, h }) => (Math.PI * d * d * h) / 4,
    derivatives: ({ d, h }) => ({ d: (Math.PI * d * h) / 2, h: (Math.PI * d * d) / 4 }),
  }),
  /** π(R² − r²)h: the wall of a pipe or a ring */
  annulus_radii: solid({
    dimensions: ["R", "r", "h"],
    flaw: wall,
    volume: ({ R, r, h }) => Math.PI * (R - r) * (R + r) * h,
    derivatives: ({ R, r, h }) => ({
      R: 2 * Math.PI * R * h,
      r: -2 * Math.PI * r * h,
      h: Math.PI * (R - r) * (R + r),
    }),
  }),
  /** πr²h/3 */
  cone_radius: solid({
    dimensions: ["r", "h"],
    volume: ({ r, h }) => (Math.PI * r * r * h) / 3,
    derivatives: ({ r, h }) => ({ r: (2 * Math.PI * r * h) / 3, h: (Math.PI * r * r) / 3 }),
  }),
  /** πh(R² + Rr + r²)/3: a cone with its tip cut off */
  frustum_radii: solid({
    dimensions: ["R", "r", "h"],
    volume: ({ R, r, h }) => (Math.PI * h * (R * R + R * r + r * r)) / 3,
    derivatives: ({ R, r, h }) => ({
      R: (Math.PI * h * (2 * R + r)) / 3,
      r: (Math.PI * h * (R + 2 * r)) / 3,
      h: (Math.PI * (R * R + R * r + r * r)) / 3,
    }),
  }),
  /** 4πr³/3 */
  sphere_radius: solid({
    dimensions: ["r"],
    volume: ({ r }) => (4 / 3) * Math.PI * r ** 3,
    derivatives: ({ r }) => ({ r: 4 * Math.PI * r * r }),
  }),
  /** 2πr³/3 */
  hemisphere_radius: solid({
    dimensions: ["r"],
    volume: ({ r }) => (2 / 3) * Math.PI * r ** 3,
    derivatives: ({ r }) => ({ r: 2 * Math.PI * r * r }),
  }),
  /** πh(3a² + h²)/6, a the radius of the base */
  cap_base_radius: solid({
    dimensions: ["a", "h"],
    volume: ({ a, h }) => (Math.PI * h * (3 * a * a + h * h)) / 6,
    derivatives: ({ a, h }) => ({ a: Math.PI * a * h, h: (Math.PI * (a * a + h * h)) / 2 }),
  }),
  /** πh²(3R − h)/3, R the radius of the sphere */
  cap_sphere_radius: solid({
    dimensions: ["R", "h"],
    flaw: ({ R, h }) => (h > 2 * R ? "the cap is higher than its sphere" : null),
    volume: ({ R, h }) => (Math.PI * h * h * (3 * R - h)) / 3,
    derivatives: ({ R, h }) => ({ R: Math.PI * h * h, h: Math.PI * h * (2 * R - h) }),
  }),
  /** 4πabc/3 */
  ellipsoid: solid({
    dimensions: ["a", "b", "c"],
    volume: ({ a, b, c }) => (4 / 3) * Math.PI * a * b * c,
    derivatives: ({ a, b, c }) => ({
      a: (4 / 3) * Math.PI * b * c,
      b: (4 / 3) * Math.PI * a * c,
      c: (4 / 3) * Math.PI * a * b,
    }),
  }),
  /** 2πabc/3 */
  half_ellipsoid: solid({
    dimensions: ["a", "b", "c"],
    volume: ({ a, b, c }) => (2 / 3) * Math.PI * a * b * c,
    derivatives: ({ a, b, c }) => ({
      a: (2 / 3) * Math.PI * b * c,
      b: (2 / 3) * Math.PI * a * c,
      c: (2 / 3) * Math.PI * a * b,
    }),
  }),
  /** 2πa²c/3: half an ellipsoid with two equal half-axes a, cut across c */
  oblate_half_ellipsoid: solid({
    dimensions: ["a", "c"],
    volume: ({ a, c }) => (2 / 3) * Math.PI * a * a * c,
    derivatives: ({ a, c }) => ({ a: (4 / 3) * Math.PI * a * c, c: (2 / 3) * Math.PI * a * a }),
  }),
} as const;

export type SolidShape = keyof typeof solids;
export const solidShapes = Object.keys(solids) as SolidShape[];
/** The letters a shape is measured by, for a form that asks for them. */
export const solidDimensions = (shape: SolidShape): readonly string[] => solids[shape].dimensions;

export type SolidVolume = {
  /** Cube of the unit of the dimensions. */
  volume: number;
  /** Standard uncertainty of the volume. */
  u: number;
  /** ∂V/∂dimension for each dimension: what one unit of it adds. */
  sensitivity: Record<string, number>;
};

/**
 * Volume of a solid from its dimensions, with first-order propagation of independent standard uncertainties:
 * u(V)² = Σ(∂V/∂d · u(d))² (JCGM 100:2008 5.1.2). Shapes and their letters: `solids` above.
 *
 * dimensions above 0 and u of 0 or more, all in one unit of length; every dimension of the shape and no other, in both
 * records. First order only: with relative uncertainties of some 30 % and more the distribution of V is lopsided, and a
 * simulation serves better.
 *
 * @throws DomainError `unknown-shape`, `missing-dimension`, `unknown-dimension`, `not-finite`, `not-positive`, `negative`,
 * `impossible-solid` (an inner radius beyond the outer, a cap higher than its sphere)
 * @example solidVolume({ shape: "box", dimensions: { a: 5, b: 2.4, c: 1.2 }, u: { a: 0.05, b: 0.03, c: 0.1 } })
 * // { volume: 14.4, u: 1.22194, sensitivity: { a: 2.88, b: 6, c: 12 } }
 */
export function solidVolume({
  shape,
  dimensions,
  u,
}: {
  shape: SolidShape;
  dimensions: Record<string, number>;
  u: Record<string, number>;
}): SolidVolume {
  if (!Object.hasOwn(solids, shape)) throw new DomainError("unknown-shape", "no such shape", shape);
  const { dimensions: names, flaw, volume, derivatives } = solids[shape];
  checkRecord("dimensions", names, dimensions, (value) => value > 0, "not-positive");
  checkRecord("u", names, u, (value) => value >= 0, "negative");
  const impossible = flaw?.(dimensions);
  if (impossible) throw new DomainError("impossible-solid", impossible, dimensions);
  const sensitivity = derivatives(dimensions);
  const contributions = names.map((name) => (sensitivity[name] as number) * (u[name] as number));
  return { volume: volume(dimensions), u: Math.hypot(...contributions), sensitivity };
}

/** Every name of the shape and no other, each finite and accepted. */
function checkRecord(
  which: string,
  names: readonly string[],
  record: Record<string, number>,
  accepted: (value: number) => boolean,
  code: string,
): void {
  for (const name of Object.keys(record))
    if (!names.includes(name))
      throw new DomainError("unknown-dimension", `${which}.${name} is none of the shape's`, name);
  for (const name of names) {
    const value = record[name];
    if (value === undefined) throw new DomainError("missing-dimension", `${which}.${name} is missing`, name);
    if (!Number.isFinite(value)) throw new DomainError("not-finite", `${which}.${name} is not a finite number`, value);
    if (!accepted(value)) throw new DomainError(code, `${which}.${name} is out of range`, value);
  }
}

/** The bare formula of a shape, for draws that have been checked once; dimensions by letter, nothing refused. */
export const volumeFormula = (shape: SolidShape): ((dimensions: Record<string, number>) => number) =>
  solids[shape].volume;
