import Papa from "papaparse";
import type { Delimiter } from "./table.ts";

export type SplitRecords = {
  records: string[][];
  /** Indexes of records with a quotation mark in a wrong place. */
  malformed: Set<number>;
  /** Index of the record whose quotation mark is never closed, or null. */
  unclosed: number | null;
};

/**
 * Text (line ends "\n") → records of cells, by RFC 4180 quoting. Nothing is skipped: a blank line is a record of one
 * empty cell; only the line end at the end of the text begins no record.
 */
export function splitRecords(text: string, delimiter: Delimiter): SplitRecords {
  const body = text.endsWith("\n") ? text.slice(0, -1) : text;
  const parsed = Papa.parse<string[]>(body, { delimiter, newline: "\n", skipEmptyLines: false });
  const malformed = new Set<number>();
  let unclosed: number | null = null;
  // With the separator given and no header asked for, quotation marks are all that the parser finds fault with.
  for (const { code, row } of parsed.errors) {
    if (code === "MissingQuotes") unclosed = row!;
    else malformed.add(row!);
  }
  return { records: parsed.data, malformed, unclosed };
}

/** Physical lines a record spans: one, and one more for each line end inside its cells. */
export function linesOf(cells: readonly string[]): number {
  let lines = 1;
  for (const cell of cells) for (let at = cell.indexOf("\n"); at >= 0; at = cell.indexOf("\n", at + 1)) lines += 1;
  return lines;
}
