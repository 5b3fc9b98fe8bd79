import { describe, expect, it } from "vitest";
import { solidDimensions, solidShapes, solidVolume } from "@/lib/amounts/solid-volume.ts";
import { refusalCode } from "../support/refusal-code.ts";

// Invented sizes; the expected answers follow from the formulas or from each other.
const size: Record<string, number> = { a: 3, b: 2, c: 1.5, d: 2.4, h: 0.9, r: 1.2, R: 2.5 };
const of = (shape: (typeof solidShapes)[number], overrides: Record<string, number> = {}, u = 0.01) => {
  const names = solidDimensions(shape);
  return {
    shape,
    dimensions: Object.fromEntries(names.map((name) => [name, overrides[name] ?? (size[name] as number)])),
    u: Object.fromEntries(names.map((name) => [name, u])),
  };
};

describe.each(solidShapes.map((shape) => [shape]))("%s", (shape) => {
  it("its derivatives are those of its volume", () => {
    const { sensitivity } = solidVolume(of(shape));
    for (const name of solidDimensions(shape)) {
      const step = 1e-5;
      const value = size[name] as number;
      const up = solidVolume(of(shape, { [name]: value + step })).volume;
      const down = solidVolume(of(shape, { [name]: value - step })).volume;
      expect(sensitivity[name]).toBeCloseTo((up - down) / (2 * step), 6);
    }
  });
  it("grows with the cube of its size, and u follows", () => {
    const plain = solidVolume(of(shape));
    const input = of(shape);
    const double = (record: Record<string, number>) =>
      Object.fromEntries(Object.entries(record).map(([name, value]) => [name, 2 * value]));
    const large = solidVolume({ shape, dimensions: double(input.dimensions), u: double(input.u) });
    expect(large.volume).toBeCloseTo(8 * plain.volume, 10);
    expect(large.u).toBeCloseTo(8 * plain.u, 10);
  });
  it("exact dimensions give an exact volume", () => {
    expect(solidVolume(of(shape, {}, 0)).u).toBe(0);
  });
  it("refuses a missing, a strange, a zero and a negative dimension, and a negative u", () => {
    const input = of(shape);
    const [first = "a"] = solidDimensions(shape);
    const { [first]: _gone, ...rest } = input.dimensions;
    expect(refusalCode(() => solidVolume({ ...input, dimensions: rest }))).toBe("missing-dimension");
    expect(refusalCode(() => solidVolume({ ...input, u: {} }))).toBe("missing-dimension");
    expect(refusalCode(() => solidVolume({ ...input, dimensions: { ...input.dimensions, q: 1 } }))).toBe(
      "unknown-dimension",
    );
    for (const value of [0, -1])
      expect(refusalCode(() => solidVolume({ ...input, dimensions: { ...input.dimensions, [first]: value } }))).toBe(
        "not-positive",
      );
    expect(refusalCode(() => solidVolume({ ...input, dimensions: { ...input.dimensions, [first]: Number.NaN } }))).toBe(
      "not-finite",
    );
    expect(refusalCode(() => solidVolume({ ...input, u: { ...input.u, [first]: -0.1 } }))).toBe("negative");
  });
});

describe("solids that are one another", () => {
  const volume = (shape: (typeof solidShapes)[number], dimensions: Record<string, number>) =>
    solidVolume({ shape, dimensions, u: Object.fromEntries(Object.keys(dimensions).map((name) => [name, 0])) }).volume;

  it("a cap as high as its sphere's radius is half the sphere, one twice as high the whole", () => {
    expect(volume("cap_sphere_radius", { R: 3, h: 3 })).toBeCloseTo(volume("hemisphere_radius", { r: 3 }), 12);
    expect(volume("cap_sphere_radius", { R: 3, h: 6 })).toBeCloseTo(volume("sphere_radius", { r: 3 }), 12);
    expect(volume("cap_base_radius", { a: 3, h: 3 })).toBeCloseTo(volume("hemisphere_radius", { r: 3 }), 12);
  });
  it("the two ways to measure a cap agree", () => {
    // R = (a² + h²)/(2h)
    expect(volume("cap_base_radius", { a: 6, h: 2 })).toBeCloseTo(volume("cap_sphere_radius", { R: 10, h: 2 }), 10);
  });
  it("ellipsoids with equal half-axes are spheres", () => {
    expect(volume("ellipsoid", { a: 2, b: 2, c: 2 })).toBeCloseTo(volume("sphere_radius", { r: 2 }), 12);
    expect(volume("half_ellipsoid", { a: 2, b: 2, c: 1 })).toBeCloseTo(
      volume("oblate_half_ellipsoid", { a: 2, c: 1 }),
      12,
    );
  });
  it("a frustum with equal radii is a cylinder, and a cylinder less a bore a ring", () => {
    expect(volume("frustum_radii", { R: 2, r: 2, h: 5 })).toBeCloseTo(volume("cylinder_radius", { r: 2, h: 5 }), 12);
    expect(volume("annulus_radii", { R: 2, r: 1, h: 5 })).toBeCloseTo(
      volume("cylinder_radius", { r: 2, h: 5 }) - volume("cylinder_diameter", { d: 2, h: 5 }),
      12,
    );
  });
  it("refuses what no solid can be", () => {
    expect(refusalCode(() => volume("annulus_radii", { R: 1, r: 2, h: 5 }))).toBe("impossible-solid");
    expect(refusalCode(() => volume("cap_sphere_radius", { R: 1, h: 2.1 }))).toBe("impossible-solid");
    expect(refusalCode(() => volume("pyramid" as "box", { a: 1 }))).toBe("unknown-shape");
    expect(refusalCode(() => volume("toString" as "box", { a: 1 }))).toBe("unknown-shape");
  });
});
