import type { Outcome } from "../quantity/problem.ts";
import type { MassBasis, MassOptions, MassResult } from "./types.ts";

/** Mass of an element in a part. */
export function elementMass(basis: MassBasis, options: MassOptions): Outcome<MassResult> {
  throw new Error(`not yet: ${basis.by} ${options.seed}`);
}
