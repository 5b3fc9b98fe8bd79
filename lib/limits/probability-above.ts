import { DomainError } from "../quantity/domain-error.ts";
import { normalUpperTail, tUpperTail } from "../statistics/distributions.ts";

/** What is known of the true value. lognormal: `value` is the median. nu absent, null or infinite: known u. */
export type StateOfKnowledge = {
  value: number;
  u: number;
  nu?: number | null;
  shape: "normal" | "t" | "lognormal";
};

/**
 * Probability that the true value lies above a limit, given the state of knowledge.
 *
 * normal: P(Z > (limit − value)/u). t: the same with Student's t with nu degrees of freedom, shifted by value and scaled by u.
 * lognormal: `value` is the median and s² = ln(1 + (u/value)²): P(Z > ln(limit/value)/s), and 1 for a limit of zero or less.
 * value, u and limit in one unit. The answer keeps its digits in the far tail (no 1 − p).
 *
 * Refuses (DomainError): numbers that are not finite, u of zero or less, nu of zero or less, a lognormal with value of zero or less.
 *
 * Source: JCGM 106:2012 7.2 and 7.3 (its conformance probability is one minus this).
 *
 * @example probabilityAbove({ value: 412, u: 9, shape: "normal" }, 400) // 0.908789
 */
export const probabilityAbove = ({ value, u, nu, shape }: StateOfKnowledge, limit: number): number => {
  for (const [name, number] of [
    ["value", value],
    ["u", u],
    ["limit", limit],
  ] as const)
    if (typeof number !== "number" || !Number.isFinite(number))
      throw new DomainError("not-finite", `${name} must be a finite number`, number);
  if (u <= 0) throw new DomainError("not-positive", "u must be above zero", u);
  const freedom = nu ?? Number.POSITIVE_INFINITY;
  if (!(freedom > 0)) throw new DomainError("not-positive", "degrees of freedom must be above zero", nu);
  if (shape === "normal") return normalUpperTail((limit - value) / u);
  if (shape === "t") return tUpperTail((limit - value) / u, freedom);
  if (shape !== "lognormal") throw new DomainError("bad-shape", 'shape must be "normal", "t" or "lognormal"', shape);
  if (value <= 0) throw new DomainError("not-positive", "a lognormal value must be above zero", value);
  if (limit <= 0) return 1;
  return normalUpperTail(Math.log(limit / value) / Math.sqrt(Math.log1p((u / value) ** 2)));
};
