import { DomainError } from "../quantity/domain-error.ts";
import type { ReconcileResult, ReconcileState } from "../reconcile/types.ts";
import { probabilityAbove } from "./probability-above.ts";
import type { Limit, Verdict } from "./types.ts";

/** What a reconciled result says, as far as a decision asks; all numbers in the limit's unit. */
export type Held = {
  state: ReconcileState;
  value: number | null;
  u: number | null;
  nuEff: number | null; // null: infinitely many
  interval: [number, number] | null; // 95 %
  asymmetric: boolean;
  below: number | null;
  upperBound: number | null;
  uneven: boolean;
};

export type Judgement = { verdict: Verdict; probabilityAbove: number | null };

/** Whatever can be held beside a limit: a reconciled result, or what another kind of test found. */
export type Decidable = Pick<
  ReconcileResult,
  | "element"
  | "quantity"
  | "state"
  | "value"
  | "u"
  | "nuEff"
  | "interval"
  | "asymmetric"
  | "below"
  | "upperBound"
  | "flags"
>;

/** The part of a reconciled result that a decision rests on. */
export const heldOf = (result: Decidable): Held => ({
  state: result.state,
  value: result.value,
  u: result.u,
  nuEff: result.nuEff,
  interval: result.interval,
  asymmetric: result.asymmetric,
  below: result.below,
  upperBound: result.upperBound,
  uneven: result.flags.includes("uneven"),
});

/**
 * Holds one result beside one limit (method step 9).
 *
 * quantified: p = P(true value on the failing side), from Student's t with nuEff where the statement is symmetric, and
 * lognormal with the value as median where it is not. p ≥ 1 − risk "above", p ≤ risk "below", between "too-close". The
 * lognormal's spread is taken on each side from the stated 95 % interval, s = ln(end/value)/1.95996, so that p is 0.025 at
 * the upper end and 0.975 at the lower; without an interval, s² = ln(1 + (u/value)²).
 * On an uneven part "below" also needs the upper end of the interval to pass.
 * not-detected: "below" only where the upper bound of the part's mean passes (the limit reached, where there is no such bound), else "not-detected". not-quantified: "below" where the one-sided
 * 95 % upper bound passes, else "too-close". Neither has a probability.
 *
 * A bound b passes a limit that fails at ">" if b ≤ limit, and one that fails at ">=" only if b < limit: the true value may
 * lie at the bound itself. The same holds for a value known exactly (u = 0).
 * A limit that is any reported value: "above" for anything detected, "not-detected" for a non-detect. Other rules in words,
 * a value without u, and a result without an interval to stand on: "cannot-say".
 *
 * Refuses (DomainError): risk outside (0, 0.5), numbers that are not finite, u below zero.
 *
 * Source: JCGM 106:2012 7.2 and 8.3 (guarded acceptance with a specific risk); the verdict words and risk 0.05 are the registry's policy.
 *
 * @example decide({ state: "quantified", value: 412, u: 9, nuEff: null, interval: null, asymmetric: false, below: null,
 *   upperBound: null, uneven: false }, { value: 100, failsAt: ">" }) // { verdict: "above", probabilityAbove: 1 }
 */
export const decide = (
  held: Held,
  limit: Pick<Limit, "value" | "failsAt" | "anyReportedValue">,
  risk = 0.05,
): Judgement => {
  if (!(risk > 0 && risk < 0.5)) throw new DomainError("risk-out-of-range", "risk must lie between 0 and 0.5", risk);
  requireFinite(limit.value, "limit");
  if (limit.value === null) return decideRule(held, limit.anyReportedValue ?? false);
  switch (held.state) {
    case "quantified":
      return decideQuantified(held, limit.value, limit.failsAt, risk);
    case "not-detected":
      return decideNotDetected(held, limit.value, limit.failsAt);
    case "not-quantified":
      requireFinite(held.upperBound, "upperBound");
      if (held.upperBound === null) return without("cannot-say");
      return without(passes(held.upperBound, limit.value, limit.failsAt) ? "below" : "too-close");
    default:
      return without("cannot-say");
  }
};

/** Whether a number, taken as where the true value may lie, stands on the passing side of a limit. */
export const passes = (number: number, limit: number, failsAt: ">" | ">="): boolean =>
  failsAt === ">" ? number <= limit : number < limit;

const without = (verdict: Verdict): Judgement => ({ verdict, probabilityAbove: null });

/** A result of method version 1 has no bound of its own mean: there the limit reached stands in. */
const decideNotDetected = ({ below, upperBound }: Held, limit: number, failsAt: ">" | ">="): Judgement => {
  requireFinite(below, "below");
  requireFinite(upperBound, "upperBound");
  const bound = upperBound ?? below;
  return without(bound !== null && passes(bound, limit, failsAt) ? "below" : "not-detected");
};

const decideRule = (held: Held, anyReportedValue: boolean): Judgement => {
  if (!anyReportedValue || held.state === "no-readings") return without("cannot-say");
  return without(held.state === "not-detected" ? "not-detected" : "above");
};

const decideQuantified = (held: Held, limit: number, failsAt: ">" | ">=", risk: number): Judgement => {
  const p = probabilityOf(held, limit, failsAt);
  if (p === null) return without("cannot-say");
  if (p >= 1 - risk) return { verdict: "above", probabilityAbove: p };
  const endPasses = held.interval !== null && passes(held.interval[1], limit, failsAt);
  if (p <= risk && (!held.uneven || endPasses)) return { verdict: "below", probabilityAbove: p };
  return { verdict: "too-close", probabilityAbove: p };
};

/** Probability that the true value is on the failing side; null where the result has nothing to say it from. */
const probabilityOf = (held: Held, limit: number, failsAt: ">" | ">="): number | null => {
  const { value, u, nuEff: nu, interval, asymmetric } = held;
  requireFinite(value, "value");
  requireFinite(u, "u");
  if (u !== null && u < 0) throw new DomainError("negative", "u must be zero or more", u);
  if (value === null) return null;
  if (asymmetric && value > 0 && interval !== null) return lognormalFromInterval(value, interval, limit, failsAt);
  if (u === null) return null;
  if (u === 0) return passes(value, limit, failsAt) ? 0 : 1;
  if (asymmetric && value > 0) return probabilityAbove({ value, u, shape: "lognormal" }, limit);
  return probabilityAbove({ value, u, nu, shape: "t" }, limit);
};

const z975 = 1.959963984540054; // 0.975 quantile of the standard normal distribution

const lognormalFromInterval = (
  value: number,
  [low, high]: [number, number],
  limit: number,
  failsAt: ">" | ">=",
): number => {
  if (!(low <= value && value <= high))
    throw new DomainError("interval-without-value", "an interval must hold its value", [low, value, high]);
  const s =
    limit >= value ? Math.log(high / value) / z975 : low > 0 ? Math.log(value / low) / z975 : Number.POSITIVE_INFINITY;
  if (s === 0) return passes(value, limit, failsAt) ? 0 : 1;
  const u = value * Math.sqrt(Math.expm1(s * s));
  // An end so far away says nothing of this side: even odds, so never "above" and never "below".
  if (!Number.isFinite(u)) return limit <= 0 ? 1 : 0.5;
  return probabilityAbove({ value, u, shape: "lognormal" }, limit);
};

const requireFinite = (number: number | null, name: string): void => {
  if (number !== null && !Number.isFinite(number))
    throw new DomainError("not-finite", `${name} must be finite`, number);
};
