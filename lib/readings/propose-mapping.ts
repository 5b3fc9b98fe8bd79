import { readChemicalName } from "./chemical-symbol.ts";
import { type Role, roles } from "./header-words.ts";
import type { ElementColumns, Figure, LongColumns, Mapping } from "./mapping.ts";
import { type HeaderMeaning, readHeaderCell } from "./read-header-cell.ts";
import type { Table } from "./table.ts";
import { readUnit } from "./unit-words.ts";

/** A mapping read out of the header, the columns it leaves alone, and what a person should look at. */
export type Proposal = {
  mapping: Mapping;
  /** What the grammar made of each column, in order; for the screen. */
  columns: { column: string; meaning: HeaderMeaning; used: boolean; samples: string[] }[];
  /** Columns that name a result but cannot be used as they are. */
  notices: {
    code: "relative-error" | "error-unit-differs" | "second-column-of-element" | "needs-company" | "no-value-column";
    column: string;
  }[];
};

type Result = Exclude<HeaderMeaning, { is: "role" } | { is: "unknown" }>;
type Column = { name: string; meaning: HeaderMeaning; samples: string[] };

const isResult = (meaning: HeaderMeaning): meaning is Result => meaning.is !== "role" && meaning.is !== "unknown";

/** Header and units row together where they read as one ("Pb" over "ppm"), else the header alone. */
function meaningOf(header: string, units: string | undefined): HeaderMeaning {
  const alone = readHeaderCell(header);
  if (!units?.trim()) return alone;
  const together = readHeaderCell(`${header} (${units.replace(/^[[(]|[\])]$/g, "")})`);
  return together.is === "unknown" ? alone : together;
}

function sampleCells(table: Table, index: number, count: number): string[] {
  const samples: string[] = [];
  for (const row of table.rows) {
    if (samples.length >= count) break;
    const cell = row.kind === "data" ? (row.cells[index] ?? "").trim() : "";
    if (cell !== "") samples.push(cell);
  }
  return samples;
}

/** A time column holds clock times; bare numbers under "Time" could be seconds or hours, so it is left to the tester. */
function settleTime(column: Column): void {
  if (column.meaning.is !== "role" || column.samples.length === 0) return;
  const clock = column.samples.some((cell) => /\d{1,2}:\d{2}/.test(cell));
  // "9:05 Uhr" and "10:05 GMT" are no day and month.
  const dated = column.samples
    .map((cell) => cell.replace(/\d{1,2}(?::\d{2})+/, ""))
    .some((cell) => /\d{1,4}[-./]\d{1,2}[-./]\d{1,4}|\d{1,2}[ -]\p{L}{3,}/u.test(cell));
  const { role } = column.meaning;
  if ((role === "time" || role === "date") && clock && dated) column.meaning = { is: "role", role: "dateTime" };
  else if (role === "time" && dated) column.meaning = { is: "role", role: "date" };
  else if (role === "dateTime" && dated && !clock) column.meaning = { is: "role", role: "date" };
  else if (role === "time" && !clock) column.meaning = { is: "unknown" };
}

const emptyFigure = (value: string, meaning: Result): Figure => ({
  value,
  error: null,
  limit: null,
  flag: null,
  unit: meaning.unit?.unit ?? null,
  unitText: meaning.unitText,
  quantity: meaning.unit?.kinds.length === 1 ? meaning.unit.kinds[0]! : null,
  k: null,
});

/** Puts an error, limit or flag column beside its value; false where its place is taken or its unit does not fit. */
function attach(figure: Figure, column: Column, meaning: Result, notices: Proposal["notices"]): boolean {
  if (meaning.is === "value" || figure[meaning.is] !== null) return false;
  const differs = meaning.unit !== null && figure.unit !== null && meaning.unit.unit !== figure.unit;
  if (meaning.relative || differs) {
    notices.push({ code: meaning.relative ? "relative-error" : "error-unit-differs", column: column.name });
    return false;
  }
  figure[meaning.is] = column.name;
  if (meaning.is === "error") figure.k = meaning.k;
  if (figure.unit === null && meaning.unit) {
    figure.unit = meaning.unit.unit;
    figure.unitText = meaning.unitText;
    figure.quantity = meaning.unit.kinds.length === 1 ? meaning.unit.kinds[0]! : null;
  }
  return true;
}

