import { DataTable } from "@/app/_components/data-table.tsx";
import type { FieldChange } from "@/lib/publication/revision-difference.ts";
import { changeCells } from "@/lib/wording/revisions.ts";

/** Differences of two revisions, field by field: where, before, now. */
export function ChangesTable({ changes, caption }: { changes: readonly FieldChange[]; caption: string }) {
  return (
    <DataTable
      caption={caption}
      rows={changes.map(changeCells)}
      rowKey={(row, index) => `${index} ${row.place}`}
      columns={[
        { key: "place", head: "Field", roomy: true, cell: (row) => row.place },
        { key: "before", head: "Before", roomy: true, cell: (row) => row.before },
        { key: "now", head: "Now", roomy: true, cell: (row) => row.now },
      ]}
    />
  );
}
