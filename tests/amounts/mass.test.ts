import { describe, expect, it } from "vitest";
import { alloyDensity } from "@/lib/amounts/alloy-density.ts";
import { contentOfCoat, loadingOfCoat } from "@/lib/amounts/coating.ts";
import { contentOfResult, type ReportedContent } from "@/lib/amounts/content-of-result.ts";
import { geometries, geometryShapes } from "@/lib/amounts/geometry.ts";
import { elementMass } from "@/lib/amounts/mass.ts";
import { findDensityMaterial } from "@/lib/amounts/materials-table.ts";
import { prepareInput } from "@/lib/amounts/prepare-input.ts";
import { areaAtLoading, loadingOnArea } from "@/lib/amounts/spread.ts";
import type { DensitySource, MassBasis, UncertainInput } from "@/lib/amounts/types.ts";
import type { Outcome } from "@/lib/quantity/problem.ts";
import { refusalCode } from "../support/refusal-code.ts";

// Invented figures throughout; expected answers follow from the formulas.
const run = { seed: 7, draws: 100_000 };
const exact = (value: number): UncertainInput => ({ value, u: 0 });
const get = <T>(outcome: Outcome<T>): T => {
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return outcome.value;
};
const codes = (outcome: Outcome<unknown>): string[] =>
  outcome.ok ? [] : outcome.problems.map((p) => `${p.code}${p.where?.field ? ` ${p.where.field}` : ""}`);
const entered = (value: UncertainInput): DensitySource => ({ from: "entered", density: value });
const ball = (diameter: UncertainInput, content: UncertainInput, density = entered(exact(8.5))): MassBasis => ({
  by: "geometry",
  shape: "sphere",
  dimensions: { diameter },
  density,
  content,
});

describe("shapes as one measures them", () => {
  const sizes: Record<string, number> = {
    diameter: 10,
    outerDiameter: 10,
    innerDiameter: 6,
    baseDiameter: 10,
    bottomDiameter: 10,
    topDiameter: 6,
    length: 10,
    width: 6,
    height: 4,
    thickness: 2,
    wall: 2,
    area: 3,
  };
  it.each([
    ["disc", (Math.PI / 4) * 100 * 2],
    ["ring", (Math.PI / 4) * (100 - 36) * 2],
    ["cylinder", (Math.PI / 4) * 100 * 10],
    ["tube", (Math.PI / 4) * (100 - 36) * 10],
    ["sphere", (Math.PI / 6) * 1000],
    ["cap", (Math.PI / 6) * 4 * (3 * 25 + 16)],
    ["half-ellipsoid", (2 / 3) * Math.PI * 5 * 3 * 4],
    ["box", 240],
    ["frustum", (Math.PI / 3) * 4 * (25 + 15 + 9)],
    ["wire", (Math.PI / 4) * 100 * 10],
    ["sheet", 600],
  ] as const)("%s", (shape, expected) => expect(geometries[shape].volume(sizes)).toBeCloseTo(expected, 9));
  it("every shape has its row here", () => expect(geometryShapes).toHaveLength(11));
  it("a ring without a rim and a wall that fills the tube are refused", () => {
    const hollow = (shape: "ring" | "tube", dimensions: Record<string, number>) =>
      elementMass(
        {
          by: "geometry",
          shape,
          dimensions: Object.fromEntries(Object.entries(dimensions).map(([k, v]) => [k, exact(v)])),
          density: entered(exact(8)),
          content: exact(100),
        },
        run,
      );
    expect(codes(hollow("ring", { outerDiameter: 5, innerDiameter: 5, thickness: 1 }))).toEqual([
      "ring-without-rim innerDiameter",
    ]);
    expect(codes(hollow("tube", { outerDiameter: 5, wall: 2.5, length: 1 }))).toEqual(["wall-too-thick wall"]);
  });
});

