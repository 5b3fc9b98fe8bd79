import { type CellObject, read, SSF, type WorkBook, type WorkSheet } from "@e965/xlsx";
import { done, type Outcome, refused } from "../quantity/problem.ts";
import { maxCells, openSpreadsheet, tooManyCells, type WorkbookKind } from "./open-spreadsheet.ts";

/** What a reader of the sheet should know of how it was taken; worded in lib/wording/spreadsheets.ts. */
export type SheetNote = { what: SheetNoteCode; count: number };
export const sheetNoteCodes = ["hidden-rows", "hidden-columns", "merged-cells", "dates-by-region", "formulas"] as const;
export type SheetNoteCode = (typeof sheetNoteCodes)[number];

/** One sheet as its reader sees it: every cell's text as shown, row by row; `lines` are the sheet's own row numbers. */
export type Sheet = { name: string; hidden: boolean; records: string[][]; lines: number[]; notes: SheetNote[] };

/** Text characters of one workbook: a long text that many cells share counts once in the file and here each time. */
const maxCharacters = 60_000_000;

type Cells = (CellObject | null | undefined)[][];

/**
 * The one door to the spreadsheet library. Bytes of an XLSX or ODS workbook → its sheets; null where they are no workbook. A cell is
 * kept as its sheet shows it: "12.50" for 12.5 under the format 0.00. Dates that a spreadsheet shows by the region of whoever opens
 * it are written as year-month-day, since the file does not say how they were shown. A formula gives the value last worked out; one
 * that never was gives itself, which the row is then set aside for. Text in cells merged downwards stands in each row they cover.
 *
 * Refused: broken, with a password, unpacking to more than is taken, more cells than are taken.
 */
export async function readSpreadsheet(bytes: Uint8Array): Promise<Outcome<Sheet[]> | null> {
  const opened = await openSpreadsheet(bytes);
  if (opened === null || !opened.ok) return opened;
  const book = parse(bytes);
  if (book === null) return refused({ code: "spreadsheet-broken" });
  const sheets: Sheet[] = [];
  let cells = 0;
  let characters = 0;
  for (const [at, name] of book.SheetNames.entries()) {
    const sheet = book.Sheets[name];
    // Listed, but its part is missing or could not be read: left out it would be lost without a word.
    if (!sheet) return refused({ code: "spreadsheet-broken" });
    const hidden = (book.Workbook?.Sheets?.[at]?.Hidden ?? 0) !== 0;
    const from1904 = book.Workbook?.WBProps?.date1904 === true;
    const taken = sheetOf(name, hidden, sheet, { kind: opened.value.kind, from1904, formulas: 0, dates: 0 });
    if (!taken.ok) return taken;
    for (const record of taken.value.records) {
      cells += record.length;
      for (const text of record) characters += text.length;
    }
    if (cells > maxCells) return refused(tooManyCells(cells));
    if (characters > maxCharacters) return refused({ code: "spreadsheet-broken" });
    if (opened.value.kind === "ods" && opened.value.hiddenRows > 0)
      taken.value.notes.push({ what: "hidden-rows", count: opened.value.hiddenRows });
    sheets.push(taken.value);
  }
  return done(sheets);
}

function parse(bytes: Uint8Array): WorkBook | null {
  try {
    return read(bytes, {
      ...{ type: "array", dense: true, cellText: true, cellNF: true, cellFormula: true, sheetStubs: true },
      // Styles carry which rows and columns are hidden.
      ...{ cellDates: false, cellHTML: false, cellStyles: true },
    });
  } catch {
    return null;
  }
}

/** How a workbook is to be taken, and what was met on the way. */
type Taking = { kind: WorkbookKind; from1904: boolean; formulas: number; dates: number };

