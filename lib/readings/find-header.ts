import { foldMark, nonDetectWords } from "./non-detect-words.ts";
import { type HeaderMeaning, isRecognised, readHeaderCell } from "./read-header-cell.ts";
import { readUnit } from "./unit-words.ts";

const startsLikeNumber = /^[<>≤±~]?\s*[-+−]?\s*[.,]?\d/;
/** "2σ", "1-sigma error", "±2s": a coverage, not a number. */
const coverage = /^(?:±\s*)?[123]\s*[-x×]?\s*(?:σ|sigma|sd\b)|^±\s*[123]\s*s\b/i;

/** True for a cell that belongs under a header rather than in one: a number, a date, "<12", "ND". "2σ" is no number. */
export function looksLikeData(cell: string): boolean {
  const text = cell.trim();
  if (text === "") return false;
  if (startsLikeNumber.test(text)) return !coverage.test(text);
  return (
    text !== "<" &&
    nonDetectWords.has(foldMark(text)) &&
    foldMark(text) !== "lod" &&
    !/^m?dl|l?ld|nwg$/.test(foldMark(text))
  );
}

/** Cells from the first to the last that has a text: what the width of a row is measured against. */
export function leastWidth(header: readonly string[]): number {
  let width = header.length;
  while (width > 0 && header[width - 1]!.trim() === "") width -= 1;
  return width;
}

/** A row fits when it reaches the last named column and has nothing beyond the header but empty cells. */
export function fitsHeader(cells: readonly string[], header: readonly string[]): boolean {
  if (cells.length === header.length) return true;
  if (cells.length < header.length) return cells.length >= leastWidth(header);
  for (let at = header.length; at < cells.length; at++) if (cells[at]!.trim() !== "") return false;
  return true;
}

export const isBlankRow = (cells: readonly string[]): boolean => cells.every((cell) => cell.trim() === "");

/** How many cells of a row the header grammar recognises, where none of them looks like data. */
export function headerScore(cells: readonly string[]): number {
  let recognised = 0;
  for (const cell of cells) {
    if (cell.trim() !== "" && isRecognised(readHeaderCell(cell))) recognised += 1;
  }
  return recognised;
}

export type FoundHeader = { index: number; score: number };

/**
 * Finds the header among the first records: the row whose cells the grammar recognises best, weighed by the share of rows
 * below it that are as wide; the earliest of equals. Where nothing is recognised: the first row of words with rows of
 * the same width and some numbers below it, so that the columns can be named by hand. Null where there is none.
 */
export function findHeader(records: readonly string[][], minCells = 2): FoundHeader | null {
  const reach = Math.min(records.length, 60);
  let best: FoundHeader | null = null;
  let fallback: FoundHeader | null = null;
  for (let index = 0; index < reach; index++) {
    const cells = records[index]!;
    const named = cells.filter((cell) => cell.trim() !== "").length;
    // One name over two columns is a header too: tables are written with nameless row numbers before them.
    if (named === 0 || Math.max(named, cells.length) < minCells || cells.some(looksLikeData) || isUnitsRow(cells))
      continue;
    const below = records.slice(index + 1, index + 101).filter((row) => !isBlankRow(row));
    const share = below.length === 0 ? 1 : below.filter((row) => fitsHeader(row, cells)).length / below.length;
    const score = headerScore(cells) * (share + 0.01);
    if (score > (best?.score ?? 0)) best = { index, score };
    if (
      !fallback &&
      named >= minCells &&
      share >= 0.5 &&
      below.some((row) => fitsHeader(row, cells) && row.some(looksLikeData))
    )
      fallback = { index, score: share / 1000 };
  }
  const found = best ?? fallback;
  if (!found) return null;
  // A header that comes again lower down is the same header: the first of its kind is the one.
  const text = records[found.index]!.join("\u0001");
  return { ...found, index: records.findIndex((cells) => cells.join("\u0001") === text) };
}

const otherUnitsRowCells =
  /^[[(]?\s*(?:s|sec|secs|seconds|sek|[-–—]|±|\+\/?-|[123]?\s*(?:σ|sigma|s)|d{1,2}[./-]m{1,2}[./-]y{2,4}|t{1,2}[./-]m{1,2}[./-]j{2,4}|j{1,2}[./-]m{1,2}[./-]a{2,4}|m{1,2}[./-]d{1,2}[./-]y{2,4}|yyyy-mm-dd|h{1,2}:m{1,2}(?::s{1,2})?)\s*[\])]?$/i;

/** A row that holds only units (at least one of a content), such as ";;ppm;ppm;s". */
export function isUnitsRow(cells: readonly string[]): boolean {
  let units = 0;
  for (const cell of cells) {
    const text = cell.trim();
    if (text === "") continue;
    if (readUnit(text)) units += 1;
    else {
      const meaning: HeaderMeaning = readHeaderCell(text);
      const statesUnit = (meaning.is === "error" || meaning.is === "limit") && !meaning.chemical && meaning.unit;
      if (statesUnit) units += 1;
      else if (!otherUnitsRowCells.test(text)) return false;
    }
  }
  return units > 0;
}