describe("mass", () => {
  it("exact inputs give an exact mass and no shares", () => {
    const { mass, shares, dominates } = get(elementMass(ball(exact(2), exact(400_000)), run));
    expect(mass.interval).toEqual([mass.value, mass.value]);
    expect(mass.u).toBe(0);
    expect(shares.every((one) => one.share === 0)).toBe(true);
    expect(dominates).toBeNull();
  });
  it("relative uncertainties add in squares, three times for the diameter of a ball, and both ways agree", () => {
    const basis = ball({ value: 2, u: 0.02 }, { value: 400_000, u: 8000 }, entered({ value: 8.5, u: 0.17 }));
    const { mass, shares, dominates } = get(elementMass(basis, run));
    const relative = Math.hypot(0.03, 0.02, 0.02);
    expect(mass.u / mass.value).toBeCloseTo(relative, 8);
    expect(shares.map((one) => one.input)).toEqual(["diameter", "content", "density"]);
    expect(shares[0]?.share).toBeCloseTo((0.03 / relative) ** 2, 8);
    expect(dominates).toBe("diameter");
    // The middle of the draws is a product of nearly normal factors: nearly lognormal.
    expect(Math.log(mass.interval[1] / mass.interval[0]) / (2 * 1.959964)).toBeCloseTo(relative, 3);
  });
  it("two lognormal ranges multiply to a lognormal: medians multiply, log widths add in squares", () => {
    const { mass } = get(
      elementMass(
        {
          by: "weighed",
          weight: { min: 10, max: 40, shape: "lognormal" },
          content: { min: 100, max: 900, shape: "lognormal" },
        },
        { seed: 3, draws: 400_000 },
      ),
    );
    const half = Math.hypot(Math.log(4), Math.log(9)) / 2;
    expect(mass.value).toBeCloseTo((20 * 300) / 1000, 9);
    expect(Math.abs(mass.interval[0] / (6 * Math.exp(-half)) - 1)).toBeLessThan(0.015);
    expect(Math.abs(mass.interval[1] / (6 * Math.exp(half)) - 1)).toBeLessThan(0.015);
  });
  it("the same seed gives the same interval, another seed nearly the same", () => {
    const basis = ball({ min: 1, max: 3, shape: "triangular" }, { min: 300_000, max: 600_000, shape: "rectangular" });
    const [a, b, c] = [7, 7, 8].map((seed) => get(elementMass(basis, { ...run, seed })).mass.interval) as [
      [number, number],
      [number, number],
      [number, number],
    ];
    expect(a).toEqual(b);
    expect(a).not.toEqual(c);
    expect(Math.abs(a[1] / c[1] - 1)).toBeLessThan(0.02);
  });
  it("stays above zero however wide the inputs, and the shortest interval is no longer than the other", () => {
    const basis = ball({ value: 2, u: 1.5 }, { value: 5000, u: 4000 });
    const { mass } = get(elementMass(basis, run));
    expect(mass.interval[0]).toBeGreaterThan(0);
    expect(mass.shortest[0]).toBeGreaterThanOrEqual(0);
    expect(mass.shortest[1] - mass.shortest[0]).toBeLessThanOrEqual(mass.interval[1] - mass.interval[0]);
  });
  it("a lopsided interval of the content comes through as it is where all else is exact", () => {
    const { mass } = get(
      elementMass({ by: "weighed", weight: exact(1000), content: { value: 102, interval: [73, 159] } }, run),
    );
    expect(mass.value).toBeCloseTo(102, 9);
    expect(mass.interval[0]).toBeCloseTo(73, 0);
    expect(Math.abs(mass.interval[1] - 159)).toBeLessThan(1.5);
  });
  it("an interval from zero is kept from zero", () => {
    const { mass } = get(
      elementMass({ by: "weighed", weight: exact(1000), content: { value: 5, interval: [0, 12] } }, run),
    );
    expect(mass.interval[0]).toBeGreaterThanOrEqual(0);
    expect(mass.interval[0]).toBeLessThan(0.1);
  });
  it("a content below detection gives at most, for the mass and not for the part", () => {
    const { mass, part } = get(elementMass(ball({ value: 20, u: 0.2 }, { below: 5 }), run));
    expect(mass.atMost).toBe(true);
    expect(part?.atMost).toBe(false);
    expect(mass.interval[1]).toBeGreaterThan(mass.value);
  });
  it("draws of a content stop at 100 %", () => {
    const { mass } = get(elementMass({ by: "weighed", weight: exact(1), content: { value: 995_000, u: 50_000 } }, run));
    expect(mass.interval[1]).toBeLessThanOrEqual(1000);
  });
  it("an alloy's density moves with the content: more lead is heavier by more than its share", () => {
    const alloy: DensitySource = { from: "alloy", element: "Pb", rest: "Sn" };
    const at = (percent: number) => get(elementMass(ball(exact(2), exact(percent * 10_000), alloy), run)).mass.value;
    expect(at(60) / at(40)).toBeCloseTo(1.5 * (9.278 / 8.505), 3);
    const fixed = get(elementMass(ball(exact(2), { min: 4e5, max: 6e5, shape: "rectangular" }), run)).mass;
    const moving = get(elementMass(ball(exact(2), { min: 4e5, max: 6e5, shape: "rectangular" }, alloy), run)).mass;
    expect(moving.u / moving.value).toBeGreaterThan(fixed.u / fixed.value);
  });
  it("a sealed part says so and changes no number", () => {
    const basis = ball({ min: 1, max: 3, shape: "rectangular" }, { min: 3e5, max: 6e5, shape: "rectangular" });
    const open = get(elementMass(basis, run));
    expect(get(elementMass(basis, { ...run, sealed: true }))).toEqual({ ...open, sealed: true });
  });
  it("a coat by content is area × thickness × density × content", () => {
    const { mass, part } = get(
      elementMass(
        {
          by: "coat-content",
          area: exact(25),
          thickness: exact(100),
          density: entered(exact(1.5)),
          content: exact(66_666.6667),
        },
        run,
      ),
    );
    expect(part?.value).toBeCloseTo(0.375, 12);
    expect(mass.value).toBeCloseTo(25, 6);
  });
});

