import { done, type Outcome, type Problem, refused } from "../quantity/problem.ts";
import { densityOf, type PreparedDensity } from "./density-of.ts";
import { geometries } from "./geometry.ts";
import { type Prepared, prepareInput, type Rules } from "./prepare-input.ts";
import { propagateModel } from "./propagate-model.ts";
import type { DensitySource, Estimate, MassBasis, MassOptions, MassResult, UncertainInput } from "./types.ts";

/** mg/kg: 100 %. */
const whole = { value: 1e6, code: "content-over-100" } as const;

/** What a basis comes to: its inputs, and the models on their values. Volumes in cm³, parts in g, masses in mg. */
type Plan = {
  inputs: Record<string, Prepared>;
  mass: (values: Record<string, number>) => number;
  part: ((values: Record<string, number>) => number) | null;
  volume: ((values: Record<string, number>) => number) | null;
  density: PreparedDensity | null;
};

/**
 * Mass of an element in a part, mg, with its uncertainty by both ways and the inputs' shares.
 *
 * - by geometry: volume (mm³ → cm³) × density (g/cm³) × content (mg/kg) / 1000;
 * - weighed: weight (g) × content (mg/kg) / 1000;
 * - a coat: area (cm²) × areal loading (mg/cm²);
 * - a coat by content: area (cm²) × thickness (µm) × 10⁻⁴ × density × content / 1000.
 *
 * A content given as `below` makes all of it "at most". Draws of a content stop at 100 %. With an alloy's density the content moves the
 * density too. `sealed` marks an estimate from guessed sizes and composition; it changes no number.
 *
 * Refused (Problem): what `prepareInput` and `densityOf` refuse, `missing-dimension`, `ring-without-rim`, `wall-too-thick`,
 * `heavier-than-item` (the part, or the element, outweighs the object).
 *
 * @example elementMass({ by: "geometry", shape: "sphere", dimensions: { diameter: { value: 2, u: 0 } }, density: { from: "alloy",
 *   element: "Pb", rest: "Sn" }, content: { value: 400_000, u: 0 } }, { seed: 1 }) // 14.25 mg
 */
export function elementMass(basis: MassBasis, options: MassOptions): Outcome<MassResult> {
  const planned = planOf(basis);
  if (!planned.ok) return planned;
  const plan = planned.value;
  const run = <Unit extends string>(unit: Unit, model: (values: Record<string, number>) => number) =>
    propagateModel(unit, plan.inputs, model, options);
  const { estimate: mass, shares } = run("mg", plan.mass);
  const part = plan.part === null ? null : run("g", plan.part).estimate;
  const volume = plan.volume === null ? null : run("cm³", plan.volume).estimate;
  const tooHeavy = heavierThanItem(options.itemWeight, part, mass);
  if (tooHeavy !== null) return refused(tooHeavy);
  const first = shares[0];
  return done({
    by: basis.by,
    mass,
    // A bound on the content says nothing about the part that holds it.
    part: part === null ? null : { ...part, atMost: plan.inputs.weight?.bound ?? false },
    volume: volume === null ? null : { ...volume, atMost: false },
    density: plan.density === null ? null : densityUsed(plan, plan.density),
    shares,
    dominates: first === undefined || first.share === 0 ? null : first.input,
    sealed: options.sealed ?? false,
  });
}

function planOf(basis: MassBasis): Outcome<Plan> {
  switch (basis.by) {
    case "geometry":
      return planOfGeometry(basis);
    case "weighed": {
      const inputs = prepareAll({
        weight: [basis.weight, { field: "weight", boundAllowed: true }],
        content: [basis.content, contentRules],
      });
      if (!inputs.ok) return inputs;
      const part = ({ weight = Number.NaN }) => weight;
      return done({
        inputs: inputs.value,
        part,
        volume: null,
        density: null,
        mass: (v) => (part(v) * contentOf(v)) / 1000,
      });
    }
    case "coat": {
      const inputs = prepareAll({
        area: [basis.area, { field: "area", zeroCode: "area-zero" }],
        loading: [basis.loading, { field: "coatLoading", zeroCode: "loading-zero", boundAllowed: true }],
      });
      if (!inputs.ok) return inputs;
      const mass = ({ area = Number.NaN, loading = Number.NaN }) => area * loading;
      return done({ inputs: inputs.value, part: null, volume: null, density: null, mass });
    }
    case "coat-content": {
      const inputs = prepareAll({
        area: [basis.area, { field: "area", zeroCode: "area-zero" }],
        thickness: [basis.thickness, { field: "coatThickness" }],
        content: [basis.content, contentRules],
      });
      const volume = ({ area = Number.NaN, thickness = Number.NaN }) => area * thickness * 1e-4;
      return withDensity(basis.density, inputs, volume);
    }
  }
}

