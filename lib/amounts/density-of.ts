import { done, type Outcome, refused } from "../quantity/problem.ts";
import { densityRuleU } from "./alloy-density.ts";
import { findDensityMaterial, metalDensities, metals } from "./materials-table.ts";
import { type Prepared, prepareInput } from "./prepare-input.ts";
import type { DensitySource, UncertainInput } from "./types.ts";

/** A density ready to be propagated: its own inputs, and g/cm³ from their values and the content (mass fraction 0…1). */
export type PreparedDensity = {
  inputs: Record<string, Prepared>;
  of: (values: Record<string, number>, fraction: number) => number;
  source: string;
  checked: string;
};

/**
 * Density from where the person says it comes. For an alloy it moves with the content: more lead is denser, and the same draw serves
 * both.
 *
 * Refused (Problem): `unknown-material`, `unknown-metal` (not one of `metals`), `same-metal-twice`, and what `prepareInput` refuses.
 */
export function densityOf(source: DensitySource, divisor = false): Outcome<PreparedDensity> {
  if (source.from === "alloy") return ofAlloy(source.element, source.rest);
  if (source.from === "entered") return single(source.density, divisor, "entered", "entered");
  const material = findDensityMaterial(source.id);
  if (material === null)
    return refused({
      code: source.id === "" ? "density-needed" : "unknown-material",
      where: { field: "material" },
      found: source.id,
    });
  return single(material.density, divisor, `${material.name}: ${material.source}`, material.checked);
}

function single(density: UncertainInput, divisor: boolean, source: string, checked: string): Outcome<PreparedDensity> {
  const prepared = prepareInput(density, { field: "density", divisor });
  if (!prepared.ok) return prepared;
  return done({ inputs: { density: prepared.value }, of: ({ density = Number.NaN }) => density, source, checked });
}

function ofAlloy(element: string, rest: string): Outcome<PreparedDensity> {
  const first = metalDensities[element];
  const second = metalDensities[rest];
  if (first === undefined || second === undefined) {
    const field = first === undefined ? "element" : "rest";
    return refused({
      code: "unknown-metal",
      where: { field },
      found: first === undefined ? element : rest,
      allowed: metals.join(", "),
    });
  }
  if (element === rest) return refused({ code: "same-metal-twice", where: { field: "rest" }, found: rest });
  // `alloyDensity` for two metals, written out: it stands inside every draw.
  const byRule = (w: number): number => 1 / (w / first + (1 - w) / second);
  const u = densityRuleU([element, rest], (first + second) / 2);
  const rule: Prepared = {
    best: 0,
    u,
    drawn: { from: { shape: "normal", mean: 0, sd: u }, value: (draw) => draw },
    bound: false,
  };
  return done({
    inputs: { "density-rule": rule },
    of: (values, fraction) => byRule(fraction) + values["density-rule"]!,
    source: `ideal-volume rule for ${element} and ${rest}: 1/density is the sum of share/density`,
    checked: "second-hand",
  });
}
