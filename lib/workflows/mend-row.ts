import { requirePermission } from "../access/require-permission.ts";
import type { Context } from "../platform/context.ts";
import { done, type Outcome, refused } from "../quantity/problem.ts";
import { mappingSchema } from "../readings/mapping.ts";
import { mendRow } from "../readings/read-rows.ts";
import { recordAct } from "../store/audit.ts";
import { batchTable } from "../store/batch-table.ts";
import { inTransaction } from "../store/database.ts";
import {
  asideRows,
  countMended,
  findBatch,
  insertReadings,
  markMended,
  readColumns,
  writeColumns,
} from "../store/imports.ts";
import { packReading, parseColumns, resultPacker } from "../store/reading-results.ts";

/**
 * Reads a set-aside row again with its cells mended. The raw file stays as it came; the row keeps what was written
 * beside what it was mended to. What is still wrong is answered with its column, and nothing is written.
 */
export async function mendRowWorkflow(
  context: Context,
  input: { batchId: string; rowId: string; cells: string[] },
): Promise<Outcome<number>> {
  const permitted = requirePermission(context.person, "import-readings");
  if (!permitted.ok) return permitted;
  const batch = await findBatch(context.db, input.batchId);
  if (!batch || batch.mapping === null) return refused({ code: "unknown-import", found: input.batchId });
  const table = await batchTable(context.db, batch);
  if (!table.ok) return table;
  const mapping = mappingSchema.parse(JSON.parse(batch.mapping));
  return inTransaction(context.db, async (tx) => {
    const row = (await asideRows(tx, batch.id)).find((r) => r.id === input.rowId);
    if (!row) return refused({ code: "unknown-row", found: input.rowId });
    if (row.mended) return refused({ code: "row-already-mended", where: { row: row.row } });
    const mended = mendRow(table.value, mapping, row.row, input.cells, { now: context.clock().getTime() });
    if (!mended.ok)
      return refused(
        ...mended.setAside.problems.map((p) => ({
          code: p.code,
          where: { file: batch.fileName, row: row.row, ...(p.column ? { column: p.column } : {}) },
          found: p.found,
          allowed: p.expected,
        })),
      );
    const packer = resultPacker(parseColumns(await readColumns(tx, batch.id)));
    const by = { byId: permitted.value.id, at: context.clock() };
    await insertReadings(tx, batch.id, [packReading(mended.reading, packer.pack)], by);
    await writeColumns(tx, batch.id, JSON.stringify(packer.columns()));
    await markMended(tx, row.id, { cells: input.cells, ...by });
    await countMended(tx, batch.id);
    const of = { record: "batch", recordId: batch.id, detail: { file: batch.fileName, row: row.row } };
    await recordAct(tx, { at: by.at, actor: permitted.value, action: "mend-row", ...of });
    return done(row.row);
  });
}
