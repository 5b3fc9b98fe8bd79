import type { SheetNoteCode } from "../readings/read-spreadsheet.ts";

const many = (count: number, one: string, more: string): string => (count === 1 ? `1 ${one}` : `${count} ${more}`);

/** How a sheet was taken where more than one way could be thought of. */
export const sheetNoteSentences: Record<SheetNoteCode, (count: number) => string> = {
  "hidden-rows": (n) =>
    `${many(n, "row is", "rows are")} hidden in the spreadsheet. Hidden rows are read like the others.`,
  "hidden-columns": (n) =>
    `${many(n, "column is", "columns are")} hidden in the spreadsheet. Hidden columns are offered like the others.`,
  "merged-cells": (n) =>
    `${many(n, "text is", "texts are")} merged over several rows. Each of those rows is read with that text.`,
  "dates-by-region": (n) =>
    `${many(n, "date is", "dates are")} shown by the region of whoever opens the sheet, so they are written here as year-month-day.`,
  formulas: (n) =>
    `${many(n, "cell holds", "cells hold")} a formula. The value last worked out is read; a formula without one sets its row aside.`,
};

export const sheetWords = {
  title: "Which sheet",
  hint: "A workbook has sheets; the readings of one are loaded at a time.",
  rows: (count: number): string => many(count, "row", "rows"),
  hidden: "hidden",
  noTable: "no table of readings",
  current: "this one",
};
