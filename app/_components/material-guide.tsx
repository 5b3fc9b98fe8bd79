import { formLabels, labelOf } from "@/lib/wording/labels.ts";
import { formNotes, materialGuide, materialGuideWords } from "@/lib/wording/materials.ts";
import { DataTable } from "./data-table.tsx";
import { Disclosure } from "./disclosure.tsx";

/** What each listed material and form means for a reading: beside the form in which a tester describes a part. */
export function MaterialGuide({ open = false }: { open?: boolean }) {
  return (
    <Disclosure summary={materialGuideWords.summary} open={open}>
      {Object.entries(formNotes).map(([form, note]) => (
        <p key={form}>
          <strong>{labelOf(formLabels, form)}.</strong> {note}
        </p>
      ))}
      <DataTable
        caption={materialGuideWords.caption}
        rows={materialGuide()}
        rowKey={(row) => row.material}
        rowNote={(row) => row.note}
        columns={[
          { key: "material", head: "Material", nowrap: true, cell: (row) => row.label },
          { key: "density", head: "Density", nowrap: true, cell: (row) => row.density ?? "not known" },
          { key: "depth", head: "Lead seen", nowrap: true, cell: (row) => row.depth ?? "not known" },
        ]}
      />
      <p className="soft small">{materialGuideWords.caution}</p>
    </Disclosure>
  );
}
