"use client";

import { useRouter } from "next/navigation";
import { useMemo, useState, useTransition } from "react";
import { Actions, Button } from "@/app/_components/button.tsx";
import { RadioGroup } from "@/app/_components/choice-field.tsx";
import { ErrorSummary } from "@/app/_components/error-summary.tsx";
import { SelectField, TextField } from "@/app/_components/field.tsx";
import { SelectableTable, type SortableColumn } from "@/app/_components/selectable-table.tsx";
import { UndoNotice } from "@/app/_components/undo-notice.tsx";
import type { Assignment } from "@/lib/store/readings.ts";
import { assignReadings, undoAssignment } from "./actions.ts";
import styles from "./reading-list.module.css";
import { readRange } from "./selection.ts";

/** A reading as the list shows it; every cell ready as text. */
export type ListedReading = {
  id: string;
  number: string;
  sample: string;
  spot: string;
  mode: string;
  time: string;
  results: string;
};
type Numbered = ListedReading & { place: number };
type Spot = { how: "as-written" } | { how: "each" } | { how: "one"; label: string };

const keyOf = (r: Numbered): string => r.id;
const columns: SortableColumn<Numbered>[] = [
  { key: "place", head: "No.", numeric: true, cell: (r) => r.place, sortBy: (r) => r.place },
  { key: "sample", head: "Sample", rowHeader: true, cell: (r) => r.sample, sortBy: (r) => r.sample },
  { key: "spot", head: "Spot", cell: (r) => r.spot, sortBy: (r) => r.spot },
  { key: "mode", head: "Mode", cell: (r) => r.mode, sortBy: (r) => r.mode },
  { key: "time", head: "Time", nowrap: true, cell: (r) => r.time, sortBy: (r) => r.time },
  { key: "results", head: "Results as written", roomy: true, cell: (r) => r.results },
];

/**
 * Readings to put on parts, many at once. Space ticks a row, Shift ticks the rows between; a whole sample or a range
 * of numbers can be ticked in one go. What was done last can be undone.
 */
export function ReadingList({
  readings,
  parts,
}: {
  readings: ListedReading[];
  parts: { value: string; label: string }[];
}) {
  const router = useRouter();
  const [chosen, setChosen] = useState<ReadonlySet<string>>(new Set());
  const [errors, setErrors] = useState<string[]>([]);
  const [done, setDone] = useState<{ text: string; before: Assignment[] } | null>(null);
  const [pending, start] = useTransition();
  const ids = useMemo(() => readings.map((r) => r.id), [readings]);
  const numbered = useMemo(() => readings.map((r, at) => ({ ...r, place: at + 1 })), [readings]);
  const samples = useMemo(() => [...new Set(readings.map((r) => r.sample))], [readings]);

  const tickSample = (sample: string) =>
    setChosen(new Set(readings.filter((r) => r.sample === sample).map((r) => r.id)));
  const tickRange = (text: string) => {
    const numbers = readRange(text, readings.length);
    if (numbers === null)
      return setErrors([
        `“${text}” is no range of this list. Write numbers from 1 to ${readings.length}, like 12-18, 21.`,
      ]);
    setErrors([]);
    setChosen(new Set(numbers.map((n) => ids[n - 1] ?? "")));
  };

  const submit = (form: FormData) =>
    start(async () => {
      const componentId = String(form.get("componentId") ?? "");
      if (!componentId || chosen.size === 0)
        return setErrors([
          chosen.size === 0 ? "Tick at least one reading." : "Choose the part the readings were taken on.",
        ]);
      const how = String(form.get("spot") ?? "as-written");
      const label = String(form.get("spotLabel") ?? "").trim();
      if (how === "one" && !label) return setErrors(["Give the spot a name, or choose another way."]);
      const spot = (how === "one" ? { how, label } : { how }) as Spot;
      const reply = await assignReadings({ readingIds: [...chosen], componentId, spot });
      setErrors(reply.problems);
      if (reply.problems.length > 0) return;
      const part = parts.find((p) => p.value === componentId)?.label ?? "";
      setDone({
        text: `${chosen.size} ${chosen.size === 1 ? "reading is" : "readings are"} now on “${part}”.`,
        before: reply.before,
      });
      setChosen(new Set());
      router.refresh();
    });
  const undo = (before: Assignment[]) =>
    start(async () => {
      const reply = await undoAssignment(before);
      setErrors(reply.problems);
      setDone(null);
      router.refresh();
    });

  return (
    <>
      <ErrorSummary errors={errors.map((text) => ({ text }))} />
      <UndoNotice pending={pending} onUndo={() => done && undo(done.before)} onDismiss={() => setDone(null)}>
        {done?.text ?? null}
      </UndoNotice>
      <div className={styles.choose}>
        <SelectField
          name="sample"
          label="Tick a whole sample"
          empty="Choose a sample"
          choices={samples.map((value) => ({ value, label: value || "no sample named" }))}
          onChange={(event) => tickSample(event.currentTarget.value)}
        />
        <form action={(data) => tickRange(String(data.get("range") ?? ""))} className={styles.range}>
          <TextField name="range" label="Tick a range of numbers" width={12} placeholder="12-18, 21" />
          <Button type="submit">Tick</Button>
        </form>
      </div>
      <SelectableTable
        caption="Readings without a part"
        columns={columns}
        rows={numbered}
        rowKey={keyOf}
        rowLabel={(r) => `Reading ${r.place}, ${r.sample || "no sample"}, ${r.spot || "no spot"}`}
        ticked={chosen}
        onTicked={setChosen}
      />
      <form action={submit} className={styles.assign}>
        <SelectField name="componentId" label="Put them on the part" choices={parts} empty="Choose the part" />
        <RadioGroup
          name="spot"
          legend="Spots"
          defaultValue="as-written"
          choices={[
            { value: "as-written", label: "as the file names them" },
            { value: "one", label: "all at one spot, named:" },
            { value: "each", label: "no spot known: each counts alone" },
          ]}
        />
        <TextField name="spotLabel" label="Name of the one spot" optional width={20} />
        <Actions>
          <Button type="submit" kind="primary" disabled={pending}>
            {pending ? "Working …" : "Put the ticked readings there"}
          </Button>
        </Actions>
      </form>
    </>
  );
}