function wideElements(
  columns: readonly Column[],
  used: Set<string>,
  notices: Proposal["notices"],
): Mapping["elements"] {
  const elements: { at: number; entry: Mapping["elements"][number]; needsCompany: boolean }[] = [];
  columns.forEach((column, at) => {
    const { meaning } = column;
    if (!isResult(meaning) || meaning.is !== "value" || !meaning.chemical) return;
    const { symbol, oxide, needsCompany } = meaning.chemical;
    elements.push({
      at,
      entry: { ...emptyFigure(column.name, meaning), element: symbol, oxide, defaultLimit: null },
      needsCompany,
    });
  });
  columns.forEach((column, at) => {
    const { meaning } = column;
    if (!isResult(meaning) || meaning.is === "value") return;
    const named = meaning.chemical;
    // A column that names its element belongs to that element's value, the nearest before it if there are several with
    // the same unit; a bare "±" belongs to the value column before it.
    const before = (index: number) => (index < at ? at - index : 1000 + index - at);
    const candidates = elements
      .filter(({ at: index, entry }) =>
        named
          ? entry.element === named.symbol && entry.oxide === named.oxide
          : index < at && noValueBetween(columns, index, at),
      )
      .sort((one, other) => before(one.at) - before(other.at));
    const fitting =
      candidates.find(({ entry }) => meaning.unit === null || entry.unit === meaning.unit.unit) ?? candidates[0];
    if (!fitting) notices.push({ code: "no-value-column", column: column.name });
    else if (attach(fitting.entry, column, meaning, notices)) used.add(column.name);
  });
  return elements
    .filter(({ entry, needsCompany }) => {
      const keep = !needsCompany || entry.unit !== null || entry.error !== null || entry.limit !== null;
      const better = elements.some((other) => other.entry !== entry && isPreferred(other.entry, entry, elements));
      if (!keep) notices.push({ code: "needs-company", column: entry.value });
      else if (better) notices.push({ code: "second-column-of-element", column: entry.value });
      else used.add(entry.value);
      return keep && !better;
    })
    .map(({ entry }) => entry);
}

/** Two columns of one element and kind say the same thing twice: the element's own goes before its oxide's, then the first. */
function isPreferred(
  one: ElementColumns,
  other: ElementColumns,
  elements: readonly { at: number; entry: ElementColumns }[],
): boolean {
  if (one.element !== other.element || one.quantity !== other.quantity) return false;
  if ((one.oxide === null) !== (other.oxide === null)) return one.oxide === null;
  const at = (entry: ElementColumns) => elements.findIndex((element) => element.entry === entry);
  return at(one) < at(other);
}

const noValueBetween = (columns: readonly Column[], from: number, to: number): boolean =>
  columns.slice(from + 1, to).every(({ meaning }) => isResult(meaning) && meaning.is !== "value");

function longColumns(columns: readonly Column[], used: Set<string>, notices: Proposal["notices"]): LongColumns | null {
  const roleColumn = (role: "element" | "unit") =>
    columns.find(({ meaning }) => meaning.is === "role" && meaning.role === role);
  const element = roleColumn("element");
  const bare = (is: Result["is"]) =>
    columns.find(
      (column) =>
        isResult(column.meaning) && column.meaning.is === is && !column.meaning.chemical && !used.has(column.name),
    );
  const value = bare("value");
  if (!element || !value || !isResult(value.meaning)) return null;
  const named = element.samples.filter((cell) => readChemicalName(cell) !== null).length;
  if (named * 2 < element.samples.length) return null;
  const figure = emptyFigure(value.name, value.meaning);
  for (const is of ["error", "limit", "flag"] as const) {
    const column = bare(is);
    if (column && isResult(column.meaning) && attach(figure, column, column.meaning, notices)) used.add(column.name);
  }
  const unitColumn = figure.unit === null ? (roleColumn("unit")?.name ?? null) : null;
  for (const name of [element.name, value.name, unitColumn]) if (name) used.add(name);
  return { ...figure, element: element.name, unitColumn };
}

