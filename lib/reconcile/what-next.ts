import { DomainError } from "../quantity/domain-error.ts";
import { coverageFactor } from "../statistics/coverage-factor.ts";
import { normalUpperTail } from "../statistics/distributions.ts";
import { type BudgetLine, defaultPolicy, type ReconcileResult } from "./types.ts";

/** One thing that could be done next, and what it would bring. `effort` is in shots of the length taken so far. */
export type Plan = {
  kind: "more-spots" | "longer-counts" | "closer-standard" | "laboratory";
  /** More spots: how many. Longer counts: times the seconds. A closer standard: its share of the calibration's u. Laboratory: its relative u. */
  amount: number;
  effort: number;
  expectedU: number; // canonical unit
  /** That the result then stands clear of the limit, on either side; null where no limit was asked about. */
  chance: number | null;
};

export type NextSteps = { plans: Plan[]; cheapest: Plan | null };

/** A plan is good enough when it decides this often (policy). */
export const enoughChance = 0.8;

type Known = {
  x: number;
  own: number;
  counting: number;
  rest: number;
  n: number;
  limit: number | null;
  log: boolean;
  scale: number;
};

/**
 * Step 10: what more spots, longer counts, a check standard nearer the value, or a laboratory would bring, by prediction.
 *
 * Spread and counting error are taken as now known: with n spots, own variance v = u_own², m more spots make it
 * v·n/(n + m) with n + m − 1 degrees of freedom; counts c times as long divide the counting part (mean u²/n over spots) by c;
 * a closer standard shrinks the calibration's u to `amount` of it; a laboratory replaces the whole by its relative u.
 * The result to come is normal about the present one with variance u_now² − u_then² (the part of the present doubt that the work would
 * resolve), and it decides when it then lies more than t(1 − risk, ν)·u_then from the limit. Asymmetric results are
 * predicted on the log scale. Plans come in order of effort; a laboratory is last, and a plan that cannot reduce u is left out.
 *
 * For a result with a value and a u ("quantified"); anything else has no prediction and gives no plans. For "not-detected" see `boundPlans`.
 * Refused (DomainError): a limit that is not a number above zero (`not-positive`).
 *
 * @example whatNext(result, 430) // cheapest: { kind: "more-spots", amount: 3, chance: 0.83, … }
 */
export function whatNext(
  result: ReconcileResult,
  limit: number | null,
  { laboratoryRelative = 0.05, risk = defaultPolicy.decisionRisk } = {},
): NextSteps {
  if (limit !== null && !(Number.isFinite(limit) && limit > 0))
    throw new DomainError("not-positive", "a limit must be a number above zero", limit);
  const known = knownFrom(result, limit);
  if (known === null) return { plans: [], cheapest: null };
  const candidates = [
    ...[1, 2, 3, 4, 5, 7, 10, 15, 20, 30].map((m) => moreSpots(known, m)),
    ...[2, 4, 8].map((c) => longerCounts(known, c)),
    closerStandard(known, 0.5),
    laboratory(known, laboratoryRelative),
  ];
  const now = Math.hypot(known.own, known.rest);
  const plans = candidates
    .filter((plan) => plan.u < now)
    .map(({ kind, amount, effort, u, nu }) => ({
      kind,
      amount,
      effort,
      expectedU: coverageFactor(nu, defaultPolicy.level) * u * known.scale,
      chance:
        known.limit === null ? null : chanceOfDecision(known.x, known.limit, now, u, coverageFactor(nu, 1 - 2 * risk)),
    }))
    .sort((a, b) => a.effort - b.effort || a.expectedU - b.expectedU);
  return { plans, cheapest: plans.find((plan) => (plan.chance ?? 0) >= enoughChance) ?? null };
}

/** Value, own and other parts of u on the scale of prediction: as they are, or logarithms where the result is asymmetric. */
function knownFrom(result: ReconcileResult, limit: number | null): Known | null {
  if (result.value === null || result.u === null || result.state !== "quantified") return null;
  const log = result.asymmetric && result.value > 0;
  const scale = log ? result.value : 1;
  const [ownLine, ...others] = result.budget as [BudgetLine, ...BudgetLine[]]; // never empty where there is a u
  const n = result.counts.spots;
  const squares = result.spots.reduce((sum, spot) => sum + (spot.u ?? 0) ** 2, 0);
  return {
    x: log ? Math.log(result.value) : result.value,
    own: ownLine.u / scale,
    counting: Math.min(Math.sqrt(squares) / n, ownLine.u) / scale,
    rest: Math.hypot(0, ...others.map((line) => line.u)) / scale,
    n,
    limit: limit === null ? null : log ? Math.log(limit) : limit,
    log,
    scale,
  };
}

type Predicted = { kind: Plan["kind"]; amount: number; effort: number; u: number; nu: number };

/** Welch–Satterthwaite with the rest taken as known for certain; infinite where nothing but the rest is left. */
const degrees = (own: number, rest: number, nu: number): number => (Math.hypot(own, rest) / own) ** 4 * nu;

function moreSpots(known: Known, m: number): Predicted {
  const own = known.own * Math.sqrt(known.n / (known.n + m));
  return {
    kind: "more-spots",
    amount: m,
    effort: m,
    u: Math.hypot(own, known.rest),
    nu: degrees(own, known.rest, known.n + m - 1),
  };
}

function longerCounts(known: Known, c: number): Predicted {
  const own = Math.sqrt(known.own ** 2 - known.counting ** 2 * (1 - 1 / c));
  const nu = known.n > 1 ? known.n - 1 : Infinity;
  return {
    kind: "longer-counts",
    amount: c,
    effort: known.n * c,
    u: Math.hypot(own, known.rest),
    nu: degrees(own, known.rest, nu),
  };
}

function closerStandard(known: Known, share: number): Predicted {
  const rest = known.rest * share;
  const nu = known.n > 1 ? known.n - 1 : Infinity;
  return {
    kind: "closer-standard",
    amount: share,
    effort: 10,
    u: Math.hypot(known.own, rest),
    nu: degrees(known.own, rest, nu),
  };
}

function laboratory(known: Known, relative: number): Predicted {
  const u = known.log ? relative : relative * Math.abs(known.x);
  return { kind: "laboratory", amount: relative, effort: Infinity, u, nu: Infinity };
}

/** P(|y − L| > k·u) for y normal about x with variance u_now² − u². */
function chanceOfDecision(x: number, limit: number, now: number, u: number, k: number): number {
  const spread = Math.sqrt(now * now - u * u);
  return normalUpperTail((limit + k * u - x) / spread) + normalUpperTail((x - limit + k * u) / spread);
}
