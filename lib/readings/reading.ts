import type { QuantityKind } from "../quantity/kinds.ts";
import type { WrittenNumber } from "../quantity/written-number.ts";

export type { WrittenNumber } from "../quantity/written-number.ts";

/**
 * One element's result in one shot, in the unit the file wrote. Conversion to the canonical unit is step 0 of
 * `lib/reconcile`, never here. Either `value` holds (detected) or `belowDetection` is true; a cell that was blank
 * yields no ElementResult at all ("not measured", never zero).
 */
export type ElementResult = {
  element: string; // chemical symbol: "Pb"
  quantity: QuantityKind;
  unit: string; // a unit known to lib/quantity: "ppm", "mg/kg", "%", "µg/cm²", "mg/cm²" …
  unitText: string; // as written in the header, the units row or the cell
  belowDetection: boolean;
  value: WrittenNumber | null;
  error: WrittenNumber | null; // as written: value units, covering k standard uncertainties
  k: 1 | 2 | 3 | null; // what `error` means; null when there is no error
  detectionLimit: WrittenNumber | null;
  column: string; // header of the value column, for walking back
  row?: number; // line of the result's own row, where a file has a row for each element
  /** "PbO" where the file gives the oxide: texts stay as written, `value`s are the element's (by atomic weights). */
  oxide?: string;
};

/** One shot of the analyser, walked back to its file by `row` (1-based physical line where its record begins). */
export type Reading = {
  row: number;
  number: string | null; // reading number as written
  takenAtText: string | null;
  takenAt: string | null; // ISO 8601 with offset, when the zone is known
  takenOn?: string | null; // local calendar date, YYYY-MM-DD, also where the file has no time of day
  offsetMinutes: number | null;
  secondsCounted: number | null;
  mode: string | null; // calibration mode as written
  sample: string | null; // text of the column(s) that name the sample
  spot: string | null;
  note: string | null;
  serial: string | null; // instrument serial
  operator: string | null;
  results: ElementResult[];
};

/** A row that could not become a reading. It is listed, can be mended in place, and is never lost. */
export type SetAsideRow = {
  row: number;
  cells: string[];
  problems: { code: string; column: string | null; found: string; expected: string }[];
};

/** rows.total = accepted + setAside + blank + header. `header` counts preamble, header, units and repeated header rows,
 *  and trailing summary rows are set aside with the code "summary-row". */
export type RowAccount = { total: number; accepted: number; setAside: number; blank: number; header: number };
