import { done, type Outcome, type Problem, refused } from "../quantity/problem.ts";
import { mappingFaults } from "./column-index.ts";
import { fitsHeader } from "./find-header.ts";
import { groupLongReadings } from "./group-long-readings.ts";
import type { Mapping } from "./mapping.ts";
import { type Question, settleAndAsk } from "./open-questions.ts";
import { makeRowReader } from "./read-row.ts";
import type { Reading, RowAccount, SetAsideRow } from "./reading.ts";
import { type RowProblem, rowProblem } from "./row-problem.ts";
import type { Table, TableRow } from "./table.ts";

export type ReadOptions = {
  /** Milliseconds since 1970; a date more than a day later is set aside. */
  now?: number;
  /** Called after every chunk of rows. */
  onProgress?: (done: number, total: number) => void;
  /** Rows a chunk; 2,000 unless told. */
  chunkSize?: number;
};

export type ReadRows<T = Reading> = { readings: T[]; setAside: SetAsideRow[]; account: RowAccount; mapping: Mapping };
export type ReadChunk = { done: number; total: number };

const widthText = (count: number): string => `${count} ${count === 1 ? "cell" : "cells"}`;

/** Why a row was set aside before its cells were read; null for a data row. */
function faultOfKind(row: TableRow, table: Table): RowProblem | null {
  if (row.kind === "summary") return rowProblem("summary-row", null, row.cells.find((cell) => cell.trim() !== "")!);
  if (row.kind === "width")
    return rowProblem(
      "row-width",
      null,
      widthText(row.cells.length),
      `${widthText(table.header.length)}, as in the header on line ${table.headerLine}`,
    );
  if (row.kind === "quotes") return rowProblem("quote-malformed", null, row.cells.join(table.delimiter));
  return null;
}

export const asProblem = (open: Question): Problem => {
  const [example] = open.examples;
  const column = open.columns[0]!;
  return {
    ...{ code: `ask-${open.id}`, where: { ...(example ? { row: example.row } : {}), column } },
    ...{ found: example?.text ?? open.columns.join(", "), allowed: open.options.join(", ") },
  };
};

/**
 * Reads all rows in chunks, so that a caller can report progress or let others work in between: iterate it, the last `value` is the
 * result. The mapping must fit the table (mappingFaults is empty) and have been settled (settleAndAsk leaves no blocking question); it is used as it stands.
 */
export const readRowsInChunks = (
  table: Table,
  mapping: Mapping,
  options: ReadOptions = {},
): Generator<ReadChunk, ReadRows, void> => readRowsAs(table, mapping, options, (reading) => reading);

/**
 * The same, where each reading is wanted as something smaller: `as` is called as soon as a reading is whole, so that the readings
 * of a long file never stand in memory all at once.
 */
export function* readRowsAs<T>(
  table: Table,
  mapping: Mapping,
  options: ReadOptions,
  as: (reading: Reading) => T,
): Generator<ReadChunk, ReadRows<T>, void> {
  const reader = makeRowReader(table, mapping, options.now === undefined ? {} : { now: options.now });
  const account: RowAccount = { total: table.rows.length, accepted: 0, setAside: 0, blank: 0, header: 0 };
  const setAside: SetAsideRow[] = [];
  // In the long shape a reading is whole only when all rows have been seen.
  const rowsOfReadings: Reading[] = [];
  let readings: T[] = [];
  const chunk = options.chunkSize ?? 2000;
  for (const [at, row] of table.rows.entries()) {
    if (at > 0 && at % chunk === 0) yield { done: at, total: account.total };
    if (row.kind === "blank") account.blank += 1;
    else if (["preamble", "header", "units", "repeated-header"].includes(row.kind)) account.header += 1;
    else {
      const fault = faultOfKind(row, table);
      const read = fault ? { problems: [fault] } : reader.read(row.cells, row.line);
      if (!("reading" in read)) setAside.push({ row: row.line, cells: row.cells, problems: read.problems });
      else if (mapping.shape === "long") rowsOfReadings.push(read.reading);
      else readings.push(as(read.reading));
    }
  }
  account.accepted = readings.length + rowsOfReadings.length;
  if (mapping.shape === "long") {
    const grouped = groupLongReadings(rowsOfReadings);
    readings = grouped.readings.map(as);
    account.accepted -= grouped.repeated.length;
    const cellsOf = new Map(table.rows.map((row) => [row.line, row.cells]));
    for (const { row, element } of grouped.repeated)
      setAside.push({
        row,
        cells: cellsOf.get(row)!,
        problems: [rowProblem("element-twice", mapping.long!.element, element)],
      });
    setAside.sort((one, other) => one.row - other.row);
  }
  account.setAside = setAside.length;
  yield { done: account.total, total: account.total };
  return { readings, setAside, account, mapping };
}

/**
 * Table and mapping → readings, rows set aside with their reasons, and an account in which every record of the file stands once:
 * account.total = accepted + setAside + blank + header. A record is a line, or the lines a quoted cell spans; header counts preamble,
 * header, units row and repeated headers. In the long shape accepted counts rows, several of which make one reading.
 *
 * What the file shows beyond doubt (decimal mark, order of dates) is settled here where the mapping leaves it open. Refused while a
 * question is open ("ask-…") or a column is missing: nothing is guessed.
 */
export function readRows(table: Table, mapping: Mapping, options: ReadOptions = {}): Outcome<ReadRows> {
  const faults = mappingFaults(table, mapping);
  if (faults.length > 0) return refused(...faults);
  const { mapping: settled, questions } = settleAndAsk(table, mapping);
  const open = questions.filter((question) => question.blocking);
  if (open.length > 0) return refused(...open.map(asProblem));
  const reading = readRowsInChunks(table, settled, options);
  for (let step = reading.next(); ; step = reading.next()) {
    if (step.done) return done(step.value);
    options.onProgress?.(step.value.done, step.value.total);
  }
}

/** A row set aside, read again with its cells mended. The same rules hold; what is still wrong comes back as a row set aside. */
export function mendRow(
  table: Pick<Table, "columns" | "header" | "headerLine">,
  mapping: Mapping,
  row: number,
  cells: string[],
  options: Pick<ReadOptions, "now"> = {},
): { ok: true; reading: Reading } | { ok: false; setAside: SetAsideRow } {
  if (!fitsHeader(cells, table.header)) {
    const expected = `${widthText(table.header.length)}, as in the header on line ${table.headerLine}`;
    return {
      ok: false,
      setAside: { row, cells, problems: [rowProblem("row-width", null, widthText(cells.length), expected)] },
    };
  }
  const read = makeRowReader(table, mapping, options).read(cells, row);
  return "reading" in read
    ? { ok: true, reading: read.reading }
    : { ok: false, setAside: { row, cells, problems: read.problems } };
}
