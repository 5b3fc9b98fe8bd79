import { ActionForm } from "@/app/_components/action-form.tsx";
import { Checkbox, Fieldset } from "@/app/_components/choice-field.tsx";
import { SelectField, TextField } from "@/app/_components/field.tsx";
import { MaterialGuide } from "@/app/_components/material-guide.tsx";
import { QuantityField } from "@/app/_components/quantity-field.tsx";
import type { ComponentRecord, SpecimenRecord } from "@/lib/store/items.ts";
import { formLabels, materialLabels } from "@/lib/wording/labels.ts";
import { addPart, addSpecimen, editPart, editSpecimen } from "./actions.ts";

/** The words of an object: of a new one, or of one that is there. */
export function SpecimenForm({ itemId, specimen }: { itemId: string; specimen?: SpecimenRecord | undefined }) {
  const prefix = specimen ? `object-${specimen.id}-` : "object-";
  return (
    <ActionForm
      action={specimen ? editSpecimen.bind(null, itemId, specimen.id) : addSpecimen.bind(null, itemId)}
      submit={specimen ? "Save the object" : "Add the object"}
      submitKind="secondary"
    >
      <TextField
        id={`${prefix}label`}
        name="label"
        defaultValue={specimen?.label ?? ""}
        label="What you call it"
        hint="To tell it from others of its kind: “mug 1, chipped foot”"
        required
        width={32}
      />
      <TextField
        id={`${prefix}howGot`}
        name="howGot"
        defaultValue={specimen?.howGot ?? ""}
        label="How it was got"
        hint="Given, bought, found; from whom in a word, no names"
        required
        width={44}
      />
      <TextField
        id={`${prefix}whoPaid`}
        name="whoPaid"
        defaultValue={specimen?.whoPaid ?? ""}
        label="Who paid for it and for the test"
        hint="A reader can then judge whose interest it serves"
        required
        width={44}
      />
      <TextField
        id={`${prefix}gotOn`}
        name="gotOn"
        defaultValue={specimen?.gotOn ?? ""}
        label="Got on"
        type="date"
        optional
        width={12}
      />
      <TextField
        id={`${prefix}dateCode`}
        name="dateCode"
        defaultValue={specimen?.dateCode ?? ""}
        label="Date code"
        hint="A date or batch printed on it"
        optional
        width={20}
      />
      <TextField
        id={`${prefix}madeOn`}
        name="madeOn"
        defaultValue={specimen?.madeOn ?? ""}
        label="Made"
        hint="As far as the date code or its seller tells: 2010, 2010-05 or 2010-05-31. Some limits hang on it"
        optional
        width={12}
      />
      <TextField
        id={`${prefix}condition`}
        name="condition"
        defaultValue={specimen?.condition ?? ""}
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

/** The words of a part: of a new one, or of one that is there. */
export function PartForm({
  itemId,
  specimenId,
  part,
}: {
  itemId: string;
  specimenId: string;
  part?: ComponentRecord | undefined;
}) {
  const id = (name: string) => `part-${part?.id ?? specimenId}-${name}`;
  return (
    <ActionForm
      action={part ? editPart.bind(null, itemId, part.id) : addPart.bind(null, itemId, specimenId)}
      submit={part ? "Save the part" : "Add the part"}
      submitKind="secondary"
    >
      <TextField
        id={id("name")}
        name="name"
        defaultValue={part?.name ?? ""}
        label="Part"
        hint="“glaze, inside”, “handle rivet”, “red print”"
        required
        width={32}
      />
      <SelectField
        id={id("material")}
        name="material"
        defaultValue={part?.material ?? ""}
        label="Material"
        choices={choicesOf(materialLabels)}
        empty="Choose"
        required
      />
      <SelectField
        id={id("form")}
        name="form"
        defaultValue={part?.form ?? ""}
        label="Form"
        hint="Limits differ: a layer of paint is judged otherwise than a solid piece"
        choices={choicesOf(formLabels)}
        empty="Choose"
        required
      />
      {part ? null : <MaterialGuide />}
      <Fieldset legend="Within reach">
        <Checkbox
          id={id("accessible")}
          name="accessible"
          label="A child can touch or lick it"
          defaultChecked={part?.accessible ?? true}
        />
      </Fieldset>
      <QuantityField
        id={id("thicknessMm")}
        name="thicknessMm"
        defaultValue={part?.thicknessMm ?? ""}
        label="Thickness"
        wanted="mm"
        units={["mm", "cm", "in"]}
        optional
      />
      <QuantityField
        id={id("smallestDimensionMm")}
        name="smallestDimensionMm"
        defaultValue={part?.smallestDimensionMm ?? ""}
        label="Narrowest place"
        hint="Across the face that was shot, if it may be smaller than the analyser’s window"
        wanted="mm"
        units={["mm", "cm", "in"]}
        optional
      />
      <QuantityField
        id={id("areaCm2")}
        name="areaCm2"
        defaultValue={part?.areaCm2 ?? ""}
        label="Area"
        wanted="cm²"
        units={["cm²", "mm²"]}
        optional
      />
      <QuantityField
        id={id("massG")}
        name="massG"
        defaultValue={part?.massG ?? ""}
        label="Mass"
        wanted="g"
        units={["g", "kg", "oz"]}
        optional
      />
    </ActionForm>
  );
}
