"use client";

import { useRouter } from "next/navigation";
import { useMemo, useState, useTransition } from "react";
import { Actions, Button } from "@/app/_components/button.tsx";
import { RadioGroup } from "@/app/_components/choice-field.tsx";
import { ErrorSummary } from "@/app/_components/error-summary.tsx";
import { SelectField, TextField } from "@/app/_components/field.tsx";
import { SelectableTable, type SortableColumn } from "@/app/_components/selectable-table.tsx";
import { UndoNotice } from "@/app/_components/undo-notice.tsx";
import type { ReadingState } from "@/lib/store/readings.ts";
import { readingListWords, readingStateWords } from "@/lib/wording/reading-list.ts";
import { assignReadings, type ListReply, setAside, type Undoing, undo } from "./actions.ts";
import { AsideForm } from "./aside-form.tsx";
import styles from "./reading-list.module.css";
import { readRange, readShots } from "./selection.ts";

/** A reading as the list shows it; every cell ready as text. */
export type ListedReading = {
  id: string;
  number: string;
  sample: string;
  spot: string;
  note: string;
  mode: string;
  time: string;
  aside: string;
  results: string;
};
type Numbered = ListedReading & { place: number };
type Spot = { how: "as-written" } | { how: "each" } | { how: "one"; label: string };

const keyOf = (r: Numbered): string => r.id;
const columns: (SortableColumn<Numbered> & { key: keyof Numbered })[] = [
  { key: "place", head: "No.", numeric: true, cell: (r) => r.place, sortBy: (r) => r.place },
  { key: "number", head: "Shot", cell: (r) => r.number, sortBy: (r) => Number(r.number) || r.number },
  { key: "sample", head: "Sample", rowHeader: true, cell: (r) => r.sample, sortBy: (r) => r.sample },
  { key: "spot", head: "Spot", cell: (r) => r.spot, sortBy: (r) => r.spot },
  { key: "note", head: "Note", roomy: true, cell: (r) => r.note, sortBy: (r) => r.note },
  { key: "mode", head: "Mode", cell: (r) => r.mode, sortBy: (r) => r.mode },
  { key: "time", head: "Time", nowrap: true, cell: (r) => r.time, sortBy: (r) => r.time },
  { key: "aside", head: "Set aside because", roomy: true, cell: (r) => r.aside, sortBy: (r) => r.aside },
  { key: "results", head: "Results as written", roomy: true, cell: (r) => r.results },
];
/** Columns that no reading of the list has anything in are left out, but for those that name a shot. */
const always: (keyof Numbered)[] = ["place", "sample", "results"];

/**
 * Readings to put on parts, many at once. Space ticks a row, Shift ticks the rows between; a whole sample, a whole note or a range
 * of numbers can be ticked in one go. What was done last can be undone.
 */
