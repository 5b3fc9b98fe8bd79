import { ComboboxField } from "../combobox-field.tsx";
import { DateZoneField } from "../date-zone-field.tsx";
import { FileDrop } from "../file-drop.tsx";
import { FileList } from "../file-list.tsx";
import { Placeholder } from "../placeholder.tsx";
import { QuantityField } from "../quantity-field.tsx";
import type { Example } from "./example.ts";
import { AskedTwice, DoneAndUndone, TickedRows } from "./live-demos.tsx";

const zones = ["UTC", "Africa/Nairobi", "America/Chicago", "Asia/Kolkata", "Europe/Berlin", "Europe/Lisbon"];
const zoneChoices = zones.map((value) => ({ value, label: value }));

/** Controls for entering data, beyond what the browser brings. */
export const entryControlExamples: Example[] = [
  {
    id: "quantity",
    title: "Quantity: what was typed in another unit is said back",
    show: (
      <QuantityField
        name="content"
        label="Lead in the reference piece"
        hint="As the certificate writes it; a comma or a point, any unit of the same kind."
        wanted="mg/kg"
        units={["mg/kg", "%", "ppm"]}
        uncertainty="Expanded uncertainty of it"
        defaultValue="0,05 %"
        defaultUncertainty="30 ppm"
      />
    ),
  },
  {
    id: "quantity-empty",
    title: "Quantity, empty, one unit",
    show: <QuantityField name="wall" label="Thickness of the wall" wanted="mm" optional />,
  },
  {
    id: "quantity-ambiguous",
    title: "Quantity that can mean two things",
    show: <QuantityField name="two-ways" label="Area" wanted="cm²" units={["cm²", "mm²"]} defaultValue="1,234" />,
  },
  {
    id: "quantity-other-kind",
    title: "Quantity in a unit of another kind",
    show: <QuantityField name="other-kind" label="Mass" wanted="g" units={["g", "kg"]} defaultValue="12 mm" />,
  },
  {
    id: "quantity-wrong",
    title: "Quantity with an error after sending",
    show: (
      <QuantityField
        name="wrong-mass"
        label="Mass"
        wanted="g"
        units={["g", "kg"]}
        defaultValue="heavy"
        error="Found “heavy”. Give a number, like 340."
      />
    ),
  },
  {
    id: "combobox",
    title: "Combobox, empty",
    show: <ComboboxField name="zone" label="Time zone" hint="Type a few letters of the place." choices={zoneChoices} />,
  },
  {
    id: "combobox-chosen",
    title: "Combobox with a choice",
    show: <ComboboxField name="zone-chosen" label="Time zone" choices={zoneChoices} defaultValue="Europe/Lisbon" />,
  },
  {
    id: "combobox-wrong",
    title: "Combobox with an error",
    show: (
      <ComboboxField name="zone-wrong" label="Time zone" choices={zoneChoices} error="Nothing chosen. Choose a zone." />
    ),
  },
  {
    id: "date-zone",
    title: "Date, time and zone",
    show: (
      <DateZoneField
        name="taken"
        legend="When were they taken?"
        hint="By the clock on the wall of that place."
        zones={zones}
        defaultDate="2026-10-03"
        defaultTime="14:05"
        defaultZone="Europe/Lisbon"
      />
    ),
  },
  {
    id: "date-zone-twice",
    title: "An hour that came twice",
    show: (
      <DateZoneField
        name="twice"
        legend="When did the session begin?"
        zones={zones}
        defaultDate="2026-10-25"
        defaultTime="01:30"
        defaultZone="Europe/Lisbon"
      />
    ),
  },
  {
    id: "date-zone-none",
    title: "No zone yet",
    show: (
      <DateZoneField
        name="no-zone"
        legend="When did the session end?"
        error="No zone chosen. A time of day means nothing without one."
        zones={zones}
        defaultDate="2026-10-25"
        defaultTime="17:00"
      />
    ),
  },
  {
    id: "file-drop",
    title: "File drop",
    show: (
      <FileDrop
        action="#file-drop"
        name="drop"
        label="The analyser’s files"
        hint="CSV, TSV or semicolons, up to 50 MB each. Drop one or several here, or choose them."
        accept=".csv,.tsv,.txt"
        submit="Read the files"
        nextText="Say what its columns are"
      />
    ),
  },
  {
    id: "file-drop-refused",
    title: "File drop after a refusal",
    show: (
      <FileDrop
        action="#file-drop-refused"
        name="drop-refused"
        label="The analyser’s file"
        hint="CSV, TSV or semicolons, up to 50 MB."
        accept=".csv,.tsv,.txt"
        submit="Read the file"
        nextText="Say what its columns are"
        problem="The file is a picture, not a table. Choose the file that the analyser writes."
      />
    ),
  },
  {
    id: "file-list",
    title: "Files on their way, each in another state",
    show: (
      <FileList
        nextText="Say what its columns are"
        files={[
          { id: "1", name: "shelf-a-2026-09-12.csv", state: "taken", next: "#example-file-list" },
          {
            id: "2",
            name: "holiday.jpg",
            state: "refused",
            problems: ["The file is a picture, not a table. Choose the file that the analyser writes."],
          },
          { id: "3", name: "pruefbuch-b-2026-10-03.csv", state: "sending", share: 0.42 },
          { id: "4", name: "carnet-c-2026-10-17.tsv", state: "sending", share: 1 },
          { id: "5", name: "carnet-c-2026-10-24.tsv", state: "waiting" },
        ]}
      />
    ),
  },
  { id: "ticked-rows", title: "Rows to tick and sort", show: <TickedRows /> },
  { id: "ticked-some", title: "Some rows ticked", show: <TickedRows start={["r2", "r3"]} /> },
  { id: "ticked-none", title: "No rows", show: <TickedRows none /> },
  { id: "dialog", title: "Dialog, for what cannot be undone", show: <AskedTwice /> },
  { id: "undo", title: "Undo notice, for what can", show: <DoneAndUndone /> },
  {
    id: "loading",
    title: "Loading, keeping its place",
    show: (
      <div role="status">
        <Placeholder label="Fetching and recomputing …" lines={4} />
      </div>
    ),
  },
];
