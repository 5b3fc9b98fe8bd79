import Papa from "papaparse";
import type { Snapshot } from "../publication/snapshot.ts";
import { csvLine } from "./csv-table.ts";
import { readingColumns, readingRows } from "./readings-csv.ts";

export type ReadingsAgree = { rows: number; differing: { row: number; column: string }[] };

/**
 * Whether a downloaded readings.csv holds the very readings of the snapshot: row by row and cell by cell in every column that
 * both know. A missing or an extra row counts as one differing cell in the column "row".
 */
export function readingsAgree(csv: string, snapshot: Snapshot): ReadingsAgree {
  const { data, meta } = Papa.parse<Record<string, string>>(csv, { header: true, skipEmptyLines: true });
  const columns = readingColumns.filter((column) => meta.fields?.includes(column.name));
  const own = readingRows(snapshot).map((row) => Papa.parse<string[]>(csvLine(columns, row)).data[0]);
  const rows = Math.max(own.length, data.length);
  const differing = Array.from({ length: rows }, (_, i) => i).flatMap((i) => {
    const [mine, theirs] = [own[i], data[i]];
    if (!mine || !theirs || columns.length === 0) return [{ row: i + 1, column: "row" }];
    return columns
      .filter((column, n) => mine[n] !== theirs[column.name])
      .map(({ name }) => ({ row: i + 1, column: name }));
  });
  return { rows: data.length, differing };
}
