import { Checkbox, Fieldset } from "@/app/_components/choice-field.tsx";
import { SelectField, TextAreaField, TextField } from "@/app/_components/field.tsx";
import type { ItemFields as Fields } from "@/lib/store/items.ts";
import { ageGroupLabels, categoryLabels } from "@/lib/wording/labels.ts";

const choicesOf = (labels: Record<string, string>) =>
  Object.entries(labels).map(([value, label]) => ({ value, label }));

/** What a reader would look for: the fields of an item, new or being changed. */
export function ItemFields({ item }: { item?: Fields | undefined }) {
  return (
    <>
      <TextField
        name="name"
        label="Name"
        hint="As a person would say it: “blue mug with a crown”"
        required
        width={44}
        defaultValue={item?.name}
      />
      <TextAreaField
        name="marks"
        label="Maker’s marks"
        hint="What is printed, stamped or scratched on it, and where"
        rows={3}
        optional
        defaultValue={item?.marks}
      />
      <TextAreaField
        name="aliases"
        label="Other names"
        hint="One a line"
        rows={2}
        optional
        defaultValue={item?.aliases.join("\n")}
      />
      <SelectField
        name="category"
        label="Kind of object"
        choices={choicesOf(categoryLabels)}
        empty="Choose"
        required
        defaultValue={item?.category ?? ""}
      />
      <SelectField
        name="ageGroup"
        label="Made for"
        choices={choicesOf(ageGroupLabels)}
        defaultValue={item?.ageGroup ?? "unknown"}
      />
      <Fieldset legend="How it is used">
        <Checkbox name="foodContact" label="Touches food or drink" defaultChecked={item?.foodContact} />
        <Checkbox
          name="mouthable"
          label="Small or soft enough for a child to put in the mouth"
          defaultChecked={item?.mouthable}
        />
      </Fieldset>
      <TextField name="maker" label="Maker" optional width={32} defaultValue={item?.maker ?? ""} />
      <TextField
        name="gtin"
        label="Number under the bar code"
        hint="8, 12, 13 or 14 digits"
        inputMode="numeric"
        optional
        width={18}
        defaultValue={item?.gtin ?? ""}
      />
      <TextAreaField name="description" label="Description" rows={4} optional defaultValue={item?.description} />
    </>
  );
}
