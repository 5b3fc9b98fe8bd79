import type { Metadata } from "next";
import { PageHead } from "@/app/_components/entry.tsx";
import { paths } from "@/lib/platform/paths.ts";
import { database } from "@/lib/store/database.ts";
import { readingGroups } from "@/lib/store/readings.ts";
import { BenchTabs } from "../../bench-tabs.tsx";
import { ItemsForm } from "./items-form.tsx";
import { proposedNames } from "./proposed-names.ts";

export const metadata: Metadata = { title: "New items out of readings" };

type Props = { searchParams: Promise<{ file?: string; by?: string }> };

/** Names to make at most at once; beyond that a page is no longer one that anybody confirms. */
const most = 60;

export default async function ItemsFromReadingsPage({ searchParams }: Props) {
  const { file, by: asked } = await searchParams;
  const by = asked === "note" ? "note" : "sample";
  const other = by === "sample" ? "note" : "sample";
  const groups = await readingGroups(database(), { state: "unassigned", ...(file ? { batchId: file } : {}) }, by);
  const named = groups.flatMap(({ text, count }) =>
    text === null || text.trim() === "" ? [] : [{ group: text, readings: count, ...proposedNames(text) }],
  );
  const link = `${paths.benchItemsFromReadings()}?${new URLSearchParams({ ...(file ? { file } : {}), by: other })}`;
  return (
    <>
      <PageHead title="New items out of readings">
        <p>
          Each {by === "sample" ? "sample" : "note"} that a file names and nobody has put on a part yet. Say what it is;
          names of one item become its parts. Everything can be changed later, and taken back in one step.
        </p>
      </PageHead>
      <BenchTabs current={paths.benchReadings()} />
      <div className="flow">
        <p>
          <a href={link}>{by === "sample" ? "Go by the notes instead" : "Go by the samples instead"}</a>
        </p>
        {named.length > most ? (
          <p>
            The first {most} of {named.length}. The others come when these are made.
          </p>
        ) : null}
        <ItemsForm rows={named.slice(0, most)} by={by} batchId={file ?? null} />
      </div>
    </>
  );
}