describe("what cannot be", () => {
  it.each<[string, Outcome<unknown>, string[]]>([
    ["content over 100 %", elementMass(ball(exact(2), exact(1_000_001)), run), ["content-over-100 content"]],
    [
      "an interval of the content over 100 %",
      elementMass(ball(exact(2), { value: 9e5, interval: [8e5, 1.1e6] }), run),
      ["content-over-100 content"],
    ],
    [
      "a range upside down",
      elementMass(ball({ min: 3, max: 2, shape: "triangular" }, exact(1)), run),
      ["range-upside-down diameter"],
    ],
    ["a size of zero", elementMass(ball(exact(0), exact(1)), run), ["not-above-zero diameter"]],
    [
      "a size below zero",
      elementMass(ball({ min: -1, max: 2, shape: "rectangular" }, exact(1)), run),
      ["not-above-zero diameter"],
    ],
    ["no number", elementMass(ball(exact(Number.NaN), exact(1)), run), ["quantity-unreadable diameter"]],
    ["a monstrous number", elementMass(ball(exact(1e300), exact(1)), run), ["quantity-out-of-range diameter"]],
    ["a negative u", elementMass(ball({ value: 1, u: -1 }, exact(1)), run), ["uncertainty-negative diameter"]],
    ["a size below", elementMass(ball({ below: 2 }, exact(1)), run), ["below-not-usable diameter"]],
    [
      "a lognormal range from zero",
      elementMass(ball({ min: 0, max: 2, shape: "lognormal" }, exact(1)), run),
      ["range-from-zero diameter"],
    ],
    [
      "a value outside its interval",
      elementMass(ball(exact(1), { value: 5, interval: [6, 7] }), run),
      ["value-outside-interval content"],
    ],
    [
      "a missing dimension",
      elementMass({ ...ball(exact(1), exact(1)), dimensions: {} } as MassBasis, run),
      ["missing-dimension diameter"],
    ],
    [
      "an unknown material",
      elementMass(ball(exact(1), exact(1), { from: "material", id: "cheese" }), run),
      ["unknown-material material"],
    ],
    [
      "a metal without a density",
      elementMass(ball(exact(1), exact(1), { from: "alloy", element: "Pb", rest: "Xx" }), run),
      ["unknown-metal rest"],
    ],
    [
      "an alloy of one metal",
      elementMass(ball(exact(1), exact(1), { from: "alloy", element: "Pb", rest: "Pb" }), run),
      ["same-metal-twice rest"],
    ],
    [
      "a part heavier than the object",
      elementMass({ by: "weighed", weight: exact(20), content: exact(100) }, { ...run, itemWeight: 10 }),
      ["heavier-than-item itemWeight"],
    ],
    [
      "a coat's lead heavier than the object",
      elementMass({ by: "coat", area: exact(1e6), loading: exact(10) }, { ...run, itemWeight: 10 }),
      ["heavier-than-item itemWeight"],
    ],
    ["a loading of zero", areaAtLoading({ mass: exact(1), loading: exact(0) }, run), ["loading-zero loading"]],
    [
      "a loading that may be zero",
      areaAtLoading({ mass: exact(1), loading: { min: 0, max: 5, shape: "rectangular" } }, run),
      ["loading-zero loading"],
    ],
    ["an area of zero", loadingOnArea({ mass: exact(1), area: exact(0) }, run), ["area-zero over"]],
    [
      "two at once, both named",
      areaAtLoading({ mass: exact(0), loading: { below: 5 } }, run),
      ["not-above-zero amount", "below-not-usable loading"],
    ],
  ])("%s", (_name, outcome, expected) => expect(codes(outcome)).toEqual(expected));

  it("areal and mass fraction are never exchanged without thickness and density", () => {
    const density = { from: "entered" as const, density: exact(1.5) };
    expect(codes(contentOfCoat(exact(1), { thickness: null, density: null }, run))).toEqual([
      "thickness-needed coatThickness",
      "density-needed density",
    ]);
    expect(codes(contentOfCoat(exact(1), { thickness: exact(50), density: null }, run))).toEqual([
      "density-needed density",
    ]);
    expect(codes(loadingOfCoat(exact(90), { thickness: null, density }, run))).toEqual([
      "thickness-needed coatThickness",
    ]);
    expect(codes(contentOfCoat(exact(100), { thickness: exact(10), density }, run))).toEqual([
      "content-over-100 coatThickness",
    ]);
  });
  it("alloyDensity refuses shares that are none", () => {
    expect(refusalCode(() => alloyDensity([]))).toBe("empty");
    expect(refusalCode(() => alloyDensity([{ w: 0.5, density: 8 }]))).toBe("out-of-range");
    expect(refusalCode(() => alloyDensity([{ w: 1.5, density: 8 }]))).toBe("out-of-range");
    expect(refusalCode(() => alloyDensity([{ w: 1, density: 0 }]))).toBe("not-positive");
  });
});