/** Where the header states no unit but every cell that holds a number carries the same one ("12 ppm"). */
function unitFromCells(figure: Figure, columns: readonly Column[]): void {
  if (figure.unit !== null) return;
  const { samples } = columns.find((column) => column.name === figure.value)!;
  const numbers = samples.filter((cell) => /\d/.test(cell));
  const written = numbers.map((cell) => readUnit(cell.replace(/^[<>≤]?\s*[-+]?[\d.,'\s]*(?:e[-+]?\d+)?\s*/i, "")));
  const [first] = written;
  if (!first || written.some((unit) => unit?.unit !== first.unit)) return;
  figure.unit = first.unit;
  figure.unitText = first.unit;
  figure.quantity = first.kinds.length === 1 ? first.kinds[0]! : null;
}

/**
 * Proposes what each column is from the header, the units row and some cells under it. Nothing is guessed: what the file
 * does not say stays null and is asked (open-questions.ts).
 *
 * Example: header "Reading No, Sample, Pb (ppm), ±2σ" → wide; number "Reading No", sample ["Sample"], one element
 * { element: "Pb", value: "Pb (ppm)", error: "±2σ", k: 2, unit: "ppm", quantity: null }.
 */
export function proposeMapping(table: Table): Proposal {
  const columns: Column[] = table.columns.map((name, index) => ({
    name,
    meaning: meaningOf(table.header[index]!, table.units?.[index]),
    samples: sampleCells(table, index, 40),
  }));
  columns.forEach(settleTime);
  const used = new Set<string>();
  const notices: Proposal["notices"] = [];
  const long = longColumns(columns, used, notices);
  const elements = long ? [] : wideElements(columns, used, notices);
  for (const figure of long ? [long] : elements) unitFromCells(figure, columns);

  const byRole = (role: Role) => columns.filter(({ meaning }) => meaning.is === "role" && meaning.role === role);
  const chosen = Object.fromEntries(
    roles.filter((role) => role !== "sample").map((role) => [role, byRole(role)[0]?.name ?? null]),
  ) as Mapping["roles"];
  // "Index" and "No" may count anything; a column that names readings is the better number.
  const numbers = byRole("number").map((column) => column.name);
  chosen.number = numbers.find((name) => /read|shot|meas|mess|mesur|lect|medic|test/i.test(name)) ?? chosen.number;
  if (chosen.dateTime) {
    chosen.date = null;
    chosen.time = null;
  }
  const sample = byRole("sample").map((column) => column.name);
  for (const name of [...sample, ...Object.values(chosen)]) if (name) used.add(name);
  const unitColumn = columns.find(({ meaning }) => meaning.is === "role" && meaning.role === "unit");
  const spoken =
    !long &&
    unitColumn !== undefined &&
    elements.some((entry) => entry.unit === null) &&
    unitColumn.samples.some(readUnit);
  if (spoken) used.add(unitColumn.name);
  const mapping: Mapping = {
    ...{
      version: 1,
      sheet: null,
      shape: long ? "long" : "wide",
      roles: chosen,
      sample,
      unitColumn: spoken ? unitColumn.name : null,
      elements,
      long,
      longLimits: {},
    },
    ...{ decimal: null, thousands: null, timeZone: null, dateOrder: null, zero: null, dash: null, notAvailable: null },
    ...{ errorOfNonDetect: "limit", noLimit: "set-aside", quantityByMode: {} },
  };
  return {
    mapping,
    columns: columns.map(({ name, meaning, samples }) => ({
      column: name,
      meaning,
      used: used.has(name),
      samples: samples.slice(0, 3),
    })),
    notices,
  };
}
