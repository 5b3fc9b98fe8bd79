import { done, type Outcome, refused } from "../quantity/problem.ts";
import type { UncertainInput } from "./types.ts";

/** As much of a reported result as an amount needs; a reconciled result and a published one both fit. */
export type ReportedContent = {
  quantity: string;
  state: "quantified" | "range-only" | "not-quantified" | "not-detected" | "no-readings";
  value: number | null;
  u: number | null;
  interval: readonly [number, number] | null;
  below: number | null;
  upperBound: number | null;
  range: readonly [number, number] | null;
};

/**
 * The content (mg/kg) or areal loading (mg/cm²) of a reported result, for `elementMass`: its value with its 95 % interval as it was
 * reported, even or lopsided; a range where only a range is stated; "below" the detection limit or the upper bound where there is no value,
 * so that the mass becomes "at most". An interval that begins below zero begins at zero.
 *
 * Refused (Problem): `no-content` (no readings, or nothing to go by), `content-of-another-kind` (neither a mass fraction nor a loading).
 *
 * @example contentOfResult(result) // { value: 412, interval: [376, 448] }
 */
export function contentOfResult(result: ReportedContent): Outcome<UncertainInput> {
  if (!["bulk-mass-fraction", "coating-mass-fraction", "coating-areal"].includes(result.quantity))
    return refused({ code: "content-of-another-kind", where: { field: "content" }, found: result.quantity });
  const { state, value, u, interval, below, upperBound, range } = result;
  const none = refused({ code: "no-content", where: { field: "content" } });
  switch (state) {
    case "quantified": {
      if (value === null || value <= 0) return upperBound === null ? none : done({ below: upperBound });
      if (interval !== null) return done({ value, interval: [Math.max(0, interval[0]), interval[1]] });
      return done({ value, u: u ?? 0 });
    }
    case "range-only":
      return range === null ? none : done({ min: range[0], max: range[1], shape: "rectangular" });
    case "not-quantified":
      return upperBound === null ? none : done({ below: upperBound });
    case "not-detected":
      return below === null ? none : done({ below });
    case "no-readings":
      return none;
  }
}
