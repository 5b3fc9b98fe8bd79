"use client";

import { useRouter } from "next/navigation";
import { useRef, useState, useTransition } from "react";
import { Actions, Button } from "@/app/_components/button.tsx";
import { Checkbox, Fieldset } from "@/app/_components/choice-field.tsx";
import { EmptyState } from "@/app/_components/empty-state.tsx";
import { ErrorSummary } from "@/app/_components/error-summary.tsx";
import { SelectField, TextField } from "@/app/_components/field.tsx";
import { UndoNotice } from "@/app/_components/undo-notice.tsx";
import { paths } from "@/lib/platform/paths.ts";
import { counted } from "@/lib/wording/formats.ts";
import { ageGroupLabels, categoryLabels, formLabels, materialLabels } from "@/lib/wording/labels.ts";
import { readingListWords } from "@/lib/wording/reading-list.ts";
import type { MadeItems } from "@/lib/workflows/items-from-readings.ts";
import { makeItems, undoItems } from "./actions.ts";
import styles from "./items-form.module.css";

export type ProposedItem = { group: string; readings: number; item: string; part: string };

const choicesOf = (labels: Record<string, string>) =>
  Object.entries(labels).map(([value, label]) => ({ value, label }));
const categories = choicesOf(categoryLabels);
const materials = choicesOf(materialLabels);
const forms = choicesOf(formLabels);
const asAbove = "As for all";

/** What the form says of each ticked row; where a row says nothing of its own, what was said for all. */
function askedIn(data: FormData, rows: readonly ProposedItem[], by: "sample" | "note", batchId: string | null) {
  const text = (name: string) => String(data.get(name) ?? "").trim();
  const own = (name: string, at: number) => text(`${name}-${at}`) || text(name);
  return {
    ...{ by, batchId },
    ...{ howGot: text("howGot"), whoPaid: text("whoPaid"), ageGroup: text("ageGroup") || undefined },
    rows: rows.flatMap(({ group }, at) =>
      data.get(`make-${at}`) === null
        ? []
        : [
            {
              ...{ group, item: text(`item-${at}`), part: text(`part-${at}`) },
              ...{ category: own("category", at), material: own("material", at), form: own("form", at) },
            },
          ],
    ),
  };
}

/** A table to confirm: the names that a file gave, and the items, objects and parts they become. */
export function ItemsForm({
  rows,
  by,
  batchId,
}: {
  rows: ProposedItem[];
  by: "sample" | "note";
  batchId: string | null;
}) {
  const router = useRouter();
  const form = useRef<HTMLFormElement>(null);
  const [errors, setErrors] = useState<string[]>([]);
  const [made, setMade] = useState<MadeItems | null>(null);
  const [pending, start] = useTransition();
  const send = (data: FormData) =>
    start(async () => {
      const asked = askedIn(data, rows, by, batchId);
      if (asked.rows.length === 0) return setErrors(["Tick at least one name."]);
      const reply = await makeItems(asked);
      setErrors(reply.problems);
      if (reply.problems.length > 0) form.current?.querySelector<HTMLElement>("#errors")?.focus();
      if (!reply.made) return;
      setMade(reply.made);
      router.refresh();
    });
  const undo = () =>
    start(async () => {
      const reply = await undoItems(made?.items.map((item) => item.id) ?? []);
      setErrors(reply.problems);
      if (reply.problems.length > 0) return;
      setMade(null);
      router.refresh();
    });
  return (
    <>
      <UndoNotice pending={pending} onUndo={undo} onDismiss={() => setMade(null)} undoText="Take these items back">
        {made ? readingListWords.made(made.items.length, made.parts, made.readings) : null}
      </UndoNotice>
      {made ? (
        <ul>
          {made.items.map((item) => (
            <li key={item.id}>
              <a href={paths.benchItem(item.id)}>{item.name}</a>
            </li>
          ))}
        </ul>
      ) : null}
      {rows.length === 0 ? (
        made ? null : (
          <EmptyState title={`No unassigned reading has a ${by}`}>
            <p>
              <a href={paths.benchReadings()}>See the unassigned readings</a>
            </p>
          </EmptyState>
        )
      ) : (
        <form
          ref={form}
          onSubmit={(event) => {
            event.preventDefault();
            send(new FormData(event.currentTarget));
          }}
        >
          <ErrorSummary errors={errors.map((text) => ({ text }))} title="No item was made yet" />
          <Fieldset legend="For all of them">
            <div className={styles.row}>
              <SelectField name="category" label="Kind of object" choices={categories} empty="Choose" />
              <SelectField name="material" label="Material" choices={materials} empty="Choose" />
              <SelectField name="form" label="Form" choices={forms} empty="Choose" />
              <SelectField
                name="ageGroup"
                label="Made for"
                choices={choicesOf(ageGroupLabels)}
                defaultValue="unknown"
              />
              <TextField name="howGot" label="How they were got" required maxLength={400} width={28} />
              <TextField name="whoPaid" label="Who paid for them and the test" required maxLength={200} width={28} />
            </div>
          </Fieldset>
          {rows.map(({ group, readings, item, part }, at) => (
            <Fieldset key={group} legend={`“${group}”: ${counted(readings, "reading")}`}>
              <div className={styles.row}>
                <Checkbox name={`make-${at}`} label="Make it" defaultChecked />
                <TextField name={`item-${at}`} label="Item" defaultValue={item} maxLength={120} width={28} />
                <TextField name={`part-${at}`} label="Part" defaultValue={part} maxLength={120} width={18} />
                <SelectField name={`category-${at}`} label="Kind of object" choices={categories} empty={asAbove} />
                <SelectField name={`material-${at}`} label="Material" choices={materials} empty={asAbove} />
                <SelectField name={`form-${at}`} label="Form" choices={forms} empty={asAbove} />
              </div>
            </Fieldset>
          ))}
          <Actions thumb>
            <Button type="submit" kind="primary" disabled={pending}>
              {pending ? "Working …" : "Make the items and put the readings on them"}
            </Button>
          </Actions>
        </form>
      )}
    </>
  );
}
