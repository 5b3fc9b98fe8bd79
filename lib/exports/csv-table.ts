import { DomainError } from "../quantity/domain-error.ts";

/** What a cell can hold. In a number column a string holds plain digits, kept as they are (trailing zeros count). */
export type Cell = string | number | boolean | null;

/** A column of a table: its name and meaning, its Table Schema type, and how a row fills it. */
export type Column<Row> = {
  name: string;
  type: "string" | "number" | "integer" | "boolean" | "date" | "datetime";
  description: string;
  /** UCUM code, where the column holds amounts in one fixed unit. */
  unit?: string;
  cell: (row: Row) => Cell;
};

const plainNumber = /^[+-]?(?:\d+(?:\.\d+)?|\.\d+)(?:[eE][+-]?\d+)?$/;
const formulaStart = /^[=+\-@\t\r\n＝＋－＠]/;

/**
 * A text cell that a spreadsheet will not take for a formula: an apostrophe goes before =, +, −, @, a tab or a line
 * break at its start (OWASP, "CSV Injection"). Text that is plainly a number is left as it is, since "-5" computes nothing.
 */
export const guarded = (text: string): string =>
  formulaStart.test(text) && !plainNumber.test(text) ? `'${text}` : text;

/** RFC 4180 §2: quoted where it holds a comma, a quotation mark or a line break; quotation marks doubled. */
const quotedCell = (text: string): string => (/[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text);

function cellText<Row>(column: Column<Row>, row: Row): string {
  const value = column.cell(row);
  if (value === null) return "";
  if (column.type === "number" || column.type === "integer") {
    const digits = String(value);
    if (!plainNumber.test(digits))
      throw new DomainError("not-a-number-cell", `column ${column.name} holds numbers`, value);
    return digits;
  }
  return quotedCell(column.type === "string" ? guarded(String(value)) : String(value));
}

/** The header line, with its line end. */
export const csvHeader = <Row>(columns: readonly Column<Row>[]): string =>
  `${columns.map((c) => quotedCell(c.name)).join(",")}\r\n`;

/** One row as a line, with its line end; for streaming. */
export const csvLine = <Row>(columns: readonly Column<Row>[], row: Row): string =>
  `${columns.map((c) => cellText(c, row)).join(",")}\r\n`;

/** A whole table as CSV (RFC 4180: commas, CRLF, header line). Only text columns are guarded; numbers stay untouched. */
export const csvTable = <Row>(columns: readonly Column<Row>[], rows: readonly Row[]): string =>
  csvHeader(columns) + rows.map((row) => csvLine(columns, row)).join("");

/** The columns as a Table Schema (Data Package v2), each with its UCUM unit where it has a fixed one. */
export const tableSchema = <Row>(columns: readonly Column<Row>[], primaryKey: readonly string[]) => ({
  $schema: "https://datapackage.org/profiles/2.0/tableschema.json",
  fields: columns.map(({ name, type, description, unit }) => ({
    name,
    type,
    description,
    ...(unit === undefined ? {} : { unit }),
  })),
  missingValues: [""],
  primaryKey: [...primaryKey],
});
