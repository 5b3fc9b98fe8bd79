import { type Outcome, refused } from "../quantity/problem.ts";
import { decodeBytes } from "../readings/decode-bytes.ts";
import { readTable } from "../readings/read-table.ts";
import type { Table } from "../readings/table.ts";
import type { Db } from "./database.ts";
import { type Batch, rawBytes } from "./imports.ts";

/** The table of an import, read again from its raw file: nothing but the bytes is kept. */
export async function batchTable(db: Db, batch: Batch): Promise<Outcome<Table>> {
  const decoded = decodeBytes(await rawBytes(db, batch.rawFileId));
  const table = decoded.ok ? readTable(decoded.value.text) : decoded;
  if (table.ok) return table;
  return refused(...table.problems.map((p) => ({ ...p, where: { ...p.where, file: batch.fileName } })));
}