function sheetOf(name: string, hidden: boolean, sheet: WorkSheet, taking: Taking): Outcome<Sheet> {
  const data: Cells = (sheet as { "!data"?: Cells })["!data"] ?? [];
  const texts: string[][] = [];
  let width = 0;
  data.forEach((cells, row) => {
    const line = Array.from(cells, (cell) => textOf(cell, taking));
    while (line.at(-1) === "") line.pop();
    if (line.length === 0) return;
    width = Math.max(width, line.length);
    texts[row] = line;
  });
  if (texts.length * width > maxCells) return refused(tooManyCells(texts.length * width));
  const merged = fillDown(texts, data, sheet["!merges"] ?? []);
  const records = Array.from(texts, (line) => Array.from({ length: Math.max(width, 1) }, (_, at) => line?.[at] ?? ""));
  const shown = (marks: readonly ({ hidden?: boolean } | undefined)[] | undefined, reach: number): number =>
    Array.from(marks ?? []).filter((mark, at) => at < reach && mark?.hidden).length;
  const notes: SheetNote[] = [
    { what: "hidden-rows", count: shown(sheet["!rows"], records.length) },
    { what: "hidden-columns", count: shown(sheet["!cols"], width) },
    { what: "merged-cells", count: merged },
    { what: "dates-by-region", count: taking.dates },
    { what: "formulas", count: taking.formulas },
  ];
  return done({
    name,
    hidden,
    records,
    lines: records.map((_, at) => at + 1),
    notes: notes.filter((note) => note.count > 0),
  });
}

function textOf(cell: CellObject | null | undefined, taking: Taking): string {
  if (!cell) return "";
  const formula = cell.f !== undefined && cell.f !== "";
  if (formula) taking.formulas += 1;
  if (cell.v === undefined || cell.v === null || cell.t === "z") return formula ? `=${cell.f}` : "";
  if (typeof cell.v === "number" && isShownByRegion(cell, taking.kind)) {
    taking.dates += 1;
    return isoOf(cell.v, taking.from1904, String(cell.z));
  }
  return (cell.w ?? String(cell.v)).replace(/\r\n?/g, "\n").trimEnd();
}

/**
 * Formats 14 and 22 of ECMA-376 18.8.30, and the two that name the system's own long date and time. An OpenDocument cell brings the
 * text that its writer was shown.
 */
const isShownByRegion = ({ t, z, w }: CellObject, kind: WorkbookKind): boolean =>
  t === "n" &&
  SSF.is_date(String(z ?? "General")) &&
  (kind === "ods" ? w === undefined : /^(?:m\/d\/yy(?: h:mm)?|\[\$-f[48]00\].*)$/i.test(String(z)));

/** A spreadsheet's day number as "2026-10-03", with its time of day where it has one or its format shows one. */
function isoOf(days: number, from1904: boolean, format: string): string {
  const seconds = Math.round((days + (from1904 ? 1462 : 0)) * 86_400);
  const iso = new Date(Date.UTC(1899, 11, 30) + seconds * 1000).toISOString();
  const timed = seconds % 86_400 !== 0 || /h/i.test(format.replace(/\[[^\]]*\]/g, ""));
  return timed ? `${iso.slice(0, 10)} ${iso.slice(11, 19)}` : iso.slice(0, 10);
}

/** A text merged over rows of one column belongs to each of them; a number does not: one shot is not three. */
function fillDown(
  texts: string[][],
  data: Cells,
  merges: readonly { s: { r: number; c: number }; e: { r: number; c: number } }[],
): number {
  let filled = 0;
  for (const { s, e } of merges) {
    const text = texts[s.r]?.[s.c] ?? "";
    if (s.c !== e.c || s.r === e.r || text === "" || data[s.r]?.[s.c]?.t !== "s") continue;
    filled += 1;
    for (let row = s.r + 1; row <= Math.min(e.r, texts.length - 1); row += 1) {
      const line = texts[row];
      if (!line) continue; // a row with nothing else in it stays blank
      while (line.length < s.c) line.push("");
      if ((line[s.c] ?? "") === "") line[s.c] = text;
    }
  }
  return filled;
}
