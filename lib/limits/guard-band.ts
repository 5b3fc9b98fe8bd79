import { DomainError } from "../quantity/domain-error.ts";
import { requireLevel } from "../statistics/checks.ts";
import { tUpperQuantile } from "../statistics/distributions.ts";

/**
 * Distance to keep from a one-sided limit so that the chance of a wrong acceptance at the guarded limit is `risk`.
 *
 * g = t(1 − risk, nu)·u; nu absent or infinite gives the normal distribution. For an upper limit accept at or below limit − g.
 * Unit of u. A risk above one half gives a negative distance (acceptance beyond the limit).
 * Refuses (DomainError) risk outside (0, 1), u negative or not finite, nu of zero or less.
 *
 * Sources: JCGM 106:2012 8.3; EURACHEM/CITAC guide on compliance assessment, 2nd ed. (2021); the clause of the guide from memory.
 *
 * @example guardBand({ risk: 0.05, u: 10 }) // 16.44854
 */
export const guardBand = ({ risk, u, nu }: { risk: number; u: number; nu?: number | null }): number => {
  requireLevel(risk, "risk");
  if (typeof u !== "number" || !Number.isFinite(u) || u < 0)
    throw new DomainError("negative", "u must be a finite number of zero or more", u);
  const freedom = nu ?? Number.POSITIVE_INFINITY;
  if (!(freedom > 0)) throw new DomainError("not-positive", "degrees of freedom must be above zero", nu);
  return risk <= 0.5 ? tUpperQuantile(risk, freedom) * u : -tUpperQuantile(1 - risk, freedom) * u;
};
