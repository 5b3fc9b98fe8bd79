import { done, type Outcome, refused } from "./problem.ts";

/** A number as the file wrote it. The text is kept for ever; `value` is what it means in the unit written. */
export type WrittenNumber = { text: string; value: number; decimals: number };

/** The mark between the whole part and the decimals. It is always stated, never worked out from the text. */
export type DecimalMark = "comma" | "point";
export type ThousandsMark = "comma" | "point" | "space" | "apostrophe";

const spaces = /[ \u00a0\u2009\u202f]/g;
const marks: Record<ThousandsMark, string> = { comma: ",", point: ".", space: " ", apostrophe: "'" };

/** Digits in well-formed groups of three: "1,234,567" for ",". */
const grouped = (whole: string, mark: string): boolean => {
  const [first, ...rest] = whole.split(mark);
  return first !== undefined && /^\d{1,3}$/.test(first) && rest.length > 0 && rest.every((g) => /^\d{3}$/.test(g));
};

const not = (code: string, found: string, allowed: string) => refused({ code, found, allowed });

/** Whole part without its thousands separators, or null where the separators cannot be trusted. */
const ungroup = (whole: string, other: string, hasDecimals: boolean, thousands: ThousandsMark | undefined) => {
  if (/^\d*$/.test(whole)) return whole;
  const used = [...new Set(whole.replace(/\d/g, ""))];
  const mark = used[0];
  if (used.length !== 1 || mark === undefined || !grouped(whole, mark)) return null;
  if (thousands !== undefined) return marks[thousands] === mark ? whole.split(mark).join("") : null;
  // Space and apostrophe are never decimal marks. The other decimal mark is believed to be a separator only where
  // the text itself shows it: it comes twice, or the stated decimal mark comes after it.
  const certain = mark !== other || hasDecimals || whole.split(mark).length > 2;
  return certain ? whole.split(mark).join("") : null;
};

/**
 * Reads one number from a cell, keeping how it was written.
 *
 * The decimal mark is stated by the caller. Thousands separators (space, apostrophe, or the other mark) are taken only in
 * well-formed groups of three, and the other mark only where it cannot be a decimal mark ("1,234.5", "1,234,567") or where
 * `thousands` states it. "1,234" with a decimal point and no stated separator is refused: it may be 1.234 or 1234.
 * Powers of ten are read ("1.20E-3", four digits after the mark and more: decimals 5).
 *
 * Refused, each with a code: `number-empty`, `number-ambiguous`, `number-too-large` (1e400), `number-too-small` (1e-400, which
 * a computer would read as zero), `not-a-number` (NaN, infinities, text, "<5", "5 %").
 *
 * @example parseWrittenNumber("0,250", { decimal: "comma" }) // { ok: true, value: { text: "0,250", value: 0.25, decimals: 3 } }
 */
export const parseWrittenNumber = (
  text: string,
  options: { decimal: DecimalMark; thousands?: ThousandsMark },
): Outcome<WrittenNumber> => {
  const allowed = options.decimal === "comma" ? "a number such as 1234,5" : "a number such as 1234.5";
  const plain = text
    .trim()
    .replace(spaces, " ")
    .replace(/^[\u2212\u2013]/, "-")
    .replace(/\u2019/g, "'");
  if (plain === "") return not("number-empty", text, allowed);
  const decimalMark = options.decimal === "comma" ? "," : ".";
  const otherMark = options.decimal === "comma" ? "." : ",";
  if (options.thousands !== undefined && marks[options.thousands] === decimalMark)
    return not("number-ambiguous", text, "a thousands separator that differs from the decimal mark");
  const shape = /^([+-]?)([\d., ']*?)(?:[eE]([+-]?\d{1,6}))?$/.exec(plain);
  const digits = shape?.[2] ?? "";
  if (shape === null || !/\d/.test(digits)) return not("not-a-number", text, allowed);
  const at = digits.indexOf(decimalMark);
  const fraction = at < 0 ? "" : digits.slice(at + 1);
  if (!/^\d*$/.test(fraction)) return not("number-ambiguous", text, allowed);
  const whole = ungroup(at < 0 ? digits : digits.slice(0, at), otherMark, at >= 0, options.thousands);
  if (whole === null) return not("number-ambiguous", text, allowed);
  const exponent = Number(shape[3] ?? "0");
  const value = Number(`${shape[1]}${whole === "" ? "0" : whole}.${fraction === "" ? "0" : fraction}e${exponent}`);
  if (!Number.isFinite(value)) return not("number-too-large", text, allowed);
  if (value === 0 && /[1-9]/.test(whole + fraction)) return not("number-too-small", text, allowed);
  // "-0" is zero: the sign says nothing about an amount.
  return done({ text, value: value === 0 ? 0 : value, decimals: Math.max(0, fraction.length - exponent) });
};
