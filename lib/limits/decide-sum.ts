import { DomainError } from "../quantity/domain-error.ts";
import { type Held, type Judgement, passes } from "./decide.ts";
import { probabilityAbove } from "./probability-above.ts";
import type { Limit } from "./types.ts";

/**
 * Holds the results for several elements of one part beside a limit on their sum.
 *
 * Two sums are made. The least: only what was measured, which can show "above" even where elements are missing. The most:
 * what was measured, each non-detect at its upper bound (the limit it reached, where there is none), each unquantified one at its upper bound; it can show "below",
 * and only where no element is missing. Total chromium stands for hexavalent chromium in the most, never in the least.
 * Uncertainties are added plainly, not in quadrature, and the fewest degrees of freedom are taken: results of one session
 * share its calibration, and this is never too short. An asymmetric result brings the half of its interval on the side in question,
 * divided by 1.95996. On an uneven part "below" also needs the sum of the upper ends to pass.
 *
 * `probabilityAbove` is null where bounds entered the sum that decides. Nothing detected at all: "below" if the bounds' sum
 * passes, else "not-detected". Something missing and not above: "cannot-say".
 *
 * Refuses (DomainError) a limit that is not a sum or has no number, and risk outside (0, 0.5).
 *
 * Source: JCGM 100:2008 5.2.2 note 1 (full correlation adds u linearly); JCGM 106:2012 7.2; the two sums are the registry's policy.
 *
 * @example decideSum(Object.fromEntries([["Pb", 60], ["Cd", 50]].map(([element, value]) => [element, { state: "quantified", value, u: 5,
 *   nuEff: null, interval: [value - 10, value + 10], asymmetric: false, below: null, upperBound: null, uneven: false }])),
 *   { value: 100, failsAt: ">", sum: true, substances: ["Pb", "Cd"] }) // { verdict: "too-close", probabilityAbove: 0.84134 }
 */
export const decideSum = (
  held: Readonly<Record<string, Held | undefined>>,
  limit: Pick<Limit, "value" | "failsAt" | "sum" | "substances">,
  risk = 0.05,
): Judgement => {
  if (!limit.sum || limit.value === null)
    throw new DomainError("not-a-sum", "decideSum needs a limit on a sum with a number", limit.substances);
  if (!(risk > 0 && risk < 0.5)) throw new DomainError("risk-out-of-range", "risk must lie between 0 and 0.5", risk);
  const least = emptySum();
  const most = emptySum();
  for (const substance of limit.substances) {
    const direct = held[substance];
    if (direct) add(least, direct, "low");
    const standIn = direct ?? (substance === "Cr(VI)" ? held["Cr"] : undefined);
    if (standIn) add(most, standIn, "high");
    else most.complete = false;
    if (!direct && standIn) most.bounded = true;
  }
  const pLeast = tail(least, limit.value, limit.failsAt);
  if (least.measured && pLeast >= 1 - risk) return { verdict: "above", probabilityAbove: pLeast };
  if (!most.complete) return { verdict: "cannot-say", probabilityAbove: null };
  const pMost = tail(most, limit.value, limit.failsAt);
  const probability = most.bounded ? null : pMost;
  const endPasses = !most.uneven || passes(most.end, limit.value, limit.failsAt);
  if (pMost <= risk && endPasses) return { verdict: "below", probabilityAbove: probability };
  if (!least.measured && !most.measured) return { verdict: "not-detected", probabilityAbove: null };
  return { verdict: "too-close", probabilityAbove: probability };
};

type Sum = {
  value: number;
  u: number;
  nu: number | null;
  end: number; // sum of upper ends
  measured: boolean; // at least one quantified result is in it
  bounded: boolean; // at least one bound, or a stand-in, is in it
  uneven: boolean;
  complete: boolean; // nothing missing, nothing without a bound
};

const emptySum = (): Sum => ({
  value: 0,
  u: 0,
  nu: null,
  end: 0,
  measured: false,
  bounded: false,
  uneven: false,
  complete: true,
});

const z975 = 1.959963984540054; // 0.975 quantile of the standard normal distribution

const add = (sum: Sum, held: Held, side: "low" | "high"): void => {
  const bound =
    held.state === "not-detected"
      ? (held.upperBound ?? held.below)
      : held.state === "not-quantified"
        ? held.upperBound
        : undefined;
  if (held.state === "quantified" && held.value !== null) {
    const u = sideU(held, side);
    if (u === null || !Number.isFinite(u)) {
      sum.complete = false;
      return;
    }
    sum.value += held.value;
    sum.u += u;
    sum.end += held.interval?.[1] ?? held.value + z975 * u;
    if (!held.asymmetric && held.nuEff !== null) sum.nu = Math.min(sum.nu ?? held.nuEff, held.nuEff);
    sum.measured = true;
    sum.uneven ||= held.uneven;
  } else if (bound !== undefined && bound !== null) {
    if (side === "low") return;
    sum.value += bound;
    sum.end += bound;
    sum.bounded = true;
  } else sum.complete = false;
};

const sideU = (held: Held, side: "low" | "high"): number | null => {
  if (!held.asymmetric || held.interval === null || held.value === null) return held.u;
  const [low, high] = held.interval;
  return (side === "low" ? held.value - low : high - held.value) / z975;
};

const tail = (sum: Sum, limit: number, failsAt: ">" | ">="): number =>
  sum.u === 0
    ? passes(sum.value, limit, failsAt)
      ? 0
      : 1
    : probabilityAbove({ value: sum.value, u: sum.u, nu: sum.nu, shape: "t" }, limit);
