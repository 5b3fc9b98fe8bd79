import type { Fit } from "./fit.ts";
import type { DetectedShot, Shot } from "./normalise.ts";
import type { Spot } from "./spots.ts";
import { type FlagCode, flagCodes, type Policy, type ReconcileInput } from "./types.ts";

/** What a flag can be raised from. `shots` are those used; the input keeps those set aside too. */
export type FlagEvidence = {
  input: ReconcileInput;
  shots: readonly Shot[];
  spots: readonly Spot[];
  fit: Fit;
  candidates: readonly string[];
  policy: Policy;
};

/**
 * The flags that need no session, in the order of `flagCodes`.
 *
 * | flag | raised when |
 * |---|---|
 * | one-spot | exactly one spot was shot |
 * | few-readings | fewer than 3 readings were used |
 * | scatter-beyond-counting | Q test between spots, or between the shots of one spot, p < 0.01 (policy) |
 * | uneven | τ/mean over 0.15 (policy); with errors unknown, the spread of the spots stands for τ |
 * | outlier-candidate | a cross-check names a candidate (never dropped) |
 * | short-count | a shot counted less than the instrument's minimum |
 * | screening-only | a bulk reading on a coating |
 * | not-infinitely-thick | the part is thinner than the depth the X-rays need |
 * | smaller-than-window | the part is smaller than the instrument's window |
 * | lead-arsenic-overlap | lead and arsenic both claimed in one shot, or lead at ten times arsenic's detection limit or more |
 * | outside-calibrated-range | a detected shot lies outside the calibrated range |
 * | error-unknown | a detected shot has no usable error |
 * | mixed-detection | some shots detected the element and some did not |
 * | near-detection-limit | the value is under 10/3 of the highest limit reached, or a shot is under 3 of its own u (Currie 1968: L_Q = 10σ, L_D ≈ 3.3σ) |
 * | excluded-readings | a person set a reading aside |
 * | no-spots-named | a reading names no spot and counts as a spot of its own |
 *
 * `drift-in-session`, `check-missing` and `check-failed` come with the input, from whoever knows the session.
 */
export function flagsOf(evidence: FlagEvidence): FlagCode[] {
  const given = new Set(evidence.input.sessionFlags);
  return flagCodes.filter((code) => given.has(code) || (rules[code]?.(evidence) ?? false));
}

const detectedOf = (shots: readonly Shot[]): DetectedShot[] => shots.filter((shot) => shot.detected);

const rules: { [code in FlagCode]?: (evidence: FlagEvidence) => boolean } = {
  "one-spot": ({ spots }) => spots.length === 1,
  "few-readings": ({ shots }) => shots.length > 0 && shots.length < 3,
  "scatter-beyond-counting": ({ fit, spots, policy }) =>
    (fit.scatter !== null && fit.scatter.p < policy.scatterP) ||
    spots.some((spot) => spot.agreement !== null && spot.agreement < policy.scatterP),
  uneven: ({ fit }) => fit.uneven,
  "outlier-candidate": ({ candidates }) => candidates.length > 0,
  "short-count": ({ input, shots }) => {
    const minimum = input.minimumSeconds ?? null;
    return minimum !== null && shots.some((shot) => shot.secondsCounted !== null && shot.secondsCounted < minimum);
  },
  "screening-only": ({ input }) => input.form === "coating" && input.quantity === "bulk-mass-fraction",
  "not-infinitely-thick": ({ input }) => less(input.thicknessMm, input.infiniteThicknessMm),
  "smaller-than-window": ({ input }) => less(input.smallestDimensionMm, input.windowMm),
  "lead-arsenic-overlap": ({ input, shots }) => shots.some((shot) => overlaps(input.element, shot)),
  "outside-calibrated-range": ({ input, shots }) => {
    const range = input.calibratedRange ?? null;
    return range !== null && detectedOf(shots).some(({ value }) => outside(value, range));
  },
  "error-unknown": ({ shots }) => detectedOf(shots).some((shot) => shot.u === null),
  "mixed-detection": ({ shots }) => {
    const detected = detectedOf(shots).length;
    return detected > 0 && detected < shots.length;
  },
  "near-detection-limit": nearLimit,
  "excluded-readings": ({ input }) => input.shots.some((shot) => shot.setAside !== null),
  "no-spots-named": ({ shots }) => shots.some((shot) => shot.spot === null),
};

const less = (a: number | null | undefined, b: number | null | undefined): boolean =>
  typeof a === "number" && typeof b === "number" && a < b;
const outside = (value: number, [lo, hi]: [number, number]): boolean => value < lo || value > hi;

/** Lead's Lα and arsenic's Kα lines lie 0.01 keV apart (10.55 and 10.54 keV), so each adds to the other. */
function overlaps(element: string, shot: Shot): boolean {
  const lead = element === "Pb" && shot.detected ? shot.value : shot.lead;
  const arsenic = element === "As" && shot.detected ? shot.value : shot.arsenic;
  if (element !== "Pb" && element !== "As") return false;
  if (lead === null || lead <= 0) return false;
  if (arsenic !== null && arsenic > 0) return true;
  return element === "As" && !shot.detected && shot.limit !== null && lead >= 10 * shot.limit;
}

function nearLimit({ fit, shots }: FlagEvidence): boolean {
  const detected = detectedOf(shots);
  const limits = shots.flatMap((shot) => (shot.limit === null ? [] : [shot.limit]));
  if (detected.length === 0) return false;
  const belowOwn = detected.some(({ value, u }) => u !== null && value < 3 * u);
  if (limits.length === 0 || fit.value === null) return belowOwn;
  return belowOwn || fit.value < (10 / 3) * Math.max(...limits);
}
