import type { Snapshot, SnapshotReading } from "../publication/snapshot.ts";
import { asideReason } from "../wording/sessions.ts";
import { type Column, csvTable } from "./csv-table.ts";
import { type Placed, pageColumns, partColumns } from "./place-columns.ts";

export type ReadingRow = Placed & { reading: SnapshotReading };

type Written = SnapshotReading["value"];
/** The number's own digits: as many decimals as the file wrote, point for decimal mark. */
const digits = (written: Written): string | null =>
  written === null
    ? null
    : Math.abs(written.value) < 1e21
      ? written.value.toFixed(written.decimals)
      : String(written.value);

/** Every column of readings.csv. One row is one reading of one element; every unit has a column of its own. */
export const readingColumns: readonly Column<ReadingRow>[] = [
  ...pageColumns,
  ...partColumns,
  {
    name: "spot",
    type: "string",
    description: "Place on the part; empty where not named",
    cell: (r) => r.reading.spot,
  },
  { name: "reading_id", type: "string", description: "The reading's name in the snapshot", cell: (r) => r.reading.id },
  { name: "reading_number", type: "string", description: "Number as the file wrote it", cell: (r) => r.reading.number },
  {
    name: "taken_at",
    type: "datetime",
    description: "Time of the shot, with its offset",
    cell: (r) => r.reading.takenAt,
  },
  {
    name: "taken_at_as_written",
    type: "string",
    description: "Time as the file wrote it",
    cell: (r) => r.reading.takenAtText,
  },
  { name: "mode", type: "string", description: "Calibration mode of the analyser", cell: (r) => r.reading.mode },
  {
    name: "seconds_counted",
    type: "number",
    unit: "s",
    description: "Length of the shot",
    cell: (r) => r.reading.secondsCounted,
  },
  {
    name: "below_detection",
    type: "boolean",
    description: "Nothing was detected in this shot",
    cell: (r) => r.reading.belowDetection,
  },
  {
    name: "value",
    type: "number",
    description: "Value, in value_unit; empty where nothing was detected",
    cell: (r) => digits(r.reading.value),
  },
  { name: "value_unit", type: "string", description: "Unit of value", cell: (r) => r.reading.value && r.reading.unit },
  {
    name: "value_as_written",
    type: "string",
    description: "Value letter by letter as in the file",
    cell: (r) => r.reading.value?.text ?? null,
  },
  {
    name: "error",
    type: "number",
    description: "Error, in error_unit, covering error_k standard uncertainties",
    cell: (r) => digits(r.reading.error),
  },
  { name: "error_unit", type: "string", description: "Unit of error", cell: (r) => r.reading.error && r.reading.unit },
  {
    name: "error_k",
    type: "integer",
    description: "How many standard uncertainties the error covers",
    cell: (r) => r.reading.k,
  },
  {
    name: "detection_limit",
    type: "number",
    description: "Detection limit of the shot, in detection_limit_unit",
    cell: (r) => digits(r.reading.detectionLimit),
  },
  {
    name: "detection_limit_unit",
    type: "string",
    description: "Unit of detection_limit",
    cell: (r) => r.reading.detectionLimit && r.reading.unit,
  },
  {
    name: "set_aside",
    type: "boolean",
    description: "Left out, by a person with a reason or for a failed check",
    cell: (r) => r.reading.setAside !== null,
  },
  {
    name: "set_aside_reason",
    type: "string",
    description: "The reason, as written",
    cell: (r) => (r.reading.setAside ? asideReason(r.reading.setAside.reason) : null),
  },
  {
    name: "file",
    type: "string",
    description: "Name of the raw file; empty where entered by hand",
    cell: (r) => fileName(r),
  },
  { name: "file_sha256", type: "string", description: "SHA-256 of the raw file", cell: (r) => r.reading.file },
  { name: "file_row", type: "integer", description: "Row of the raw file, from 1", cell: (r) => r.reading.row },
];

const fileName = ({ snapshot, reading }: ReadingRow): string | null =>
  snapshot.files.find((file) => file.sha256 === reading.file)?.name ?? null;

/** What tells one row from another. */
export const readingKey = ["item", "revision", "part", "element", "quantity", "reading_id"] as const;

/** The rows of a snapshot, in the order of its parts, results and readings. */
export const readingRows = (snapshot: Snapshot): ReadingRow[] =>
  snapshot.specimens.flatMap((specimen) =>
    specimen.parts.flatMap((part) =>
      part.results.flatMap((result) =>
        result.readings.map((reading) => ({ snapshot, specimen, part, result, reading })),
      ),
    ),
  );

/**
 * readings.csv of one item at one revision: a row for each reading and element, set aside or not, each walked back to its
 * file's SHA-256 and row. A withdrawn item has the header line only.
 */
export const readingsCsv = (snapshot: Snapshot): string => csvTable(readingColumns, readingRows(snapshot));
