import { method } from "../../lib/reconcile/reconcile.ts";
import { defaultPolicy } from "../../lib/reconcile/types.ts";
import type { CellResult } from "./cells.ts";

const columns =
  "shape spots spread u below trials stated covered unsafe medianWidth wrongBelow wrongByBound wrongAbove";

const rounded = (number: number): number | null => (Number.isFinite(number) ? Number(number.toPrecision(5)) : null);

/** The table as the methods page keeps it: one line a cell, columns named once, shares to five digits. */
export function tableAsData(cells: readonly CellResult[]): string {
  const rows = cells.map((cell) => [
    ...[cell.shape, cell.spots, cell.spread, cell.u, cell.below, cell.trials],
    ...[cell.stated, cell.covered, cell.unsafe, cell.medianWidth].map(rounded),
    rounded(Math.max(...cell.wrongBelow)),
    rounded(cell.wrongByBound),
    rounded(Math.max(...cell.wrongAbove)),
  ]);
  const head = { method: method.name, version: method.version, policy: defaultPolicy.version };
  const fields = Object.entries({ ...head, columns: columns.split(" ") });
  return `{\n${fields.map(([key, value]) => `"${key}": ${JSON.stringify(value)},\n`).join("")}"rows": [\n${rows.map((row) => JSON.stringify(row)).join(",\n")}\n]\n}`;
}
