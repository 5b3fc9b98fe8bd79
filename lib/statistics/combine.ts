import { DomainError } from "../quantity/domain-error.ts";
import { requireLevel, requireNumbers } from "./checks.ts";
import { coverageFactor } from "./coverage-factor.ts";

/** u: standard uncertainty contributed to the result (sensitivity included); nu absent or null: infinitely many. */
export type Contribution = { u: number; nu?: number | null };

/**
 * Combines independent contributions to one result.
 *
 * u = √Σuᵢ²; nuEff = u⁴/Σ(uᵢ⁴/νᵢ) (Welch–Satterthwaite, a real number, Infinity where every ν is infinite); k = t((1 + level)/2, nuEff);
 * U = k·u. All in the unit of the result. Adding a contribution never shrinks u.
 *
 * Refuses (DomainError) an empty list, u negative or not finite, ν of zero or less, level outside (0, 1).
 *
 * Source: JCGM 100:2008 (GUM) 5.1.2 and G.4.1 (equation G.2b).
 *
 * @example combine([{ u: 3 }, { u: 4 }]) // { u: 5, nuEff: Infinity, k: 1.959964, U: 9.79982 }
 */
export const combine = (
  contributions: readonly Contribution[],
  options: { level?: number } = {},
): { u: number; nuEff: number; k: number; U: number } => {
  const { level = 0.95 } = options;
  requireLevel(level);
  requireNumbers(
    "u",
    contributions.map((c) => c.u),
  );
  let largest = 0;
  for (const { u, nu } of contributions) {
    if (u < 0) throw new DomainError("negative", "a standard uncertainty cannot be negative", u);
    if (nu !== undefined && nu !== null && !(nu > 0))
      throw new DomainError("not-positive", "degrees of freedom must be above zero", nu);
    largest = Math.max(largest, u);
  }
  if (largest === 0) {
    const k = coverageFactor(Number.POSITIVE_INFINITY, level);
    return { u: 0, nuEff: Number.POSITIVE_INFINITY, k, U: 0 };
  }
  // Relative to the largest, so that fourth powers neither overflow nor vanish.
  let squares = 0;
  let perFreedom = 0;
  for (const { u, nu } of contributions) {
    const square = (u / largest) ** 2;
    squares += square;
    perFreedom += square ** 2 / (nu ?? Number.POSITIVE_INFINITY);
  }
  const u = largest * Math.sqrt(squares);
  const nuEff = perFreedom === 0 ? Number.POSITIVE_INFINITY : squares ** 2 / perFreedom;
  const k = coverageFactor(nuEff, level);
  return { u, nuEff, k, U: k * u };
};
