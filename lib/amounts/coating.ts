import { done, type Outcome, type Problem, refused } from "../quantity/problem.ts";
import { densityOf } from "./density-of.ts";
import { type Prepared, prepareInput, type Rules } from "./prepare-input.ts";
import { propagateModel } from "./propagate-model.ts";
import type { DensitySource, Estimate, UncertainInput } from "./types.ts";

type Options = { seed: number; draws?: number };

/** A coat as far as it is known. Thickness µm; a density from an alloy's content is no use here and is refused. */
export type Coat = { thickness: UncertainInput | null; density: Exclude<DensitySource, { from: "alloy" }> | null };

const whole = { value: 1e6, code: "content-over-100" } as const;

/** Thickness and density, or what is missing: neither of the two may be guessed. */
function coatInputs(coat: Coat): Outcome<{ thickness: Prepared; density: Prepared }> {
  const problems: Problem[] = [];
  if (coat.thickness === null) problems.push({ code: "thickness-needed", where: { field: "coatThickness" } });
  if (coat.density === null) problems.push({ code: "density-needed", where: { field: "density" } });
  if (coat.thickness === null || coat.density === null) return refused(...problems);
  const thickness = prepareInput(coat.thickness, { field: "coatThickness", divisor: true });
  const density = densityOf(coat.density, true);
  if (!thickness.ok || !density.ok)
    return refused(...(thickness.ok ? [] : thickness.problems), ...(density.ok ? [] : density.problems));
  return done({ thickness: thickness.value, density: density.value.inputs.density as Prepared });
}

/**
 * Mass fraction (mg/kg) of a coat from its areal loading: w = 10⁷·L/(t·ρ), L mg/cm², t µm, ρ g/cm³. For one even layer.
 *
 * Refused (Problem) without a thickness (`thickness-needed`) or without a density (`density-needed`); `content-over-100` where so much
 * cannot lie in so thin a coat; what `prepareInput` refuses.
 *
 * @example contentOfCoat({ value: 1, u: 0 }, { thickness: { value: 100, u: 0 }, density: { from: "entered", density: { value: 1.5, u: 0 } } },
 *   { seed: 1 }) // 66 667 mg/kg
 */
export function contentOfCoat(loading: UncertainInput, coat: Coat, options: Options): Outcome<Estimate<"mg/kg">> {
  const inputs = coatInputs(coat);
  const rules: Rules = { field: "coatLoading", zeroCode: "loading-zero", boundAllowed: true };
  const l = prepareInput(loading, rules);
  if (!inputs.ok || !l.ok) return refused(...(l.ok ? [] : l.problems), ...(inputs.ok ? [] : inputs.problems));
  const { estimate } = propagateModel(
    "mg/kg",
    { loading: l.value, ...inputs.value },
    (v) => (1e7 * v.loading) / (v.thickness * v.density),
    options,
  );
  return estimate.value > whole.value
    ? refused({ code: whole.code, where: { field: "coatThickness" }, found: `${Math.round(estimate.value)} ppm` })
    : done(estimate);
}

/**
 * Areal loading (mg/cm²) of a coat from its mass fraction (mg/kg): L = w·t·ρ/10⁷. Refused like `contentOfCoat`.
 *
 * @example loadingOfCoat({ value: 90, u: 0 }, { thickness: { value: 25, u: 0 }, density: { from: "entered", density: { value: 1.5, u: 0 } } },
 *   { seed: 1 }) // 0.0003375 mg/cm²
 */
export function loadingOfCoat(content: UncertainInput, coat: Coat, options: Options): Outcome<Estimate<"mg/cm²">> {
  const inputs = coatInputs(coat);
  const w = prepareInput(content, { field: "content", most: whole, boundAllowed: true });
  if (!inputs.ok || !w.ok) return refused(...(w.ok ? [] : w.problems), ...(inputs.ok ? [] : inputs.problems));
  return done(
    propagateModel(
      "mg/cm²",
      { content: w.value, ...inputs.value },
      (v) => (v.content * v.thickness * v.density) / 1e7,
      options,
    ).estimate,
  );
}
