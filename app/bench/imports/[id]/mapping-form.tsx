import { RadioGroup } from "@/app/_components/choice-field.tsx";
import { Entry, Ledger } from "@/app/_components/entry.tsx";
import { SelectField, TextField } from "@/app/_components/field.tsx";
import { paths } from "@/lib/platform/paths.ts";
import { type ColumnUse, columnUses } from "@/lib/readings/column-uses.ts";
import type { Question } from "@/lib/readings/open-questions.ts";
import { unitWords } from "@/lib/readings/unit-words.ts";
import type { Batch } from "@/lib/store/imports.ts";
import { answerLabels, noticeWords, questionWords, useLabels } from "@/lib/wording/mapping-words.ts";
import { sheetNoteSentences, sheetWords } from "@/lib/wording/spreadsheets.ts";
import { LoadForm } from "./load-form.tsx";
import styles from "./mapping-form.module.css";
import type { MappingView } from "./mapping-view.ts";

const useChoices = columnUses.map((value) => ({ value, label: useLabels[value] ?? value }));
const unitChoices = unitWords.map(({ unit }) => ({ value: unit, label: unit }));
const zones = ["UTC", ...Intl.supportedValuesOf("timeZone")].map((value) => ({
  value,
  label: value.replaceAll("_", " "),
}));
const kindChoices = ["bulk-mass-fraction", "coating-mass-fraction"].map((value) => ({
  value,
  label: answerLabels[value] ?? value,
}));

const sourceWords: Record<MappingView["source"], string> = {
  draft: "This is what you said so far.",
  remembered: "A file with the same header was loaded before; this is what was said of it then.",
  proposed: "This is what the header seems to say. Check it against the cells beside it.",
};

/** The sheets of a workbook, and how this one was taken where that could be done otherwise. */
function SheetEntry({ batch, view: { sheet, sheets } }: { batch: Batch; view: MappingView }) {
  const notes = sheets.find((each) => each.name === sheet)?.notes ?? [];
  if (sheets.length < 2 && notes.length === 0) return null;
  return (
    <Entry title={sheets.length > 1 ? sheetWords.title : `Sheet “${sheet}”`} id="sheet">
      {sheets.length > 1 ? (
        <>
          <p>{sheetWords.hint}</p>
          <ul>
            {sheets.map(({ name, hidden, rows, readable }) => (
              <li key={name}>
                {name === sheet ? (
                  <strong aria-current="true">{name}</strong>
                ) : readable ? (
                  <a href={`${paths.benchImportBatch(batch.id)}?sheet=${encodeURIComponent(name)}`}>{name}</a>
                ) : (
                  name
                )}
                :{" "}
                {[
                  sheetWords.rows(rows),
                  ...(hidden ? [sheetWords.hidden] : []),
                  ...(readable ? [] : [sheetWords.noTable]),
                  ...(name === sheet ? [sheetWords.current] : []),
                ].join(", ")}
              </li>
            ))}
          </ul>
        </>
      ) : null}
      {notes.length > 0 ? (
        <ul>
          {notes.map(({ what, count }) => (
            <li key={what}>{sheetNoteSentences[what](count)}</li>
          ))}
        </ul>
      ) : null}
    </Entry>
  );
}

