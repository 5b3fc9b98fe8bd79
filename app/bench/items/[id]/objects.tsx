import { ActionForm } from "@/app/_components/action-form.tsx";
import { Checkbox, Fieldset } from "@/app/_components/choice-field.tsx";
import { DataTable } from "@/app/_components/data-table.tsx";
import { Disclosure } from "@/app/_components/disclosure.tsx";
import { Facts } from "@/app/_components/facts.tsx";
import { SelectField, TextField } from "@/app/_components/field.tsx";
import { MaterialGuide } from "@/app/_components/material-guide.tsx";
import { QuantityField } from "@/app/_components/quantity-field.tsx";
import type { PlacedResult } from "@/lib/publication/leading-decision.ts";
import type { SpecimenRecord } from "@/lib/store/items.ts";
import type { WorkingRecord } from "@/lib/store/working-item.ts";
import { howGotText, madeText, yesNo } from "@/lib/wording/catalogue.ts";
import { formLabels, labelOf, materialLabels } from "@/lib/wording/labels.ts";
import { addPart, addSpecimen } from "./actions.ts";

/** The very objects tested, their parts, and the forms that add more of both. */
export function Objects({ record, placed }: { record: WorkingRecord; placed: PlacedResult[] }) {
  const { item, readings } = record;
  return (
    <>
      {item.specimens.map((specimen) => (
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
          {specimen.components.length > 0 ? (
            <Parts
              specimen={specimen}
              count={(id) => readings.filter((r) => r.componentId === id).length}
              results={placed}
            />
          ) : (
            <p>No part is named yet.</p>
          )}
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
    </>
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
        { key: "name", head: "Part", cell: (part) => <a href={`#part-${part.id}`}>{part.name}</a> },
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

function SpecimenForm({ itemId }: { itemId: string }) {
  return (
    <ActionForm action={addSpecimen.bind(null, itemId)} submit="Add the object" submitKind="secondary">
      <TextField
        id="object-label"
        name="label"
        label="What you call it"
        hint="To tell it from others of its kind: “mug 1, chipped foot”"
        required
        width={32}
      />
      <TextField
        id="object-howGot"
        name="howGot"
        label="How it was got"
        hint="Given, bought, found; from whom in a word, no names"
        required
        width={44}
      />
      <TextField
        id="object-whoPaid"
        name="whoPaid"
        label="Who paid for it and for the test"
        hint="A reader can then judge whose interest it serves"
        required
        width={44}
      />
      <TextField id="object-gotOn" name="gotOn" label="Got on" type="date" optional width={12} />
      <TextField
        id="object-dateCode"
        name="dateCode"
        label="Date code"
        hint="A date or batch printed on it"
        optional
        width={20}
      />
      <TextField
        id="object-madeOn"
        name="madeOn"
        label="Made"
        hint="As far as the date code or its seller tells: 2010, 2010-05 or 2010-05-31. Some limits hang on it"
        optional
        width={12}
      />
      <TextField
        id="object-condition"
        name="condition"
        label="Condition"
        hint="Chipped, worn, as new"
        optional
        width={44}
      />
    </ActionForm>
  );
}

const choicesOf = (labels: Record<string, string>) =>
  Object.entries(labels).map(([value, label]) => ({ value, label }));

function PartForm({ itemId, specimenId }: { itemId: string; specimenId: string }) {
  const id = (name: string) => `part-${specimenId}-${name}`;
  return (
    <ActionForm action={addPart.bind(null, itemId, specimenId)} submit="Add the part" submitKind="secondary">
      <TextField
        id={id("name")}
        name="name"
        label="Part"
        hint="“glaze, inside”, “handle rivet”, “red print”"
        required
        width={32}
      />
      <SelectField
        id={id("material")}
        name="material"
        label="Material"
        choices={choicesOf(materialLabels)}
        empty="Choose"
        required
      />
      <SelectField
        id={id("form")}
        name="form"
        label="Form"
        hint="Limits differ: a layer of paint is judged otherwise than a solid piece"
        choices={choicesOf(formLabels)}
        empty="Choose"
        required
      />
      <MaterialGuide />
      <Fieldset legend="Within reach">
        <Checkbox id={id("accessible")} name="accessible" label="A child can touch or lick it" defaultChecked />
      </Fieldset>
      <QuantityField
        id={id("thicknessMm")}
        name="thicknessMm"
        label="Thickness"
        wanted="mm"
        units={["mm", "cm", "in"]}
        optional
      />
      <QuantityField
        id={id("smallestDimensionMm")}
        name="smallestDimensionMm"
        label="Narrowest place"
        hint="Across the face that was shot, if it may be smaller than the analyser’s window"
        wanted="mm"
        units={["mm", "cm", "in"]}
        optional
      />
      <QuantityField id={id("areaCm2")} name="areaCm2" label="Area" wanted="cm²" units={["cm²", "mm²"]} optional />
      <QuantityField id={id("massG")} name="massG" label="Mass" wanted="g" units={["g", "kg", "oz"]} optional />
    </ActionForm>
  );
}
