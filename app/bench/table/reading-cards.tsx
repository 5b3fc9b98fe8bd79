"use client";

import { Actions, Button } from "@/app/_components/button.tsx";
import { Fieldset } from "@/app/_components/choice-field.tsx";
import { NumberField, SelectField } from "@/app/_components/field.tsx";
import { settingsOf } from "@/app/bench/by-hand/sheet-questions.tsx";
import { elementsIn, type HandRow, handColumns, handHeader } from "@/lib/readings/hand-entry.ts";
import type { TableSheet } from "../_offline/sheet.ts";
import styles from "./reading-cards.module.css";

/** Readings one below the other, for a thumb: which spot, then what the screen of the analyser says. */
export function ReadingCards({ sheet, onChange }: { sheet: TableSheet; onChange: (sheet: TableSheet) => void }) {
  const { asked, readings } = sheet;
  const settings = settingsOf(asked);
  const columns = handColumns(elementsIn(asked.elements).elements, asked).filter((c) => c.kind !== "text");
  const set = (at: number, key: string, text: string) =>
    onChange({ ...sheet, readings: readings.map((row, n) => (n === at ? { ...row, [key]: text } : row)) });
  const add = () => {
    // The next shot is most often on the next spot.
    const last = readings.at(-1)?.["spot"];
    const after = sheet.spots[sheet.spots.findIndex((spot) => spot.label === last) + 1]?.label ?? last ?? "";
    const row: HandRow = { spot: after };
    onChange({ ...sheet, readings: [...readings, row] });
    setTimeout(() => document.getElementById(`reading-${readings.length}-spot`)?.focus(), 50);
  };
  return (
    <>
      <p className="small soft">Write &lt;12 for “not detected, below 12”; leave blank what was not measured.</p>
      {readings.map((row, at) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a reading is its place
        <Fieldset key={at} legend={`Reading ${at + 1}`}>
          <div className={styles.card}>
            <SelectField
              id={`reading-${at}-spot`}
              name={`reading-${at}-spot`}
              label="Spot"
              empty="no spot named"
              choices={sheet.spots.map(({ label }) => ({ value: label, label }))}
              value={row["spot"] ?? ""}
              onChange={(event) => set(at, "spot", event.currentTarget.value)}
            />
            {columns.map((column) => (
              <NumberField
                key={column.key}
                id={`reading-${at}-${column.key.replace(" ", "-")}`}
                name={`reading-${at}-${column.key.replace(" ", "-")}`}
                label={handHeader(column, settings)}
                value={row[column.key] ?? ""}
                onChange={(event) => set(at, column.key, event.currentTarget.value)}
              />
            ))}
          </div>
          <Button kind="quiet" onClick={() => onChange({ ...sheet, readings: readings.filter((_, n) => n !== at) })}>
            Take reading {at + 1} off
          </Button>
        </Fieldset>
      ))}
      <Actions>
        <Button onClick={add}>{readings.length === 0 ? "Add a reading" : "Add another reading"}</Button>
      </Actions>
    </>
  );
}
