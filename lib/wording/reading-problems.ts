import type { Problem } from "../quantity/problem.ts";
import type { ReadingProblemCode } from "../readings/problem-codes.ts";
import { placeOf, quoted } from "./problem-sentence.ts";

const upper = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
/** The sentence behind its place ("In shelf.csv, row 7, column “Pb”: …"), or by itself. */
const at = (problem: Problem, sentence: string): string => {
  const where = placeOf(problem);
  return where === "" ? upper(sentence) : where + sentence;
};
/** "line 7", in the file where that is named. */
const line = ({ where }: Problem): string => `line ${where?.row ?? "?"}${where?.file ? ` of ${where.file}` : ""}`;

/** Sentences of trouble in one cell: where, what was found, what is allowed, what to do. */
const cell =
  (what: (found: string, allowed: string) => string) =>
  (problem: Problem): string =>
    at(problem, what(quoted(problem.found), problem.allowed ?? ""));

const mend = "Mend the cell or leave the row out.";

/**
 * The sentence for each problem that reading a file can meet: where it is, what was found, what is allowed, what to do.
 * Codes and what they carry: lib/readings/problem-codes.ts.
 */
export const readingProblems: Record<ReadingProblemCode, (problem: Problem) => string> = {
  "hand-empty": () => "The sheet is empty. Type at least one reading.",
  "file-empty": () => "This file is empty. Save it again from the instrument, then choose it here.",
  "file-blank": () =>
    "This file holds only spaces and line ends. Save it again from the instrument, then choose it here.",
  "file-too-large": (p) =>
    `This file is ${p.found ?? "too large"}; the largest we take is ${p.allowed ?? "smaller"}. Split it into smaller files, each with the header.`,
  "file-not-text": (p) =>
    `This is ${p.found ?? "no text file"}, whatever its name says. Save the readings as text with separators (CSV) or as a workbook (XLSX or ODS) and choose that file.`,
  "spreadsheet-encrypted": () =>
    "This workbook is locked with a password. Save a copy without one, or save the sheet as CSV, and choose that file.",
  "spreadsheet-broken": () =>
    "This workbook is damaged and cannot be read. Open it in a spreadsheet, save it again as XLSX, ODS or CSV, and choose that file.",
  "spreadsheet-unpacks-too-large": (p) =>
    `This workbook unpacks to ${p.found ?? "too much"}; the most we take is ${p.allowed ?? "less"}. Take pictures and other sheets out, or save the sheet with the readings as CSV.`,
  "spreadsheet-too-many-cells": (p) =>
    `This workbook has ${p.found ?? "too many"} cells; the most we take is ${p.allowed ?? "fewer"}. Save the sheet with the readings as CSV, or delete what is not readings.`,
  "sheet-unknown": (p) =>
    `This workbook has no sheet called ${quoted(p.found)}. Its sheets are: ${p.allowed ?? "none"}.`,
  "encoding-unknown": () =>
    "The characters of this file cannot be read. Save it as CSV in UTF-8, UTF-16 or Windows-1252.",
  "nul-bytes": (p) =>
    `${upper(line(p))} holds a NUL byte, which no text file has: the file is damaged or is not text. Save it again from the instrument.`,
  "header-not-found": () =>
    "No row of this file names its columns. It needs a header such as: Sample, Pb (ppm), ±. The separators may be commas, semicolons or tabs.",
  "no-rows": (p) => `The header stands on ${line(p)} and nothing stands below it. Choose a file with readings.`,
  "two-tables": (p) =>
    `A second table with other columns begins on ${line(p)} (${p.found ?? ""}); the first has its header on ${p.allowed ?? "an earlier line"}. Put each table into a file of its own.`,
  "mixed-separators": (p) =>
    `${upper(line(p))} is divided by ${p.found ?? "another separator"}, the header by ${p.allowed ?? "another"}. Use one separator throughout the file.`,
  "quote-not-closed": (p) =>
    `The quotation mark that opens on ${line(p)} is never closed, so the rest of the file cannot be told apart. Close it, or take it out.`,
  "quote-runs-on": (p) =>
    `The quotation mark that opens on ${line(p)} closes only after ${p.found ?? "many lines"}; a cell may span at most ${p.allowed ?? "fewer"}. It is most likely a stray mark: take it out.`,

  "column-missing": (p) =>
    `The columns chosen include ${quoted(p.found)}, which this file does not have. Choose the columns again.`,
  "column-used-twice": cell(
    (found) => `${found} is chosen twice. Each column serves one figure, and each figure has one column.`,
  ),
  "figure-without-value": cell(
    (found) =>
      `this column goes with a value of ${found}, and no column holds that value. Choose the value's column too.`,
  ),
  "element-unknown": cell((found) => `${found} is no chemical element. Give its symbol, such as Pb.`),
  "element-mapped-twice": cell((found) => `${found} already has a column of the same kind. Keep one of the two.`),
  "no-result-columns": () => "No column holds results. Choose the column of at least one element.",
  "unit-unknown": cell((found) => `${found} is not a unit we know. Use ppm, mg/kg, %, µg/cm² or mg/cm².`),
  "time-zone-unknown": cell(
    (found) =>
      `the time zone of ${found} is not known. Give an offset such as +02:00 or a place such as Europe/Lisbon.`,
  ),

  "ask-decimal": cell(
    (found) => `${found} can be read in two ways. Say whether this file writes decimals with a comma or a point.`,
  ),
  "ask-thousands": cell((found) => `${found} may hold a thousands separator. Say whether it does.`),
  "ask-k": cell(
    () => "the file does not say what its error figures cover. Say whether they are 1, 2 or 3 standard uncertainties.",
  ),
  "ask-time-zone": cell(
    (found) =>
      `${found} has no time zone. Say where the readings were taken, such as Europe/Lisbon, or give an offset such as +02:00.`,
  ),
  "ask-unit": cell(
    (found) => `the file gives no unit for figures such as ${found}. Say which it is: ppm, mg/kg, %, µg/cm² or mg/cm².`,
  ),
  "ask-quantity": cell(
    () => "the file does not say whether these figures are of a bulk part or of a coating. Say which.",
  ),
  "ask-date-order": cell((found) => `${found} can be two dates. Say whether the day or the month comes first.`),
  "ask-zero": cell(
    (found) =>
      `${found} without an error may mean “not detected”. Say whether it is a number, not detected or not measured.`,
  ),
  "ask-dash": cell((found) => `${found} may mean “not measured” or “not detected”. Say which.`),
  "ask-not-available": cell((found) => `${found} may mean “not measured” or “not detected”. Say which.`),
  "ask-no-limit": cell(
    (found) =>
      `${found} states no detection limit. Give one, keep such readings without a limit, or let the rows be set aside.`,
  ),

  "not-a-number": cell((found, allowed) => `found ${found}; it should be ${allowed}. ${mend}`),
  "number-ambiguous": cell(
    (found) =>
      `${found} can be read in two ways: its mark may be decimal or may group thousands. Write it without thousands separators.`,
  ),
  "number-too-large": cell((found) => `${found} is larger than any reading can be. ${mend}`),
  "number-too-small": cell((found) => `${found} is so small that it would become zero. ${mend}`),
  "decimal-mark-unknown": cell(
    (found) =>
      `${found} has a decimal mark and the file's is not known yet. Say first whether it is a comma or a point.`,
  ),
  "above-range": cell(
    (found) =>
      `${found} says only “more than”, which cannot be averaged. Give the number if there is one, or leave the row out.`,
  ),
  "limit-not-positive": cell((found) => `the detection limit ${found} is not above zero. ${mend}`),
  "unit-conflict": cell(
    (found, allowed) =>
      `${found} carries another unit than its column, ${allowed}. Convert the figure or correct the unit.`,
  ),
  "unit-missing": cell(() => "there is no unit: not in the header, not in the cell, not in a unit column. Give one."),
  "quantity-unknown": cell(
    (found) => `figures in ${found} can be of a bulk part or of a coating, and nothing says which. Say which.`,
  ),
  "error-unreadable": cell((found) => `the error ${found} should be a number above zero, or nothing. ${mend}`),
  "error-not-positive": cell(
    (found) => `the error ${found} is not above zero. Empty the cell if the error is not stated.`,
  ),
  "k-unknown": cell(
    (found) => `the error ${found} is of no use until it is said what it covers: 1, 2 or 3 standard uncertainties.`,
  ),
  "limit-unreadable": cell(
    (found) => `the detection limit ${found} should be a number above zero, or nothing. ${mend}`,
  ),
  "limit-missing": cell(
    (found) =>
      `${found} says “not detected” and no detection limit is stated. Write it as <12, or give a limit for the element.`,
  ),
  "zero-unclear": cell((found) => `it is not said what ${found} stands for: a number, not detected or not measured.`),
  "dash-unclear": cell((found) => `it is not said what ${found} stands for: not measured or not detected.`),
  "not-available-unclear": cell((found) => `it is not said what ${found} stands for: not measured or not detected.`),
  "flag-unreadable": cell((found) => `found ${found}; it should be <, ND, detected, or nothing. ${mend}`),
  "element-unreadable": cell((found) => `${found} is no chemical symbol or name of an element. ${mend}`),
  "element-twice": cell(
    (found) =>
      `this reading already has a result for ${found}, and one reading holds each element once. Correct the reading number, or leave the row out.`,
  ),
  "seconds-unreadable": cell(
    (found) => `found ${found}; it should be the seconds counted, a number above zero. ${mend}`,
  ),
  "date-unreadable": cell((found, allowed) => `found ${found}; it should be ${allowed}. ${mend}`),
  "date-order-unknown": cell(
    (found) => `${found} can be two dates. Say first whether the day or the month comes first.`,
  ),
  "date-too-early": cell(
    (found) =>
      `the date ${found} is before 1990, when there were no such analysers: the instrument's clock was not set. Correct it, or empty the cell.`,
  ),
  "date-in-future": cell(
    (found) => `the date ${found} has not come yet: the instrument's clock is wrong. Correct it, or empty the cell.`,
  ),
  "time-twice": cell(
    (found) =>
      `the time ${found} came twice, because the clocks were set back. Write the offset behind it, such as +02:00.`,
  ),
  "time-never": cell(
    (found) => `the time ${found} never was, because the clocks were set forward over it. Correct it.`,
  ),
  formula: cell(
    (found) => `${found} is a formula, and we never compute formulas from a file. Write the plain text or number.`,
  ),
  "direction-control": cell(
    (found) => `${found} holds invisible characters that turn text around on the screen. Take them out.`,
  ),
  "control-character": cell((found) => `${found} holds invisible control characters. Take them out.`),
  "broken-character": cell(
    (found) =>
      `${found} holds a damaged character; the file may have been cut off or saved in a wrong encoding. ${mend}`,
  ),
  "nothing-measured": (p) => at(p, "every result cell of this row is empty. Fill one in, or leave the row out."),
  "summary-row": cell(
    (found) =>
      `${found} shows that this row sums up other readings. It is left out, because the readings themselves are counted.`,
  ),
  "row-width": (p) =>
    at(
      p,
      `this row has ${p.found ?? "another number of cells"}; it should have ${p.allowed ?? "as many as the header"}. A separator is missing or one too many, or the file was cut off.`,
    ),
  "quote-malformed": (p) => at(p, "a quotation mark stands in the middle of a quoted cell. Double it, or take it out."),
};
