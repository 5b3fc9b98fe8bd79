import type { ReactNode } from "react";
import styles from "./budget-figure.module.css";
import { DataTable } from "./data-table.tsx";

/** One part of the uncertainty, its texts ready and its share from 0 to 1. */
export type BudgetRow = {
  code: string;
  name: ReactNode;
  u: string;
  nu: string;
  kind: string;
  share: number;
  shareText: string;
  source: ReactNode;
};

/** Where the doubt comes from: a table whose last column is also a picture, one bar to a part. */
export function BudgetFigure({
  caption,
  unit,
  rows,
  foot,
}: {
  caption: ReactNode;
  unit: string;
  rows: BudgetRow[];
  foot?: ReactNode;
}) {
  return (
    <DataTable
      caption={caption}
      rows={rows}
      rowKey={(row) => row.code}
      columns={[
        {
          key: "part",
          head: "Part of the uncertainty",
          roomy: true,
          cell: (row) => (
            <>
              {row.name}
              <span className={styles.source}>{row.source}</span>
            </>
          ),
        },
        { key: "u", head: `u (${unit})`, numeric: true, cell: (row) => row.u },
        { key: "nu", head: "Degrees of freedom", numeric: true, cell: (row) => row.nu },
        { key: "kind", head: "Type", roomy: true, cell: (row) => row.kind },
        {
          key: "share",
          head: "Share",
          cell: (row) => (
            <span className={styles.share}>
              <span className={styles.shareText}>{row.shareText}</span>
              <svg className={styles.bar} width="100%" height="10" aria-hidden="true" focusable="false">
                <rect width={`${Math.min(Math.max(row.share, 0), 1) * 100}%`} height="10" />
              </svg>
            </span>
          ),
        },
      ]}
      foot={foot}
    />
  );
}