export function ReadingList({
  readings,
  parts,
  notes,
  state,
}: {
  readings: ListedReading[];
  parts: { value: string; label: string }[];
  notes: string[];
  state: ReadingState | "all";
}) {
  const router = useRouter();
  const [chosen, setChosen] = useState<ReadonlySet<string>>(new Set());
  const [errors, setErrors] = useState<string[]>([]);
  const [done, setDone] = useState<{ text: string; undoing: Undoing } | null>(null);
  const [pending, start] = useTransition();
  const numbered = useMemo(() => readings.map((r, at) => ({ ...r, place: at + 1 })), [readings]);
  const shown = useMemo(
    () => columns.filter(({ key }) => always.includes(key) || numbered.some((r) => r[key] !== "")),
    [numbered],
  );
  const samples = useMemo(() => [...new Set(readings.map((r) => r.sample))], [readings]);

  const tickAll = (which: (reading: ListedReading) => boolean) =>
    setChosen(new Set(readings.filter(which).map((r) => r.id)));
  const tickRange = (form: FormData) => {
    const text = String(form.get("range") ?? "");
    const byShot = form.get("numbers") === "shot";
    const found = byShot
      ? readShots(text, numbered)
      : (readRange(text, readings.length)?.flatMap((n) => numbered[n - 1] ?? []) ?? null);
    if (found === null)
      return setErrors([byShot ? readingListWords.noShots(text) : readingListWords.noRange(text, readings.length)]);
    setErrors([]);
    setChosen(new Set(found.map((r) => r.id)));
  };

  /** Does one thing to the ticked readings and offers the way back. */
  const act = (work: (readingIds: string[]) => Promise<ListReply>, text: (count: number) => string) => {
    const readingIds = [...chosen];
    if (readingIds.length === 0) return setErrors(["Tick at least one reading."]);
    start(async () => {
      const reply = await work(readingIds);
      setErrors(reply.problems);
      if (!reply.undoing) return;
      setDone({ text: text(readingIds.length), undoing: reply.undoing });
      setChosen(new Set());
      router.refresh();
    });
  };
  const submit = (form: FormData) => {
    const componentId = String(form.get("componentId") ?? "");
    if (!componentId && chosen.size > 0) return setErrors(["Choose the part the readings were taken on."]);
    const how = String(form.get("spot") ?? "as-written");
    const label = String(form.get("spotLabel") ?? "").trim();
    if (how === "one" && !label) return setErrors(["Give the spot a name, or choose another way."]);
    const spot = (how === "one" ? { how, label } : { how }) as Spot;
    const part = parts.find((p) => p.value === componentId)?.label ?? "";
    act(
      (readingIds) => assignReadings({ readingIds, componentId, spot }),
      (count) => readingListWords.moved(count, part),
    );
  };
  const takeOff = () =>
    act(
      (readingIds) => assignReadings({ readingIds, componentId: null, spot: { how: "each" } }),
      readingListWords.freed,
    );
  const undoLast = (undoing: Undoing) =>
    start(async () => {
      const reply = await undo(undoing);
      setErrors(reply.problems);
      setDone(null);
      router.refresh();
    });

  return (
    <>
      <ErrorSummary errors={errors.map((text) => ({ text }))} />
      <UndoNotice pending={pending} onUndo={() => done && undoLast(done.undoing)} onDismiss={() => setDone(null)}>
        {done?.text ?? null}
      </UndoNotice>
      <div className={styles.choose}>
        <SelectField
          name="sample"
          label="Tick a whole sample"
          empty="Choose a sample"
          choices={samples.map((value) => ({ value, label: value || "no sample named" }))}
          onChange={(event) => {
            const { value } = event.currentTarget;
            tickAll((r) => r.sample === value);
          }}
        />
        {notes.length > 0 ? (
          <SelectField
            name="note"
            label="Tick all with the note"
            empty="Choose a note"
            choices={notes.map((value) => ({ value, label: value }))}
            onChange={(event) => {
              const { value } = event.currentTarget;
              tickAll((r) => r.note === value);
            }}
          />
        ) : null}
        <form action={tickRange} className={styles.range}>
          <TextField name="range" label="Tick a range of numbers" width={18} placeholder="12-18, 21" />
          <SelectField
            name="numbers"
            label="Numbers"
            choices={[
              { value: "list", label: "of this list" },
              { value: "shot", label: "of the analyser" },
            ]}
          />
          <Button type="submit">Tick</Button>
        </form>
      </div>
      <div className={styles.list}>
        <SelectableTable
          caption={state === "unassigned" ? "Readings without a part" : readingStateWords[state].title}
          columns={shown}
          rows={numbered}
          rowKey={keyOf}
          rowLabel={(r) => `Reading ${r.place}, ${r.sample || "no sample"}, ${r.spot || "no spot"}`}
          ticked={chosen}
          onTicked={setChosen}
        />
      </div>
      {state === "check" ? null : (
        <>
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
              {state === "unassigned" ? null : (
                <Button disabled={pending} onClick={takeOff}>
                  Take them off their parts
                </Button>
              )}
            </Actions>
          </form>
          <AsideForm
            pending={pending}
            restorable={state === "aside" || state === "all"}
            onAside={(reason) => act((readingIds) => setAside({ readingIds, reason }), readingListWords.setAside)}
            onRestore={() => act((readingIds) => setAside({ readingIds, reason: null }), readingListWords.restored)}
          />
        </>
      )}
    </>
  );
}
