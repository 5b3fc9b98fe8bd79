import { Actions, Button, ButtonLink } from "../button.tsx";
import { Checkbox, Fieldset, RadioGroup } from "../choice-field.tsx";
import { ErrorSummary } from "../error-summary.tsx";
import { FileField, NumberField, SelectField, TextAreaField, TextField } from "../field.tsx";
import { MeasureField } from "../measure-field.tsx";
import { SearchForm } from "../search-form.tsx";
import type { Example } from "./example.ts";

const materials = [
  { value: "glaze", label: "Glaze" },
  { value: "enamel", label: "Enamel" },
  { value: "brass", label: "Brass" },
];

export const controlExamples: Example[] = [
  {
    id: "buttons",
    title: "Buttons and links that look like them",
    show: (
      <Actions>
        <Button kind="primary">Import the file</Button>
        <Button>Save for later</Button>
        <ButtonLink href="#buttons">Show the readings</ButtonLink>
        <Button kind="quiet">Cancel</Button>
        <Button disabled>Not yet</Button>
      </Actions>
    ),
  },
  {
    id: "search",
    title: "Search",
    show: (
      <SearchForm
        id="example-search"
        label="What is written or drawn on it?"
        size="large"
        hint="A name, a maker’s mark, a number."
      />
    ),
  },
  {
    id: "error-summary",
    title: "Error summary",
    show: (
      <ErrorSummary
        errors={[
          { field: "wrong-thickness", text: "Thickness: found “thick”. Give a number, like 0.25." },
          { text: "The file holds two different tables. Save each as a file of its own." },
        ]}
      />
    ),
  },
  {
    id: "text",
    title: "Text field",
    show: <TextField name="item-name" label="Name of the item" hint="As a neighbour would call it." />,
  },
  {
    id: "text-wrong",
    title: "Text field with an error",
    show: (
      <TextField
        name="email"
        type="email"
        label="E-mail"
        defaultValue="rowan at shelf"
        error="Found “rowan at shelf”. Give an address with an @."
      />
    ),
  },
  {
    id: "number",
    title: "Number with unit",
    show: <NumberField name="thickness" label="Thickness" unit="mm" hint="Leave empty where not measured." optional />,
  },
  {
    id: "number-wrong",
    title: "Number with an error",
    show: (
      <NumberField
        name="wrong-thickness"
        label="Thickness"
        unit="mm"
        defaultValue="thick"
        error="Found “thick”. Give a number, like 0.25."
      />
    ),
  },
  {
    id: "select",
    title: "Select",
    show: <SelectField name="material" label="Material" choices={materials} empty="Choose a material" width={18} />,
  },
  {
    id: "textarea",
    title: "Several lines",
    show: <TextAreaField name="reason" label="Why is this reading set aside?" hint="Readers will see this sentence." />,
  },
  {
    id: "file",
    title: "File",
    show: (
      <FileField
        name="file"
        label="Instrument file"
        hint="CSV or text from the analyser, up to 50 MB."
        accept=".csv,.txt,.tsv"
      />
    ),
  },
  {
    id: "measure",
    title: "A quantity with its unit to choose, without scripts",
    show: (
      <MeasureField
        name="measure-weight"
        label="Weight of the part"
        hint="One number, or a range: 10 to 14"
        defaultValue="165"
        unit={{ name: "measure-weight-unit", label: "Unit of weight", value: "g", choices: ["g", "mg", "kg", "oz"] }}
      />
    ),
  },
  {
    id: "measure-wrong",
    title: "The same with an error",
    show: (
      <MeasureField
        name="measure-content"
        label="Content"
        defaultValue="60 to 40"
        error="The range for the content is upside down. Write the smaller number first. Found: “60 to 40”."
        unit={{ name: "measure-content-unit", label: "Unit of content", value: "%", choices: ["ppm", "mg/kg", "%"] }}
      />
    ),
  },
  {
    id: "radio",
    title: "Radio group",
    show: (
      <RadioGroup
        name="coverage"
        legend="What do the error figures mean?"
        hint="The analyser’s manual says so."
        defaultValue="2"
        choices={[
          { value: "1", label: "One standard uncertainty (1σ)" },
          { value: "2", label: "Two standard uncertainties (2σ)", hint: "The commonest." },
          { value: "3", label: "Three standard uncertainties (3σ)" },
        ]}
      />
    ),
  },
  {
    id: "radio-wrong",
    title: "Radio group with an error, in a line",
    show: (
      <RadioGroup
        name="decimal"
        legend="Which sign stands before the decimals?"
        error="Choose one: the file has numbers that can be read both ways."
        inline
        choices={[
          { value: "point", label: "A point: 12.5" },
          { value: "comma", label: "A comma: 12,5" },
        ]}
      />
    ),
  },
  {
    id: "fieldset",
    title: "Fields under one question, and boxes to tick",
    show: (
      <Fieldset legend="Where the part is touched" id="touched" hint="Tick all that hold.">
        <Checkbox name="accessible" label="A child can touch it" defaultChecked />
        <Checkbox
          name="mouthable"
          label="A child can put it into the mouth"
          hint="Smaller than 5 cm in one direction."
        />
      </Fieldset>
    ),
  },
];
