import { done, type Outcome, refused } from "../quantity/problem.ts";
import { prepareInput, type Rules } from "./prepare-input.ts";
import { propagateModel } from "./propagate-model.ts";
import type { Estimate, UncertainInput } from "./types.ts";

type Options = { seed: number; draws?: number };

const mass: Rules = { field: "amount", boundAllowed: true };
const loading: Rules = { field: "loading", zeroCode: "loading-zero" };
const area: Rules = { field: "over", zeroCode: "area-zero" };

/** Two inputs through one model; both inputs' problems at once. */
function ofTwo<Unit extends string>(
  unit: Unit,
  [first, firstRules]: [UncertainInput, Rules],
  [second, secondRules]: [UncertainInput, Rules],
  model: (a: number, b: number) => number,
  options: Options,
): Outcome<Estimate<Unit>> {
  const a = prepareInput(first, firstRules);
  const b = prepareInput(second, secondRules);
  if (!a.ok || !b.ok) return refused(...(a.ok ? [] : a.problems), ...(b.ok ? [] : b.problems));
  return done(propagateModel(unit, { a: a.value, b: b.value }, (v) => model(v.a, v.b), options).estimate);
}

/**
 * The area (ft²) on which a mass (mg) spread evenly would come to a loading (µg/ft²): A = 1000·m/L. Arithmetic, not a prediction: an
 * amount in an object is not dust on a floor.
 *
 * Refused (Problem): `loading-zero` (also a range of loadings from zero), what `prepareInput` refuses.
 *
 * @example areaAtLoading({ mass: { value: 34.02, u: 0 }, loading: { value: 5, u: 0 } }, { seed: 1 }) // 6804 ft²
 */
export const areaAtLoading = (
  inputs: { mass: UncertainInput; loading: UncertainInput },
  options: Options,
): Outcome<Estimate<"ft²">> =>
  ofTwo("ft²", [inputs.mass, mass], [inputs.loading, { ...loading, divisor: true }], (m, l) => (m * 1000) / l, options);

/**
 * The mass (mg) that gives an area (ft²) a loading (µg/ft²): m = A·L/1000.
 *
 * @example massOnArea({ area: { value: 57_600, u: 0 }, loading: { value: 38, u: 0 } }, { seed: 1 }) // 2188.8 mg
 */
export const massOnArea = (
  inputs: { area: UncertainInput; loading: UncertainInput },
  options: Options,
): Outcome<Estimate<"mg">> =>
  ofTwo(
    "mg",
    [inputs.area, area],
    [inputs.loading, { ...loading, boundAllowed: true }],
    (a, l) => (a * l) / 1000,
    options,
  );

/**
 * The loading (µg/ft²) of a mass (mg) spread evenly over an area (ft²): L = 1000·m/A.
 *
 * Refused (Problem): `area-zero` (also a range of areas from zero), what `prepareInput` refuses.
 *
 * @example loadingOnArea({ mass: { value: 2500, u: 0 }, area: { value: 76_854, u: 0 } }, { seed: 1 }) // 32.53 µg/ft²
 */
export const loadingOnArea = (
  inputs: { mass: UncertainInput; area: UncertainInput },
  options: Options,
): Outcome<Estimate<"µg/ft²">> =>
  ofTwo("µg/ft²", [inputs.mass, mass], [inputs.area, { ...area, divisor: true }], (m, a) => (m * 1000) / a, options);
