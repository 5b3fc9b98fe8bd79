import type { ReconcileResult } from "./types.ts";

/**
 * What the part's own readings say (step 3), before any other part of the budget. `u` and `nu` are those of "scatter and
 * counting"; `interval` is that part alone, null where u is unknown.
 */
export type Fit = {
  state: ReconcileResult["state"];
  model: ReconcileResult["model"];
  value: number | null;
  u: number | null;
  nu: number; // Infinity where u comes from counting alone
  interval: [number, number] | null;
  asymmetric: boolean; // the interval comes from a profile and is stated by its ends
  below: number | null;
  upperBound: number | null;
  scatter: ReconcileResult["scatter"];
  uneven: boolean;
  notes: string[];
};

export const emptyFit: Fit = {
  state: "no-readings",
  model: "none",
  value: null,
  u: null,
  nu: Infinity,
  interval: null,
  asymmetric: false,
  below: null,
  upperBound: null,
  scatter: null,
  uneven: false,
  notes: [],
};
