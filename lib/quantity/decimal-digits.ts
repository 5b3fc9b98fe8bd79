import { DomainError } from "./domain-error.ts";

/** A decimal number by its digits: ±`digits` × 10^`power`, `digits` without leading zeros ("" is zero). */
export type DecimalDigits = { negative: boolean; digits: string; power: number };

export type Ties = "half-even" | "half-up";

const decimalText = /^[+-]?(\d+\.?\d*|\.\d+)([eE][+-]?\d{1,4})?$/;

/**
 * A number read by its decimal text (a binary number by its shortest one).
 * Refused (DomainError): text that is not a decimal number (`not-a-decimal`), more than 400 characters or a size beyond 10^±400
 * (`out-of-range`).
 *
 * @example readDigits("U", "-0.0250") // { negative: true, digits: "250", power: -4 }
 */
export function readDigits(name: string, given: string | number): DecimalDigits {
  const text = typeof given === "number" ? String(given) : String(given).trim();
  const tooLong = () => new DomainError("out-of-range", `${name} has more digits than can be printed`, given);
  if (text.length > 400) throw tooLong();
  const isDecimal = typeof given === "number" ? Number.isFinite(given) : decimalText.test(text);
  if (!isDecimal) throw new DomainError("not-a-decimal", `${name} must be a decimal number`, given);
  const signed = text.startsWith("-") || text.startsWith("+") ? 1 : 0;
  const e = Math.max(text.indexOf("e"), text.indexOf("E"));
  const mantissa = text.slice(signed, e < 0 ? undefined : e);
  const point = mantissa.indexOf(".");
  const whole = point < 0 ? mantissa : mantissa.slice(0, point) + mantissa.slice(point + 1);
  let zeros = 0;
  while (whole.charCodeAt(zeros) === 48) zeros++;
  const digits = whole.slice(zeros);
  const power = (e < 0 ? 0 : Number(text.slice(e + 1))) - (point < 0 ? 0 : mantissa.length - point - 1);
  const size = digits === "" ? 0 : digits.length - 1 + power;
  if (Math.abs(size) > 400) throw tooLong();
  return { negative: text.startsWith("-"), digits, power };
}

/** The whole number of units of 10^`place` nearest to the number's size, as digits ("" is zero). Exact: only digits are looked at. */
export function unitsOfPlace({ digits, power }: DecimalDigits, place: number, ties: Ties): string {
  if (digits === "") return "";
  if (power >= place) return digits + "0".repeat(power - place);
  const kept = digits.length - (place - power);
  if (kept < 0) return "";
  const head = digits.slice(0, kept);
  return roundsUp(head, digits.slice(kept), ties) ? String(BigInt(head) + 1n) : head;
}

/** Whether what is cut off (`rest`, never empty) carries the digits before it one up. */
function roundsUp(head: string, rest: string, ties: Ties): boolean {
  const first = rest.charCodeAt(0) - 48;
  if (first !== 5) return first > 5;
  if (/[1-9]/.test(rest.slice(1)) || ties === "half-up") return true;
  return head !== "" && head.charCodeAt(head.length - 1) % 2 === 1;
}

/**
 * `units` × 10^`place` written out, without an exponent.
 *
 * @example plainText("12", -4) // "0.0012"
 */
export function plainText(units: string, place: number): string {
  if (place >= 0) return units === "" ? "0" : units + "0".repeat(place);
  const padded = units.padStart(1 - place, "0");
  return `${padded.slice(0, place)}.${padded.slice(place)}`;
}

/**
 * A number, read by its shortest decimal text, times `top` ÷ `bottom`: the nearest binary number to the exact result.
 *
 * 0.07 * 10_000 is 700.0000000000001 in binary arithmetic; here it is 700.
 *
 * @example timesRatio(0.07, 10_000n, 1n) // 700
 */
export function timesRatio(value: number, top: bigint, bottom: bigint): number {
  const { negative, digits, power } = readDigits("value", value);
  if (digits === "") return value;
  const spare = 40; // digits kept beyond the whole number: more than twice what a binary number holds
  const product = BigInt(digits) * top * 10n ** BigInt(spare);
  // A last digit of 1 stands for all that the division leaves over, so that nothing is mistaken for a tie.
  const left = product % bottom === 0n ? "0" : "1";
  return Number(`${negative ? "-" : ""}${product / bottom}${left}e${power - spare - 1}`);
}
