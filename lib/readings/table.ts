export type Delimiter = "," | ";" | "\t";

/**
 * What a record of the file is. A record is one line, or the several lines that a quoted cell spans.
 *   preamble         above the header           header            the header itself
 *   units            under the header           repeated-header   the header (or its units) again, lower down
 *   blank            nothing but separators     summary           mean, standard deviation … of the readings above
 *   width            more or fewer cells than the header           quotes   a quotation mark in a wrong place
 *   data             everything else
 */
export type RowKind =
  | "preamble"
  | "header"
  | "units"
  | "repeated-header"
  | "blank"
  | "summary"
  | "width"
  | "quotes"
  | "data";

/** One record; `line` is the 1-based physical line on which it begins. */
export type TableRow = { line: number; kind: RowKind; cells: string[] };

export type Table = {
  delimiter: Delimiter;
  /** Header texts as written, one for each column. */
  header: string[];
  /** A name for each column: its header, "column 7" where blank, "± (2)" where an earlier column has the same. */
  columns: string[];
  headerLine: number;
  /** Texts of the units row, one for each column, or null where there is none. */
  units: string[] | null;
  /** Every record of the file, in order; none is left out. */
  rows: TableRow[];
};

/** The text of a row in one column; nothing where there is no such column (-1), or where the row ends before it. */
export const cellAt = (cells: readonly string[], at: number): string =>
  at >= 0 && at < cells.length ? cells[at]! : "";

/** Names columns so that each can be told apart. ["Pb", "±", "Cd", "±", ""] → ["Pb", "±", "Cd", "± (2)", "column 5"]. */
export function nameColumns(header: readonly string[]): string[] {
  const taken = new Set<string>();
  return header.map((cell, index) => {
    const plain = cell.replace(/\s+/g, " ").trim() || `column ${index + 1}`;
    let name = plain;
    for (let copy = 2; taken.has(name); copy++) name = `${plain} (${copy})`;
    taken.add(name);
    return name;
  });
}

/**
 * What makes two files' headers the same, so that a mapping can be remembered: the header texts and the units row,
 * white space folded. Two files of one instrument setting give the same text; the caller may hash it.
 * Example: header ["Pb ", "±"], units null → '[["Pb","±"],null]'.
 */
export function headerFingerprint(table: Pick<Table, "header" | "units">): string {
  const fold = (cells: readonly string[]) => cells.map((cell) => cell.normalize("NFC").replace(/\s+/g, " ").trim());
  const header = fold(table.header);
  while (header.at(-1) === "") header.pop();
  return JSON.stringify([header, table.units ? fold(table.units).slice(0, header.length) : null]);
}
