/**
 * Every code this room emits, with what `found` and `allowed` (for a row: `found` and `expected`) hold. The sentences stand in
 * lib/wording/reading-problems.ts; a test checks that each code has one and that no other is emitted.
 */

/** The file as a whole: it is refused, nothing is taken from it. */
export const fileProblemCodes = {
  "file-empty": "no bytes at all",
  "file-blank": "only white space",
  "hand-empty": "a sheet written by hand without a reading",
  "file-too-large": "found: its size; allowed: the largest size (both with unit)",
  "file-not-text": "found: what the file is, with its article: 'a PNG image'",
  "encoding-unknown": "bytes of no encoding that is read",
  "nul-bytes": "where.row and found: the line of the first NUL byte",
  "header-not-found": "no row names columns",
  "no-rows": "where.row: the header's line; nothing stands below it",
  "two-tables": "where.row: line of the second header; found: its texts; allowed: 'line N' of the first",
  "mixed-separators": "where.row: first line divided otherwise; found: its separator's name; allowed: the header's",
  "quote-not-closed": "where.row and found: the line where the quotation mark opens",
  "spreadsheet-encrypted": "a workbook with a password",
  "spreadsheet-broken": "a workbook that cannot be unpacked or understood",
  "spreadsheet-unpacks-too-large": "found: what it unpacks to; allowed: the most (both with unit)",
  "spreadsheet-too-many-cells": "found: how many cells; allowed: how many are taken",
  "sheet-unknown": "found: the sheet asked for; allowed: the sheets there are",
  "quote-runs-on": "where.row: where the quoted cell begins; found: lines it spans; allowed: lines it may span",
} as const;

/** The mapping: it does not fit the table, or an answer cannot be taken. */
export const mappingProblemCodes = {
  "column-missing": "where.column and found: a column the mapping names and the file lacks",
  "column-used-twice": "where.column; found: the column or element chosen for two figures",
  "figure-without-value": "where.column: an error, limit or flag; found: the element that has no value column",
  "element-unknown": "where.column; found: what stands in place of a chemical symbol",
  "element-mapped-twice": "where.column; found: the symbol of an element with two columns of one kind",
  "no-result-columns": "no column holds results",
  "unit-unknown": "where.column; found: the unit's text",
  "time-zone-unknown": "where.field; found: the zone's text",
} as const;

/** What the file does not say. where.row and found: an example, or the columns' names; allowed: the answers, by comma. */
export const questionCodes = {
  "ask-decimal": "decimal mark",
  "ask-thousands": "whether the other mark groups thousands",
  "ask-k": "what the error figures cover",
  "ask-time-zone": "zone of times without offset",
  "ask-unit": "unit of a column",
  "ask-quantity": "bulk or coating",
  "ask-date-order": "day or month first",
  "ask-zero": "what a bare 0 means",
  "ask-dash": "what - means",
  "ask-not-available": "what n/a means",
  "ask-no-limit": "non-detects without a limit (not blocking)",
} as const;

/** A row set aside. found: the cell as it can be shown; expected: what would be taken. */
export const rowProblemNotes = {
  "not-a-number": "a cell of a result column",
  "number-ambiguous": "a mark that may be decimal or thousands",
  "number-too-large": "1e400",
  "number-too-small": "1e-400, which a computer would read as zero",
  "decimal-mark-unknown": "a decimal where the file's mark is not known",
  "above-range": ">9000",
  "limit-not-positive": "a detection limit of zero or less",
  "unit-conflict": "a cell's unit differs from its column's; expected: the column's unit",
  "unit-unknown": "a unit column's text",
  "unit-missing": "no unit anywhere",
  "quantity-unknown": "found: the unit, of a bulk part or of a coating",
  "error-unreadable": "a cell of an error column",
  "error-not-positive": "an error of zero or less",
  "k-unknown": "an error figure whose coverage is not known",
  "limit-unreadable": "a cell of a limit column",
  "limit-missing": "a non-detect for which no limit is stated",
  "zero-unclear": "a bare 0",
  "dash-unclear": "-",
  "not-available-unclear": "n/a",
  "flag-unreadable": "a cell of a detection column",
  "element-unreadable": "a cell of the element column",
  "element-twice": "found: the element that the same reading already has",
  "seconds-unreadable": "a cell of the seconds column",
  "date-unreadable": "a cell of a date or time column",
  "date-order-unknown": "3/4/2026",
  "date-too-early": "a date before 1990",
  "date-in-future": "a date later than now",
  "time-zone-unknown": "a time without a zone, or a zone that does not exist",
  "time-twice": "a local time that came twice as clocks were set back",
  "time-never": "a local time that clocks skipped",
  formula: "=1+1",
  "direction-control": "U+202E and its kin, shown by code point",
  "control-character": "control characters, shown by code point",
  "broken-character": "U+FFFD: bytes that were no character",
  "nothing-measured": "every result column is blank",
  "summary-row": "found: the word that shows it (Mean)",
  "row-width": "found: 'N cells'; expected: 'M cells, as in the header on line L'",
  "quote-malformed": "found: the row with a misplaced quotation mark",
} as const;

export type FileProblemCode = keyof typeof fileProblemCodes;
export type MappingProblemCode = keyof typeof mappingProblemCodes;
export type QuestionCode = keyof typeof questionCodes;
export type RowProblemCode = keyof typeof rowProblemNotes;
export type ReadingProblemCode = FileProblemCode | MappingProblemCode | QuestionCode | RowProblemCode;
