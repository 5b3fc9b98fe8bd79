import type { QuantityKind } from "../quantity/kinds.ts";
import type { WrittenNumber } from "../readings/reading.ts";

/** One shot's result for the element in hand, as `reconcile` takes it (unit as written; step 0 converts). */
export type ShotInput = {
  id: string; // anything that identifies the reading to the caller
  spot: string | null; // null: counts as a spot of its own
  quantity: QuantityKind;
  mode: string | null;
  unit: string;
  belowDetection: boolean;
  value: WrittenNumber | null;
  error: WrittenNumber | null;
  k: 1 | 2 | 3 | null;
  detectionLimit: WrittenNumber | null;
  secondsCounted: number | null;
  takenAt: string | null;
  setAside: { reason: string } | null; // excluded by a person with a written reason, or by a failed session; stays visible
  /** What the session's correction multiplies this shot by (1/R of its check standard); absent: as read. */
  factor?: number;
  /** Arsenic's or lead's value in the same shot, for the overlap flag; in the canonical unit. */
  arsenicValue?: number | null;
  leadValue?: number | null;
};

/** A part of the budget that does not come from this part's own scatter. u is relative (u/x) or absolute, canonical unit. */
export type StatedContribution = {
  code: string; // "calibration", "matrix-geometry", "recovery" …
  relative?: number;
  absolute?: number;
  nu?: number; // absent = infinite
  type: "A" | "B";
  source: string; // a sentence for the page: "instrument default, stated by the tester; no check-standard session yet"
  /** The session whose results all have this contribution in common; a comparison of two of them leaves it out (step 6). */
  shared?: string;
};

export type ReconcileInput = {
  element: string;
  quantity: QuantityKind;
  form: "bulk" | "coating";
  shots: ShotInput[];
  contributions: StatedContribution[];
  /** What the sessions of these shots say (step 5); raised as it stands. */
  sessionFlags?: FlagCode[];
  minimumSeconds?: number | null;
  calibratedRange?: [number, number] | null; // canonical unit
  thicknessMm?: number | null;
  smallestDimensionMm?: number | null;
  windowMm?: number | null;
  /** Depth beyond which more of this material changes nothing, from lib/attenuation; for the thickness flag. */
  infiniteThicknessMm?: number | null;
  policy?: Partial<Policy>;
};

/** Numbers that are ours to choose (method.md "policy"). Each published page names the policy version. */
export type Policy = {
  version: string;
  level: 0.95;
  unevenFrom: number;
  scatterP: number;
  decisionRisk: number;
  /** Relative spread of contents between spots that a bound from few spots allows for, where the spots cannot tell it. */
  spreadAllowed: number;
  /** Counting errors beyond this share of the mean hide whether a part is even. */
  evenSeenTo: number;
  /** Levels of an uneven part's interval from three spots or fewer, and from four or five: at `level` itself it would end too low too often. */
  threeSpotsLevel: number;
  fiveSpotsLevel: number;
};

export const defaultPolicy: Policy = {
  version: "2",
  level: 0.95,
  unevenFrom: 0.15,
  scatterP: 0.01,
  decisionRisk: 0.05,
  spreadAllowed: 1,
  evenSeenTo: 0.1,
  threeSpotsLevel: 0.97,
  fiveSpotsLevel: 0.96,
};

export const flagCodes = [
  "one-spot",
  "few-readings",
  "scatter-beyond-counting",
  "uneven",
  "outlier-candidate",
  "drift-in-session",
  "short-count",
  "check-missing",
  "check-failed",
  "screening-only",
  "not-infinitely-thick",
  "smaller-than-window",
  "lead-arsenic-overlap",
  "outside-calibrated-range",
  "error-unknown",
  "mixed-detection",
  "near-detection-limit",
  "excluded-readings",
  "no-spots-named",
] as const;
export type FlagCode = (typeof flagCodes)[number];

export type SpotResult = {
  spot: string | null;
  shots: string[]; // ids
  detected: boolean;
  value: number | null; // canonical unit; null where nothing at the spot was detected
  u: number | null; // standard uncertainty; null = unknown
  below: number | null; // lowest detection limit reached at the spot, where not detected
  birge: number | null;
};

export type BudgetLine = {
  code: string;
  value: number | null; // value of the input quantity, where it has one
  u: number; // standard uncertainty contributed to the result, canonical unit
  nu: number | null; // null = infinite
  type: "A" | "B";
  share: number; // u² / u_c², 0…1
  source: string;
  shared?: string; // session whose results share this line
};

/**
 * "quantified"     value with an interval
 * "range-only"     uneven part stated by its range, without an interval (only where the model cannot serve)
 * "not-quantified" detected in too few spots: detected values, how many of how many, and an upper bound
 * "not-detected"   every spot was below `below`
 * "no-readings"    nothing left to reconcile
 */
export type ReconcileState = "quantified" | "range-only" | "not-quantified" | "not-detected" | "no-readings";

export type ReconcileResult = {
  method: { name: "cupboard-assay-reconcile"; version: string; policy: string };
  inputsDigest: string; // SHA-256 (hex) of the canonical inputs; the hash function is an argument
  element: string;
  quantity: QuantityKind;
  unit: string; // canonical
  state: ReconcileState;
  model:
    | "one-spot"
    | "random-effects"
    | "lognormal"
    | "censored-normal"
    | "censored-lognormal"
    | "mean-of-spots"
    | "none";
  value: number | null;
  u: number | null; // combined standard uncertainty
  U: number | null; // expanded; null where only an asymmetric interval is stated
  k: number | null;
  nuEff: number | null; // null = infinite
  interval: [number, number] | null; // 95 %
  asymmetric: boolean;
  below: number | null; // not-detected: highest over spots of the lowest limit reached
  upperBound: number | null; // not-quantified, not-detected: one-sided 95 % upper bound of the part's mean; it decides
  stated: { value: string; U: string | null; interval: [string, string] | null; below: string | null }; // as printed
  spots: SpotResult[];
  highestSpot: { spot: string | null; value: number; u: number | null } | null;
  range: [number, number] | null; // lowest and highest detected spot
  counts: { readings: number; used: number; setAside: number; spots: number; spotsDetected: number };
  scatter: { q: number; df: number; p: number; tau: number; relative: number } | null;
  budget: BudgetLine[];
  flags: FlagCode[];
  /** The value without the set-aside readings is the result; this is the value with them, for the page to show beside it. */
  withSetAside: { value: number | null; interval: [number, number] | null } | null;
  crossCheck: {
    median: number;
    scaledMad: number;
    algorithmA: number | null;
    leaveOneOut: [number, number] | null;
    candidates: string[];
  } | null;
  notes: string[]; // codes worded by lib/wording
};
