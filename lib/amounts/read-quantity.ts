import { done, type Outcome, type Problem, refused } from "../quantity/problem.ts";
import { convert, type Unit } from "../quantity/units.ts";
import { parseTypedNumber } from "../quantity/written-quantity.ts";
import { z95 } from "./prepare-input.ts";
import type { RangeShape, UncertainInput } from "./types.ts";

const shapes: readonly RangeShape[] = ["rectangular", "triangular", "normal", "lognormal"];
const allowed = "12, or 12 ± 0.5, or 10 to 14, or < 5";
/** Between the ends of a range: the word in either language, two dots, or a dash that is no sign and no part of 1e-3. */
const between = /\s+(?:to|a)\s+|\s*(?:\.\.|…|–|—)\s*|(?<=[\d.])\s*-\s*(?=[\d.])/i;

/**
 * A quantity as a person writes it in one field, in the unit chosen beside it, as an input in the unit asked for. Empty: null.
 *
 * "12" exact · "12 ± 0.5" (also +- and +/-) with ± for 95 %, as on the pages: u = 0.5/1.96 · "10 to 14" (also "10 a 14", – and ..) anywhere
 * between, or with a word after it: "10 to 14 triangular" · "412 (380 to 470)" a value with its 95 % interval · "< 5" below.
 * A point is a decimal mark; a comma is one where it cannot stand between thousands ("0,05").
 *
 * Refused (Problem): `quantity-unreadable`, `quantity-ambiguous` (1,500 may be 1.5 or 1500).
 *
 * @example readQuantity("1 to 2", { field: "diameter", unit: "cm", into: "mm" }) // { min: 10, max: 20, shape: "rectangular" }
 */
export function readQuantity(
  text: string,
  place: { field: string; unit?: Unit; into?: Unit },
): Outcome<UncertainInput | null> {
  const plain = text.trim().replace(/\u2212/g, "-");
  if (plain === "") return done(null);
  const where = { field: place.field };
  const numbers: number[] = [];
  const take = (part: string): Problem | null => {
    const written = parseTypedNumber(part);
    if (!written.ok) {
      const ambiguous = written.problems.some((problem) => problem.code === "number-ambiguous");
      return { code: ambiguous ? "quantity-ambiguous" : "quantity-unreadable", where, found: text, allowed };
    }
    const { value } = written.value;
    numbers.push(place.unit === undefined || place.into === undefined ? value : convert(value, place.unit, place.into));
    return null;
  };
  const shaped = (parts: string[], make: () => UncertainInput): Outcome<UncertainInput> => {
    const flaw = parts.map(take).find((problem) => problem !== null);
    return flaw ? refused(flaw) : done(make());
  };
  const unreadable = refused({ code: "quantity-unreadable", where, found: text, allowed });

  if (plain.startsWith("<")) return shaped([plain.slice(1)], () => ({ below: numbers[0] as number }));
  const bracketed = /^([^()]+)\(([^()]+)\)$/.exec(plain);
  if (bracketed !== null) {
    const ends = (bracketed[2] as string).trim().split(between);
    if (ends.length !== 2) return unreadable;
    return shaped([bracketed[1] as string, ...ends], () => {
      const [value, low, high] = numbers as [number, number, number];
      return { value, interval: [low, high] };
    });
  }
  const plusMinus = plain.split(/±|\+\/?-/);
  if (plusMinus.length === 2)
    return shaped(plusMinus, () => ({ value: numbers[0] as number, u: (numbers[1] as number) / z95 }));
  const [, body = "", word] = /^(.*?)\s*([a-z]{6,})?$/i.exec(plain) ?? [];
  const shape = shapes.find((one) => one === (word ?? "rectangular").toLowerCase());
  const ends = body.split(between);
  if (shape === undefined || plusMinus.length > 2 || ends.length > 2 || (ends.length === 1 && word !== undefined))
    return unreadable;
  if (ends.length === 2) {
    return shaped(ends, () => ({ min: numbers[0] as number, max: numbers[1] as number, shape }));
  }
  return shaped([body], () => ({ value: numbers[0] as number, u: 0 }));
}
