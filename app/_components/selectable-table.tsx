"use client";

import { type KeyboardEvent, type ReactNode, useId, useMemo, useRef, useState } from "react";
import { tickWords } from "@/lib/wording/typed-words.ts";
import tableStyles from "./data-table.module.css";
import type { Column } from "./data-table.tsx";
import { between, type Sorting, sortRows } from "./row-range.ts";
import styles from "./selectable-table.module.css";

export type SortableColumn<Row> = Column<Row> & {
  /** What the column is sorted by; a column without it cannot be sorted. */
  sortBy?: (row: Row) => string | number | null;
};

/**
 * A table whose rows are ticked, one or many, by mouse or keyboard, and sorted by its headings. The boxes and the buttons are
 * native; arrow keys go from box to box, Shift takes the rows between along. What is ticked is the caller's.
 */
export function SelectableTable<Row>({
  caption,
  columns,
  rows,
  rowKey,
  rowLabel,
  ticked,
  onTicked,
}: {
  caption: ReactNode;
  columns: SortableColumn<Row>[];
  rows: readonly Row[];
  rowKey: (row: Row) => string;
  /** How a row's box is called by whoever hears it. */
  rowLabel: (row: Row) => string;
  ticked: ReadonlySet<string>;
  onTicked: (change: (before: ReadonlySet<string>) => ReadonlySet<string>) => void;
}) {
  const captionId = useId();
  const keysId = useId();
  const [sorting, setSorting] = useState<Sorting>(null);
  const last = useRef<string | null>(null);
  const body = useRef<HTMLTableSectionElement>(null);
  const sorted = useMemo(
    () => sortRows(rows, columns.find((c) => c.key === sorting?.key)?.sortBy, sorting?.down ?? false),
    [rows, columns, sorting],
  );
  const ids = useMemo(() => sorted.map(rowKey), [sorted, rowKey]);
  const headerKey = columns.find((column) => column.rowHeader)?.key ?? columns[0]?.key;
  const shown = ids.filter((id) => ticked.has(id)).length;

  const tick = (id: string, on: boolean, range: boolean) => {
    const touched = range ? between(ids, last.current, id) : [id];
    last.current = id;
    onTicked((before) => {
      const after = new Set(before);
      for (const each of touched) on ? after.add(each) : after.delete(each);
      return after;
    });
  };
  const boxAt = (index: number) => body.current?.rows[index]?.querySelector<HTMLInputElement>("input[type=checkbox]");
  const onKeyDown = (event: KeyboardEvent<HTMLTableSectionElement>) => {
    const index = Number((event.target as HTMLElement).dataset["row"] ?? Number.NaN);
    const id = ids[index];
    if (id === undefined) return;
    if (event.key === " " && event.shiftKey) {
      event.preventDefault();
      return tick(id, true, true);
    }
    const step = event.key === "ArrowDown" ? 1 : event.key === "ArrowUp" ? -1 : 0;
    const to = ids[index + step];
    if (step === 0 || to === undefined) return;
    event.preventDefault();
    boxAt(index + step)?.focus();
    if (!event.shiftKey) return;
    if (last.current === null) last.current = id;
    const from = last.current;
    tick(to, true, true);
    // The range is always told from where it began.
    last.current = from;
  };

  return (
    <>
      <p className={styles.keys} id={keysId}>
        {tickWords.keys}
      </p>
      {/* biome-ignore lint/a11y/useSemanticElements: a table's frame is no fieldset */}
      <div
        role="group"
        className={tableStyles.scroll}
        aria-labelledby={captionId}
        // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reachable by keyboard
        tabIndex={0}
      >
        <table className={tableStyles.table} aria-describedby={keysId}>
          <caption id={captionId} className={tableStyles.caption}>
            <span className={tableStyles.pinned}>{caption}</span>
          </caption>
          <thead>
            <tr>
              <th scope="col" className={styles.tick}>
                <input
                  type="checkbox"
                  className={styles.box}
                  aria-label={tickWords.all}
                  checked={ids.length > 0 && shown === ids.length}
                  ref={(box) => {
                    if (box) box.indeterminate = shown > 0 && shown < ids.length;
                  }}
                  onChange={(event) => {
                    const on = event.currentTarget.checked;
                    last.current = null;
                    onTicked(() => (on ? new Set(ids) : new Set()));
                  }}
                />
              </th>
              {columns.map((column) => (
                <Head key={column.key} column={column} sorting={sorting} onSorting={setSorting} />
              ))}
            </tr>
          </thead>
          <tbody ref={body} onKeyDown={onKeyDown}>
            {sorted.map((row, index) => {
              const id = rowKey(row);
              return (
                <tr key={id} className={ticked.has(id) ? styles.ticked : undefined}>
                  <td className={styles.tick}>
                    <input
                      type="checkbox"
                      className={styles.box}
                      data-row={index}
                      aria-label={rowLabel(row)}
                      checked={ticked.has(id)}
                      onChange={(event) =>
                        tick(id, event.currentTarget.checked, (event.nativeEvent as MouseEvent).shiftKey === true)
                      }
                    />
                  </td>
                  {columns.map((column) => (
                    <Cell key={column.key} column={column} row={row} index={index} header={column.key === headerKey} />
                  ))}
                </tr>
              );
            })}
          </tbody>
        </table>
      </div>
      <p aria-live="polite" className={styles.count}>
        {tickWords.count(ticked.size, rows.length)}
      </p>
    </>
  );
}

const classOf = <Row,>(column: Column<Row>): string =>
  [
    column.numeric ? tableStyles.numeric : "",
    column.nowrap ? tableStyles.nowrap : "",
    column.roomy ? tableStyles.roomy : "",
  ]
    .filter((each) => each)
    .join(" ");

function Head<Row>({
  column,
  sorting,
  onSorting,
}: {
  column: SortableColumn<Row>;
  sorting: Sorting;
  onSorting: (sorting: Sorting) => void;
}) {
  if (!column.sortBy)
    return (
      <th scope="col" className={column.numeric ? tableStyles.numeric : undefined}>
        {column.head}
      </th>
    );
  const mine = sorting?.key === column.key ? sorting : null;
  // Up, down, and back to the order in which they came.
  const next: Sorting = mine === null ? { key: column.key, down: false } : mine.down ? null : { ...mine, down: true };
  return (
    <th
      scope="col"
      className={column.numeric ? tableStyles.numeric : undefined}
      aria-sort={mine === null ? undefined : mine.down ? "descending" : "ascending"}
    >
      <button type="button" className={styles.sort} onClick={() => onSorting(next)}>
        {column.head}
        <span className={styles.arrow} aria-hidden="true">
          {mine === null ? "" : mine.down ? "↓" : "↑"}
        </span>
      </button>
    </th>
  );
}

function Cell<Row>({ column, row, index, header }: { column: Column<Row>; row: Row; index: number; header: boolean }) {
  const className = classOf(column);
  if (header)
    return (
      <th scope="row" className={className}>
        {column.cell(row, index)}
      </th>
    );
  return <td className={className}>{column.cell(row, index)}</td>;
}
