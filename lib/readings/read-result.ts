import type { QuantityKind } from "../quantity/kinds.ts";
import type { FigureIndex } from "./column-index.ts";
import type { Mapping } from "./mapping.ts";
import { dashMarks, foldMark, nonDetectWords, notAvailableMarks, notMeasuredWords } from "./non-detect-words.ts";
import { type CellMeaning, type NumberStyle, readCell, readNumber, readPlain } from "./read-cell.ts";
import type { ElementResult, WrittenNumber } from "./reading.ts";
import { type RowProblem, rowProblem } from "./row-problem.ts";
import { cellAt } from "./table.ts";
import { faultOf } from "./text-hygiene.ts";
import { readUnit, type UnitWord } from "./unit-words.ts";

/** What a row needs to know beside its cells. `unitText` is the row's own unit where the file has a unit column. */
export type ResultContext = { mapping: Mapping; style: NumberStyle; mode: string | null; unitText: string | null };

type Written = WrittenNumber | null;
const isTrouble = (value: unknown): value is RowProblem =>
  typeof value === "object" && value !== null && "code" in value;

/** Cells of an error or limit column that state no figure. */
function saysNothing(text: string): boolean {
  if (text === "" || dashMarks.has(text)) return true;
  if (/\d/.test(text)) return false;
  const mark = foldMark(text);
  return notAvailableMarks.has(text.toLowerCase()) || notMeasuredWords.has(mark) || nonDetectWords.has(mark);
}

/** A number of an error or limit column, in the unit of its value column. */
function readCompanion(
  cell: string,
  column: string,
  kind: "error" | "limit",
  unit: string,
  style: NumberStyle,
): Written | RowProblem {
  const quick = readPlain(cell, style);
  if (quick && quick.value > 0) return quick;
  const text = cell.trim().replace(kind === "error" ? /^(?:±|\+\s*\/?\s*-)\s*/ : /^[<≤]\s*/, "");
  if (saysNothing(text)) return null;
  const read = readCell(text, style);
  if (read.is === "trouble")
    return rowProblem(read.code === "not-a-number" ? `${kind}-unreadable` : read.code, column, cell);
  if (read.is !== "number" || read.error !== null) return rowProblem(`${kind}-unreadable`, column, cell);
  if (read.unit && read.unit.unit !== unit) return rowProblem("unit-conflict", column, cell, unit);
  if (read.number.value <= 0)
    return rowProblem(kind === "error" ? "error-not-positive" : "limit-not-positive", column, cell);
  return read.number;
}

const detectedWords = new Set("= detected yes y true ja oui si d > nachgewiesen detecte detectado ok".split(" "));
const absentWords = new Set("u no n false nein non < <lod".split(" "));

function readFlag(cell: string, column: string): "detected" | "below" | null | RowProblem {
  const text = cell.trim();
  if (text === "") return null;
  const mark = foldMark(text);
  if (nonDetectWords.has(mark) || absentWords.has(mark)) return "below";
  return detectedWords.has(mark) ? "detected" : rowProblem(faultOf(text) ?? "flag-unreadable", column, cell);
}

/** The row's unit, the cell's and the column's must agree; the cell's own spelling is kept. */
function settleUnit(
  context: ResultContext,
  index: FigureIndex,
  inCell: { unit: UnitWord | null; unitText: string | null },
): { word: UnitWord; text: string } | RowProblem {
  const { figure } = index;
  const { unitText } = context;
  const own = unitText ? readUnit(unitText) : null;
  if (unitText && !own) return rowProblem("unit-unknown", figure.value, unitText);
  const word = own ?? index.unitWord;
  if (inCell.unit) {
    const text = inCell.unitText!;
    if (word && inCell.unit.unit !== word.unit) return rowProblem("unit-conflict", figure.value, text, word.unit);
    return { word: inCell.unit, text };
  }
  if (!word) return rowProblem("unit-missing", figure.value, "");
  return { word, text: own ? unitText! : figure.unitText || word.unit };
}

function settleQuantity(context: ResultContext, index: FigureIndex, unit: UnitWord): QuantityKind | RowProblem {
  const [only] = unit.kinds;
  if (unit.kinds.length === 1) return only!;
  const byMode = context.mode === null ? undefined : context.mapping.quantityByMode[context.mode];
  const kind = byMode ?? index.figure.quantity;
  return kind && unit.kinds.includes(kind) ? kind : rowProblem("quantity-unknown", index.figure.value, unit.unit);
}

