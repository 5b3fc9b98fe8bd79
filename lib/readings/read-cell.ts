import { type DecimalMark, parseWrittenNumber } from "../quantity/written-number.ts";
import {
  dashMarks,
  foldMark,
  nonDetectWords,
  notAvailableMarks,
  notMeasuredWords,
  plainNonDetects,
} from "./non-detect-words.ts";
import type { WrittenNumber } from "./reading.ts";
import { faultOf } from "./text-hygiene.ts";
import { readUnit, type UnitWord } from "./unit-words.ts";

/** How this file writes numbers. decimal null: no cell needed one so far. thousands: the other mark groups thousands. */
export type NumberStyle = { decimal: DecimalMark | null; thousands: boolean };

/** What one cell of a result column says. A blank is "not measured", never zero. */
export type CellMeaning =
  | { is: "blank" }
  | { is: "number"; number: WrittenNumber; error: WrittenNumber | null; unit: UnitWord | null; unitText: string | null }
  | { is: "below"; limit: WrittenNumber | null; unit: UnitWord | null; unitText: string | null }
  | { is: "dash" }
  | { is: "notAvailable" }
  | { is: "trouble"; code: string };

const trouble = (code: string): CellMeaning => ({
  is: "trouble",
  code: code === "number-empty" ? "not-a-number" : code,
});
/** No written number or spelling of a non-detect is longer; longer cells are not worth a pattern's time. */
const longestCell = 60;
const plainPoint = /^\d{1,15}(?:\.\d{1,15})?$/;
const plainComma = /^\d{1,15}(?:,\d{1,15})?$/;

/** The quick way for plain digits with at most one decimal mark; null where the text is anything else. */
export function readPlain(text: string, style: NumberStyle): WrittenNumber | null {
  if (style.decimal === null || !(style.decimal === "comma" ? plainComma : plainPoint).test(text)) return null;
  const mark = text.indexOf(style.decimal === "comma" ? "," : ".");
  const value = Number(style.decimal === "comma" ? text.replace(",", ".") : text);
  return { text, value, decimals: mark < 0 ? 0 : text.length - mark - 1 };
}

/** Reads a number by the file's style. Gives the number, or the code of what is wrong with it. */
export function readNumber(text: string, style: NumberStyle): WrittenNumber | string {
  const plain = readPlain(text, style);
  if (plain) return plain;
  if (style.decimal === null && /\d[.,]|[.,]\d/.test(text)) return "decimal-mark-unknown";
  const decimal = style.decimal ?? "point";
  const other = decimal === "comma" ? "." : ",";
  const thousands = decimal === "comma" ? ("point" as const) : ("comma" as const);
  const parsed = parseWrittenNumber(
    text,
    style.thousands && text.includes(other) ? { decimal, thousands } : { decimal },
  );
  return parsed.ok ? { ...parsed.value, text: text.trim() } : parsed.problems[0]!.code;
}

const number = String.raw`([-+\u2212]?[\d.,'\u2019\s\u00a0\u2009\u202f]*\d[.,]?(?:e[-+]?\d+)?)`;
const limitWord = "(?:lod|m?dl|l?ld|nwg|limit)";
const absentWord = String.raw`(?:n\.?\s?d\.?|n\.?\s?n\.?|bdl|not\s+detected|${limitWord})`;
const belowNumber = new RegExp(
  String.raw`^(?:${absentWord}\s*)?\(?\s*[<≤‹]\s*(?:${limitWord}\b)?\s*[:=(]?\s*${number}\s*((?:[^\d)\s][^)]*?)?)\s*\)?\s*$`,
  "i",
);
const absentNumber = new RegExp(
  String.raw`^${absentWord}\s*[:=(<≤]+\s*${number}\s*((?:[^\d)\s][^)]*?)?)\s*\)?\s*$`,
  "i",
);
const leadingNumber = new RegExp(String.raw`^${number}\s*(.*)$`, "i");

