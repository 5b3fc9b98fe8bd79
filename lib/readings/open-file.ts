import { done, type Outcome, refused } from "../quantity/problem.ts";
import { decodeBytes } from "./decode-bytes.ts";
import { readSpreadsheet, type Sheet, type SheetNote } from "./read-spreadsheet.ts";
import { readTable, tableOfRecords } from "./read-table.ts";
import type { Table } from "./table.ts";

/** A sheet as it is offered for choice. */
export type SheetChoice = { name: string; hidden: boolean; rows: number; readable: boolean; notes: SheetNote[] };
/** A file's table; where it is a workbook, which of its sheets that is and what the others are. */
export type OpenedFile = { table: Table; sheet: string | null; sheets: SheetChoice[] };

/**
 * Bytes of a file → its table, be it text or a workbook; what it is is told by its bytes. Of a workbook the sheet asked for is taken;
 * without one, the first that is not hidden and holds a table. Everything after this is the same for both.
 *
 * `oneColumn` reads a text without any separator as one column.
 */
export async function openFile(
  bytes: Uint8Array,
  options: { sheet?: string | null; maxBytes?: number; oneColumn?: boolean } = {},
): Promise<Outcome<OpenedFile>> {
  const sheets = await readSpreadsheet(bytes);
  if (sheets === null) return openText(bytes, options);
  if (!sheets.ok) return sheets;
  const tables = sheets.value.map((sheet) => ({ sheet, table: tableOf(sheet) }));
  const wanted =
    options.sheet === undefined || options.sheet === null
      ? (tables.find(({ sheet, table }) => !sheet.hidden && table.ok) ??
        tables.find(({ table }) => table.ok) ??
        tables.find(({ sheet }) => !sheet.hidden) ??
        tables[0])
      : tables.find(({ sheet }) => sheet.name === options.sheet);
  if (!wanted)
    return options.sheet
      ? refused({
          code: "sheet-unknown",
          found: options.sheet,
          allowed: sheets.value.map((sheet) => sheet.name).join(", "),
        })
      : refused({ code: "file-blank" });
  if (!wanted.table.ok) return wanted.table;
  return done({
    table: wanted.table.value,
    sheet: wanted.sheet.name,
    sheets: tables.map(({ sheet: { name, hidden, notes, records }, table }) => ({
      ...{ name, hidden, notes, readable: table.ok },
      rows: records.filter((cells) => cells.some((cell) => cell !== "")).length,
    })),
  });
}

function openText(bytes: Uint8Array, options: { maxBytes?: number; oneColumn?: boolean }): Outcome<OpenedFile> {
  const decoded = decodeBytes(bytes, options);
  if (!decoded.ok) return decoded;
  const found = readTable(decoded.value.text);
  const again = !found.ok && options.oneColumn && found.problems[0]?.code === "header-not-found";
  const single = again ? readTable(decoded.value.text, { delimiter: "," }) : found;
  const table = single.ok ? single : found;
  return table.ok ? done({ table: table.value, sheet: null, sheets: [] }) : table;
}

function tableOf({ records, lines }: Sheet): Outcome<Table> {
  if (records.length === 0) return refused({ code: "file-blank" });
  return tableOfRecords({ records, lines, malformed: new Set() }, "\t");
}
