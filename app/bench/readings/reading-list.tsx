"use client";

import { useRouter } from "next/navigation";
import { useMemo, useRef, useState, useTransition } from "react";
import { Actions, Button } from "@/app/_components/button.tsx";
import { RadioGroup } from "@/app/_components/choice-field.tsx";
import { ErrorSummary } from "@/app/_components/error-summary.tsx";
import { SelectField, TextField } from "@/app/_components/field.tsx";
import type { Assignment } from "@/lib/store/readings.ts";
import { assignReadings, undoAssignment } from "./actions.ts";
import styles from "./reading-list.module.css";
import { between, readRange } from "./selection.ts";

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
type Spot = { how: "as-written" } | { how: "each" } | { how: "one"; label: string };

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
  const last = useRef<string | null>(null);
  const ids = useMemo(() => readings.map((r) => r.id), [readings]);
  const samples = useMemo(() => [...new Set(readings.map((r) => r.sample))], [readings]);

  const tick = (id: string, on: boolean, range: boolean) => {
    const touched = range ? between(ids, last.current, id) : [id];
    last.current = id;
    setChosen((before) => {
      const after = new Set(before);
      for (const each of touched) on ? after.add(each) : after.delete(each);
      return after;
    });
  };
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
      <div role="status" className={styles.status}>
        {done ? (
          <p>
            {done.text}{" "}
            <Button kind="quiet" disabled={pending} onClick={() => undo(done.before)}>
              Undo
            </Button>
          </p>
        ) : null}
      </div>
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
      <section className={styles.scroll} aria-label="Readings without a part">
        <table className={styles.table}>
          <thead>
            <tr>
              <th scope="col">Ticked</th>
              <th scope="col">No.</th>
              <th scope="col">Sample</th>
              <th scope="col">Spot</th>
              <th scope="col">Mode</th>
              <th scope="col">Time</th>
              <th scope="col">Results as written</th>
            </tr>
          </thead>
          <tbody>
            {readings.map((reading, index) => (
              <tr
                key={reading.id}
                aria-selected={chosen.has(reading.id)}
                className={chosen.has(reading.id) ? styles.ticked : undefined}
              >
                <td>
                  <input
                    type="checkbox"
                    className={styles.box}
                    aria-label={`Reading ${index + 1}, ${reading.sample || "no sample"}, ${reading.spot || "no spot"}`}
                    checked={chosen.has(reading.id)}
                    onChange={(event) =>
                      tick(reading.id, event.currentTarget.checked, (event.nativeEvent as MouseEvent).shiftKey)
                    }
                  />
                </td>
                <td className={styles.number}>{index + 1}</td>
                <th scope="row">{reading.sample}</th>
                <td>{reading.spot}</td>
                <td>{reading.mode}</td>
                <td className={styles.time}>{reading.time}</td>
                <td>{reading.results}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </section>
      <form action={submit} className={styles.assign}>
        <p aria-live="polite">
          <strong>{chosen.size}</strong> of {readings.length} ticked
        </p>
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
