import type { Metadata } from "next";
import { PageHead } from "@/app/_components/entry.tsx";
import { requirePerson } from "@/lib/access/require-person.ts";
import { paths } from "@/lib/platform/paths.ts";
import { database } from "@/lib/store/database.ts";
import { listInstruments } from "@/lib/store/instruments.ts";
import { tableWords } from "@/lib/wording/table-sheets.ts";
import { largestPhoto } from "@/lib/workflows/add-photo.ts";
import { BenchTabs } from "../bench-tabs.tsx";
import { TableBook } from "./table-book.tsx";

export const metadata: Metadata = { title: "At the table" };

/** For the phone beside the analyser: new item, photo, spots and readings, kept there until they are sent. */
export default async function TablePage() {
  const person = await requirePerson("see-bench", paths.benchTable());
  const instruments = await listInstruments(database());
  return (
    <>
      <PageHead title="At the table">
        <p>{tableWords.lead}</p>
        <noscript>
          <p>
            This page needs scripts. Without them, make <a href={paths.benchNewItem()}>a new item</a> and load its
            photos and readings from there.
          </p>
        </noscript>
      </PageHead>
      <BenchTabs current={paths.benchTable()} />
      <TableBook
        personId={person.id}
        largestPhoto={largestPhoto}
        zones={["UTC", ...Intl.supportedValuesOf("timeZone")]}
        instruments={instruments.map(({ id, name, errorK, timeZone }) => ({ id, name, errorK, timeZone }))}
      />
    </>
  );
}
