/** The rows between the last one touched and this one, both included: what Shift adds to a selection. */
export function between(ids: readonly string[], from: string | null, to: string): string[] {
  const end = ids.indexOf(to);
  const start = from === null ? end : ids.indexOf(from);
  if (start < 0 || end < 0) return [to];
  return ids.slice(Math.min(start, end), Math.max(start, end) + 1);
}

export type Sorting = { key: string; down: boolean } | null;

const collator = new Intl.Collator("en", { numeric: true, sensitivity: "base" });

/** Rows in the order of one column: numbers by size, words as a reader would, what is empty last either way. Equal rows keep their order. */
export function sortRows<Row>(
  rows: readonly Row[],
  by: ((row: Row) => string | number | null) | undefined,
  down: boolean,
): Row[] {
  if (!by) return [...rows];
  const empty = (value: string | number | null) => value === null || value === "";
  return rows.toSorted((a, b) => {
    const [x, y] = [by(a), by(b)];
    if (empty(x) || empty(y)) return Number(empty(x)) - Number(empty(y));
    const order = typeof x === "number" && typeof y === "number" ? x - y : collator.compare(String(x), String(y));
    return down ? -order : order;
  });
}
