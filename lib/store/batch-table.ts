import { type Outcome, refused } from "../quantity/problem.ts";
import { mappingSchema } from "../readings/mapping.ts";
import { type OpenedFile, openFile } from "../readings/open-file.ts";
import type { Table } from "../readings/table.ts";
import type { Db } from "./database.ts";
import { type Batch, rawBytes } from "./imports.ts";

/**
 * The file of an import, read again from its raw bytes: nothing but the bytes is kept. Of a workbook the sheet asked for, else the one
 * that its mapping names, else the first with a table.
 */
export async function batchFile(db: Db, batch: Batch, sheet?: string | null): Promise<Outcome<OpenedFile>> {
  const opened = await openFile(await rawBytes(db, batch.rawFileId), { sheet: sheet ?? sheetOf(batch) });
  if (opened.ok) return opened;
  return refused(...opened.problems.map((p) => ({ ...p, where: { ...p.where, file: batch.fileName } })));
}

/** The table alone. */
export async function batchTable(db: Db, batch: Batch, sheet?: string | null): Promise<Outcome<Table>> {
  const opened = await batchFile(db, batch, sheet);
  return opened.ok ? { ok: true, value: opened.value.table } : opened;
}

const sheetOf = (batch: Batch): string | null =>
  batch.mapping === null ? null : mappingSchema.parse(JSON.parse(batch.mapping)).sheet;
