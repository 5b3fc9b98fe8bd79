import * as z from "zod";
import { done, type Outcome, type Problem, refused } from "../quantity/problem.ts";
import { answerQuestions } from "./answer-questions.ts";
import { readChemicalName } from "./chemical-symbol.ts";
import type { Mapping } from "./mapping.ts";
import { proposeMapping } from "./propose-mapping.ts";
import { readRows } from "./read-rows.ts";
import { readTable } from "./read-table.ts";

/** Units a person can choose for readings written down by hand. */
export const handUnits = ["ppm", "mg/kg", "%", "µg/cm²", "mg/cm²"] as const;

/** What is said once for all readings of a sheet. */
export const handSettings = z.object({
  date: z.iso.date().nullable(),
  timeZone: z.string().min(1).max(60).nullable(),
  unit: z.enum(handUnits),
  quantity: z.enum(["bulk-mass-fraction", "coating-mass-fraction"]),
  k: z.union([z.literal(1), z.literal(2), z.literal(3)]).nullable(),
  decimal: z.enum(["comma", "point"]),
});
export type HandSettings = z.infer<typeof handSettings>;

/** A row of the sheet by column key: "sample", "spot", "seconds", "Pb value", "Pb error", "Pb limit". */
export type HandRow = Readonly<Record<string, string>>;
export type HandColumn = {
  key: string;
  element: string | null;
  kind: "text" | "seconds" | "value" | "error" | "limit";
};

/** The columns of a sheet for some elements, in the order in which they are typed; with `number`, one that tells the shots apart. */
export function handColumns(
  elements: readonly string[],
  show: { error: boolean; limit: boolean; number?: boolean } = { error: true, limit: true },
): HandColumn[] {
  return [
    { key: "sample", element: null, kind: "text" },
    { key: "spot", element: null, kind: "text" },
    ...(show.number ? [{ key: "number", element: null, kind: "text" } as const] : []),
    { key: "seconds", element: null, kind: "seconds" },
    ...elements.flatMap((element): HandColumn[] => [
      { key: `${element} value`, element, kind: "value" },
      ...(show.error ? [{ key: `${element} error`, element, kind: "error" } as const] : []),
      ...(show.limit ? [{ key: `${element} limit`, element, kind: "limit" } as const] : []),
    ]),
  ];
}

/** The header of a column as the file will have it: "Pb (ppm)", "Pb error (2σ)", "Pb detection limit". */
export function handHeader(column: HandColumn, settings: Pick<HandSettings, "unit" | "k">): string {
  switch (column.kind) {
    case "value":
      return `${column.element} (${settings.unit})`;
    case "error":
      return settings.k === null ? `${column.element} error` : `${column.element} error (${settings.k}σ)`;
    case "limit":
      return `${column.element} detection limit`;
    default:
      return `${column.key.charAt(0).toUpperCase()}${column.key.slice(1)}`;
  }
}

/** Symbols in a line of text, each once; what is no element comes back apart. "Pb, Cd x" → Pb, Cd; unknown x. */
export function elementsIn(text: string): { elements: string[]; unknown: string[] } {
  const words = text.split(/[\s,;]+/).filter((word) => word !== "");
  const named = words.map((word) => ({ word, symbol: readChemicalName(word)?.symbol ?? null }));
  return {
    elements: [...new Set(named.flatMap((n) => (n.symbol === null ? [] : [n.symbol])))],
    unknown: named.filter((n) => n.symbol === null).map((n) => n.word),
  };
}

const isFilled = (row: HandRow, columns: readonly HandColumn[]): boolean =>
  columns.some((column) => (row[column.key] ?? "").trim() !== "");

const tsvCell = (text: string): string => {
  const plain = text.replace(/[\t\r\n]+/g, " ").trim();
  return plain.includes('"') ? `"${plain.replaceAll('"', '""')}"` : plain;
};

/**
 * The sheet as a tab-separated file, UTF-8, with a header that says everything the file can say. Blank rows and element columns
 * in which nothing stands are left out. `lines[i]` is the sheet's line (from 1) behind line i + 2 of the file.
 */
export function handFile(
  rows: readonly HandRow[],
  columns: readonly HandColumn[],
  settings: HandSettings,
): { text: string; lines: number[] } {
  const filled = rows.map((row, index) => ({ row, line: index + 1 })).filter(({ row }) => isFilled(row, columns));
  const stands = (key: string): boolean => filled.some(({ row }) => (row[key] ?? "").trim() !== "");
  const elements = new Set(columns.filter((c) => c.element !== null && stands(c.key)).map((c) => c.element));
  const kept = columns.filter(
    (c) => c.element === null || stands(c.key) || (c.kind === "value" && elements.has(c.element)),
  );
  const table: { head: string; cell: (row: HandRow) => string }[] = [
    ...kept.slice(0, 2).map((c) => columnOf(c, settings)),
    { head: "Date", cell: () => settings.date ?? "" },
    ...kept.slice(2).map((c) => columnOf(c, settings)),
  ];
  const text = [table.map(({ head }) => head), ...filled.map(({ row }) => table.map(({ cell }) => tsvCell(cell(row))))]
    .map((cells) => `${cells.join("\t")}\n`)
    .join("");
  return { text, lines: filled.map(({ line }) => line) };
}

const columnOf = (column: HandColumn, settings: HandSettings) => ({
  head: handHeader(column, settings),
  cell: (row: HandRow) => row[column.key] ?? "",
});

/**
 * A sheet checked whole: the file it becomes and the mapping that reads it, or every cell that cannot be taken, by the sheet's own
 * line and the column's header. Nothing is set aside here: a person is still sitting before the cells.
 *
 * A bare 0 and ND count as not detected and need a limit; "-" and "n/a" count as not measured, as the sheet says above it.
 * Refused: `hand-empty`, and whatever reading a file refuses.
 */
export function readHandEntry(
  rows: readonly HandRow[],
  columns: readonly HandColumn[],
  settings: HandSettings,
  now: number,
): Outcome<{ text: string; mapping: Mapping }> {
  const { text, lines } = handFile(rows, columns, settings);
  if (lines.length === 0) return refused({ code: "hand-empty" });
  const inSheet = (p: Problem): Problem => {
    const line = p.where?.row === undefined ? undefined : lines[p.where.row - 2];
    const { row: _, ...where } = { ...p.where };
    return { ...p, where: { ...where, ...(line === undefined ? {} : { row: line }) } };
  };
  const table = readTable(text, { delimiter: "\t" });
  if (!table.ok) return refused(...table.problems.map(inSheet));
  const answered = answerQuestions(proposeMapping(table.value).mapping, {
    decimal: settings.decimal,
    thousands: "no",
    zero: "not-detected",
    dash: "not-measured",
    notAvailable: "not-measured",
    quantity: settings.quantity,
    ...(settings.k === null ? {} : { k: settings.k }),
    ...(settings.timeZone === null ? {} : { timeZone: settings.timeZone }),
  });
  if (!answered.ok) return answered;
  const read = readRows(table.value, answered.value, { now });
  if (!read.ok) return refused(...read.problems.map(inSheet));
  const problems = read.value.setAside.flatMap(({ row, problems: found }) =>
    found.map((p) => ({
      code: p.code,
      where: { row, ...(p.column === null ? {} : { column: p.column }) },
      found: p.found,
      allowed: p.expected,
    })),
  );
  return problems.length > 0 ? refused(...problems.map(inSheet)) : done({ text, mapping: answered.value });
}
