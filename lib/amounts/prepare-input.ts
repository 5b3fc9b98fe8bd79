import type { Problem } from "../quantity/problem.ts";
import { done, type Outcome, refused } from "../quantity/problem.ts";
import type { MonteCarloInput } from "../statistics/monte-carlo.ts";
import type { RangeShape, UncertainInput } from "./types.ts";

/** An input ready to be propagated. */
export type Prepared = {
  /** The value the headline is worked out from. */
  best: number;
  /** Standard deviation of what is known. */
  u: number;
  /** null: exact. */
  drawn: { from: MonteCarloInput; value: (draw: number) => number } | null;
  /** What is worked out from it is "at most". */
  bound: boolean;
};

export type Rules = {
  /** Name of the input, for the problem's place. */
  field: string;
  /** The model divides by it: a range may not begin at zero either. */
  divisor?: boolean;
  /** Code where the value is zero or less. */
  zeroCode?: "not-above-zero" | "loading-zero" | "area-zero";
  /** Largest possible value, with the code where it is passed: a content of 100 %. */
  most?: { value: number; code: "content-over-100" };
  /** Whether "below" makes sense here: not in a divisor, and not for a size. */
  boundAllowed?: boolean;
};

/** The 97.5 % point of the standard normal distribution. */
export const z95 = 1.959963984540054;

/** Wider than this, a normal distribution would put real weight at zero and below; a lognormal of the same mean and sd serves. */
const widestNormal = 1 / 6;

/** Beyond this, and below its inverse, a number is a slip of the pen in any unit; cubes of it still fit a double. */
const largest = 1e12;

const same = (draw: number): number => draw;
const exactly = (best: number, bound = false): Prepared => ({ best, u: 0, drawn: null, bound });

/**
 * An input as a distribution on positive numbers.
 *
 * - `{ value, u }`: normal; lognormal of the same mean and standard deviation where u > value/6, since no size, density or content is
 *   below zero.
 * - `{ min, max }`: rectangular: best (min + max)/2, u = (max − min)/√12; triangular about the middle: u = (max − min)/√24; normal: ends are
 *   the middle 95 %, u = (max − min)/(2·1.96), narrow or lognormal as above; lognormal: ends are the middle 95 %, best √(min·max), the
 *   median.
 * - `{ value, interval }`: median and 95 % interval kept as they are; ln x is normal on either side with its own spread; where the interval
 *   begins at 0 the lower side is linear. u = (hi − lo)/(2·1.96).
 * - `{ below }`: exact at the bound, and marked.
 *
 * Refused (Problem): `quantity-unreadable` (not finite), `quantity-out-of-range` (beyond 10^±12), `range-upside-down`, `range-from-zero` (lognormal), `not-above-zero` (or the rules' own code), `content-over-100`,
 * `uncertainty-negative`, `value-outside-interval`, `below-not-usable`.
 *
 * Source: JCGM 101:2008 6.4.2 (rectangular), 6.4.5 (triangular), 6.4.7 (normal), Table 1; JCGM 100:2008 4.3.7 and 4.3.9. The lognormal for
 * wide positive quantities and the two-sided one for lopsided intervals are our choices.
 *
 * @example prepareInput({ min: 0.4, max: 0.6, shape: "rectangular" }, { field: "content" }) // best 0.5, u 0.0577
 */
export function prepareInput(input: UncertainInput, rules: Rules): Outcome<Prepared> {
  const flaw = flawOf(input, rules);
  if (flaw !== null) return refused(flaw);
  if ("below" in input) return done(exactly(input.below, true));
  return done(heldTo(rules.most?.value, distributionOf(input)));
}

const distributionOf = (input: Exclude<UncertainInput, { below: number }>): Prepared => {
  if ("min" in input) return ofRange(input.min, input.max, input.shape);
  if ("interval" in input) return ofInterval(input.value, ...input.interval);
  return ofNormal(input.value, input.u);
};

/** Draws that stop at the largest possible value: pure lead "± 1 %" is never more than all lead. */
function heldTo(most: number | undefined, prepared: Prepared): Prepared {
  if (most === undefined || prepared.drawn === null) return prepared;
  const { from, value } = prepared.drawn;
  return { ...prepared, drawn: { from, value: (draw) => Math.min(most, value(draw)) } };
}

