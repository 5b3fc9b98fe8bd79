import { requireNotNegative, requireNumber, requirePositive } from "./require-number.ts";

export type Scores = {
  z: number;
  zPrime: number;
  /** Null where both uncertainties are 0: the score has no scale. */
  zeta: number | null;
  /** Null as zeta. */
  en: number | null;
};

/**
 * Performance scores of one result x against an assigned value X (ISO 13528:2015 clause 9; ISO/IEC 17043).
 *
 * z = (x − X)/σ, zPrime = (x − X)/√(σ² + u(X)²), zeta = (x − X)/√(u(x)² + u(X)²), en = (x − X)/√((k·u(x))² + (k·u(X))²).
 * The standard reads |z| up to 2 as satisfactory, 3 and more as unsatisfactory, and |en| up to 1 as agreement.
 *
 * x, assigned, sigma (σ for proficiency assessment, above 0), ux and uAssigned (standard uncertainties, 0 or more) in
 * one unit; k is the coverage factor by which both are expanded for en.
 *
 * @throws DomainError `not-finite`, `not-positive` (sigma, k), `negative` (an uncertainty)
 * @example scores({ x: 412, ux: 9, assigned: 400, uAssigned: 6, sigma: 20 })
 * // { z: 0.6, zPrime: 0.574696, zeta: 1.1094, en: 0.5547 }
 */
export function scores({
  x,
  ux,
  assigned,
  uAssigned,
  sigma,
  k = 2,
}: {
  x: number;
  ux: number;
  assigned: number;
  uAssigned: number;
  sigma: number;
  k?: number;
}): Scores {
  requireNumber("x", x);
  requireNumber("assigned", assigned);
  requireNotNegative("ux", ux);
  requireNotNegative("uAssigned", uAssigned);
  requirePositive("sigma", sigma);
  requirePositive("k", k);
  const difference = x - assigned;
  const u = Math.hypot(ux, uAssigned);
  return {
    z: difference / sigma,
    zPrime: difference / Math.hypot(sigma, uAssigned),
    zeta: u === 0 ? null : difference / u,
    en: u === 0 ? null : difference / (k * u),
  };
}
