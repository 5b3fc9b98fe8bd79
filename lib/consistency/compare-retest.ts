import { type ComparedResult, type ComparedResults, compareResults } from "./compare-results.ts";

/** A value of a re-test as far as comparing asks. */
export type RetestedValue = {
  quantity: string;
  value: number | null;
  budget: ComparedResult["budget"];
  /** Ids of the analysers that took its readings. */
  instruments: readonly string[];
};

/**
 * The first value of a re-test beside the second. Taken with the very same analyser, both carry its calibration, which cancels in the
 * difference and is left out of both; with different ones it stays. Null where either has no value to compare, or they are of different
 * kinds.
 *
 * Source: as `compareResults`.
 *
 * @example compareRetest({ quantity: "bulk-mass-fraction", value: null, budget: [], instruments: [] },
 *   { quantity: "bulk-mass-fraction", value: 4, budget: [], instruments: [] }) // null
 */
export function compareRetest(first: RetestedValue, second: RetestedValue): ComparedResults | null {
  if (first.value === null || second.value === null || first.quantity !== second.quantity) return null;
  const [one] = first.instruments;
  const same =
    one !== undefined &&
    first.instruments.length === 1 &&
    second.instruments.length === 1 &&
    second.instruments[0] === one;
  return compareResults(
    { value: first.value, budget: first.budget },
    { value: second.value, budget: second.budget },
    same ? { shared: ["calibration"] } : {},
  );
}