/** What each column is, and what the file does not say. */
export function MappingForm({
  batch,
  view,
  problem,
}: {
  batch: Batch;
  view: MappingView;
  problem?: string | undefined;
}) {
  const { table, questions, modes, mapping, instruments, instrument } = view;
  const dataRows = table.rows.filter((row) => row.kind === "data").length;
  return (
    <LoadForm action={`${paths.benchImportBatch(batch.id)}/load`} problem={problem}>
      {view.sheet === null ? null : <input type="hidden" name="sheet" value={view.sheet} />}
      <Ledger>
        <SheetEntry batch={batch} view={view} />
        <Entry
          title="What the file does not say"
          id="questions"
          aside={questions.length === 0 ? "nothing open" : `${questions.length} to answer`}
        >
          <SelectField
            name="instrumentId"
            label="Which analyser took these?"
            hint={
              <>
                Its record says what its errors cover. <a href={paths.benchInstruments()}>Add an analyser</a>
              </>
            }
            choices={instruments.map((i) => ({ value: i.id, label: `${i.name} (${i.serial})` }))}
            empty="Not said"
            defaultValue={instrument?.id ?? ""}
          />
          {questions.map((question) => (
            <Ask key={`${question.id}-${question.columns.join()}`} question={question} />
          ))}
          {modes.length > 0 ? <Modes modes={modes} known={mapping.quantityByMode} /> : null}
        </Entry>
        <Entry title="Columns" id="columns" aside={`${table.columns.length} columns, ${dataRows} rows of readings`}>
          <p>{sourceWords[view.source]}</p>
          <ul>
            {view.notices.map((notice) => (
              <li key={notice.code + notice.column}>{noticeWords[notice.code]?.(notice.column) ?? notice.column}</li>
            ))}
          </ul>
          <ol className={styles.columns}>
            {table.columns.map((name, at) => (
              <Column key={name} name={name} at={at} use={view.uses[at]} samples={view.samples[at] ?? []} />
            ))}
          </ol>
        </Entry>
      </Ledger>
    </LoadForm>
  );
}

function Column({
  name,
  at,
  use,
  samples,
}: {
  name: string;
  at: number;
  use: ColumnUse | undefined;
  samples: string[];
}) {
  return (
    <li className={styles.column}>
      <p className={styles.name}>
        <strong>{name}</strong>
        <span className={styles.samples}>
          {samples.length === 0 ? "empty" : samples.map((text) => <code key={text}>{text.slice(0, 28)}</code>)}
        </span>
      </p>
      <SelectField
        name={`use-${at}`}
        label={<>What “{name}” is</>}
        hideLabel
        choices={useChoices}
        defaultValue={use?.use ?? "none"}
      />
      <TextField
        name={`element-${at}`}
        label={<>Element in “{name}”</>}
        hideLabel
        placeholder="element"
        width={8}
        defaultValue={use?.element ?? ""}
      />
      <SelectField
        name={`unit-${at}`}
        label={<>Unit of “{name}”</>}
        hideLabel
        choices={unitChoices}
        empty="unit"
        width={8}
        defaultValue={use?.unit ?? ""}
      />
    </li>
  );
}

const formNames: Partial<Record<Question["id"], string>> = {
  "time-zone": "timeZone",
  "date-order": "dateOrder",
  "not-available": "notAvailable",
  "no-limit": "noLimit",
};

function Ask({ question }: { question: Question }) {
  const { title, why } = questionWords[question.id];
  const name = formNames[question.id] ?? question.id;
  const seen = question.examples.map((e) => `row ${e.row}, ${e.column}: ${e.text}`).join("; ");
  const concerns = seen || question.columns.slice(0, 8).join(", ");
  const hint = `${why} Seen: ${concerns}.`;
  if (question.id === "time-zone")
    return <SelectField name={name} label={title} hint={hint} choices={zones} empty="Choose" />;
  return (
    <RadioGroup
      name={name}
      legend={title}
      hint={hint}
      choices={question.options.map((value) => ({ value, label: answerLabels[value] ?? value }))}
      {...(question.blocking ? {} : { defaultValue: question.options[0] })}
    />
  );
}

function Modes({ modes, known }: { modes: string[]; known: Record<string, string> }) {
  return (
    <fieldset className={styles.modes}>
      <legend>What each calibration mode reports</legend>
      <p>Only needed where one file holds modes for solid parts and for coatings.</p>
      {modes.map((mode, at) => (
        <div key={mode}>
          <input type="hidden" name={`mode-${at}`} value={mode} />
          <SelectField
            name={`mode-quantity-${at}`}
            label={`“${mode}”`}
            choices={kindChoices}
            empty="As answered for all"
            defaultValue={known[mode] ?? ""}
          />
        </div>
      ))}
    </fieldset>
  );
}
