import type { Problem } from "../quantity/problem.ts";
import type { ArithmeticComparison } from "./arithmetic-comparisons.ts";

/** How a range is to be read. "normal" and "lognormal": its ends hold the middle 95 %; the other two: nothing lies outside. */
export type RangeShape = "rectangular" | "triangular" | "normal" | "lognormal";

/** A positive quantity that is not known exactly. The unit is that of the place it stands in. */
export type UncertainInput =
  /** Best value with its standard uncertainty (u = 0: exact). Normal, or lognormal where u is over a sixth of the value. */
  | { value: number; u: number }
  /** Only a range is known. */
  | { min: number; max: number; shape: RangeShape }
  /** Best value with a 95 % interval that need not lie evenly about it: two half-normals on the log scale, meeting at the value. */
  | { value: number; interval: readonly [number, number] }
  /** Not detected: the true value is below this. What is worked out from it is "at most", never a value. */
  | { below: number };

/** A worked-out quantity. `unit` is fixed by the function that gives it. */
export type Estimate<Unit extends string = string> = {
  unit: Unit;
  /** The model at the best values of its inputs. */
  value: number;
  /** Standard uncertainty by the law of propagation (first order). */
  u: number;
  /** 95 %: as much probability below as above; from draws of the inputs, so never below zero. Both ends the value where all is exact. */
  interval: [number, number];
  /** The shortest 95 % interval of the same draws. */
  shortest: [number, number];
  /** Worked out from a "below": only `interval[1]` may be shown, as "at most". */
  atMost: boolean;
};

/** One input's part in the variance of the result; shares sum to 1 (or all are 0 where nothing is uncertain). */
export type Share = { input: string; share: number };

export type GeometryShape =
  | "disc"
  | "ring"
  | "cylinder"
  | "tube"
  | "sphere"
  | "cap"
  | "half-ellipsoid"
  | "box"
  | "frustum"
  | "wire"
  | "sheet";

/** Where the density comes from, g/cm³. */
export type DensitySource =
  | { from: "entered"; density: UncertainInput }
  /** id of one of `materialDensities`. */
  | { from: "material"; id: string }
  /** The element and one other metal make up the whole: the ideal-volume rule, with the content as the element's share. */
  | { from: "alloy"; element: string; rest: string };

/** What the mass is worked out from. Lengths mm, areas cm², weights g, density g/cm³, content mg/kg, areal loading mg/cm². */
export type MassBasis =
  | {
      by: "geometry";
      shape: GeometryShape;
      dimensions: Record<string, UncertainInput>;
      density: DensitySource;
      content: UncertainInput;
    }
  | { by: "weighed"; weight: UncertainInput; content: UncertainInput }
  | { by: "coat"; area: UncertainInput; loading: UncertainInput }
  /** A coat whose content is known as a mass fraction: area × thickness (µm) × density × content. */
  | {
      by: "coat-content";
      area: UncertainInput;
      thickness: UncertainInput;
      density: DensitySource;
      content: UncertainInput;
    };

export type MassOptions = {
  seed: number;
  draws?: number;
  /** A part nobody could shoot or measure: sizes and composition are guesses, and the answer says so. */
  sealed?: boolean;
  /** Weight of the whole object, g: the part cannot be heavier. */
  itemWeight?: number;
};

export type MassResult = {
  by: MassBasis["by"];
  /** Mass of the element, mg. */
  mass: Estimate<"mg">;
  /** Mass of the part that holds it, g; null for a coat given by its areal loading. */
  part: Estimate<"g"> | null;
  volume: Estimate<"cm³"> | null;
  /** Density used, g/cm³, with where it comes from. */
  density: { value: number; u: number; source: string; checked: string } | null;
  /** Largest first. Names: a dimension, "density", "density-rule", "content", "weight", "area", "thickness", "loading". */
  shares: Share[];
  /** The input to know better first; null where nothing is uncertain. */
  dominates: string | null;
  /** True: guessed sizes or composition; every page says "estimate". */
  sealed: boolean;
};

/** A published number to hold a loading against: handed in by the caller from the table of limits. */
export type ReferenceLoading = {
  limitId: string;
  title: string;
  surface: "floor" | "sill" | "trough";
  /** µg/ft² */
  value: number;
  failsAt: ">" | ">=";
  from: string;
  until: string | null;
  complianceFrom: string | null;
  checked: string;
};

/** A daily yardstick for what a person takes in, handed in by the caller from the table of limits. */
export type IntakeBenchmark = {
  limitId: string;
  title: string;
  jurisdiction: string;
  /** µg/day */
  value: number;
  from: string;
  until: string | null;
  checked: string;
};

/** Something of known size to hold an amount against. */
export type AreaComparator = {
  id: string;
  name: string;
  kind: "area";
  /** ft² */
  area: number;
  /** Sides in metres, for a drawing to scale. */
  sides: readonly [number, number];
  size: string;
  source: string;
  checked: "verified" | "second-hand" | "from memory" | "assumption";
};
export type MassComparator = {
  id: string;
  name: string;
  kind: "mass";
  /** mg */
  mass: number;
  /** Diameter and thickness in mm where it is a coin, for a drawing to scale. */
  coin?: { diameter: number; thickness: number };
  size: string;
  source: string;
  checked: "verified" | "second-hand" | "from memory" | "assumption";
};
/** `times`: how many of the comparator the amount is. */
export type Nearest<C> = { comparator: C; times: number };

export type HalvingStep = {
  halvings: number;
  /** mg; null where only the loading is known. */
  mass: number | null;
  /** µg/ft² */
  loading: number;
};

/** What the calculator's page shows. Every part that could not be worked out is null, and `problems` says why. */
export type AmountsResult = {
  element: string;
  mass: MassResult | null;
  /** Mass of the element that the rest is worked out from, mg: worked out, or entered. */
  amount: Estimate<"mg"> | null;
  /** amount ÷ loading: the area on which it would reach the loading asked for. */
  spread: { loading: Estimate<"µg/ft²">; area: Estimate<"ft²"> } | null;
  /** The same at each reference loading of the day asked for, or of all days. */
  references: { reference: ReferenceLoading; area: Estimate<"ft²"> }[];
  /** amount ÷ the area asked for. */
  onArea: { area: Estimate<"ft²">; loading: Estimate<"µg/ft²">; ladder: HalvingStep[] } | null;
  /** area × loading, where both are given: what it takes. */
  needed: { area: Estimate<"ft²">; loading: Estimate<"µg/ft²">; mass: Estimate<"mg"> } | null;
  /** areal ↔ mass fraction of a coat, where thickness and density are given. */
  coating: { loading: Estimate<"mg/cm²">; content: Estimate<"mg/kg"> } | null;
  /** A ball of the element's mass at the pure element's (or the part's) density, for the drawing. */
  grain: { massMg: number; density: number; diameterMm: number } | null;
  /** Arithmetic beside daily benchmarks, never an intake: the whole amount, and what a leach test drew out. Labelled on every page. */
  daily: { benchmark: IntakeBenchmark; days: ArithmeticComparison }[];
  leach: { drawn: ArithmeticComparison; daily: { benchmark: IntakeBenchmark; days: ArithmeticComparison }[] } | null;
  nearestMass: Nearest<MassComparator>[];
  nearestArea: Nearest<AreaComparator>[];
  problems: Problem[];
};
