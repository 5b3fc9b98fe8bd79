import { type ColumnIndex, indexColumns } from "./column-index.ts";
import { type DecimalEvidence, noDecimalEvidence, noteNumber } from "./decimal-evidence.ts";
import type { Mapping } from "./mapping.ts";
import { dashMarks, foldMark, nonDetectWords, notAvailableMarks } from "./non-detect-words.ts";
import { orderEvidence } from "./read-moment.ts";
import { cellAt, type Table } from "./table.ts";
import { findUnit } from "./unit-words.ts";

export type Seen = { count: number; examples: { row: number; column: string; text: string }[] };
const nothing = (): Seen => ({ count: 0, examples: [] });
const note = (seen: Seen, row: number, column: string, text: string): void => {
  seen.count += 1;
  if (seen.examples.length < 3) seen.examples.push({ row, column, text: text.trim().slice(0, 40) });
};

/** What the whole file shows about all that a header cannot say. One pass over the data rows. */
export type Evidence = {
  decimal: DecimalEvidence;
  dayFirst: Seen;
  monthFirst: Seen;
  eitherOrder: Seen;
  timesWithoutOffset: Seen;
  bareZeros: Seen;
  dashes: Seen;
  notAvailable: Seen;
  nonDetectsWithoutLimit: Seen;
  inlineErrors: Seen;
  /** Numbers whose cell states no unit, by value column. */
  withoutUnit: Map<string, Seen>;
  /** Texts of the unit column and of the mode column. */
  units: Set<string>;
  modes: Set<string>;
};

const clock = /\d{1,2}:\d{2}/;
const offsetAtEnd = /(?:z|utc|gmt|[+\u2212-]\d{1,2}:?\d{2}|(?:utc|gmt)\s*[+\u2212-]\d{1,2})\s*$/i;
const plainDigits = /^\s*[1-9]\d*\s*$/;
const isZero = (text: string): boolean => /^[-+]?0+(?:[.,]0*)?$|^[.,]0+$/.test(text);

function noteTimes(
  evidence: Evidence,
  index: ColumnIndex,
  cells: readonly string[],
  row: number,
  columns: readonly string[],
): void {
  const { date, time, dateTime, zone } = index.roles;
  for (const at of [date, dateTime]) {
    if (at < 0) continue;
    const text = cellAt(cells, at);
    const shows = text === "" ? "unneeded" : orderEvidence(text);
    if (shows === "day-first") note(evidence.dayFirst, row, columns[at]!, text);
    else if (shows === "month-first") note(evidence.monthFirst, row, columns[at]!, text);
    else if (shows === "either") note(evidence.eitherOrder, row, columns[at]!, text);
  }
  const zoned = cellAt(cells, zone).trim() !== "";
  for (const at of [time, dateTime]) {
    const text = cellAt(cells, at);
    if (clock.test(text) && !zoned && !offsetAtEnd.test(text))
      note(evidence.timesWithoutOffset, row, columns[at]!, text);
  }
}

/** Whether the row states a limit for this figure outside the value cell. */
const hasLimitBeside = (cells: readonly string[], limit: number, error: number, mapping: Mapping): boolean =>
  /\d/.test(cellAt(cells, limit)) || (mapping.errorOfNonDetect === "limit" && /[1-9]/.test(cellAt(cells, error)));

function noteFigures(
  evidence: Evidence,
  index: ColumnIndex,
  mapping: Mapping,
  cells: readonly string[],
  row: number,
  columns: readonly string[],
): void {
  for (const { figure, value, error, limit, flag, defaultLimit } of index.figures) {
    const cell = cellAt(cells, value);
    const text = cell.trim();
    if (text === "") continue;
    const name = figure.value;
    if (figure.unit === null && index.unit < 0 && /\d/.test(text) && !findUnit(text.replace(/^[^\p{L}%]+/u, ""))) {
      const seen = evidence.withoutUnit.get(name) ?? nothing();
      evidence.withoutUnit.set(name, seen);
      note(seen, row, name, text);
    }
    for (const at of [error, limit]) {
      const beside = cellAt(cells, at);
      if (beside !== "" && !plainDigits.test(beside)) noteNumber(evidence.decimal, beside, row, columns[at]!);
    }
    if (plainDigits.test(cell)) continue;
    if (/\d/.test(text)) {
      noteNumber(evidence.decimal, text, row, name);
      if (/±|\+\s*\/?\s*-/.test(text)) note(evidence.inlineErrors, row, name, text);
      else if (isZero(text) && cellAt(cells, flag).trim() === "" && !/[1-9]/.test(cellAt(cells, error)))
        note(evidence.bareZeros, row, name, text);
    } else if (dashMarks.has(text)) note(evidence.dashes, row, name, text);
    else if (notAvailableMarks.has(text.toLowerCase())) note(evidence.notAvailable, row, name, text);
    else if (
      defaultLimit === null &&
      nonDetectWords.has(foldMark(text)) &&
      !hasLimitBeside(cells, limit, error, mapping)
    )
      note(evidence.nonDetectsWithoutLimit, row, name, text);
  }
}

/** Reads through all data rows once. `table` must hold every column that `mapping` names. */
export function gatherEvidence(table: Table, mapping: Mapping): Evidence {
  const index = indexColumns(table, mapping);
  const evidence: Evidence = {
    ...{ decimal: noDecimalEvidence(), dayFirst: nothing(), monthFirst: nothing(), eitherOrder: nothing() },
    ...{ timesWithoutOffset: nothing(), bareZeros: nothing(), dashes: nothing(), notAvailable: nothing() },
    ...{
      nonDetectsWithoutLimit: nothing(),
      inlineErrors: nothing(),
      withoutUnit: new Map(),
      units: new Set(),
      modes: new Set(),
    },
  };
  for (const { kind, line, cells } of table.rows) {
    if (kind !== "data") continue;
    noteTimes(evidence, index, cells, line, table.columns);
    noteFigures(evidence, index, mapping, cells, line, table.columns);
    const { seconds, mode } = index.roles;
    const counted = cellAt(cells, seconds);
    if (!plainDigits.test(counted) && counted !== "" && !clock.test(counted))
      noteNumber(evidence.decimal, counted, line, table.columns[seconds]!);
    if (index.unit >= 0) evidence.units.add(cellAt(cells, index.unit).trim());
    if (mode >= 0) evidence.modes.add(cellAt(cells, mode).trim());
  }
  return evidence;
}
