import { defaultPolicy, type ReconcileResult } from "../reconcile/types.ts";
import { chiSquareUpperTail } from "../statistics/distributions.ts";

/** Why repeats are said to agree, to differ, or why it cannot be said. Worded in lib/wording/repeats.ts. */
export type RepeatReason =
  | "no-readings"
  | "one-reading"
  | "within-spots"
  | "between-spots"
  | "stands-apart"
  | "none-detected"
  | "mixed-detection"
  | "errors-unknown"
  | "one-spot"
  | "no-second-shots";

export type SpotRepeats = {
  spot: string | null;
  shots: string[];
  value: number | null;
  u: number | null;
  below: number | null;
  /** p of the Q test among the spot's own readings; null with one reading, or where an error or a value is missing. */
  p: number | null;
  birge: number | null;
  state: "one-reading" | "agree" | "differ" | "cannot-say" | "not-detected";
};

export type Repeats = {
  verdict: "agree" | "differ" | "cannot-say";
  reasons: RepeatReason[];
  spots: SpotRepeats[];
  between: { p: number; tau: number; relative: number; df: number } | null;
  leaveOneOut: [number, number] | null;
  candidates: string[];
  unit: string;
};

type Measured = Pick<ReconcileResult, "spots" | "scatter" | "crossCheck" | "counts" | "unit">;

/**
 * Whether the readings of one part and element repeat each other: each spot's own readings among themselves, the spots among
 * each other, and single readings that stand apart. It says what `reconcile` found; nothing is set aside by it.
 *
 * Within a spot: Q = birge²·(n − 1) of its n readings about their weighted mean, p = P(χ²(n − 1) ≥ Q) (Cochran 1954; the
 * same Q that gives the Birge ratio). Between spots: the Q test that `scatter` holds. Either differs where p is under
 * `differBelow` (policy: 0.01, as for the flag "scatter-beyond-counting").
 *
 * "differ" as soon as one of the tests does or a candidate was named; "agree" where a test could be made and none does, or where no
 * reading detected anything; "cannot-say" with fewer than two readings, with some spots detected and some not, or with
 * no errors to test against.
 *
 * Examples with their answers: tests/consistency/repeats.test.ts.
 */
export function repeatsOf(result: Measured, differBelow: number = defaultPolicy.scatterP): Repeats {
  const spots = result.spots.map((spot) => spotRepeats(spot, differBelow));
  const { scatter, crossCheck, counts, unit } = result;
  const candidates = crossCheck?.candidates ?? [];
  const judged = judge(spots, scatter?.p ?? null, candidates, counts, differBelow);
  const between = scatter && {
    p: scatter.p,
    tau: scatter.tau,
    relative: scatter.relative,
    df: scatter.df,
  };
  return { ...judged, spots, between, leaveOneOut: crossCheck?.leaveOneOut ?? null, candidates, unit };
}

function spotRepeats(spot: Measured["spots"][number], differBelow: number): SpotRepeats {
  const { shots, detected, value, u, below, birge } = spot;
  const n = shots.length;
  const p = n > 1 && birge !== null ? chiSquareUpperTail(birge * birge * (n - 1), n - 1) : null;
  const state = !detected
    ? "not-detected"
    : n === 1
      ? "one-reading"
      : p === null
        ? "cannot-say"
        : p < differBelow
          ? "differ"
          : "agree";
  return { spot: spot.spot, shots, value, u, below, p, birge, state };
}

function judge(
  spots: SpotRepeats[],
  betweenP: number | null,
  candidates: readonly string[],
  counts: Measured["counts"],
  differBelow: number,
): Pick<Repeats, "verdict" | "reasons"> {
  if (counts.used === 0) return { verdict: "cannot-say", reasons: ["no-readings"] };
  if (counts.used === 1) return { verdict: "cannot-say", reasons: ["one-reading"] };
  const against: RepeatReason[] = [];
  if (spots.some((spot) => spot.state === "differ")) against.push("within-spots");
  if (betweenP !== null && betweenP < differBelow) against.push("between-spots");
  if (candidates.length > 0) against.push("stands-apart");
  if (against.length > 0) return { verdict: "differ", reasons: against };
  if (counts.spotsDetected === 0) return { verdict: "agree", reasons: ["none-detected"] };
  if (counts.spotsDetected < counts.spots) return { verdict: "cannot-say", reasons: ["mixed-detection"] };
  if (betweenP === null && spots.every((spot) => spot.p === null))
    return { verdict: "cannot-say", reasons: ["errors-unknown"] };
  const beside: RepeatReason[] = [];
  if (counts.spots === 1) beside.push("one-spot");
  if (spots.every((spot) => spot.shots.length === 1)) beside.push("no-second-shots");
  return { verdict: "agree", reasons: beside };
}
