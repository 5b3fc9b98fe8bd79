import type { Outcome } from "../quantity/problem.ts";
import type { Estimate, UncertainInput } from "./types.ts";

type Options = { seed: number; draws?: number };

/** mass (mg) ÷ loading (µg/ft²) → area, ft². */
export function areaAtLoading(
  inputs: { mass: UncertainInput; loading: UncertainInput },
  options: Options,
): Outcome<Estimate<"ft²">> {
  throw new Error(`not yet: ${inputs} ${options.seed}`);
}

/** area (ft²) × loading (µg/ft²) → mass, mg. */
export function massOnArea(
  inputs: { area: UncertainInput; loading: UncertainInput },
  options: Options,
): Outcome<Estimate<"mg">> {
  throw new Error(`not yet: ${inputs} ${options.seed}`);
}

/** mass (mg) ÷ area (ft²) → loading, µg/ft². */
export function loadingOnArea(
  inputs: { mass: UncertainInput; area: UncertainInput },
  options: Options,
): Outcome<Estimate<"µg/ft²">> {
  throw new Error(`not yet: ${inputs} ${options.seed}`);
}
