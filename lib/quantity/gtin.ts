/**
 * A trade item number as 14 digits of text, never a number (leading zeros count).
 * Accepts 8, 12, 13 or 14 digits, with spaces or hyphens between. Check digit: weights 3 and 1 from the right, modulo 10.
 * Source: GS1 General Specifications, section 7.9 (check digit calculations).
 * The number below is made up for its check digit.
 *
 * @example readGtin("2001234567893") // { state: "ok", gtin: "02001234567893" }
 */
export type GtinReading =
  | { state: "ok"; gtin: string }
  | { state: "not-a-code"; found: string }
  | { state: "wrong-check-digit"; found: string; expected: string };

export function readGtin(text: string): GtinReading {
  const digits = text.replace(/[\s-]/g, "");
  if (!/^(\d{8}|\d{12,14})$/.test(digits)) return { state: "not-a-code", found: text };
  const gtin = digits.padStart(14, "0");
  const expected = checkDigit(gtin.slice(0, 13));
  const found = gtin.slice(13);
  return found === expected ? { state: "ok", gtin } : { state: "wrong-check-digit", found, expected };
}

function checkDigit(first13: string): string {
  const sum = [...first13].reduceRight(
    (acc, d, i) => acc + Number(d) * ((first13.length - 1 - i) % 2 === 0 ? 3 : 1),
    0,
  );
  return String((10 - (sum % 10)) % 10);
}