describe("inputs as distributions (JCGM 101:2008 Table 1; JCGM 100:2008 4.3.7, 4.3.9)", () => {
  const prepared = (input: UncertainInput) => get(prepareInput(input, { field: "x", boundAllowed: true }));
  it("rectangular: u = width/√12; triangular: width/√24; normal: width/3.92", () => {
    expect(prepared({ min: 4, max: 6, shape: "rectangular" }).u).toBeCloseTo(2 / Math.sqrt(12), 12);
    expect(prepared({ min: 4, max: 6, shape: "triangular" }).u).toBeCloseTo(2 / Math.sqrt(24), 12);
    expect(prepared({ min: 4, max: 6, shape: "normal" }).u).toBeCloseTo(2 / 3.919928, 6);
  });
  it("lognormal: the best value is the geometric middle, and its ends hold 95 %", () => {
    const one = prepared({ min: 1, max: 100, shape: "lognormal" });
    expect(one.best).toBeCloseTo(10, 12);
    expect(one.drawn?.from).toEqual({
      shape: "lognormal",
      median: one.best,
      gsd: expect.closeTo(10 ** (1 / 1.959964), 5),
    });
  });
  it("a wide ± becomes lognormal of the same mean and sd; a narrow one stays normal", () => {
    expect(prepared({ value: 6, u: 1 }).drawn?.from.shape).toBe("normal");
    expect(prepared({ value: 6, u: 1.01 }).drawn?.from).toEqual({ shape: "lognormal", mean: 6, sd: 1.01 });
  });
  it("ends that agree are exact", () => expect(prepared({ min: 2, max: 2, shape: "lognormal" }).drawn).toBeNull());
});

describe("content of a reported result", () => {
  const result = (over: Partial<ReportedContent>): ReportedContent => ({
    quantity: "bulk-mass-fraction",
    state: "quantified",
    value: 412,
    u: 18,
    interval: [376, 448],
    below: null,
    upperBound: null,
    range: null,
    ...over,
  });
  it.each<[string, Partial<ReportedContent>, UncertainInput]>([
    ["value and interval", {}, { value: 412, interval: [376, 448] }],
    ["an interval from below zero begins at zero", { value: 5, interval: [-2, 12] }, { value: 5, interval: [0, 12] }],
    ["no interval", { interval: null }, { value: 412, u: 18 }],
    ["range", { state: "range-only", value: null, range: [61, 148] }, { min: 61, max: 148, shape: "rectangular" }],
    ["few detections", { state: "not-quantified", value: null, upperBound: 19 }, { below: 19 }],
    ["not detected", { state: "not-detected", value: null, below: 5 }, { below: 5 }],
  ])("%s", (_name, over, expected) => expect(get(contentOfResult(result(over)))).toEqual(expected));
  it("refuses what holds no content", () => {
    expect(codes(contentOfResult(result({ state: "no-readings" })))).toEqual(["no-content content"]);
    expect(codes(contentOfResult(result({ quantity: "leachate" })))).toEqual(["content-of-another-kind content"]);
  });
});

it("a material of the list is a range within which it lies, or a figure with its u", () => {
  expect(findDensityMaterial("paint")?.density).toEqual({ min: 1.2, max: 1.8, shape: "rectangular" });
  expect(findDensityMaterial("solder-50-50")?.density).toEqual({ value: 8.87, u: 0.03 });
  expect(findDensityMaterial("cheese")).toBeNull();
});
