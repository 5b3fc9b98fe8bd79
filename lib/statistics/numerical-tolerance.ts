import { DomainError } from "../quantity/domain-error.ts";
import { requirePositive } from "./require-number.ts";

/**
 * The numerical tolerance of a standard uncertainty stated to so many significant digits: half a unit of its last digit.
 *
 * u is written as c × 10^l with c a whole number of `digits` digits; δ = ½·10^l. Unit of u.
 *
 * u above 0; digits: whole, 1 to 6.
 *
 * Source: JCGM 101:2008 7.9.2.
 *
 * @throws DomainError `not-finite`, `not-positive`, `bad-digits`
 * @example numericalTolerance(0.00035, 2) // 0.000005
 */
export function numericalTolerance(u: number, digits: number): number {
  requirePositive("u", u);
  if (!(Number.isInteger(digits) && digits >= 1 && digits <= 6))
    throw new DomainError("bad-digits", "digits must be a whole number from 1 to 6", digits);
  // Rounding first: 9.96 to two digits is 10, whose last digit is worth 1.
  const exponent = Number(u.toExponential(digits - 1).split("e")[1]);
  return Number(`5e${exponent - digits}`);
}
