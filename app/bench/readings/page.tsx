import type { Metadata } from "next";
import { ButtonLink } from "@/app/_components/button.tsx";
import { EmptyState } from "@/app/_components/empty-state.tsx";
import { PageHead } from "@/app/_components/entry.tsx";
import { Pager } from "@/app/_components/pager.tsx";
import { currentPerson } from "@/lib/access/current-person.ts";
import { paths } from "@/lib/platform/paths.ts";
import { database } from "@/lib/store/database.ts";
import { listBatches } from "@/lib/store/imports.ts";
import { partsToPutOn } from "@/lib/store/items-at-bench.ts";
import { countReadings, listReadings, readingGroups } from "@/lib/store/readings.ts";
import { listSessions } from "@/lib/store/sessions.ts";
import { readingListWords, readingStateWords } from "@/lib/wording/reading-list.ts";
import { BenchTabs } from "../bench-tabs.tsx";
import { FilterForm } from "./filter-form.tsx";
import { listedReading } from "./listed-reading.ts";
import { filterOf, narrowings, type ReadingQuery, readingQuery } from "./reading-filters.ts";
import { ReadingList } from "./reading-list.tsx";

export const metadata: Metadata = { title: "Readings" };

/** Rows of one page of the list: as many as tick, sort and scroll without waiting. */
const most = 500;
/** Of how many items the parts are offered at once. */
const mostItems = 200;

type Props = { searchParams: Promise<Record<string, string | undefined>> };

export default async function ReadingsPage({ searchParams }: Props) {
  const params = await searchParams;
  const query = readingQuery.parse(params);
  const start = Math.max(0, Number.parseInt(params["start"] ?? "0", 10) || 0);
  const db = database();
  const asked = await filterOf(db, query);
  const { elements } = asked;
  const filter = { ...asked.filter, viewerId: (await currentPerson())?.id ?? null };
  const [readings, total, offered, batches, sessions, samples, notes] = await Promise.all([
    listReadings(db, filter, most, start),
    countReadings(db, filter),
    partsToPutOn(db, query.partsOf, mostItems),
    listBatches(db),
    listSessions(db),
    readingGroups(db, filter, "sample"),
    readingGroups(db, filter, "note"),
  ]);
  const words = readingStateWords[query.state];
  const named = samples.filter((group) => group.text !== null && group.text !== "");
  return (
    <>
      <PageHead title={words.title}>
        <p>{query.state === "unassigned" ? readingListWords.lead : readingListWords.leadOthers}</p>
      </PageHead>
      <BenchTabs current={paths.benchReadings()} />
      <FilterForm
        query={query}
        partsOf={offered.total > offered.items || query.partsOf !== undefined ? offered : null}
        elements={elements}
        files={batches
          .filter((batch) => batch.state === "imported")
          .map((batch) => ({ value: batch.id, label: batch.fileName }))}
        sessions={sessions.map((s) => ({
          value: s.id,
          label: [s.startedAt.slice(0, 16).replace("T", " "), s.place].filter(Boolean).join(", "),
        }))}
      />
      {readings.length === 0 ? (
        <EmptyState title={narrowings(query) > 0 ? "Nothing like this" : words.none}>
          <p>
            {narrowings(query) > 0 ? (
              <a href={paths.benchReadings()}>Show all unassigned readings</a>
            ) : (
              "Load a file to bring in more."
            )}
          </p>
        </EmptyState>
      ) : (
        <>
          {total > readings.length ? (
            <p>
              {start + 1} to {start + readings.length} of {total}.
            </p>
          ) : null}
          {query.state === "unassigned" && named.length > 0 ? (
            <p>
              <ButtonLink href={`${paths.benchItemsFromReadings()}${query.file ? `?file=${query.file}` : ""}`}>
                {readingListWords.newItems(named.length)}
              </ButtonLink>
            </p>
          ) : null}
          {offered.parts.length === 0 && query.partsOf === undefined ? (
            <p>
              There is no part to put them on yet. <a href={paths.benchNewItem()}>Make an item first</a>, or make items
              out of their names.
            </p>
          ) : null}
          <ReadingList
            readings={readings.map(listedReading)}
            parts={offered.parts.map((p) => ({ value: p.id, label: p.label }))}
            notes={notes.flatMap((group) => group.text ?? []).filter((text) => text !== "")}
            state={query.state}
          />
          <Pager
            first={start > 0 ? onward(query, 0) : null}
            next={start + readings.length < total ? onward(query, start + most) : null}
            nextText="Next readings"
            firstText="Back to the first readings"
          />
        </>
      )}
    </>
  );
}

function onward(query: ReadingQuery, start: number): string {
  const params = new URLSearchParams();
  for (const [key, value] of Object.entries(query)) if (value !== undefined) params.set(key, value);
  if (start > 0) params.set("start", String(start));
  return `${paths.benchReadings()}?${params}`;
}