/** The value cell with its marks and its flag settled by the mapping: blank, a number, or below with or without a limit. */
function settleValue(
  cells: readonly string[],
  index: FigureIndex,
  context: ResultContext,
): Exclude<CellMeaning, { is: "dash" | "notAvailable" | "trouble" }> | RowProblem {
  const { mapping, style } = context;
  const column = index.figure.value;
  const cell = cellAt(cells, index.value);
  const read = readCell(cell, style);
  const below = { is: "below", limit: null, unit: null, unitText: null } as const;
  const marked = (meaning: "not-detected" | "not-measured" | null, code: string) =>
    meaning === null ? rowProblem(code, column, cell) : meaning === "not-detected" ? below : ({ is: "blank" } as const);
  if (read.is === "trouble") return rowProblem(read.code, column, cell);
  if (read.is === "dash") return marked(mapping.dash, "dash-unclear");
  if (read.is === "notAvailable") return marked(mapping.notAvailable, "not-available-unclear");
  const flag = index.flag < 0 ? null : readFlag(cellAt(cells, index.flag), index.figure.flag!);
  if (isTrouble(flag)) return flag;
  if (flag === "below" && read.is === "number")
    // "12" beside "<": the number is the limit. "0" beside "ND": no limit is stated.
    return read.number.value > 0
      ? { is: "below", limit: read.number, unit: read.unit, unitText: read.unitText }
      : below;
  if (flag === "below" && read.is === "blank") return below;
  const errorCell = cellAt(cells, index.error);
  if (read.is === "number" && read.number.value === 0 && read.error === null && !/[1-9]/.test(errorCell)) {
    if (mapping.zero === "number") return read;
    return marked(mapping.zero, "zero-unclear");
  }
  return read;
}

/** The limit of a non-detect: in its cell, else the limit column, else the error column, else the default of the element. */
function settleLimit(
  cells: readonly string[],
  index: FigureIndex,
  context: ResultContext,
  inCell: Written,
  unit: string,
): Written | RowProblem {
  if (inCell) return inCell;
  const { figure } = index;
  const { mapping, style } = context;
  if (index.limit >= 0) {
    const limit = readCompanion(cellAt(cells, index.limit), figure.limit!, "limit", unit, style);
    if (limit !== null) return limit;
  }
  if (index.error >= 0 && mapping.errorOfNonDetect === "limit") {
    const cell = cellAt(cells, index.error);
    const limit = /[1-9]/.test(cell)
      ? readCompanion(cell.replace(/^\s*[<≤]/, ""), figure.error!, "error", unit, style)
      : null;
    if (limit !== null) return limit;
  }
  const fallback = index.defaultLimit === null ? null : readNumber(index.defaultLimit.trim(), style);
  if (fallback !== null && typeof fallback !== "string" && fallback.value > 0) return fallback;
  return mapping.noLimit === "keep" ? null : rowProblem("limit-missing", figure.value, cellAt(cells, index.value));
}

const scaled = (written: Written, factor: number): Written =>
  written === null || factor === 1 ? written : { ...written, value: written.value * factor };

/** The error of a detected value. "0" beside a value of 0 states none. */
function readError(
  cells: readonly string[],
  index: FigureIndex,
  context: ResultContext,
  value: WrittenNumber,
  unit: string,
): Written | RowProblem {
  const cell = cellAt(cells, index.error);
  if (cell === "" || (value.value === 0 && !/[1-9]/.test(cell))) return null;
  return readCompanion(cell, index.figure.error!, "error", unit, context.style);
}

/** The limit beside a detected value, which nothing depends on: a limit of 0 there states none. */
function readLimitBeside(
  cells: readonly string[],
  index: FigureIndex,
  context: ResultContext,
  unit: string,
): Written | RowProblem {
  const cell = cellAt(cells, index.limit);
  if (cell === "" || /^\s*0+(?:[.,]0*)?\s*$/.test(cell)) return null;
  return readCompanion(cell, index.figure.limit!, "limit", unit, context.style);
}

/**
 * Reads one figure of a row with its error and limit. Null: not measured. A problem: the row cannot become a reading as it is.
 *
 * Example: cells "<LOD", "7" under "Pb (ppm)", "±" → belowDetection, detectionLimit 7, no error.
 */
export function readResult(
  cells: readonly string[],
  index: FigureIndex,
  context: ResultContext,
): ElementResult | null | RowProblem {
  const { figure, factor } = index;
  const value = settleValue(cells, index, context);
  if (isTrouble(value)) return value;
  if (value.is === "blank") return null;
  const unit = settleUnit(context, index, value);
  if ("code" in unit) return unit;
  const quantity = settleQuantity(context, index, unit.word);
  if (typeof quantity === "object") return quantity;
  // Written out, not spread: a long file makes a million of these, and objects of one shape are a third of the size.
  const make = (value: Written, error: Written, limit: Written): ElementResult => {
    const result: ElementResult = {
      element: index.element,
      quantity,
      unit: unit.word.unit,
      unitText: unit.text,
      belowDetection: value === null,
      value: scaled(value, factor),
      error: scaled(error, factor),
      k: error === null ? null : figure.k,
      detectionLimit: scaled(limit, factor),
      column: figure.value,
    };
    if (index.oxide !== null) result.oxide = index.oxide;
    return result;
  };
  if (value.is === "below") {
    const limit = settleLimit(cells, index, context, value.limit, unit.word.unit);
    return isTrouble(limit) ? limit : make(null, null, limit);
  }
  const error = value.error ?? readError(cells, index, context, value.number, unit.word.unit);
  if (isTrouble(error)) return error;
  if (error !== null && error.value <= 0)
    return rowProblem("error-not-positive", figure.value, cellAt(cells, index.value));
  // What a column of errors covers is asked before any row is read; only an error inside a cell can come as a surprise.
  if (error !== null && figure.k === null) return rowProblem("k-unknown", figure.value, error.text);
  const limit = readLimitBeside(cells, index, context, unit.word.unit);
  return isTrouble(limit) ? limit : make(value.number, error, limit);
}
