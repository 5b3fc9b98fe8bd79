import { ActionForm } from "@/app/_components/action-form.tsx";
import { RadioGroup } from "@/app/_components/choice-field.tsx";
import { SelectField, TextAreaField, TextField } from "@/app/_components/field.tsx";
import { writeCertifiedLines } from "@/lib/consistency/certified-lines.ts";
import { materials } from "@/lib/quantity/item-words.ts";
import { unitsOfKind } from "@/lib/quantity/units.ts";
import type { CheckStandard } from "@/lib/store/check-standards.ts";
import { materialLabels } from "@/lib/wording/labels.ts";
import { saveCheckStandard } from "./actions.ts";

const units = [...new Set([...unitsOfKind("bulk-mass-fraction"), ...unitsOfKind("coating-areal")])];

/** A check standard as its certificate describes it, and the names and modes under which its readings come in. */
export function StandardForm({ standard, modes }: { standard?: CheckStandard; modes: string[] }) {
  const [first] = Object.values(standard?.certified ?? {});
  const unit = first?.unit ?? "mg/kg";
  return (
    <ActionForm action={saveCheckStandard} submit={standard ? "Save the changes" : "Add the check standard"}>
      {standard ? <input type="hidden" name="id" value={standard.id} /> : null}
      <TextField name="name" label="Name" required width={32} defaultValue={standard?.name} />
      <TextAreaField
        name="otherNames"
        label="Other names in files"
        hint="One a line, as the sample column writes it: “CHECK tile 1”. A reading with exactly this name is a check, and never an item’s."
        optional
        rows={3}
        defaultValue={standard?.otherNames.join("\n")}
      />
      <TextAreaField
        name="certified"
        label="Certified values"
        hint="One element a line: Pb 5150 ± 180. For a blank: Pb < 1. Where the certificate states no uncertainty: Pb 5150 none stated; nothing can be corrected by it then."
        required
        rows={5}
        defaultValue={standard ? writeCertifiedLines(standard.certified, unit) : undefined}
      />
      <SelectField
        name="unit"
        label="Unit"
        hint="Of every line that writes none"
        choices={units.map((u) => ({ value: u, label: u }))}
        defaultValue={unit}
        width={12}
      />
      <RadioGroup
        name="k"
        legend="What do the certificate’s uncertainties cover?"
        defaultValue={String(first?.k ?? 2)}
        choices={[
          { value: "2", label: "two standard uncertainties (expanded, k = 2)" },
          { value: "1", label: "one" },
          { value: "3", label: "three" },
        ]}
      />
      <TextField
        name="matrix"
        label="What it is"
        hint="For example: glazed tile, leaded glaze 0.4 mm over white body"
        required
        width={44}
        defaultValue={standard?.matrix}
      />
      <SelectField
        name="material"
        label="Its material"
        hint="Only a part of the same material can be corrected by it"
        empty="Choose"
        required
        choices={materials.map((m) => ({ value: m, label: materialLabels[m] }))}
        defaultValue={standard?.material ?? ""}
        width={20}
      />
      <TextAreaField
        name="modes"
        label="Modes it is meant for"
        hint={`One a line; empty for any. ${modes.length > 0 ? `Modes of your analysers: ${modes.join("; ")}.` : ""}`}
        optional
        rows={3}
        defaultValue={standard?.modes.join("\n")}
      />
      <TextField
        name="certificate"
        label="Certificate"
        hint="Its number and who issued it"
        optional
        width={44}
        defaultValue={standard?.certificate ?? ""}
      />
      <TextField
        name="expiresOn"
        label="Valid until"
        type="date"
        optional
        width={15}
        defaultValue={standard?.expiresOn ?? ""}
      />
    </ActionForm>
  );
}
