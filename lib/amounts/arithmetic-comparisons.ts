import { done, type Outcome, refused } from "../quantity/problem.ts";

/**
 * Arithmetic for scale only. No result of this file is an amount that anybody takes in: an object's content does not come out at once,
 * and a leach test is harsher than a meal. Pages print the label of the comparison beside the number (`lib/wording/amounts.ts`).
 */
export type ArithmeticComparison = {
  /** Key of the label that must stand beside the number. */
  label: "total-over-daily-intake" | "leached-into-volume";
  value: number;
  unit: "days of the benchmark" | "µg";
};

const positive = (field: string, value: number) =>
  Number.isFinite(value) && value > 0 ? [] : [{ code: "not-above-zero", where: { field }, found: String(value) }];

/**
 * How many days' worth of a daily intake benchmark a mass is: m/(b), m in mg, b in µg/day. A benchmark is a yardstick, not an allowance.
 * Refused (Problem): `not-above-zero`.
 *
 * @example overDailyIntake(0.175, 2.2) // 79.5 days of the benchmark
 */
export function overDailyIntake(massMg: number, benchmark: number): Outcome<ArithmeticComparison> {
  const problems = [...positive("amount", massMg), ...positive("benchmark", benchmark)];
  return problems.length > 0
    ? refused(...problems)
    : done({
        label: "total-over-daily-intake",
        value: (massMg * 1000) / benchmark,
        unit: "days of the benchmark",
      });
}

/**
 * What a leach result comes to in a volume, µg: concentration (µg/mL) × volume (mL).
 * Refused (Problem): `not-above-zero`.
 *
 * @example leachedInto(0.5, 350) // 175 µg
 */
export function leachedInto(concentration: number, volumeMl: number): Outcome<ArithmeticComparison> {
  const problems = [...positive("leached", concentration), ...positive("volume", volumeMl)];
  return problems.length > 0
    ? refused(...problems)
    : done({ label: "leached-into-volume", value: concentration * volumeMl, unit: "µg" });
}
