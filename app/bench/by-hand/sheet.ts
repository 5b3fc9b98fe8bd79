import type { HandColumn, HandRow } from "@/lib/readings/hand-entry.ts";

/** The sheet's own rules, apart from the screen: cells, moves, paste. Rows are never changed in place. */
export type Cell = { row: number; column: number };

const isBlank = (row: HandRow | undefined): boolean =>
  row === undefined || Object.values(row).every((text) => text === "");

/** A sheet of so many blank rows. */
export const blankRows = (count: number): HandRow[] => Array.from({ length: count }, () => ({}));

/** One cell changed; a blank row is kept below the last one that holds something, so that there is always one to go on with. */
export function withCell(rows: readonly HandRow[], row: number, key: string, text: string): HandRow[] {
  const next = rows.map((each, index) => (index === row ? { ...each, [key]: text } : each));
  return isBlank(next.at(-1)) ? next : [...next, {}];
}

/**
 * Where a key leads from a cell, or null where it leads nowhere: Enter and Shift+Enter down and up, arrows up and down.
 * Enter on the last row leads one below it; the caller adds the row. Tab is the browser's own.
 */
export function moveFrom(at: Cell, key: string, shift: boolean, rowCount: number): Cell | null {
  const down = key === "ArrowDown" || (key === "Enter" && !shift);
  const up = key === "ArrowUp" || (key === "Enter" && shift);
  if (!down && !up) return null;
  const row = at.row + (down ? 1 : -1);
  if (row < 0 || (row >= rowCount && key !== "Enter")) return null;
  return { row, column: at.column };
}

/** A paste before it lands: what goes where. */
export type Paste = {
  cells: string[][];
  at: Cell;
  /** The first row looks like a heading: no number stands in it where numbers are asked for. */
  looksHeaded: boolean;
};
export type Landing = {
  lines: [first: number, last: number]; // of the sheet, from 1
  rows: number;
  columns: HandColumn[]; // those that receive, in order
  leftOut: number; // columns of the paste that have no place
  replaced: number; // cells that hold something else now
};

const isNumeric = (column: HandColumn | undefined): boolean => column !== undefined && column.kind !== "text";

export function pasteAt(cells: string[][], at: Cell, columns: readonly HandColumn[]): Paste {
  const first = cells[0] ?? [];
  const asked = first.filter((_, index) => isNumeric(columns[at.column + index]));
  const looksHeaded = cells.length > 1 && asked.some((text) => text.trim() !== "") && asked.every((t) => !/\d/.test(t));
  return { cells, at, looksHeaded };
}

const bodyOf = (paste: Paste, skipFirst: boolean): string[][] => (skipFirst ? paste.cells.slice(1) : paste.cells);

/** What a paste would do to these rows. */
export function landingOf(
  paste: Paste,
  rows: readonly HandRow[],
  columns: readonly HandColumn[],
  skipFirst: boolean,
): Landing {
  const body = bodyOf(paste, skipFirst);
  const width = Math.max(0, ...body.map((row) => row.length));
  const receiving = columns.slice(paste.at.column, paste.at.column + width);
  const replaced = body.flatMap((cells, index) =>
    receiving.filter((column, offset) => {
      const before = rows[paste.at.row + index]?.[column.key] ?? "";
      return before !== "" && before !== (cells[offset] ?? "").trim();
    }),
  ).length;
  return {
    lines: [paste.at.row + 1, paste.at.row + body.length],
    rows: body.length,
    columns: receiving,
    leftOut: width - receiving.length,
    replaced,
  };
}

/** The rows with the paste put in. */
export function landPaste(
  paste: Paste,
  rows: readonly HandRow[],
  columns: readonly HandColumn[],
  skipFirst: boolean,
): HandRow[] {
  const body = bodyOf(paste, skipFirst);
  const missing = Math.max(0, paste.at.row + body.length - rows.length);
  const next = [...rows, ...blankRows(missing)].map((row, index) => {
    const cells = body[index - paste.at.row];
    if (!cells) return row;
    const put = columns
      .slice(paste.at.column, paste.at.column + cells.length)
      .map((column, offset) => [column.key, (cells[offset] ?? "").trim()] as const);
    return { ...row, ...Object.fromEntries(put) };
  });
  return isBlank(next.at(-1)) ? next : [...next, {}];
}

/** How many rows hold something in one of these columns. */
export const countFilled = (rows: readonly HandRow[], columns: readonly HandColumn[]): number =>
  rows.filter((row) => columns.some((column) => (row[column.key] ?? "").trim() !== "")).length;
