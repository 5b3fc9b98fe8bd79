import { type ReactNode, useId } from "react";
import styles from "./data-table.module.css";

export type Column<Row> = {
  key: string;
  head: ReactNode;
  cell: (row: Row, index: number) => ReactNode;
  /** Numbers stand right with figures of one width. */
  numeric?: boolean;
  /** The cell that names its row; the first column unless another says so. */
  rowHeader?: boolean;
  /** Never broken over lines. */
  nowrap?: boolean;
  /** Words that need room: never squeezed below a readable measure, the table scrolls instead. */
  roomy?: boolean;
  /** Struck through where the row does not count. */
  struck?: boolean;
};

/**
 * A real table: caption, column and row headers, and a region that scrolls by itself and can be reached by keyboard
 * where the table is wider than the page. No arithmetic here: cells come ready as text.
 */
export function DataTable<Row>({
  caption,
  hideCaption = false,
  columns,
  rows,
  rowKey,
  rowNote,
  muted,
  foot,
}: {
  caption: ReactNode;
  hideCaption?: boolean;
  columns: Column<Row>[];
  rows: readonly Row[];
  rowKey: (row: Row, index: number) => string;
  /** A line under a row, over its whole width: why a reading was set aside. */
  rowNote?: (row: Row) => ReactNode;
  /** Rows that do not count: set back, but readable. */
  muted?: (row: Row) => boolean;
  foot?: ReactNode;
}) {
  const captionId = useId();
  const headerKey = columns.find((column) => column.rowHeader)?.key ?? columns[0]?.key;
  return (
    // A group and not a region: a page of many tables would have as many landmarks.
    // biome-ignore lint/a11y/useSemanticElements: a table's frame is no fieldset
    <div
      role="group"
      className={styles.scroll}
      aria-labelledby={captionId}
      // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reachable by keyboard
      tabIndex={0}
    >
      <table className={styles.table}>
        <caption id={captionId} className={hideCaption ? "visually-hidden" : styles.caption}>
          <span className={styles.pinned}>{caption}</span>
        </caption>
        <thead>
          <tr>
            {columns.map((column) => (
              <th key={column.key} scope="col" className={column.numeric ? styles.numeric : undefined}>
                {column.head}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map((row, index) => (
            <TableRow
              key={rowKey(row, index)}
              row={row}
              index={index}
              columns={columns}
              headerKey={headerKey}
              note={rowNote?.(row)}
              muted={muted?.(row) ?? false}
            />
          ))}
        </tbody>
        {foot ? <tfoot>{foot}</tfoot> : null}
      </table>
    </div>
  );
}

function TableRow<Row>({
  row,
  index,
  columns,
  headerKey,
  note,
  muted,
}: {
  row: Row;
  index: number;
  columns: Column<Row>[];
  headerKey: string | undefined;
  note: ReactNode;
  muted: boolean;
}) {
  return (
    <>
      <tr className={[muted && styles.muted, note && styles.noted].filter(Boolean).join(" ") || undefined}>
        {columns.map((column) => {
          const className =
            [
              column.numeric ? styles.numeric : "",
              column.nowrap ? styles.nowrap : "",
              column.roomy ? styles.roomy : "",
              column.struck && muted ? styles.struck : "",
            ]
              .filter((each) => each)
              .join(" ") || undefined;
          return column.key === headerKey ? (
            <th key={column.key} scope="row" className={className}>
              {column.cell(row, index)}
            </th>
          ) : (
            <td key={column.key} className={className}>
              {column.cell(row, index)}
            </td>
          );
        })}
      </tr>
      {note ? (
        <tr className={`${styles.note} ${muted ? styles.muted : ""}`}>
          <td colSpan={columns.length}>
            <span className={styles.pinned}>{note}</span>
          </td>
        </tr>
      ) : null}
    </>
  );
}

/** A written number set so that decimal points stand under each other: the places it lacks are kept as blank room. */
export function Aligned({ text, decimals }: { text: string; decimals: number }) {
  const point = text.search(/[.,]\d*$/);
  const has = point === -1 ? 0 : text.length - point - 1;
  const missing = Math.max(0, decimals - has);
  if (missing === 0) return <span className="number">{text}</span>;
  return (
    <span className="number">
      {text}
      <span className={styles.blank} data-blank={`${has === 0 ? "." : ""}${"0".repeat(missing)}`} />
    </span>
  );
}
