import { done, type Outcome, type Problem, refused } from "../quantity/problem.ts";
import { foldWord } from "./chemical-symbol.ts";
import { delimiters, findDelimiter } from "./find-delimiter.ts";
import { findHeader, fitsHeader, headerScore, isBlankRow, isUnitsRow, looksLikeData } from "./find-header.ts";
import { summaryWords, weakSummaryWords } from "./header-words.ts";
import { isRecognised, readHeaderCell } from "./read-header-cell.ts";
import { linesOf, splitRecords } from "./split-records.ts";
import { cellAt, type Delimiter, nameColumns, type RowKind, type Table, type TableRow } from "./table.ts";

/** A quoted cell over more lines than this is a stray quotation mark that has swallowed rows. */
const longestQuotedCell = 50;

const sameCells = (one: readonly string[], other: readonly string[]): boolean => {
  const width = Math.max(one.length, other.length);
  for (let at = 0; at < width; at++) if (cellAt(one, at).trim() !== cellAt(other, at).trim()) return false;
  return true;
};

/** The first text of a row that is not blank, folded for look-up among the summary words. */
function firstWord(cells: readonly string[]): string {
  const first = cells.find((cell) => cell.trim() !== "")!;
  if (first.length > 30 || /^\d/.test(first)) return "";
  return foldWord(first).replace(/[:.]+$/, "");
}

const nextFilled = (records: readonly string[][], after: number): string[] | undefined => {
  for (let at = after + 1; at < records.length && at < after + 6; at++)
    if (!isBlankRow(records[at]!) && !isUnitsRow(records[at]!)) return records[at];
  return undefined;
};

/** The header of another table: words, most of them recognised, not this header, with numbers under what it names. */
function isOtherHeader(records: readonly string[][], index: number): boolean {
  const cells = records[index]!;
  let filled = 0;
  for (const cell of cells) {
    if (cell.trim() === "") continue;
    if (looksLikeData(cell)) return false;
    filled += 1;
  }
  if (filled < 2) return false;
  const score = headerScore(cells);
  if (score < 2 || score * 2 < filled) return false;
  const below = nextFilled(records, index) ?? [];
  return cells.some((cell, at) => isRecognised(readHeaderCell(cell)) && looksLikeData(cellAt(below, at)));
}

/**
 * A table of a quite different kind further down, whose words the grammar does not know: behind a blank row three or more words, not as
 * wide as the header, and under them a row as wide as they are that holds some number. (Two cells would be a footnote: "Tested by; …".)
 */
function isForeignHeader(records: readonly string[][], index: number): boolean {
  const cells = records[index]!;
  const below = records[index + 1];
  if (!below || below.length !== cells.length || !isBlankRow(records[index - 1]!)) return false;
  const words = cells.filter((cell) => cell.trim() !== "");
  return words.length >= 3 && !cells.some(looksLikeData) && below.some(looksLikeData);
}

/** A row that is as wide as the header once it is divided by another separator. */
function otherDelimiter(cells: readonly string[], delimiter: Delimiter, width: number): Delimiter | null {
  const line = cells.join(delimiter);
  for (const other of delimiters) {
    if (other === delimiter) continue;
    const parts = splitRecords(line, other).records[0]!;
    if (parts.length === width && parts.some(looksLikeData)) return other;
  }
  return null;
}

function kindOf(cells: string[], header: readonly string[], units: readonly string[] | null): RowKind {
  if (isBlankRow(cells)) return "blank";
  if (sameCells(cells, header) || (units && sameCells(cells, units))) return "repeated-header";
  if (summaryWords.has(firstWord(cells))) return "summary";
  return fitsHeader(cells, header) ? "data" : "width";
}

/** "Total", "n" and their like count as summaries only in the last lines: elsewhere they may be names of samples. */
function markTrailingSummaries(rows: TableRow[]): void {
  for (let at = rows.length - 1; at >= 0; at--) {
    const row = rows[at]!;
    if (row.kind === "blank" || row.kind === "summary") continue;
    if (row.kind !== "data" && row.kind !== "width") return;
    if (!weakSummaryWords.has(firstWord(row.cells))) return;
    row.kind = "summary";
  }
}

function lineNumbers(records: readonly string[][]): number[] {
  let line = 1;
  return records.map((cells) => {
    const start = line;
    line += linesOf(cells);
    return start;
  });
}

