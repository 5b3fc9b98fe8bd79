import { Actions, ButtonLink } from "@/app/_components/button.tsx";
import { DataTable } from "@/app/_components/data-table.tsx";
import { EmptyState } from "@/app/_components/empty-state.tsx";
import { Entry, Ledger, PageHead } from "@/app/_components/entry.tsx";
import { ThumbBar } from "@/app/_components/thumb-bar.tsx";
import { paths } from "@/lib/platform/paths.ts";
import { database } from "@/lib/store/database.ts";
import { type Batch, listBatches } from "@/lib/store/imports.ts";
import { listItems } from "@/lib/store/items.ts";
import { itemStateWords } from "@/lib/wording/bench.ts";
import { plainDate } from "@/lib/wording/formats.ts";
import { categoryLabels, labelOf } from "@/lib/wording/labels.ts";
import { BenchTabs } from "./bench-tabs.tsx";

const batchWords: Record<Batch["state"], string> = {
  uploaded: "waiting: say what its columns are",
  imported: "loaded",
  undone: "taken back",
};

const counts = (batch: Batch, what: "total" | "accepted" | "setAside") =>
  batch.state === "uploaded" ? "" : batch.account[what];

export default async function BenchPage() {
  const db = database();
  const [items, batches] = await Promise.all([listItems(db), listBatches(db)]);
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
          {items.length === 0 ? (
            <EmptyState title="No items yet" headingLevel={3}>
              <p>Load the analyser’s file first, or describe the object in your hands as a new item.</p>
            </EmptyState>
          ) : (
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
