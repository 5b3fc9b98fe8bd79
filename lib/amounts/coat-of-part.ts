import { densityRangeOf } from "../quantity/material-densities.ts";
import { done, type Outcome, refused } from "../quantity/problem.ts";
import { type Coat, contentOfCoat, loadingOfCoat } from "./coating.ts";
import { contentOfResult, type ReportedContent } from "./content-of-result.ts";
import { prepareInput } from "./prepare-input.ts";
import { propagateModel } from "./propagate-model.ts";
import type { Estimate } from "./types.ts";

/** What is known of the layer a result was read in. Thickness mm, as the record holds it. */
export type CoatPart = { form: string; material: string; thicknessMm: number | null };

/** The two ways to say how much lies in a coat, and what the one was turned into the other with. */
export type CoatConversion = {
  from: "loading" | "content";
  loading: Estimate<"mg/cm²">;
  content: Estimate<"mg/kg">;
  thicknessUm: number;
  density: { min: number; max: number };
};

/**
 * A coat's areal loading as a content, or its content as an areal loading, by the part's thickness and the range of densities of
 * its material. Null where the result is of neither kind, was read in no coat, or holds no content.
 *
 * Refused (Problem): `thickness-needed` (the record has none), `density-needed` (the material is not one of the list), and what
 * `contentOfCoat` and `loadingOfCoat` refuse.
 *
 * Source: L = w·t·ρ, as in `contentOfCoat`. The thickness of a record has no uncertainty of its own and is taken as exact.
 */
export function coatOfPart(
  part: CoatPart,
  result: ReportedContent,
  options: { seed: number; draws?: number },
): Outcome<CoatConversion> | null {
  const byLoading = result.quantity === "coating-areal";
  if (part.form !== "coating" || !(byLoading || result.quantity === "coating-mass-fraction")) return null;
  const given = contentOfResult(result);
  if (!given.ok) return null;
  const { thicknessMm } = part;
  const range = densityRangeOf(part.material);
  if (thicknessMm === null) return refused({ code: "thickness-needed", where: { field: "coatThickness" } });
  if (range === null) return refused({ code: "density-needed", where: { field: "density" } });
  const thicknessUm = thicknessMm * 1000;
  const density = { min: range.min, max: range.max };
  const coat: Coat = {
    thickness: { value: thicknessUm, u: 0 },
    density: { from: "entered", density: { ...density, shape: "rectangular" } },
  };
  const prepared = prepareInput(given.value, { field: "content", boundAllowed: true });
  if (!prepared.ok) return prepared;
  const asRead = <U extends string>(unit: U): Estimate<U> =>
    propagateModel(unit, { it: prepared.value }, (v) => v.it, options).estimate;
  if (byLoading) {
    const content = contentOfCoat(given.value, coat, options);
    if (!content.ok) return content;
    return done({ from: "loading", loading: asRead("mg/cm²"), content: content.value, thicknessUm, density });
  }
  const loading = loadingOfCoat(given.value, coat, options);
  if (!loading.ok) return loading;
  return done({ from: "content", loading: loading.value, content: asRead("mg/kg"), thicknessUm, density });
}
