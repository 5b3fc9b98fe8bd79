import { Actions, ButtonLink } from "@/app/_components/button.tsx";
import { DataTable } from "@/app/_components/data-table.tsx";
import { EmptyState } from "@/app/_components/empty-state.tsx";
import { Entry, Ledger, PageHead } from "@/app/_components/entry.tsx";
import { SelectField } from "@/app/_components/field.tsx";
import { Pager } from "@/app/_components/pager.tsx";
import { ThumbBar } from "@/app/_components/thumb-bar.tsx";
import { paths } from "@/lib/platform/paths.ts";
import { database } from "@/lib/store/database.ts";
import { type Batch, listBatches } from "@/lib/store/imports.ts";
import { itemStates } from "@/lib/store/items.ts";
import { itemsAtBench } from "@/lib/store/items-at-bench.ts";
import { benchList, itemStateWords } from "@/lib/wording/bench.ts";
import { plainDate } from "@/lib/wording/formats.ts";
import { categoryLabels, labelOf } from "@/lib/wording/labels.ts";
import { benchHref, benchQuery, rowsShown } from "./bench-query.ts";
import { BenchTabs } from "./bench-tabs.tsx";
import { FindItemsForm } from "./find-items-form.tsx";

const batchWords: Record<Batch["state"], string> = {
  uploaded: "waiting: say what its columns are",
  imported: "loaded",
  undone: "taken back",
};

const counts = (batch: Batch, what: "total" | "accepted" | "setAside") =>
  batch.state === "uploaded" ? "" : batch.account[what];

type Props = { searchParams: Promise<Record<string, string | string[] | undefined>> };

export default async function BenchPage({ searchParams }: Props) {
  const query = benchQuery(await searchParams);
  const { find, state, start } = query;
  const db = database();
  const [{ items, total }, files] = await Promise.all([
    itemsAtBench(db, { find, state }, { start, take: rowsShown }),
    // One more than is shown tells whether there is a next page.
    listBatches(db, { start: query.files, take: rowsShown + 1 }),
  ]);
  const batches = files.slice(0, rowsShown);
  const narrowed = find !== undefined || state !== undefined;
  return (
    <>
      <PageHead title="Bench">
        <p>
          From the analyser’s file to a page anybody can read: load readings, say what they were taken on, look,
          publish.
        </p>
      </PageHead>
      <BenchTabs current={paths.bench()} />
      <Ledger>
        <Entry title="Items" id="items">
          <Actions>
            <ButtonLink kind="primary" href={paths.benchImport()}>
              Load a file
            </ButtonLink>
            <ButtonLink href={paths.benchNewItem()}>New item</ButtonLink>
          </Actions>
          {narrowed || total > rowsShown / 2 ? (
            <FindItemsForm action={paths.bench()} find={find}>
              <SelectField
                name="state"
                label={benchList.state}
                empty={benchList.anyState}
                defaultValue={state ?? ""}
                choices={itemStates.map((value) => ({ value, label: itemStateWords[value] }))}
              />
            </FindItemsForm>
          ) : null}
          {items.length === 0 ? (
            <EmptyState title={narrowed || start > 0 ? benchList.none : "No items yet"} headingLevel={3}>
              <p>
                {narrowed || start > 0 ? (
                  <a href={paths.bench()}>{benchList.all}</a>
                ) : (
                  "Load the analyser’s file first, or describe the object in your hands as a new item."
                )}
              </p>
            </EmptyState>
          ) : (
            <>
              {total > items.length ? (
                <p className="soft">{benchList.some(start + 1, start + items.length, total)}</p>
              ) : null}
              <DataTable
                caption="Items"
                hideCaption
                rows={items}
                rowKey={(item) => item.id}
                columns={[
                  { key: "name", head: "Item", cell: (item) => <a href={paths.benchItem(item.id)}>{item.name}</a> },
                  { key: "category", head: "Kind", cell: (item) => labelOf(categoryLabels, item.category) },
                  { key: "state", head: "State", cell: (item) => itemStateWords[item.state] },
                ]}
              />
              <Pager
                label={benchList.moreItems}
                first={start > 0 ? benchHref(query, { start: 0 }) : null}
                next={start + items.length < total ? benchHref(query, { start: start + rowsShown }) : null}
                nextText={benchList.nextItems}
                firstText={benchList.firstItems}
              />
            </>
          )}
        </Entry>
        {batches.length > 0 ? (
          <Entry title="Files" id="files" aside="kept byte for byte">
            <DataTable
              caption="Files"
              hideCaption
              rows={batches}
              rowKey={(batch) => batch.id}
              columns={[
                {
                  key: "file",
                  head: "File",
                  nowrap: true,
                  cell: (batch) => <a href={paths.benchImportBatch(batch.id)}>{batch.fileName}</a>,
                },
                { key: "state", head: "State", cell: (batch) => batchWords[batch.state] },
                { key: "rows", head: "Rows", numeric: true, cell: (batch) => counts(batch, "total") },
                { key: "kept", head: "Kept", numeric: true, cell: (batch) => counts(batch, "accepted") },
                { key: "aside", head: "Set aside", numeric: true, cell: (batch) => counts(batch, "setAside") },
                {
                  key: "day",
                  head: "Loaded on",
                  cell: (batch) => plainDate(batch.createdAt.toISOString().slice(0, 10)),
                  nowrap: true,
                },
              ]}
            />
            <Pager
              label={benchList.moreFiles}
              first={query.files > 0 ? `${benchHref(query, { files: 0 })}#files` : null}
              next={files.length > rowsShown ? `${benchHref(query, { files: query.files + rowsShown })}#files` : null}
              nextText={benchList.nextFiles}
              firstText={benchList.firstFiles}
            />
          </Entry>
        ) : null}
      </Ledger>
      <ThumbBar>
        <ButtonLink kind="primary" href={paths.benchImport()}>
          Load a file
        </ButtonLink>
        <ButtonLink href={paths.benchHand()}>By hand</ButtonLink>
      </ThumbBar>
    </>
  );
}
