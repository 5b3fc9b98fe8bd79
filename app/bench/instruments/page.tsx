import type { Metadata } from "next";
import { ActionForm } from "@/app/_components/action-form.tsx";
import { RadioGroup } from "@/app/_components/choice-field.tsx";
import { ComboboxField } from "@/app/_components/combobox-field.tsx";
import { DataTable } from "@/app/_components/data-table.tsx";
import { Entry, Ledger, PageHead } from "@/app/_components/entry.tsx";
import { NumberField, SelectField, TextAreaField, TextField } from "@/app/_components/field.tsx";
import { writeRangeLines } from "@/lib/consistency/certified-lines.ts";
import { paths } from "@/lib/platform/paths.ts";
import { database } from "@/lib/store/database.ts";
import { type Instrument, listInstruments } from "@/lib/store/instruments.ts";
import { BenchTabs } from "../bench-tabs.tsx";
import { saveInstrument } from "./actions.ts";

export const metadata: Metadata = { title: "Instruments" };

const zones = ["UTC", ...Intl.supportedValuesOf("timeZone")].map((value) => ({
  value,
  label: value.replaceAll("_", " "),
}));

const errorsCover = {
  1: "1 standard uncertainty",
  2: "2 standard uncertainties",
  3: "3 standard uncertainties",
} as const;

export default async function InstrumentsPage({ searchParams }: { searchParams: Promise<{ edit?: string }> }) {
  const { edit } = await searchParams;
  const instruments = await listInstruments(database());
  const chosen = instruments.find((i) => i.id === edit);
  return (
    <>
      <PageHead title="Instruments">
        <p>What an analyser’s error figures cover decides the weight of every reading, so it is asked once, here.</p>
      </PageHead>
      <BenchTabs current={paths.benchInstruments()} />
      <Ledger>
        {instruments.length > 0 ? (
          <Entry title="Analysers" id="analysers">
            <DataTable
              caption="Analysers"
              hideCaption
              rows={instruments}
              rowKey={(i) => i.id}
              columns={[
                {
                  key: "name",
                  head: "Name",
                  cell: (i) => <a href={`${paths.benchInstruments()}?edit=${i.id}#edit`}>{i.name}</a>,
                  nowrap: true,
                },
                { key: "serial", head: "Serial", nowrap: true, cell: (i) => i.serial },
                {
                  key: "k",
                  head: "Errors cover",
                  cell: (i) => (i.errorK ? errorsCover[i.errorK] : "not said yet"),
                },
                { key: "modes", head: "Modes", roomy: true, cell: (i) => i.modes.join("; ") },
                {
                  key: "cal",
                  head: "Calibration, relative",
                  numeric: true,
                  cell: (i) =>
                    i.calibrationRel === null ? "not stated" : `${Number((i.calibrationRel * 100).toPrecision(3))} %`,
                },
                {
                  key: "window",
                  head: "Window",
                  numeric: true,
                  cell: (i) => (i.windowMm === null ? "" : `${i.windowMm} mm`),
                },
              ]}
            />
          </Entry>
        ) : null}
        <Entry title={chosen ? `Change ${chosen.name}` : "Add an analyser"} id="edit">
          <InstrumentForm key={chosen?.id ?? "new"} instrument={chosen} />
        </Entry>
      </Ledger>
    </>
  );
}

function InstrumentForm({ instrument }: { instrument: Instrument | undefined }) {
  return (
    <ActionForm action={saveInstrument} submit={instrument ? "Save the changes" : "Add the analyser"}>
      {instrument ? <input type="hidden" name="id" value={instrument.id} /> : null}
      <TextField
        name="name"
        label="Name"
        hint="What you call it at the bench"
        required
        width={32}
        defaultValue={instrument?.name}
      />
      <TextField
        name="kind"
        label="Kind"
        hint="For example: handheld XRF, tube, energy dispersive"
        required
        width={40}
        defaultValue={instrument?.kind}
      />
      <TextField name="serial" label="Serial number" required width={20} defaultValue={instrument?.serial} />
      <RadioGroup
        name="errorK"
        legend="What do its error figures cover?"
        hint="The manual says. Without it a weighted mean can be wrong by a factor of three in its uncertainty."
        defaultValue={instrument?.errorK ? String(instrument.errorK) : ""}
        choices={[
          { value: "1", label: "one standard uncertainty (1σ, about 68 %)" },
          { value: "2", label: "two (2σ, about 95 %)" },
          { value: "3", label: "three (3σ)" },
          { value: "", label: "I do not know yet" },
        ]}
      />
      <NumberField
        name="calibrationRel"
        label="Calibration, relative standard uncertainty"
        hint="A stated default, shown as such on every page until check standards show better"
        unit="%"
        optional
        defaultValue={
          instrument?.calibrationRel == null ? "" : Number((instrument.calibrationRel * 100).toPrecision(3))
        }
      />
      <NumberField
        name="windowMm"
        label="Window diameter"
        unit="mm"
        optional
        defaultValue={instrument?.windowMm ?? ""}
      />
      <NumberField
        name="minimumSeconds"
        label="Shortest count you accept"
        unit="s"
        optional
        defaultValue={instrument?.minimumSeconds ?? ""}
      />
      <ComboboxField
        name="timeZone"
        label="Time zone of its clock"
        hint="Type a few letters of the place"
        choices={zones}
        optional
        defaultValue={instrument?.timeZone ?? ""}
      />
      <TextAreaField
        name="modes"
        label="Calibration modes"
        hint="One a line, written exactly as its files write them"
        optional
        rows={3}
        defaultValue={instrument?.modes.join("\n")}
      />
      {(instrument?.modes ?? []).map((mode) => (
        <SelectField
          key={mode}
          name={`errorK ${mode}`}
          label={`Errors in the mode “${mode}” cover`}
          empty="the same as above"
          choices={[
            { value: "1", label: "one standard uncertainty" },
            { value: "2", label: "two" },
            { value: "3", label: "three" },
          ]}
          defaultValue={instrument?.errorKByMode[mode] ? String(instrument.errorKByMode[mode]) : ""}
          width={24}
        />
      ))}
      {instrument ? null : (
        <p className="soft small">
          Modes whose errors cover something else can be told apart once the analyser is saved.
        </p>
      )}
      <TextAreaField
        name="calibratedRanges"
        label="Calibrated ranges"
        hint="One a line: Pb 20–6000 mg/kg, and after a comma the mode if it holds for one only. A value outside is flagged."
        optional
        rows={3}
        defaultValue={writeRangeLines(instrument?.calibratedRanges ?? [])}
      />
    </ActionForm>
  );
}