function readBelow(text: string, style: NumberStyle): CellMeaning | null {
  const match = belowNumber.exec(text) ?? absentNumber.exec(text);
  if (!match) return null;
  const suffix = match[2]!
    .trim()
    .replace(new RegExp(String.raw`\(?\s*${limitWord}\s*\)?$`, "i"), "")
    .trim();
  const unit = suffix === "" ? null : readUnit(suffix);
  if (suffix !== "" && !unit) return trouble("not-a-number");
  const limit = readNumber(match[1]!.trim(), style);
  if (typeof limit === "string") return trouble(limit);
  if (limit.value <= 0) return trouble("limit-not-positive");
  return { is: "below", limit, unit, unitText: unit ? suffix : null };
}

function readWithUnit(
  text: string,
  style: NumberStyle,
): { number: WrittenNumber; unit: UnitWord | null; unitText: string | null } | string {
  const bare = readNumber(text, style);
  if (typeof bare !== "string") return { number: bare, unit: null, unitText: null };
  const match = leadingNumber.exec(text);
  const suffix = match?.[2]?.trim() ?? "";
  const unit = suffix === "" ? null : readUnit(suffix);
  if (!match || !unit) return bare;
  const value = readNumber(match[1]!.trim(), style);
  return typeof value === "string" ? value : { number: value, unit, unitText: suffix };
}

function readMeasured(text: string, style: NumberStyle): CellMeaning {
  const [left, right, ...more] = text.split(/±|\+\s*\/?\s*-/);
  if (more.length > 0) return trouble("not-a-number");
  const value = readWithUnit(left!.trim(), style);
  if (right === undefined) return typeof value === "string" ? trouble(value) : { is: "number", error: null, ...value };
  const error = readWithUnit(right.trim(), style);
  if (typeof value === "string") return trouble(value);
  if (typeof error === "string") return trouble(error);
  if (value.unit && error.unit && value.unit.unit !== error.unit.unit) return trouble("unit-conflict");
  const said = value.unit ? value : error;
  return { is: "number", number: value.number, error: error.number, unit: said.unit, unitText: said.unitText };
}

/**
 * Reads one cell of a result column: a number (with its unit or its ± error beside it), a non-detect in any common
 * spelling, a blank, a mark that must be asked about, or trouble with its code. Never throws, never guesses.
 *
 * Examples (decimal point): "12.50" → number with 2 decimals; "< 12 ppm" → below 12, unit ppm; "<LOD" and "n. d." → below, no
 * limit; "ND (5)" → below 5; "12 ± 3" → number 12, error 3; "" → blank; "-" → dash; "=1+1" → trouble "formula"; "1e400" →
 * trouble "number-too-large"; ">9000" → trouble "above-range".
 */
export function readCell(cell: string, style: NumberStyle): CellMeaning {
  const text = cell.trim();
  if (text === "") return { is: "blank" };
  const quick = readPlain(text, style);
  if (quick) return { is: "number", number: quick, error: null, unit: null, unitText: null };
  if (plainNonDetects.has(text)) return { is: "below", limit: null, unit: null, unitText: null };
  if (text.length > longestCell) return trouble("not-a-number");
  const fault = faultOf(text);
  if (fault) return trouble(fault);
  if (dashMarks.has(text)) return { is: "dash" };
  if (!/\d/.test(text)) {
    const mark = foldMark(text);
    if (notAvailableMarks.has(text.toLowerCase()) || notAvailableMarks.has(mark)) return { is: "notAvailable" };
    if (notMeasuredWords.has(mark)) return { is: "blank" };
    if (nonDetectWords.has(mark)) return { is: "below", limit: null, unit: null, unitText: null };
    return trouble("not-a-number");
  }
  if (/^[>≥]/.test(text)) return trouble("above-range");
  return readBelow(text, style) ?? readMeasured(text, style);
}
