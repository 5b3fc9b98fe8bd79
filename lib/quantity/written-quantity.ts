import { done, type Outcome, refused } from "./problem.ts";
import { convert, dimensionOf, parseUnit, type Unit } from "./units.ts";
import { parseWrittenNumber, type WrittenNumber } from "./written-number.ts";

/** A number a person typed, its unit, and the same in the unit that was asked for. */
export type WrittenQuantity = { number: WrittenNumber; unit: Unit; inWanted: number };

/** Sign, digits with their marks, perhaps a power of ten; then whatever is left, which must be a unit. */
const shape = /^([+\-\u2212\u2013]?[\d.,'\u2019 \u00a0\u2009\u202f]*\d[.,]?(?:[eE][+-]?\d{1,6})?)\s*(\D.*)?$/u;

/** "1,234": one comma, three digits after it, one to three before it and no leading nought. A thousand, or one and a bit? */
const couldBeThousands = /^[+\-\u2212\u2013]?[1-9]\d{0,2},\d{3}$/;

/**
 * One number typed into a field, where nobody is asked which decimal mark they use. A point is a decimal mark, as on every page;
 * a comma is one where it cannot be anything else. "1,234" can mean two things a thousand apart and is refused.
 *
 * Refused: `number-empty`, `number-ambiguous`, `not-a-number`, `number-too-large`, `number-too-small`.
 *
 * @example parseTypedNumber("0,05") // { ok: true, value: { value: 0.05, decimals: 2 } }
 */
export const parseTypedNumber = (text: string): Outcome<WrittenNumber> => {
  const plain = text.trim();
  if (couldBeThousands.test(plain)) {
    const asThousands = plain.replace(",", "");
    const asDecimal = plain.replace(",", ".");
    return refused({ code: "number-ambiguous", found: text, allowed: `${asThousands}, or ${asDecimal}0` });
  }
  const withPoint = parseWrittenNumber(plain, { decimal: "point" });
  if (withPoint.ok) return withPoint;
  const withComma = parseWrittenNumber(plain, { decimal: "comma" });
  return withComma.ok ? withComma : withPoint;
};

/**
 * A quantity typed into a field: a number, perhaps followed by a unit. A unit in the text goes before the one chosen beside it.
 *
 * `wanted`: the unit the field is about; the answer is also given in it. `chosen`: the unit in force where the text names none.
 * Refused: what `parseTypedNumber` refuses, and `unit-other-kind` where the words after the number are no
 * unit of the same dimension.
 *
 * @example parseWrittenQuantity("0,05 %", { wanted: "mg/kg" }) // { ok: true, value: { number: { value: 0.05 }, unit: "%", inWanted: 500 } }
 */
export const parseWrittenQuantity = (
  text: string,
  { wanted, chosen = wanted }: { wanted: Unit; chosen?: Unit },
): Outcome<WrittenQuantity> => {
  const plain = text.trim();
  if (plain === "") return refused({ code: "number-empty", found: text, allowed: "a number" });
  const parts = shape.exec(plain);
  if (!parts) return refused({ code: "not-a-number", found: text, allowed: "a number such as 12.5" });
  const number = parseTypedNumber(parts[1]!);
  if (!number.ok) return number;
  const named = parts[2]?.trim();
  const unit = named ? parseUnit(named) : chosen;
  if (unit === null || dimensionOf(unit) !== dimensionOf(wanted))
    return refused({ code: "unit-other-kind", found: named ?? chosen, allowed: wanted });
  const inWanted = convert(number.value.value, unit, wanted);
  if (!Number.isFinite(inWanted))
    return refused({ code: "number-too-large", found: text, allowed: "a smaller number" });
  return done({ number: { ...number.value, text: plain }, unit, inWanted });
};
