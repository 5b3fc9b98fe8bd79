"use client";

import { type ReactNode, useMemo, useState } from "react";
import { writeOffset, zoneReader } from "@/lib/readings/zone-offset.ts";
import { understoodMoment } from "@/lib/wording/typed-words.ts";
import { Fieldset } from "./choice-field.tsx";
import { ComboboxField } from "./combobox-field.tsx";
import styles from "./field.module.css";
import { TextField } from "./field.tsx";

/**
 * A day, a time of day and the zone they are told in, never one without the other. The line below says what they mean
 * together, also where the clocks change. Sends `name-date`, `name-time` and `name-zone`; the three are native without
 * scripts.
 */
export function DateZoneField({
  name,
  legend,
  hint,
  error,
  zones,
  defaultDate = "",
  defaultTime = "",
  defaultZone = "",
}: {
  name: string;
  legend: ReactNode;
  hint?: ReactNode;
  error?: ReactNode;
  /** Zones to choose from: names of the IANA database or offsets such as +02:00. */
  zones: readonly string[];
  defaultDate?: string;
  defaultTime?: string;
  defaultZone?: string;
}) {
  const [date, setDate] = useState(defaultDate);
  const [time, setTime] = useState(defaultTime);
  const [zone, setZone] = useState(defaultZone);
  const choices = useMemo(() => zones.map((value) => ({ value, label: value.replaceAll("_", " ") })), [zones]);
  const offset = useMemo(() => offsetOf(date, time, zone), [date, time, zone]);
  const said = understoodMoment({ date, time, zone }, offset) ?? "";
  return (
    <Fieldset legend={legend} id={name} hint={hint} error={error}>
      <div className={styles.row}>
        <TextField
          name={`${name}-date`}
          label="Day"
          type="date"
          width={15}
          value={date}
          onChange={(event) => setDate(event.currentTarget.value)}
        />
        <TextField
          name={`${name}-time`}
          label="Time"
          type="time"
          width={13}
          value={time}
          onChange={(event) => setTime(event.currentTarget.value)}
        />
        <ComboboxField
          name={`${name}-zone`}
          label="Time zone"
          choices={choices}
          width={20}
          defaultValue={defaultZone}
          onChosen={setZone}
        />
      </div>
      <p className={styles.said} aria-live="polite">
        {said}
      </p>
    </Fieldset>
  );
}

function offsetOf(date: string, time: string, zone: string): string | "twice" | "never" | null {
  const [year, month, day] = date.split("-").map(Number);
  const [hour, minute] = time.split(":").map(Number);
  const reader = zone === "" ? null : zoneReader(zone);
  if (reader === null || !year || !month || !day || hour === undefined || minute === undefined) return null;
  const found = reader({ year, month, day, hour, minute, second: 0 });
  return typeof found === "number" ? writeOffset(found) : found;
}
