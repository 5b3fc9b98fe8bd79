import { Decimal } from "decimal.js";
import { DomainError } from "./domain-error.ts";

/** Enough digits that scaling by a power of ten is exact for every number accepted here. */
const Exact = Decimal.clone({ precision: 1200, toExpNeg: -9e15, toExpPos: 9e15 });
const decimalText = /^[+-]?(\d+\.?\d*|\.\d+)([eE][+-]?\d{1,4})?$/;

const exact = (name: string, given: string | number): Decimal => {
  const text = String(given).trim();
  if (!decimalText.test(text)) throw new DomainError("not-a-decimal", `${name} must be a decimal number`, given);
  const number = new Exact(text);
  if (text.length > 400 || Math.abs(number.e) > 400)
    throw new DomainError("out-of-range", `${name} has more digits than can be printed`, given);
  return number;
};

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
  options: { digits?: number; ties?: "half-even" | "half-up" } = {},
): { value: string; U: string } => {
  const { digits = 2, ties = "half-even" } = options;
  if (!Number.isInteger(digits) || digits < 1 || digits > 15)
    throw new DomainError("bad-digits", "digits must be a whole number from 1 to 15", digits);
  if (ties !== "half-even" && ties !== "half-up")
    throw new DomainError("bad-ties", 'ties must be "half-even" or "half-up"', ties);
  const rule = ties === "half-even" ? Decimal.ROUND_HALF_EVEN : Decimal.ROUND_HALF_UP;
  const x = exact("value", value);
  const u = exact("U", U);
  if (u.lte(0)) throw new DomainError("not-positive", "U must be greater than zero", U);
  const rounded = u.toSignificantDigits(digits, rule);
  const place = rounded.e - digits + 1; // power of ten of the last digit kept, after any carry
  const unit = new Exact(10).pow(place);
  const matched = x.div(unit).toDecimalPlaces(0, rule).times(unit);
  const decimals = Math.max(0, -place);
  return { value: (matched.isZero() ? matched.abs() : matched).toFixed(decimals), U: rounded.toFixed(decimals) };
};
