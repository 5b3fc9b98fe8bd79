"use client";

import { useState } from "react";
import { Actions, Button } from "@/app/_components/button.tsx";
import { Checkbox, Fieldset } from "@/app/_components/choice-field.tsx";
import { Entry, Ledger } from "@/app/_components/entry.tsx";
import { ErrorSummary } from "@/app/_components/error-summary.tsx";
import { SelectField, TextAreaField, TextField } from "@/app/_components/field.tsx";
import { type AskedInstrument, SheetQuestions } from "@/app/bench/by-hand/sheet-questions.tsx";
import { ageGroupLabels, categoryLabels, formLabels, materialLabels } from "@/lib/wording/labels.ts";
import { tableWords } from "@/lib/wording/table-sheets.ts";
import { missingIn, type TableSheet } from "../_offline/sheet.ts";
import { ReadingCards } from "./reading-cards.tsx";
import { SheetPhotos } from "./sheet-photos.tsx";

const choicesOf = (labels: Record<string, string>) =>
  Object.entries(labels).map(([value, label]) => ({ value, label }));

/** One sheet: the item, the object, the part, its photos with spots, the readings. Every change is kept on the phone. */
export function SheetForm({
  sheet,
  kept,
  largestPhoto,
  zones,
  instruments,
  onChange,
  onHandIn,
  onClose,
}: {
  sheet: TableSheet;
  kept: boolean;
  largestPhoto: number;
  zones: string[];
  instruments: AskedInstrument[];
  onChange: (sheet: TableSheet) => void;
  onHandIn: () => void;
  onClose: () => void;
}) {
  const [asked, setAsked] = useState(false);
  const { item, object, part } = sheet;
  const missing = missingIn(sheet);
  // Once its item is made, what names it is changed on the item's page.
  const made = sheet.done.itemId !== undefined;
  const setItem = (changed: Partial<TableSheet["item"]>) => onChange({ ...sheet, item: { ...item, ...changed } });
  const setObject = (changed: Partial<TableSheet["object"]>) =>
    onChange({ ...sheet, object: { ...object, ...changed } });
  const setPart = (changed: Partial<TableSheet["part"]>) => onChange({ ...sheet, part: { ...part, ...changed } });
  const handIn = () => {
    setAsked(true);
    if (missing.length === 0) return onHandIn();
    setTimeout(() => document.getElementById("errors")?.focus(), 0);
  };
  return (
    <>
      <ErrorSummary
        errors={[
          ...sheet.problems.map((text) => ({ text })),
          ...(asked ? missing.map(({ id, name }) => ({ field: id, text: `Still missing: ${name}.` })) : []),
        ]}
        title="Not sent yet"
      />
      <p role="status" className="small soft">
        {kept ? tableWords.states.draft : "Being kept …"}
      </p>
      <Ledger>
        {made ? null : (
          <>
            <Entry title="The item" id="item">
              <TextField
                id="item-name"
                name="name"
                label="Name"
                hint="As a person would say it: “blue mug with a crown”"
                value={item.name}
                maxLength={120}
                onChange={(event) => setItem({ name: event.currentTarget.value })}
              />
              <SelectField
                id="item-category"
                name="category"
                label="Kind of object"
                empty="Choose"
                choices={choicesOf(categoryLabels)}
                value={item.category}
                onChange={(event) => setItem({ category: event.currentTarget.value })}
              />
              <SelectField
                id="item-ageGroup"
                name="ageGroup"
                label="Made for"
                choices={choicesOf(ageGroupLabels)}
                value={item.ageGroup}
                onChange={(event) => setItem({ ageGroup: event.currentTarget.value })}
              />
              <Fieldset legend="How it is used">
                <Checkbox
                  id="item-foodContact"
                  name="foodContact"
                  label="Touches food or drink"
                  checked={item.foodContact}
                  onChange={(event) => setItem({ foodContact: event.currentTarget.checked })}
                />
                <Checkbox
                  id="item-mouthable"
                  name="mouthable"
                  label="A child can put it in the mouth"
                  checked={item.mouthable}
                  onChange={(event) => setItem({ mouthable: event.currentTarget.checked })}
                />
              </Fieldset>
              <TextAreaField
                id="item-marks"
                name="marks"
                label="Maker’s marks"
                optional
                rows={2}
                value={item.marks}
                onChange={(event) => setItem({ marks: event.currentTarget.value })}
              />
            </Entry>
            <Entry title="The object and its part" id="object">
              <TextField
                id="object-label"
                name="label"
                label="What you call the object"
                hint="“mug 1, chipped foot”"
                value={object.label}
                onChange={(event) => setObject({ label: event.currentTarget.value })}
              />
              <TextField
                id="object-howGot"
                name="howGot"
                label="How it was got"
                value={object.howGot}
                onChange={(event) => setObject({ howGot: event.currentTarget.value })}
              />
              <TextField
                id="object-whoPaid"
                name="whoPaid"
                label="Who paid for it and for the test"
                value={object.whoPaid}
                onChange={(event) => setObject({ whoPaid: event.currentTarget.value })}
              />
              <TextField
                id="part-name"
                name="part"
                label="Part under the analyser"
                hint="“glaze, inside”. More parts are added on the item’s page."
                value={part.name}
                onChange={(event) => setPart({ name: event.currentTarget.value })}
              />
              <SelectField
                id="part-material"
                name="material"
                label="Material"
                empty="Choose"
                choices={choicesOf(materialLabels)}
                value={part.material}
                onChange={(event) => setPart({ material: event.currentTarget.value })}
              />
              <SelectField
                id="part-form"
                name="form"
                label="Form"
                empty="Choose"
                choices={choicesOf(formLabels)}
                value={part.form}
                onChange={(event) => setPart({ form: event.currentTarget.value })}
              />
            </Entry>
          </>
        )}
        <Entry title="Photos and spots" id="photos">
          <SheetPhotos sheet={sheet} largest={largestPhoto} onChange={onChange} />
        </Entry>
        <Entry title="Readings" id="readings">
          <SheetQuestions
            asked={sheet.asked}
            onAsked={(next) => onChange({ ...sheet, asked: next })}
            zones={zones}
            instruments={instruments}
          />
          <ReadingCards sheet={sheet} onChange={onChange} />
        </Entry>
      </Ledger>
      <Actions thumb>
        <Button kind="primary" onClick={handIn}>
          Hand it in
        </Button>
        <Button kind="quiet" onClick={onClose}>
          Leave it for later
        </Button>
      </Actions>
    </>
  );
}
