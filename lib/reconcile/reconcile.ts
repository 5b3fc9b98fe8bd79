import { canonicalUnit } from "../quantity/kinds.ts";
import { budgetOf, type Combined } from "./budget.ts";
import { fitComponent } from "./component.ts";
import { crossCheck } from "./cross-check.ts";
import type { Fit } from "./fit.ts";
import { flagsOf } from "./flags.ts";
import { inputsDigest } from "./inputs-digest.ts";
import { normaliseShot, requireOneKind } from "./normalise.ts";
import { groupBySpot, reconcileSpot, type Spot } from "./spots.ts";
import { statement } from "./statement.ts";
import {
  defaultPolicy,
  type Policy,
  type ReconcileInput,
  type ReconcileResult,
  type ShotInput,
  type SpotResult,
} from "./types.ts";

/** The method's name and version, as every result carries it. */
export const method = { name: "cupboard-assay-reconcile", version: "2" } as const;

/**
 * One component and one element in one quantity kind: its readings to a reported value with its uncertainty budget, its
 * interval, its flags and a digest of what it was made from. The steps are those of the reconciliation method, version
 * 2; each stands in a file of its own: `normalise` (0, 1), `spots` (2), `component` and `censored-component` (3, 4), `budget` (6), `statement`
 * (7), `cross-check` (8), `flags`. Step 5 (was the instrument fit?) reaches it as stated contributions.
 *
 * Deterministic and independent of the order of shots and contributions. `hash` is SHA-256 to hex, or whatever the
 * caller wants the inputs' digest made with.
 *
 * Refused (DomainError): shots of another kind (`mixed-kinds`) or of several named modes (`mixed-modes`), unless set aside; numbers
 * that are not finite, a negative error, a detected shot without a value, an unknown unit, a malformed contribution.
 *
 * @example five spots 412±9, 405±8, 421±10, 398±9, 417±9 (k = 1), no other contributions
 *          // value 409.92, u 4.01, U 11.1 (t with 4), stated "410" ± "11"
 */
export function reconcile(input: ReconcileInput, hash: (text: string) => string): ReconcileResult {
  const policy: Policy = { ...defaultPolicy, ...input.policy };
  const kept = input.shots.filter((shot) => shot.setAside === null);
  const { shots, spots, fit, combined } = evaluate(input, kept, policy);
  const check = crossCheck(spots);
  const detected = spots.filter((spot) => spot.detected);
  const values = detected.map((spot) => spot.value);
  const highest = detected.reduce<(typeof detected)[number] | null>(
    (best, spot) => (best === null || spot.value > best.value ? spot : best),
    null,
  );
  return {
    method: { ...method, policy: policy.version },
    inputsDigest: inputsDigest(input, policy, method.version, hash),
    element: input.element,
    quantity: input.quantity,
    unit: canonicalUnit(input.quantity),
    state: fit.state,
    model: fit.model,
    value: fit.value,
    u: combined.u,
    U: combined.U,
    k: combined.k,
    nuEff: combined.nuEff,
    interval: combined.interval,
    asymmetric: combined.asymmetric,
    below: fit.below,
    upperBound: fit.upperBound,
    stated: statement(fit, combined),
    spots: spots.map(spotResult),
    highestSpot: highest === null ? null : { spot: highest.spot, value: highest.value, u: highest.u },
    range: values.length === 0 ? null : [Math.min(...values), Math.max(...values)],
    counts: {
      readings: input.shots.length,
      used: shots.length,
      setAside: input.shots.length - kept.length,
      spots: spots.length,
      spotsDetected: detected.length,
    },
    scatter: fit.scatter,
    budget: combined.lines,
    flags: flagsOf({ input, shots, spots, fit, candidates: check?.candidates ?? [], policy }),
    withSetAside: withSetAside(input, kept, policy),
    crossCheck: check,
    notes: [...fit.notes, ...combined.notes],
  };
}

/** The part of a result that a decision against a limit rests on. */
export type Decisive = Pick<
  ReconcileResult,
  "state" | "value" | "u" | "nuEff" | "interval" | "asymmetric" | "below" | "upperBound"
> & { uneven: boolean };

/**
 * What `reconcile` says of value, interval and bounds, by the same steps, without what is only told beside them (digest, cross-checks,
 * printed digits, other flags). For simulations and the like, which ask of very many parts what would be decided. Refuses what
 * `reconcile` refuses.
 */
export function decisive(input: ReconcileInput): Decisive {
  const policy: Policy = { ...defaultPolicy, ...input.policy };
  const kept = input.shots.filter((shot) => shot.setAside === null);
  const { fit, combined } = evaluate(input, kept, policy);
  return {
    state: fit.state,
    value: fit.value,
    u: combined.u,
    nuEff: combined.nuEff,
    interval: combined.interval,
    asymmetric: combined.asymmetric,
    below: fit.below,
    upperBound: fit.upperBound,
    uneven: fit.uneven,
  };
}

/** mg/kg: no mass fraction is more than all of it. */
const wholePart = 1_000_000;

type Evaluation = { shots: ReturnType<typeof normaliseShot>[]; spots: Spot[]; fit: Fit; combined: Combined };

/** Steps 0 to 6 for one choice of shots. */
function evaluate(input: ReconcileInput, chosen: readonly ShotInput[], policy: Policy): Evaluation {
  requireOneKind(chosen, input.quantity);
  const shots = chosen.map((shot) => normaliseShot(shot, input.quantity));
  const spots = groupBySpot(shots).map(reconcileSpot);
  const most = canonicalUnit(input.quantity) === "mg/kg" ? wholePart : Infinity;
  const fit = fitComponent(spots, policy, most);
  return { shots, spots, fit, combined: budgetOf(fit, input.contributions, most) };
}

/**
 * Step 1: the value with the readings that were set aside, to stand beside the one without. Those of another kind or mode
 * are left out, since they could not be mixed in at any price. Null where nothing was set aside.
 */
function withSetAside(
  input: ReconcileInput,
  kept: readonly ShotInput[],
  policy: Policy,
): ReconcileResult["withSetAside"] {
  if (kept.length === input.shots.length) return null;
  const mode = kept.find((shot) => shot.mode !== null)?.mode ?? null;
  const alike = (shot: ShotInput): boolean =>
    shot.quantity === input.quantity && (mode === null || shot.mode === null || shot.mode === mode);
  const all = input.shots.filter((shot) => shot.setAside === null || alike(shot));
  const modes = new Set(all.flatMap((shot) => (shot.mode === null ? [] : [shot.mode])));
  if (modes.size > 1) return { value: null, interval: null };
  const { fit, combined } = evaluate(input, all, policy);
  return { value: fit.value, interval: combined.interval };
}

function spotResult(spot: Spot): SpotResult {
  return {
    spot: spot.spot,
    shots: spot.shots.map((shot) => shot.id),
    detected: spot.detected,
    value: spot.value,
    u: spot.u,
    below: spot.detected ? null : spot.limit,
    birge: spot.birge,
  };
}
