"use client";

import { Checkbox, Fieldset } from "@/app/_components/choice-field.tsx";
import { SelectField, TextField } from "@/app/_components/field.tsx";
import { elementsIn, type HandSettings, handUnits } from "@/lib/readings/hand-entry.ts";
import { formLabels } from "@/lib/wording/labels.ts";
import styles from "./hand-sheet.module.css";

export type AskedInstrument = { id: string; name: string; errorK: 1 | 2 | 3 | null; timeZone: string | null };

/** The answers as the fields hold them: text, blank where nothing is said. */
export type Asked = {
  instrumentId: string;
  date: string;
  timeZone: string;
  unit: HandSettings["unit"];
  quantity: HandSettings["quantity"];
  k: string;
  decimal: HandSettings["decimal"];
  elements: string;
  error: boolean;
  limit: boolean;
};

const coverages = { "1": 1, "2": 2, "3": 3 } as const;

export const settingsOf = ({ date, timeZone, unit, quantity, k, decimal }: Asked): HandSettings => ({
  date: date === "" ? null : date,
  timeZone: timeZone === "" ? null : timeZone,
  unit,
  quantity,
  k: coverages[k as keyof typeof coverages] ?? null,
  decimal,
});

/** What is asked once for the whole sheet. Choosing the analyser answers what its record already says. */
export function SheetQuestions({
  asked,
  onAsked,
  zones,
  instruments,
}: {
  asked: Asked;
  onAsked: (asked: Asked) => void;
  zones: string[];
  instruments: AskedInstrument[];
}) {
  const set = (changed: Partial<Asked>) => onAsked({ ...asked, ...changed });
  const choose = (id: string) => {
    const known = instruments.find((i) => i.id === id);
    set({
      instrumentId: id,
      ...(known?.errorK ? { k: String(known.errorK) } : {}),
      ...(known?.timeZone ? { timeZone: known.timeZone } : {}),
    });
  };
  const { unknown } = elementsIn(asked.elements);
  const areal = asked.unit.endsWith("cm²");
  return (
    <div className={styles.settings}>
      <SelectField
        name="instrumentId"
        label="Analyser"
        empty="Not said"
        choices={instruments.map((i) => ({ value: i.id, label: i.name }))}
        value={asked.instrumentId}
        onChange={(event) => choose(event.currentTarget.value)}
      />
      <TextField
        name="date"
        label="Day of the readings"
        type="date"
        value={asked.date}
        onChange={(event) => set({ date: event.currentTarget.value })}
      />
      <SelectField
        name="timeZone"
        label="Where: time zone"
        empty="Not said"
        choices={zones.map((value) => ({ value, label: value.replaceAll("_", " ") }))}
        value={asked.timeZone}
        onChange={(event) => set({ timeZone: event.currentTarget.value })}
      />
      <SelectField
        name="unit"
        label="Unit of all figures"
        choices={handUnits.map((value) => ({ value, label: value }))}
        value={asked.unit}
        onChange={(event) => set({ unit: event.currentTarget.value as Asked["unit"] })}
      />
      <SelectField
        name="quantity"
        label="What was under the window"
        hint={areal ? "An amount on an area is always of a layer" : undefined}
        choices={[
          { value: "bulk-mass-fraction", label: formLabels.bulk },
          { value: "coating-mass-fraction", label: formLabels.coating },
        ]}
        value={areal ? "coating-mass-fraction" : asked.quantity}
        disabled={areal}
        onChange={(event) => set({ quantity: event.currentTarget.value as Asked["quantity"] })}
      />
      <SelectField
        name="k"
        label="The errors cover"
        empty="Not said"
        choices={[
          { value: "1", label: "one standard uncertainty (1σ)" },
          { value: "2", label: "two (2σ)" },
          { value: "3", label: "three (3σ)" },
        ]}
        value={asked.k}
        onChange={(event) => set({ k: event.currentTarget.value })}
      />
      <SelectField
        name="decimal"
        label="Decimals are written"
        choices={[
          { value: "point", label: "with a point: 12.5" },
          { value: "comma", label: "with a comma: 12,5" },
        ]}
        value={asked.decimal}
        onChange={(event) => set({ decimal: event.currentTarget.value as Asked["decimal"] })}
      />
      <TextField
        name="elements"
        label="Elements"
        hint="Symbols, in the order you will type them"
        error={unknown.length > 0 ? `Not an element: ${unknown.join(", ")}` : undefined}
        value={asked.elements}
        autoCapitalize="off"
        spellCheck={false}
        onChange={(event) => set({ elements: event.currentTarget.value })}
      />
      <Fieldset legend="Beside each value">
        <Checkbox
          name="error"
          label="its error"
          checked={asked.error}
          onChange={(event) => set({ error: event.currentTarget.checked })}
        />
        <Checkbox
          name="limit"
          label="its detection limit"
          checked={asked.limit}
          onChange={(event) => set({ limit: event.currentTarget.checked })}
        />
      </Fieldset>
    </div>
  );
}
