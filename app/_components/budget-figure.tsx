import type { ReactNode } from "react";
import { itemPageIn } from "@/lib/wording/item-page.ts";
import type { Language } from "@/lib/wording/language.ts";
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
  language = "en",
}: {
  caption: ReactNode;
  unit: string;
  rows: BudgetRow[];
  foot?: ReactNode;
  language?: Language;
}) {
  const heads = itemPageIn[language].budget;
  return (
    <DataTable
      caption={caption}
      rows={rows}
      rowKey={(row) => row.code}
      columns={[
        {
          key: "part",
          head: heads.part,
          roomy: true,
          cell: (row) => (
            <>
              {row.name}
              <span className={styles.source}>{row.source}</span>
            </>
          ),
        },
        { key: "u", head: `u (${unit})`, numeric: true, cell: (row) => row.u },
        { key: "nu", head: heads.nu, numeric: true, cell: (row) => row.nu },
        { key: "kind", head: heads.type, roomy: true, cell: (row) => row.kind },
        {
          key: "share",
          head: heads.share,
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
