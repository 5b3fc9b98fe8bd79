import type { SetAsideRow } from "./reading.ts";
import { shown } from "./text-hygiene.ts";

export type RowProblem = SetAsideRow["problems"][number];

/** What each kind of trouble in a cell would have accepted; data for the sentence, in plain words. */
const expectations: Readonly<Record<string, string>> = {
  "not-a-number": "a number, a non-detect such as <12 or ND, or nothing",
  "number-ambiguous": "a number whose decimal mark is the file's",
  "number-too-large": "a number this analyser could give",
  "number-too-small": "a number this analyser could give",
  "decimal-mark-unknown": "a whole number, or the file's decimal mark stated first",
  "above-range": "a number; a reading above the range cannot be averaged",
  "limit-not-positive": "a detection limit above zero",
  "unit-conflict": "the unit of the column, or none",
  "unit-unknown": "ppm, mg/kg, %, µg/cm² or mg/cm²",
  "unit-missing": "a unit beside the number, in the unit column or in the header",
  "quantity-unknown": "whether the figure is of a bulk part or of a coating",
  "error-unreadable": "a number above zero, or nothing",
  "error-not-positive": "a number above zero, or nothing where the error is not stated",
  "k-unknown": "what the error figure covers: 1, 2 or 3 standard uncertainties",
  "limit-unreadable": "a number above zero, or nothing",
  "limit-missing":
    "a detection limit: in the cell (<12), in a limit column, in the error column, or a default for the element",
  "zero-unclear": "what 0 stands for: a number, not detected or not measured",
  "dash-unclear": "what - stands for: not measured or not detected",
  "not-available-unclear": "what n/a stands for: not measured or not detected",
  "flag-unreadable": "<, ND, detected, or nothing",
  "element-unreadable": "a chemical symbol or the name of an element",
  "element-twice": "each element once in a reading",
  "seconds-unreadable": "seconds as a number above zero",
  "date-unreadable": "a date such as 2026-05-03 or 03.05.2026",
  "date-order-unknown": "whether the day or the month comes first",
  "date-too-early": "a date from 1990 on: there were no such analysers before",
  "date-in-future": "a date that has been",
  "time-zone-unknown": "an offset such as +02:00 or a zone such as Europe/Lisbon",
  "time-twice": "an offset beside the time: the clocks were set back and this time came twice",
  "time-never": "a time that existed: the clocks were set forward over it",
  formula: "plain text or a number: a formula is never computed",
  "direction-control": "text without invisible direction characters",
  "control-character": "text without control characters",
  "broken-character": "text with all its characters",
  "nothing-measured": "a number or a non-detect in at least one result column",
  "summary-row": "a single reading; this row sums up others",
  "row-width": "as many cells as the header has",
  "quote-malformed": "quotation marks only around a whole cell, doubled inside it",
};

export const rowProblemCodes: readonly string[] = Object.keys(expectations);

export const rowProblem = (code: string, column: string | null, found: string, expected?: string): RowProblem => ({
  ...{ code, column, found: shown(found), expected: expected ?? expectations[code]! },
});
