"use client";

import { memo } from "react";
import type { HandColumn, HandRow } from "@/lib/readings/hand-entry.ts";
import styles from "./hand-sheet.module.css";

export const cellId = (row: number, column: number): string => `cell-${row + 1}-${column + 1}`;

const widthOf: Record<HandColumn["kind"], string | undefined> = {
  text: styles.words,
  seconds: `${styles.short} ${styles.number}`,
  value: styles.number,
  error: styles.number,
  limit: styles.number,
};

/** One line of the sheet. Drawn again only when it changes: a sheet may have hundreds. */
export const SheetRow = memo(function SheetRow({
  row,
  index,
  columns,
  heads,
  wrong,
  onCell,
}: {
  row: HandRow;
  index: number;
  columns: readonly HandColumn[];
  heads: readonly string[];
  /** Heads of the cells that need mending, parted by line ends; a text, so that it compares by value. */
  wrong: string;
  onCell: (row: number, key: string, text: string) => void;
}) {
  const wrongHeads = wrong.split("\n");
  return (
    <tr>
      <th scope="row">{index + 1}</th>
      {columns.map((column, at) => (
        <td key={column.key}>
          <input
            id={cellId(index, at)}
            data-row={index}
            data-column={at}
            className={`${styles.cell} ${widthOf[column.kind] ?? ""}`}
            aria-label={`${heads[at]}, row ${index + 1}`}
            aria-invalid={wrongHeads.includes(heads[at] ?? "") ? true : undefined}
            inputMode={column.kind === "seconds" ? "decimal" : undefined}
            autoComplete="off"
            autoCapitalize="off"
            spellCheck={false}
            maxLength={200}
            value={row[column.key] ?? ""}
            onChange={(event) => onCell(index, column.key, event.currentTarget.value)}
          />
        </td>
      ))}
    </tr>
  );
});
