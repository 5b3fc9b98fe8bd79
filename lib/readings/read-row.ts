import { readChemicalName } from "./chemical-symbol.ts";
import { type ColumnIndex, indexColumns } from "./column-index.ts";
import type { Mapping } from "./mapping.ts";
import { type NumberStyle, readCell } from "./read-cell.ts";
import {
  type DateOrder,
  orderEvidence,
  readClock,
  readMoment,
  type WrittenClock,
  type WrittenDate,
} from "./read-moment.ts";
import { readResult } from "./read-result.ts";
import type { ElementResult, Reading } from "./reading.ts";
import { type RowProblem, rowProblem } from "./row-problem.ts";
import { cellAt, type Table } from "./table.ts";
import { faultOf } from "./text-hygiene.ts";
import { writeOffset, zoneReader } from "./zone-offset.ts";

/** Earliest year a date is believed. Ours to choose: handheld analysers came into use in the 1990s (common practice, no source). */
const earliestYear = 1990;

export type RowReader = {
  /** Reads the cells of one data row. In the long shape the reading holds that row's one element. */
  read: (cells: readonly string[], row: number) => { reading: Reading } | { problems: RowProblem[] };
};

type Zone = ReturnType<typeof zoneReader>;
type Taken = Pick<Reading, "takenAt" | "takenAtText" | "offsetMinutes"> & { takenOn: string | null };
type Reader = {
  table: Pick<Table, "columns">;
  mapping: Mapping;
  index: ColumnIndex;
  style: NumberStyle;
  zones: Map<string, Zone>;
  now: number | null;
};

const two = (value: number): string => String(value).padStart(2, "0");

function zoneOf(reader: Reader, name: string): Zone {
  if (!reader.zones.has(name)) reader.zones.set(name, zoneReader(name));
  return reader.zones.get(name) ?? null;
}

/** The text of a role's column, white space folded; problems are pushed. */
function readText(reader: Reader, cells: readonly string[], at: number, problems: RowProblem[]): string | null {
  const cell = cellAt(cells, at);
  const text = cell.replace(/\s+/g, " ").trim();
  if (text === "") return null;
  const fault = faultOf(text);
  if (fault) problems.push(rowProblem(fault, reader.table.columns[at]!, cell));
  return text;
}

function readSeconds(reader: Reader, cells: readonly string[], problems: RowProblem[]): number | null {
  const at = reader.index.roles.seconds;
  const text = cellAt(cells, at).trim();
  if (text === "") return null;
  const read = readCell(text.replace(/\s*(?:s|sec|secs|seconds|sek)\.?$/i, ""), reader.style);
  if (read.is === "number" && read.unit === null && read.error === null && read.number.value > 0)
    return read.number.value;
  problems.push(rowProblem("seconds-unreadable", reader.table.columns[at]!, text));
  return null;
}

/** Date and clock of the row, from one column or from two. */
function readWrittenMoment(reader: Reader, cells: readonly string[], problems: RowProblem[]) {
  const { date: dateAt, time: timeAt, dateTime: bothAt } = reader.index.roles;
  const order: DateOrder | null = reader.mapping.dateOrder;
  const column = (at: number) => reader.table.columns[at] ?? null;
  const text = (at: number) => cellAt(cells, at).trim();
  const dateText = text(bothAt) || text(dateAt);
  const dateColumn = column(text(bothAt) ? bothAt : dateAt);
  let date: WrittenDate | null = null;
  let clock: WrittenClock | null = null;
  if (dateText !== "") {
    const moment = readMoment(dateText, order);
    const unordered = order === null && orderEvidence(dateText) !== "unneeded";
    if (!moment?.date)
      problems.push(
        rowProblem(unordered ? "date-order-unknown" : (faultOf(dateText) ?? "date-unreadable"), dateColumn, dateText),
      );
    date = moment?.date ?? null;
    clock = moment?.clock ?? null;
  }
  const timeText = bothAt >= 0 && text(bothAt) !== "" ? "" : text(timeAt);
  if (timeText !== "") {
    const read = readClock(timeText.replace(/\s*Uhr$/i, ""));
    if (!read)
      problems.push(
        rowProblem(faultOf(timeText) ?? "date-unreadable", column(timeAt), timeText, "a time of day such as 14:05"),
      );
    clock = read ?? clock;
  }
  return { date, clock, dateText, dateColumn, written: [dateText, timeText].filter((part) => part !== "").join(" ") };
}

