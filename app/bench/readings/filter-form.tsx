import { Button } from "@/app/_components/button.tsx";
import { Disclosure } from "@/app/_components/disclosure.tsx";
import { SelectField, TextField } from "@/app/_components/field.tsx";
import { paths } from "@/lib/platform/paths.ts";
import { elementTitle } from "@/lib/wording/elements.ts";
import { readingListWords, readingStateWords } from "@/lib/wording/reading-list.ts";
import { narrowings, type ReadingQuery } from "./reading-filters.ts";
import styles from "./reading-list.module.css";

type Choices = { value: string; label: string }[];
const states: Choices = Object.entries(readingStateWords).map(([value, { choice }]) => ({ value, label: choice }));

/** What the list is narrowed to. A plain form: its address can be kept, sent on and come back to. */
export function FilterForm({
  query,
  files,
  sessions,
  elements,
  partsOf,
}: {
  query: ReadingQuery;
  /** Of how many items parts are offered, and of how many they could be; null where all are. */
  partsOf: { items: number; total: number } | null;
  files: Choices;
  sessions: Choices;
  elements: string[];
}) {
  const narrowed = narrowings(query);
  return (
    <form method="get" action={paths.benchReadings()} className="flow">
      <div className={styles.choose}>
        <SelectField name="state" label="Show" choices={states} defaultValue={query.state} />
        <TextField
          name="find"
          label="Only those with these letters"
          hint="In sample, spot, note and number"
          type="search"
          width={18}
          defaultValue={query.find ?? ""}
        />
        {partsOf ? (
          <TextField
            name="partsOf"
            label="Offer parts of items with these letters"
            hint={readingListWords.partsOf(partsOf.items, partsOf.total)}
            type="search"
            width={18}
            defaultValue={query.partsOf ?? ""}
          />
        ) : null}
        <Button type="submit">Show</Button>
      </div>
      <Disclosure
        summary={narrowed > 0 ? `File, session, element, date (${narrowed} chosen)` : "File, session, element, date"}
        open={narrowed > (query.find ? 1 : 0)}
      >
        <div className={styles.choose}>
          <SelectField name="file" label="File" empty="Any" choices={files} defaultValue={query.file ?? ""} />
          {sessions.length > 0 ? (
            <SelectField
              name="session"
              label="Session"
              empty="Any"
              choices={sessions}
              defaultValue={query.session ?? ""}
            />
          ) : null}
          <SelectField
            name="element"
            label="With a result for"
            empty="Any element"
            choices={elements.map((value) => ({ value, label: elementTitle(value) }))}
            defaultValue={query.element ?? ""}
          />
          <TextField name="from" label="From the day" type="date" width={14} defaultValue={query.from ?? ""} />
          <TextField name="to" label="To the day" type="date" width={14} defaultValue={query.to ?? ""} />
          {query.note === undefined ? null : <input type="hidden" name="note" value={query.note} />}
          {query.sample === undefined ? null : <input type="hidden" name="sample" value={query.sample} />}
          <Button type="submit">Narrow the list</Button>
        </div>
        {narrowed > 0 ? (
          <p>
            <a href={`${paths.benchReadings()}?state=${query.state}`}>Let go of all of these</a>
          </p>
        ) : null}
      </Disclosure>
    </form>
  );
}
