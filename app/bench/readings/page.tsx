import type { Metadata } from "next";
import { Button, ButtonLink } from "@/app/_components/button.tsx";
import { EmptyState } from "@/app/_components/empty-state.tsx";
import { PageHead } from "@/app/_components/entry.tsx";
import { TextField } from "@/app/_components/field.tsx";
import { paths } from "@/lib/platform/paths.ts";
import { database } from "@/lib/store/database.ts";
import { listComponents } from "@/lib/store/items.ts";
import { countReadings, listReadings } from "@/lib/store/readings.ts";
import { BenchTabs } from "../bench-tabs.tsx";
import { listedReading } from "./listed-reading.ts";
import styles from "./reading-list.module.css";
import { ReadingList } from "./reading-list.tsx";

export const metadata: Metadata = { title: "Unassigned readings" };

const most = 500;

export default async function ReadingsPage({
  searchParams,
}: {
  searchParams: Promise<{ file?: string; find?: string }>;
}) {
  const { file, find } = await searchParams;
  const db = database();
  const filter = { unassigned: true, ...(file ? { batchId: file } : {}), ...(find ? { text: find } : {}) };
  const [readings, total, parts] = await Promise.all([
    listReadings(db, filter, most),
    countReadings(db, filter),
    listComponents(db),
  ]);
  return (
    <>
      <PageHead title="Unassigned readings">
        <p>
          Readings that belong to no part yet. Tick them, say which part they were taken on, and they count towards its
          number.
        </p>
      </PageHead>
      <BenchTabs current={paths.benchReadings()} />
      <form method="get" action={paths.benchReadings()} className={styles.range}>
        {file ? <input type="hidden" name="file" value={file} /> : null}
        <TextField
          name="find"
          label="Only those with these letters"
          hint="Looked for in sample, spot, note and number"
          type="search"
          width={20}
          defaultValue={find ?? ""}
        />
        <Button type="submit">Show</Button>
      </form>
      {readings.length === 0 ? (
        <EmptyState title={find ? "Nothing with these letters" : "Every reading has its part"}>
          <p>
            {find ? <a href={paths.benchReadings()}>Show all unassigned readings</a> : "Load a file to bring in more."}
          </p>
        </EmptyState>
      ) : (
        <>
          {total > readings.length ? (
            <p>
              The first {readings.length} of {total}.
            </p>
          ) : null}
          {parts.length === 0 ? (
            <p>
              There is no part to put them on yet.{" "}
              <ButtonLink href={paths.benchNewItem()}>Make an item first</ButtonLink>
            </p>
          ) : null}
          <ReadingList
            readings={readings.map(listedReading)}
            parts={parts.map((p) => ({ value: p.id, label: p.label }))}
          />
        </>
      )}
    </>
  );
}
