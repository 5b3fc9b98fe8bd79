import { plainText, readDigits, type Ties, unitsOfPlace } from "./decimal-digits.ts";
import { DomainError } from "./domain-error.ts";

/**
 * Rounds an expanded or standard uncertainty to `digits` significant digits, and the value to the same decimal place.
 *
 * JCGM 100:2008 (GUM) 7.2.6: at most two significant digits for the uncertainty, the estimate rounded to match. GUM lets one
 * round up instead of to nearest; this rounds to nearest. Where rounding carries into a new place (99.5 → 100) the place moves
 * with it, so the uncertainty keeps its number of significant digits and the value follows (1234.5 ± 99.5 → 1230 ± 100).
 *
 * Decimal strings in and out, so no binary fraction is ever printed; a number is read by its shortest decimal text.
 * `ties`: "half-even" (ISO 80000-1 B.3 rule A) or "half-up" (away from zero). `digits` 1 to 15.
 *
 * Refuses (DomainError): text that is not a decimal number, U of zero or less, numbers beyond 400 digits.
 *
 * @example roundToUncertainty("412.345", "9.07") // { value: "412.3", U: "9.1" }
 */
export const roundToUncertainty = (
  value: string | number,
  U: string | number,
  options: { digits?: number; ties?: Ties } = {},
): { value: string; U: string } => {
  const { digits = 2, ties = "half-even" } = options;
  if (!Number.isInteger(digits) || digits < 1 || digits > 15)
    throw new DomainError("bad-digits", "digits must be a whole number from 1 to 15", digits);
  if (ties !== "half-even" && ties !== "half-up")
    throw new DomainError("bad-ties", 'ties must be "half-even" or "half-up"', ties);
  const x = readDigits("value", value);
  const u = readDigits("U", U);
  if (u.negative || u.digits === "") throw new DomainError("not-positive", "U must be greater than zero", U);
  const last = u.digits.length + u.power - digits; // power of ten of the last digit kept
  const kept = unitsOfPlace(u, last, ties);
  const carried = kept.length > digits; // 99.5 → 100: one digit more than asked for, and that one a zero
  const place = carried ? last + 1 : last;
  const units = unitsOfPlace(x, place, ties);
  const sign = x.negative && units !== "" ? "-" : "";
  return { value: sign + plainText(units, place), U: plainText(carried ? kept.slice(0, -1) : kept, place) };
};
