import { DataTable } from "@/app/_components/data-table.tsx";
import { Disclosure } from "@/app/_components/disclosure.tsx";
import { Facts } from "@/app/_components/facts.tsx";
import type { PlacedResult } from "@/lib/publication/leading-decision.ts";
import type { SpecimenRecord } from "@/lib/store/items.ts";
import type { WorkingRecord } from "@/lib/store/working-item.ts";
import { howGotText, madeText, yesNo } from "@/lib/wording/catalogue.ts";
import { formLabels, labelOf, materialLabels } from "@/lib/wording/labels.ts";
import { PartForm, SpecimenForm } from "./object-forms.tsx";
import { Handling, TakenAway } from "./taken-away.tsx";

/** The very objects tested, their parts, and the forms that add more of both. */
export function Objects({ record, placed }: { record: WorkingRecord; placed: PlacedResult[] }) {
  const { item, readings } = record;
  return (
    <TakenAway itemId={item.id}>
      {item.specimens.map((specimen, at) => (
        <div key={specimen.id} className="flow">
          <h3>{specimen.label}</h3>
          <Facts
            facts={[
              { name: "How it was got", value: howGotText({ ...specimen, parts: [] }) },
              { name: "Who paid", value: specimen.whoPaid },
              { name: "Date code", value: specimen.dateCode },
              { name: "Made", value: madeText(specimen.madeOn) },
              { name: "Condition", value: specimen.condition },
            ]}
          />
          <Disclosure summary={`Change “${specimen.label}”`}>
            <SpecimenForm itemId={item.id} specimen={specimen} />
            <Handling kind="object" id={specimen.id} name={specimen.label} at={at} of={item.specimens.length} />
          </Disclosure>
          {specimen.components.length > 0 ? (
            <Parts
              specimen={specimen}
              count={(id) => readings.filter((r) => r.componentId === id).length}
              results={placed}
            />
          ) : (
            <p>No part is named yet.</p>
          )}
          {specimen.components.map((part, place) => (
            <Disclosure key={part.id} summary={`Change the part “${part.name}”`}>
              <PartForm itemId={item.id} specimenId={specimen.id} part={part} />
              <Handling kind="part" id={part.id} name={part.name} at={place} of={specimen.components.length} />
            </Disclosure>
          ))}
          <Disclosure summary={`Add a part of “${specimen.label}”`} open={specimen.components.length === 0}>
            <PartForm itemId={item.id} specimenId={specimen.id} />
          </Disclosure>
        </div>
      ))}
      <Disclosure
        summary={item.specimens.length === 0 ? "Add the object that was tested" : "Add another object of this item"}
        open={item.specimens.length === 0}
      >
        <SpecimenForm itemId={item.id} />
      </Disclosure>
    </TakenAway>
  );
}

function Parts({
  specimen,
  count,
  results,
}: {
  specimen: SpecimenRecord;
  count: (partId: string) => number;
  results: PlacedResult[];
}) {
  return (
    <DataTable
      caption="Its parts"
      hideCaption
      rows={specimen.components}
      rowKey={(part) => part.id}
      columns={[
        { key: "name", head: "Part", roomy: true, cell: (part) => <a href={`#part-${part.id}`}>{part.name}</a> },
        { key: "material", head: "Material", cell: (part) => labelOf(materialLabels, part.material) },
        { key: "form", head: "Form", cell: (part) => formLabels[part.form] },
        { key: "touch", head: "Touchable", cell: (part) => yesNo(part.accessible) },
        { key: "readings", head: "Readings", numeric: true, cell: (part) => count(part.id) },
        {
          key: "elements",
          head: "Results for",
          cell: (part) =>
            [...new Set(results.filter((p) => p.part.id === part.id).map((p) => p.result.element))].join(", ") ||
            "none yet",
        },
      ]}
    />
  );
}
