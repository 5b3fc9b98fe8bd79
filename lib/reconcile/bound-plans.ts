import { DomainError } from "../quantity/domain-error.ts";
import { fewSpotsBound } from "./few-spots-bound.ts";
import { defaultPolicy, type Policy, type ReconcileResult } from "./types.ts";

/**
 * One thing that could be done next where nothing was detected. `effort` is in shots of the length taken so far. `bound` is the upper
 * bound that decides, in the canonical unit, if again nothing is detected; null where nobody can say it beforehand (a laboratory).
 */
export type BoundPlan = {
  kind: "more-spots" | "longer-counts" | "laboratory";
  /** More spots: how many. Longer counts: times the seconds, at every spot. Laboratory: 1. */
  amount: number;
  effort: number;
  bound: number | null;
  /** Whether a part that again shows nothing is then below the limit; null where the bound is not known. */
  settles: boolean | null;
};

export type BoundSteps = { plans: BoundPlan[]; cheapest: BoundPlan | null };

/**
 * Step 10 for a part where nothing was detected and the bound is over the limit: how far the bound would fall.
 *
 * m more spots with the limit reached so far: `fewSpotsBound` for n + m spots, none of them seen. Every spot counted c times as long:
 * the detection limit, and with it the bound, falls to 1/√c (Currie: L_D ∝ √B for a background of many counts, as `secondsForLimit`
 * has it). A laboratory is last and has no bound. What is predicted holds only if again nothing is seen: what is there decides
 * that, and nobody can know its chance. If something is seen then, the result is a value and is held beside the limit as one.
 * Plans come in order of effort; one that does not lower the bound, or no further than a lesser one of its kind, is left out.
 *
 * For a result "not-detected" with a bound that does not pass; anything else gives no plans. `failsAt`: ">" where a bound at the limit itself
 * passes it. Limit in the canonical unit.
 *
 * Refused (DomainError): a limit that is not a number above zero (`not-positive`).
 *
 * Sources: Currie, Anal. Chem. 40 (1968) 586, Table II, for 1/√t; `fewSpotsBound` names its own.
 *
 * @example three spots below 10 (bound 18.7), limit 15 → cheapest: { kind: "more-spots", amount: 1, bound: 14.97, settles: true, … }
 */
export function boundPlans(
  result: ReconcileResult,
  limit: number,
  { failsAt = ">" as ">" | ">=", policy = defaultPolicy as Pick<Policy, "spreadAllowed" | "level"> } = {},
): BoundSteps {
  if (!(Number.isFinite(limit) && limit > 0))
    throw new DomainError("not-positive", "a limit must be a number above zero", limit);
  const { below, upperBound: now } = result;
  const passes = (bound: number): boolean => (failsAt === ">" ? bound <= limit : bound < limit);
  if (result.state !== "not-detected" || below === null || now === null || passes(now))
    return { plans: [], cheapest: null };
  const n = result.counts.spots;
  const lower = (kind: BoundPlan["kind"], steps: { amount: number; effort: number; bound: number }[]): BoundPlan[] =>
    steps
      .filter(({ bound }, at) => bound < Math.min(now, steps[at - 1]?.bound ?? now))
      .map((step) => ({ kind, ...step, settles: passes(step.bound) }));
  const moreSpots = [1, 2, 3, 4, 5, 7, 10].map((m) => {
    return { amount: m, effort: m, bound: fewSpotsBound(below, n + m, n + m, policy) };
  });
  const longerCounts = [2, 3, 4, 6, 8, 12, 16].map((c) => ({ amount: c, effort: n * c, bound: now / Math.sqrt(c) }));
  const plans = [...lower("more-spots", moreSpots), ...lower("longer-counts", longerCounts)];
  plans.sort((a, b) => a.effort - b.effort);
  const cheapest = plans.find((plan) => plan.settles) ?? null;
  return {
    plans: [...plans, { kind: "laboratory", amount: 1, effort: Infinity, bound: null, settles: null }],
    cheapest,
  };
}
