import { done, type Outcome, type Problem, refused } from "../quantity/problem.ts";
import { readChemicalName } from "./chemical-symbol.ts";
import { type Role, roles } from "./header-words.ts";
import { type ElementColumns, type Figure, figuresOf, type Mapping } from "./mapping.ts";
import type { Table } from "./table.ts";
import { readUnit } from "./unit-words.ts";

/** What a person says one column is: the form's side of a mapping. `element` and `unit` go with figures only. */
export const figureUses = ["value", "error", "limit", "flag"] as const;
export const columnUses = ["none", ...roles, ...figureUses, "element", "unit"] as const;
export type ColumnUse = { use: (typeof columnUses)[number]; element: string | null; unit: string | null };

const unused: ColumnUse = { use: "none", element: null, unit: null };

/** A mapping seen column by column, in the order of the table. */
export function usesOf(table: Pick<Table, "columns">, mapping: Mapping): ColumnUse[] {
  const uses = new Map<string, ColumnUse>();
  for (const name of mapping.sample) uses.set(name, { ...unused, use: "sample" });
  for (const [role, name] of Object.entries(mapping.roles)) if (name) uses.set(name, { ...unused, use: role as Role });
  for (const figure of figuresOf(mapping) as (Figure & Partial<ElementColumns>)[])
    for (const use of figureUses) {
      const name = figure[use];
      if (name)
        uses.set(name, {
          use,
          element: mapping.shape === "long" ? null : (figure.oxide ?? figure.element!),
          unit: use === "value" ? figure.unit : null,
        });
    }
  if (mapping.shape === "long" && mapping.long) {
    uses.set(mapping.long.element, { ...unused, use: "element" });
    if (mapping.long.unitColumn) uses.set(mapping.long.unitColumn, { ...unused, use: "unit" });
  }
  if (mapping.shape === "wide" && mapping.unitColumn) uses.set(mapping.unitColumn, { ...unused, use: "unit" });
  return table.columns.map((name) => uses.get(name) ?? unused);
}

/**
 * The mapping that a person's column choices make. What the choices do not touch (decimal mark, zones, answers) stays
 * as in `base`; a figure whose columns are unchanged keeps what was known of it (unit as written, k, kind).
 *
 * Refused, each with its column: a value without an element (`column-needs-element`), an unknown element
 * (`element-unknown`) or unit (`unit-unknown`), an error, limit or flag whose element has no value column
 * (`figure-without-value`), two of one kind for an element (`column-used-twice`).
 */
export function mappingFromUses(
  table: Pick<Table, "columns">,
  base: Mapping,
  uses: readonly ColumnUse[],
): Outcome<Mapping> {
  const problems: Problem[] = [];
  const named = table.columns.map((name, at) => ({ name, ...(uses[at] ?? unused) }));
  const long = named.some((column) => column.use === "element");
  const elementColumn = (role: Role): string | null => named.find((column) => column.use === role)?.name ?? null;
  const mapping: Mapping = {
    ...base,
    shape: long ? "long" : "wide",
    roles: Object.fromEntries(
      roles.filter((role) => role !== "sample").map((role) => [role, elementColumn(role)]),
    ) as Mapping["roles"],
    sample: named.filter((column) => column.use === "sample").map((column) => column.name),
    unitColumn: long ? null : (named.find((column) => column.use === "unit")?.name ?? null),
    elements: long ? [] : wideFigures(named, base, problems),
    long: long ? longFigure(named, base, problems) : null,
  };
  return problems.length > 0 ? refused(...problems) : done(mapping);
}

type Named = ColumnUse & { name: string };

function unitOf(
  column: Named,
  known: Figure | undefined,
  problems: Problem[],
): Pick<Figure, "unit" | "unitText" | "quantity"> {
  const kept = { unit: known?.unit ?? null, unitText: known?.unitText ?? null, quantity: known?.quantity ?? null };
  if (column.unit === null || column.unit === kept.unit)
    return column.unit === null ? { ...kept, unit: null, unitText: null } : kept;
  const word = readUnit(column.unit);
  if (!word) problems.push({ code: "unit-unknown", where: { column: column.name }, found: column.unit });
  const only = word?.kinds.length === 1 ? word.kinds[0]! : null;
  const fits = kept.quantity !== null && word?.kinds.includes(kept.quantity);
  return { unit: word?.unit ?? null, unitText: column.unit, quantity: fits ? kept.quantity : only };
}

function wideFigures(named: readonly Named[], base: Mapping, problems: Problem[]): ElementColumns[] {
  const figures = new Map<string, ElementColumns>();
  for (const column of named.filter((each) => each.use === "value")) {
    const chemical = column.element === null ? null : readChemicalName(column.element);
    if (!chemical) {
      const code = column.element === null ? "column-needs-element" : "element-unknown";
      problems.push({ code, where: { column: column.name }, found: column.element ?? "" });
      continue;
    }
    const key = chemical.oxide ?? chemical.symbol;
    if (figures.has(key)) problems.push({ code: "column-used-twice", where: { column: column.name }, found: key });
    const known = base.elements.find((entry) => entry.value === column.name);
    figures.set(key, {
      element: chemical.symbol,
      oxide: chemical.oxide,
      defaultLimit: known?.defaultLimit ?? null,
      value: column.name,
      error: null,
      limit: null,
      flag: null,
      k: known?.k ?? null,
      ...unitOf(column, known, problems),
    });
  }
  for (const column of named) {
    const { use } = column;
    if (use !== "error" && use !== "limit" && use !== "flag") continue;
    const chemical = column.element === null ? null : readChemicalName(column.element);
    const figure = chemical ? figures.get(chemical.oxide ?? chemical.symbol) : undefined;
    if (!figure)
      problems.push({ code: "figure-without-value", where: { column: column.name }, found: column.element ?? "" });
    else if (figure[use] !== null)
      problems.push({ code: "column-used-twice", where: { column: column.name }, found: column.element! });
    else figure[use] = column.name;
  }
  return [...figures.values()];
}

function longFigure(named: readonly Named[], base: Mapping, problems: Problem[]): Mapping["long"] {
  const only = (use: ColumnUse["use"]): Named | undefined => {
    const [first, second] = named.filter((column) => column.use === use);
    if (second) problems.push({ code: "column-used-twice", where: { column: second.name }, found: second.name });
    return first;
  };
  const element = only("element");
  const value = only("value");
  if (!element || !value) {
    problems.push({ code: "no-result-columns" });
    return null;
  }
  return {
    element: element.name,
    value: value.name,
    error: only("error")?.name ?? null,
    limit: only("limit")?.name ?? null,
    flag: only("flag")?.name ?? null,
    unitColumn: only("unit")?.name ?? null,
    k: base.long?.k ?? null,
    ...unitOf(value, base.long ?? undefined, problems),
  };
}
