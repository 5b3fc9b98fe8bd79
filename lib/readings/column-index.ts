import type { Problem } from "../quantity/problem.ts";
import { readChemicalName } from "./chemical-symbol.ts";
import { type Figure, figuresOf, type Mapping } from "./mapping.ts";
import type { Table } from "./table.ts";
import { readUnit, type UnitWord } from "./unit-words.ts";

/** A mapping's column names turned into positions once, so that rows are read without look-ups. -1: no such column. */
export type FigureIndex = {
  figure: Figure;
  element: string;
  oxide: string | null;
  /** What turns the figure into the element's; 1 but for oxides. */
  factor: number;
  defaultLimit: string | null;
  /** The figure's unit, looked up once. */
  unitWord: UnitWord | null;
  value: number;
  error: number;
  limit: number;
  flag: number;
};

export type ColumnIndex = {
  roles: Record<keyof Mapping["roles"], number>;
  sample: number[];
  /** wide: one for each element. long: one, whose element and unit stand in columns. */
  figures: FigureIndex[];
  element: number;
  unit: number;
};

/** Columns a mapping names that the table lacks, or names for two figures. Empty when it fits. */
export function mappingFaults(table: Pick<Table, "columns">, mapping: Mapping): Problem[] {
  const { long } = mapping;
  const figures = figuresOf(mapping);
  const named = [
    ...mapping.sample,
    ...Object.values(mapping.roles),
    ...figures.flatMap((figure) => [figure.value, figure.error, figure.limit, figure.flag]),
    ...(long && mapping.shape === "long" ? [long.element, long.unitColumn] : [mapping.unitColumn]),
  ].filter((name): name is string => name !== null);
  const problems: Problem[] = [...new Set(named)]
    .filter((name) => !table.columns.includes(name))
    .map((name) => ({ code: "column-missing", where: { column: name }, found: name }));
  const values = figures
    .flatMap((figure) => [figure.value, figure.error, figure.limit])
    .filter((name) => name !== null);
  for (const name of new Set(values.filter((name, at) => values.indexOf(name) !== at)))
    problems.push({ code: "column-used-twice", where: { column: name }, found: name });
  const kinds = mapping.shape === "wide" ? mapping.elements.map((entry) => `${entry.element} ${entry.quantity}`) : [];
  for (const [at, kind] of kinds.entries())
    if (kinds.indexOf(kind) !== at)
      problems.push({
        code: "element-mapped-twice",
        where: { column: mapping.elements[at]!.value },
        found: mapping.elements[at]!.element,
      });
  for (const { element, oxide, value } of mapping.shape === "wide" ? mapping.elements : [])
    if (readChemicalName(oxide ?? element)?.symbol !== element)
      problems.push({ code: "element-unknown", where: { column: value }, found: oxide ?? element });
  if (figures.length === 0) problems.push({ code: "no-result-columns" });
  return problems;
}

export function indexColumns(table: Pick<Table, "columns">, mapping: Mapping): ColumnIndex {
  const at = (name: string | null | undefined): number => (name ? table.columns.indexOf(name) : -1);
  const positions = (figure: Figure) => ({
    unitWord: figure.unit === null ? null : readUnit(figure.unit),
    ...{ figure, value: at(figure.value), error: at(figure.error), limit: at(figure.limit), flag: at(figure.flag) },
  });
  const { long } = mapping;
  const figures =
    mapping.shape === "long"
      ? figuresOf(mapping).map((figure) => ({
          ...positions(figure),
          ...{ element: "", oxide: null, factor: 1, defaultLimit: null },
        }))
      : mapping.elements.map((entry) => ({
          ...positions(entry),
          ...{ element: entry.element, oxide: entry.oxide, defaultLimit: entry.defaultLimit },
          factor: readChemicalName(entry.oxide ?? entry.element)?.factor ?? 1,
        }));
  const roles = Object.fromEntries(Object.entries(mapping.roles).map(([role, name]) => [role, at(name)]));
  return {
    roles: roles as ColumnIndex["roles"],
    sample: mapping.sample.map(at).filter((index) => index >= 0),
    figures,
    element: mapping.shape === "long" ? at(long?.element) : -1,
    unit: mapping.shape === "long" ? at(long?.unitColumn) : at(mapping.unitColumn),
  };
}