function quoteProblem(records: readonly string[][], lines: readonly number[], unclosed: number | null): Problem | null {
  if (unclosed !== null) {
    const row = lines[unclosed]!;
    return { code: "quote-not-closed", where: { row }, found: `line ${row}` };
  }
  for (let at = 0; at < records.length; at++) {
    const span = linesOf(records[at]!);
    if (span > longestQuotedCell)
      return {
        code: "quote-runs-on",
        where: { row: lines[at]! },
        found: `${span} lines`,
        allowed: `${longestQuotedCell} lines`,
      };
  }
  return null;
}

/** A table of its own above the header that was found: its header names a result, and numbers stand below it. */
const isEarlierTable = (records: readonly string[][], at: number): boolean =>
  isOtherHeader(records, at) && records[at]!.some((cell) => !["role", "unknown"].includes(readHeaderCell(cell).is));

const nameOfDelimiter: Record<Delimiter, string> = { ",": "comma", ";": "semicolon", "\t": "tab" };

/**
 * Text → table: finds the separator, the header below any preamble, a units row under it, and says of every record what it
 * is. No record is left out, none is changed. Line ends must already be "\n" (decode-bytes.ts sees to it).
 *
 * Refused, each naming its line: no header, a header without rows, a second table with another header, rows divided by
 * another separator than the header, a quotation mark that is never closed or swallows many lines.
 *
 * Example: "Instrument;X\nSample;Pb (ppm)\nmug;12,5\n" → header ["Sample", "Pb (ppm)"] on line 2, one data row on line 3.
 */
export function readTable(text: string, options: { delimiter?: Delimiter } = {}): Outcome<Table> {
  const delimiter = options.delimiter ?? findDelimiter(text);
  if (!delimiter) return refused({ code: "header-not-found" });
  const { records, malformed, unclosed } = splitRecords(text, delimiter);
  const lines = lineNumbers(records);
  const quotes = quoteProblem(records, lines, unclosed);
  if (quotes) return refused(quotes);
  return tableOfRecords({ records, lines, malformed }, delimiter, options.delimiter !== undefined);
}

/**
 * Records of cells → table, as `readTable` does once a text is divided; a spreadsheet's rows come in here. `lines` are the numbers by
 * which a person finds each record. `oneColumn`: a header of one name is one.
 */
export function tableOfRecords(
  { records, lines, malformed }: { records: string[][]; lines: number[]; malformed: ReadonlySet<number> },
  delimiter: Delimiter,
  oneColumn = false,
): Outcome<Table> {
  const found = findHeader(records.slice(0, 200), oneColumn || records.every((cells) => cells.length === 1) ? 1 : 2);
  if (!found) return refused({ code: "header-not-found" });

  const header = records[found.index]!;
  const headerText = (at: number) => records[at]!.filter((cell) => cell.trim() !== "").join(", ");
  for (let at = 0; at < found.index; at++)
    if (isEarlierTable(records, at))
      return refused({
        code: "two-tables",
        where: { row: lines[found.index]! },
        found: headerText(found.index),
        allowed: `line ${lines[at]}`,
      });
  const second = records[found.index + 1];
  const units = second && isUnitsRow(second) ? header.map((_, at) => cellAt(second, at).trim()) : null;
  const rows: TableRow[] = [];
  for (let at = 0; at < records.length; at++) {
    const cells = records[at]!;
    const line = lines[at]!;
    const kind: RowKind =
      at < found.index
        ? isBlankRow(cells)
          ? "blank"
          : "preamble"
        : at === found.index
          ? "header"
          : at === found.index + 1 && units
            ? "units"
            : malformed.has(at)
              ? "quotes"
              : kindOf(cells, header, units);
    if (
      ((kind === "data" || kind === "width") && isOtherHeader(records, at)) ||
      (kind === "width" && isForeignHeader(records, at))
    )
      return refused({
        code: "two-tables",
        where: { row: line },
        found: headerText(at),
        allowed: `line ${lines[found.index]}`,
      });
    const mixed = kind === "width" && header.length > 1 ? otherDelimiter(cells, delimiter, header.length) : null;
    if (mixed)
      return refused({
        code: "mixed-separators",
        where: { row: line },
        found: nameOfDelimiter[mixed],
        allowed: nameOfDelimiter[delimiter],
      });
    rows.push({ line, kind, cells });
  }
  markTrailingSummaries(rows);
  if (!rows.some((row) => row.kind === "data" || row.kind === "width" || row.kind === "quotes"))
    return refused({ code: "no-rows", where: { row: lines[found.index]! } });
  return done({ delimiter, header, columns: nameColumns(header), headerLine: lines[found.index]!, units, rows });
}
