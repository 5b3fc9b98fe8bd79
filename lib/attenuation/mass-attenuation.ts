import { DomainError } from "../quantity/domain-error.ts";
import type { Material } from "../quantity/item-words.ts";
import { elementAttenuation } from "./element-attenuation.ts";
import { type Matter, matterOf } from "./matter.ts";
import { lines } from "./tables/lines.ts";

/** An analyte line by name: "Pb Lα", "Cd Kα" … */
export type LineName = keyof typeof lines;
export const lineNames = Object.keys(lines) as LineName[];

/** Element, energy in keV and edge in keV of a line. Refuses (DomainError) `unknown-line`. */
export function lineOf(name: LineName): (typeof lines)[LineName] {
  if (!Object.hasOwn(lines, name)) throw new DomainError("unknown-line", "not a line of the table", name);
  return lines[name];
}

/**
 * Mass attenuation coefficient of a material at an energy in keV, cm²/g, by the mixture rule: µ/ρ = Σ wᵢ·(µ/ρ)ᵢ.
 * Source: Hubbell and Seltzer, NISTIR 5632 (NIST SRD 126), equation 5; coefficients from our table (xraylib).
 *
 * @example massAttenuationAt("pvc", 10) // 33.4
 */
export function massAttenuationAt(material: Material | Matter, keV: number): number {
  let sum = 0;
  for (const [symbol, fraction] of Object.entries(matterOf(material).fractions))
    sum += fraction * elementAttenuation(symbol, keV);
  return sum;
}

/**
 * Mass attenuation coefficient of a material for a line, cm²/g: how fast the line fades on its way out.
 *
 * @example massAttenuation("glaze", "Pb Lα") // 19.7
 */
export const massAttenuation = (material: Material | Matter, line: LineName): number =>
  massAttenuationAt(material, lineOf(line).keV);
