import { ActionForm } from "@/app/_components/action-form.tsx";
import { Actions, ButtonLink } from "@/app/_components/button.tsx";
import { DataTable } from "@/app/_components/data-table.tsx";
import { Disclosure } from "@/app/_components/disclosure.tsx";
import { Entry, Ledger } from "@/app/_components/entry.tsx";
import { TextField } from "@/app/_components/field.tsx";
import { Warning } from "@/app/_components/warning.tsx";
import { paths } from "@/lib/platform/paths.ts";
import type { Table } from "@/lib/readings/table.ts";
import { database } from "@/lib/store/database.ts";
import { type AsideRow, asideRows, type Batch, publicationsOnBatch } from "@/lib/store/imports.ts";
import { countReadings, sampleGroups } from "@/lib/store/readings.ts";
import { problemSentence } from "@/lib/wording/problems.ts";
import { ImportSessions } from "../../sessions/import-sessions.tsx";
import { mendRow, redoImport, undoImport } from "./actions.ts";

/** A file that was loaded: where every row went, what was set aside and how to mend it, and what to do next. */
export async function LoadedImport({ batch, table }: { batch: Batch; table: Table }) {
  const db = database();
  const [rows, groups, readings, pages] = await Promise.all([
    asideRows(db, batch.id),
    sampleGroups(db, batch.id),
    countReadings(db, { batchId: batch.id }),
    publicationsOnBatch(db, batch.id),
  ]);
  const open = rows.filter((row) => row.mended === null);
  const unassigned = groups.reduce((sum, group) => sum + group.unassigned, 0);
  return (
    <Ledger>
      {batch.state === "undone" ? (
        <Warning>This import was taken back. Its readings count nowhere until it is brought back.</Warning>
      ) : null}
      <Entry title="Every row accounted for" id="account" aside={`${readings} readings`}>
        <DataTable
          caption="Rows of the file"
          hideCaption
          rows={accountRows(batch)}
          rowKey={(row) => row.what}
          columns={[
            { key: "what", head: "Rows", cell: (row) => row.what },
            { key: "count", head: "Count", numeric: true, cell: (row) => row.count },
          ]}
        />
      </Entry>
      {open.length > 0 ? (
        <Entry title="Set aside" id="aside" aside={`${open.length} to look at`}>
          <p>
            Nothing is lost: mend a row here, or{" "}
            <a href={`${paths.benchImportBatch(batch.id)}/set-aside.csv`}>download them all</a>.
          </p>
          {open.slice(0, 100).map((row) => (
            <Aside key={row.id} row={row} batch={batch} table={table} />
          ))}
          {open.length > 100 ? <p>And {open.length - 100} more in the download.</p> : null}
        </Entry>
      ) : null}
      {batch.state === "imported" ? <ImportSessions batchId={batch.id} /> : null}
      <Entry
        title="Samples"
        id="samples"
        aside={unassigned === 0 ? "all on parts" : `${unassigned} readings without a part`}
      >
        {batch.state === "imported" && unassigned > 0 ? (
          <Actions>
            <ButtonLink kind="primary" href={`${paths.benchReadings()}?file=${batch.id}`}>
              Put readings on parts
            </ButtonLink>
          </Actions>
        ) : null}
        <DataTable
          caption="What the file calls its samples"
          rows={groups}
          rowKey={(group) => group.sample ?? ""}
          columns={[
            { key: "sample", head: "Sample", cell: (group) => group.sample ?? "not named" },
            { key: "total", head: "Readings", numeric: true, cell: (group) => group.total },
            { key: "open", head: "Without a part", numeric: true, cell: (group) => group.unassigned },
          ]}
        />
      </Entry>
      <Entry title="Take it back" id="undo">
        {batch.state === "undone" ? (
          <ActionForm action={redoImport} submit="Bring it back" submitKind="secondary">
            <input type="hidden" name="batchId" value={batch.id} />
          </ActionForm>
        ) : pages.length > 0 ? (
          <p>
            Published pages stand on it ({pages.map((p) => `${p.slug}, revision ${p.revision}`).join("; ")}), so it
            stays.
          </p>
        ) : (
          <Disclosure summary="Take this import back">
            <p>Its readings will count nowhere. The file and every assignment are kept, and it can be brought back.</p>
            <ActionForm action={undoImport} submit="Yes, take it back" submitKind="secondary">
              <input type="hidden" name="batchId" value={batch.id} />
            </ActionForm>
          </Disclosure>
        )}
      </Entry>
    </Ledger>
  );
}

const accountRows = ({ account }: Batch) => [
  { what: "Read and kept", count: account.accepted },
  { what: "Set aside, with the reason", count: account.setAside },
  { what: "Blank", count: account.blank },
  { what: "Header, units and lines above it", count: account.header },
  { what: "All rows of the file", count: account.total },
];

function Aside({ row, batch, table }: { row: AsideRow; batch: Batch; table: Table }) {
  const sentences = row.problems.map((p) =>
    problemSentence({
      code: p.code,
      where: { row: row.row, ...(p.column ? { column: p.column } : {}) },
      found: p.found,
      allowed: p.expected,
    }),
  );
  const wrong = new Set(row.problems.map((p) => p.column));
  const width = Math.max(row.cells.length, table.columns.length);
  return (
    <section>
      <ul>
        {sentences.map((text) => (
          <li key={text}>{text}</li>
        ))}
      </ul>
      <Disclosure summary={`Mend row ${row.row}`}>
        <ActionForm action={mendRow} submit="Read this row again" submitKind="secondary">
          <input type="hidden" name="batchId" value={batch.id} />
          <input type="hidden" name="rowId" value={row.id} />
          {Array.from({ length: width }, (_, at) => {
            const column = table.columns[at] ?? `cell ${at + 1}`;
            const flagged = wrong.has(column);
            return (
              <TextField
                key={column}
                name={`cell-${at}`}
                id={`${row.id}-${at}`}
                label={flagged ? `${column} (this one)` : column}
                defaultValue={row.cells[at] ?? ""}
                width={24}
              />
            );
          })}
        </ActionForm>
      </Disclosure>
    </section>
  );
}
