import { Told } from "@/app/_components/as-written.tsx";
import { DataTable } from "@/app/_components/data-table.tsx";
import type { FieldChange } from "@/lib/publication/revision-difference.ts";
import { writtenIn } from "@/lib/wording/changes.ts";
import type { Language } from "@/lib/wording/language.ts";
import { changeCells, revisionsIn } from "@/lib/wording/revisions.ts";

/** Differences of two revisions, field by field: where, before, now. */
export function ChangesTable({
  changes,
  caption,
  language = "en",
}: {
  changes: readonly FieldChange[];
  caption: string;
  language?: Language;
}) {
  const heads = revisionsIn[language].difference.columns;
  return (
    <DataTable
      caption={caption}
      rows={changes.map((change) => ({ ...changeCells(change, language), own: writtenIn(change) }))}
      rowKey={(row, index) => `${index} ${row.place}`}
      columns={[
        {
          key: "place",
          head: heads.place,
          roomy: true,
          cell: (row) => <Told text={row.place} own={row.own} language={language} />,
        },
        {
          key: "before",
          head: heads.before,
          roomy: true,
          cell: (row) => <Told text={row.before} own={row.own} language={language} />,
        },
        {
          key: "now",
          head: heads.now,
          roomy: true,
          cell: (row) => <Told text={row.now} own={row.own} language={language} />,
        },
      ]}
    />
  );
}