function planOfGeometry(basis: MassBasis & { by: "geometry" }): Outcome<Plan> {
  const geometry = geometries[basis.shape];
  const named: Record<string, [UncertainInput, Rules]> = {};
  const missing: Problem[] = [];
  for (const name of Object.keys(geometry.dimensions)) {
    const size = basis.dimensions[name];
    if (size === undefined) missing.push({ code: "missing-dimension", where: { field: name } });
    else named[name] = [size, { field: name }];
  }
  if (missing.length > 0) return refused(...missing);
  const inputs = prepareAll({ ...named, content: [basis.content, contentRules] });
  if (!inputs.ok) return inputs;
  const best = Object.fromEntries(Object.entries(inputs.value).map(([name, one]) => [name, one.best]));
  const flaw = geometry.flaw(best);
  if (flaw !== null)
    return refused({ code: flaw, where: { field: flaw === "wall-too-thick" ? "wall" : "innerDiameter" } });
  return withDensity(basis.density, inputs, (values) => geometry.volume(values) / 1000);
}

function withDensity(
  source: DensitySource,
  inputs: Outcome<Record<string, Prepared>>,
  volume: (values: Record<string, number>) => number,
): Outcome<Plan> {
  const density = densityOf(source);
  if (!inputs.ok || !density.ok)
    return refused(...(inputs.ok ? [] : inputs.problems), ...(density.ok ? [] : density.problems));
  const { of } = density.value;
  const part = (values: Record<string, number>) => volume(values) * of(values, contentOf(values) / whole.value);
  return done({
    inputs: { ...inputs.value, ...density.value.inputs },
    volume,
    part,
    mass: (values) => (part(values) * contentOf(values)) / 1000,
    density: density.value,
  });
}

const contentRules: Rules = { field: "content", most: whole, boundAllowed: true };
const contentOf = ({ content = Number.NaN }: Record<string, number>): number => content;

/** Every input ready, or every problem at once. */
function prepareAll(given: Record<string, [UncertainInput, Rules]>): Outcome<Record<string, Prepared>> {
  const inputs: Record<string, Prepared> = {};
  const problems: Problem[] = [];
  for (const [name, [input, rules]] of Object.entries(given)) {
    const prepared = prepareInput(input, rules);
    if (prepared.ok) inputs[name] = prepared.value;
    else problems.push(...prepared.problems);
  }
  return problems.length > 0 ? refused(...problems) : done(inputs);
}

function densityUsed(plan: Plan, density: PreparedDensity): MassResult["density"] {
  const best = Object.fromEntries(Object.entries(plan.inputs).map(([name, one]) => [name, one.best]));
  const value = density.of(best, contentOf(best) / whole.value);
  const u = Math.hypot(...Object.values(density.inputs).map((one) => one.u));
  return { value, u, source: density.source, checked: density.checked };
}

function heavierThanItem(item: number | undefined, part: Estimate | null, mass: Estimate): Problem | null {
  if (item === undefined) return null;
  const where = { field: "itemWeight" };
  if (!Number.isFinite(item) || item <= 0) return { code: "not-above-zero", where, found: String(item) };
  const grams = part?.value ?? mass.value / 1000;
  return grams > item
    ? { code: "heavier-than-item", where, found: `${Number(grams.toPrecision(3))} g`, allowed: `at most ${item} g` }
    : null;
}
