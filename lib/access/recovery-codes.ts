import { randomInt } from "node:crypto";

const howMany = 10;

/**
 * Codes for whoever has lost the device that shows codes, each good once: ten digits, since digits are what people copy from paper without
 * a mistake and what a phone has keys for. Ten digits are 33 bits; NIST SP 800-63B asks look-up secrets for 20 and counted tries (from memory).
 */
export const makeRecoveryCodes = (): string[] =>
  Array.from({ length: howMany }, () => {
    const half = () => String(randomInt(100_000)).padStart(5, "0");
    return `${half()}-${half()}`;
  });

/**
 * What somebody typed, as the kind of code that it is; null where it is neither. Spaces and hyphens are how people write long numbers.
 *
 * @example readCode("123 456") // { kind: "app", code: "123456" }
 * @example readCode("12345 67890") // { kind: "recovery", code: "12345-67890" }
 * @example readCode("12345") // null
 */
export function readCode(typed: string): { kind: "app" | "recovery"; code: string } | null {
  const digits = typed.replaceAll(/[\s\p{Dash}]/gu, "");
  if (/^\d{6}$/.test(digits)) return { kind: "app", code: digits };
  return /^\d{10}$/.test(digits) ? { kind: "recovery", code: `${digits.slice(0, 5)}-${digits.slice(5)}` } : null;
}