function ofNormal(value: number, u: number): Prepared {
  // Less than the last digits of a double hold is no doubt at all.
  if (u <= 1e-14 * value) return exactly(value);
  const from: MonteCarloInput =
    u > widestNormal * value ? { shape: "lognormal", mean: value, sd: u } : { shape: "normal", mean: value, sd: u };
  return { best: value, u, drawn: { from, value: same }, bound: false };
}

function ofRange(min: number, max: number, shape: RangeShape): Prepared {
  if (min === max) return exactly(min);
  const middle = (min + max) / 2;
  if (shape === "normal") return ofNormal(middle, (max - min) / (2 * z95));
  if (shape === "lognormal") {
    const median = Math.sqrt(min * max);
    const s = Math.log(max / min) / (2 * z95);
    const u = median * Math.exp((s * s) / 2) * Math.sqrt(Math.expm1(s * s));
    return {
      best: median,
      u,
      drawn: { from: { shape: "lognormal", median, gsd: Math.exp(s) }, value: same },
      bound: false,
    };
  }
  const u = (max - min) / Math.sqrt(shape === "rectangular" ? 12 : 24);
  const from: MonteCarloInput =
    shape === "rectangular" ? { shape: "rectangular", min, max } : { shape: "triangular", min, max };
  return { best: middle, u, drawn: { from, value: same }, bound: false };
}

function ofInterval(value: number, low: number, high: number): Prepared {
  if (low === high) return exactly(value);
  const up = Math.log(high / value) / z95;
  const down = low > 0 ? Math.log(value / low) / z95 : null;
  const place = (z: number): number => {
    if (z >= 0) return value * Math.exp(up * z);
    return down === null ? Math.max(0, value * (1 + z / z95)) : value * Math.exp(down * z);
  };
  const from = { shape: "normal", mean: 0, sd: 1 } as const;
  return { best: value, u: (high - low) / (2 * z95), drawn: { from, value: place }, bound: false };
}

function flawOf(input: UncertainInput, rules: Rules): Problem | null {
  const { field, zeroCode = "not-above-zero", most, boundAllowed = false, divisor = false } = rules;
  const where = { field };
  const numbers = Object.values(input)
    .flat()
    .filter((one): one is number => typeof one === "number");
  const bad = numbers.find((one) => !Number.isFinite(one));
  if (bad !== undefined) return { code: "quantity-unreadable", where, found: String(bad) };
  const tooSmall = ("u" in input ? [input.value] : numbers).find((one) => one !== 0 && Math.abs(one) < 1 / largest);
  const strange = numbers.find((one) => Math.abs(one) > largest) ?? tooSmall;
  if (strange !== undefined) return { code: "quantity-out-of-range", where, found: String(strange) };
  if ("below" in input && !boundAllowed) return { code: "below-not-usable", where, found: `< ${input.below}` };
  const highest = Math.max(...("u" in input ? [input.value] : numbers));
  if ("min" in input && input.min > input.max)
    return { code: "range-upside-down", where, found: `${input.min} to ${input.max}` };
  if ("interval" in input && input.interval[0] > input.interval[1])
    return { code: "range-upside-down", where, found: `${input.interval[0]} to ${input.interval[1]}` };
  const best = "below" in input ? input.below : "min" in input ? input.max : input.value;
  if (best <= 0) return { code: zeroCode, where, found: String(best) };
  if ("u" in input && input.u < 0) return { code: "uncertainty-negative", where, found: String(input.u) };
  const lowest = "min" in input ? input.min : "interval" in input ? input.interval[0] : best;
  if (lowest < 0 || (divisor && lowest === 0)) return { code: zeroCode, where, found: String(lowest) };
  if ("min" in input && input.shape === "lognormal" && input.min === 0)
    return { code: "range-from-zero", where, found: `0 to ${input.max}` };
  if ("interval" in input && (input.value < input.interval[0] || input.value > input.interval[1]))
    return { code: "value-outside-interval", where, found: String(input.value), allowed: input.interval.join(" to ") };
  if (most !== undefined && highest > most.value) return { code: most.code, where, found: String(highest) };
  return null;
}