function readTaken(reader: Reader, cells: readonly string[], problems: RowProblem[]): Taken {
  const { date, clock, dateText, dateColumn, written } = readWrittenMoment(reader, cells, problems);
  const nothing = { takenAt: null, takenOn: null, takenAtText: written || null, offsetMinutes: null };
  const zoneAt = reader.index.roles.zone;
  const zoneText = cellAt(cells, zoneAt).trim();
  const zoneName = zoneText || reader.mapping.timeZone;
  const zone = zoneName ? zoneOf(reader, zoneName) : null;
  if (zoneText !== "" && !zone) problems.push(rowProblem("time-zone-unknown", reader.table.columns[zoneAt]!, zoneText));
  if (!date) return nothing;
  if (date.year < earliestYear) problems.push(rowProblem("date-too-early", dateColumn, dateText));
  const local = { ...date, ...(clock ?? { hour: 0, minute: 0, second: 0 }) };
  const offset = clock ? (clock.offset ?? zone?.(local) ?? null) : null;
  const utc = Date.UTC(local.year, local.month - 1, local.day, local.hour, local.minute, local.second);
  const known = typeof offset === "number" ? offset : null;
  // A day of grace: without an offset the day may have begun elsewhere, and clocks of instruments run fast.
  if (reader.now !== null && utc - (known ?? 0) * 60_000 > reader.now + 86_400_000)
    problems.push(rowProblem("date-in-future", dateColumn, dateText));
  if (offset === "twice" || offset === "never") problems.push(rowProblem(`time-${offset}`, dateColumn, written));
  if (clock && offset === null && !zoneText) problems.push(rowProblem("time-zone-unknown", dateColumn, written));
  const takenOn = `${date.year}-${two(date.month)}-${two(date.day)}`;
  if (!clock || known === null) return { ...nothing, takenOn };
  const takenAt = `${takenOn}T${two(local.hour)}:${two(local.minute)}:${two(local.second)}${writeOffset(known)}`;
  return { takenAt, takenOn, takenAtText: written, offsetMinutes: known };
}

function readResults(
  reader: Reader,
  cells: readonly string[],
  row: number,
  mode: string | null,
  problems: RowProblem[],
): ElementResult[] {
  const { index, mapping, style } = reader;
  const results: ElementResult[] = [];
  const long = mapping.shape === "long";
  const unitText = index.unit < 0 ? null : cellAt(cells, index.unit).trim();
  const named = long ? readChemicalName(cellAt(cells, index.element).trim()) : null;
  if (long && !named) {
    const cell = cellAt(cells, index.element);
    problems.push(rowProblem(faultOf(cell) ?? "element-unreadable", mapping.long!.element, cell));
    return results;
  }
  for (const figure of index.figures) {
    const own = named
      ? {
          ...figure,
          element: named.symbol,
          oxide: named.oxide,
          factor: named.factor,
          defaultLimit: longLimit(mapping, named.symbol),
        }
      : figure;
    // A unit in the header goes before the row's: a unit column beside such headers speaks of something else.
    const rowUnit = figure.figure.unit === null ? unitText : null;
    const result = readResult(cells, own, { mapping, style, mode, unitText: rowUnit });
    if (result === null) continue;
    if ("code" in result) problems.push(result);
    else results.push(long ? { ...result, row } : result);
  }
  if (results.length === 0 && problems.length === 0) problems.push(rowProblem("nothing-measured", null, ""));
  return results;
}

const longLimit = (mapping: Mapping, symbol: string): string | null => mapping.longLimits[symbol] ?? null;

function readOne(
  reader: Reader,
  cells: readonly string[],
  row: number,
): { reading: Reading } | { problems: RowProblem[] } {
  const problems: RowProblem[] = [];
  const { roles, sample } = reader.index;
  const text = (at: number) => readText(reader, cells, at, problems);
  const names = sample.map(text).filter((name): name is string => name !== null);
  const mode = text(roles.mode);
  const reading: Reading = {
    row,
    number: text(roles.number),
    ...readTaken(reader, cells, problems),
    ...{
      secondsCounted: readSeconds(reader, cells, problems),
      mode,
      sample: names.length > 0 ? names.join(" / ") : null,
    },
    ...{ spot: text(roles.spot), note: text(roles.note), serial: text(roles.serial), operator: text(roles.operator) },
    results: readResults(reader, cells, row, mode, problems),
  };
  return problems.length > 0 ? { problems } : { reading };
}

/** Makes the reader of one table's rows: columns looked up once, zones kept. `now` (milliseconds since 1970) refuses later dates. */
export function makeRowReader(
  table: Pick<Table, "columns">,
  mapping: Mapping,
  options: { now?: number } = {},
): RowReader {
  const reader: Reader = {
    ...{ table, mapping, index: indexColumns(table, mapping), zones: new Map(), now: options.now ?? null },
    style: { decimal: mapping.decimal, thousands: mapping.thousands === "yes" },
  };
  return { read: (cells, row) => readOne(reader, cells, row) };
}
