import { type Outcome, refused } from "../quantity/problem.ts";
import { readTable } from "./read-table.ts";
import { splitRecords } from "./split-records.ts";
import type { Table } from "./table.ts";

const unixLines = (text: string): string => text.replace(/^\ufeff/, "").replace(/\r\n?/g, "\n");

/**
 * Tab-separated text as spreadsheets put it on the clipboard → rows of cells, all equally wide. The line end behind the last row begins no
 * row; a quoted cell may hold line ends and tabs. A quotation mark that is never closed is an inch sign, not a quotation:
 * then the text is divided by tabs and line ends alone.
 *
 * Example: 'mug\t12\n"bib,\nblue"\t3\n' → [["mug", "12"], ["bib,\nblue", "3"]].
 */
export function pastedCells(text: string): string[][] {
  const plain = unixLines(text);
  if (plain === "") return [];
  const { records, unclosed, malformed } = splitRecords(plain, "\t");
  const body = plain.endsWith("\n") ? plain.slice(0, -1) : plain;
  const rows = unclosed !== null || malformed.size > 0 ? body.split("\n").map((line) => line.split("\t")) : records;
  const width = Math.max(...rows.map((row) => row.length));
  return rows.map((row) => [...row, ...Array<string>(width - row.length).fill("")]);
}

/** Pasted text that brings its own header → the same table a file gives, so that mapping and reading are the same. */
export function pastedTable(text: string): Outcome<Table> {
  const plain = unixLines(text);
  return plain.trim() === "" ? refused({ code: "file-blank" }) : readTable(plain, { delimiter: "\t" });
}
