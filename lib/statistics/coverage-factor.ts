import { DomainError } from "../quantity/domain-error.ts";
import { requireLevel } from "./checks.ts";
import { tUpperQuantile } from "./distributions.ts";

/**
 * Coverage factor k for a two-sided interval: the (1 + level)/2 quantile of Student's t with nu degrees of freedom.
 *
 * nu is real and used as it is (not cut to a whole number; GUM G.6.4 allows either); Infinity gives the normal distribution.
 * Refuses (DomainError) nu of zero or less or NaN, level outside (0, 1).
 *
 * Source: JCGM 100:2008 (GUM) G.3, Table G.2.
 *
 * @example coverageFactor(4, 0.95) // 2.776445
 */
export const coverageFactor = (nu: number, level: number): number => {
  if (typeof nu !== "number" || !(nu > 0))
    throw new DomainError("not-positive", "degrees of freedom must be above zero", nu);
  requireLevel(level);
  return tUpperQuantile((1 - level) / 2, nu);
};
