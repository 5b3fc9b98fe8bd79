import { requirePermission } from "../access/require-permission.ts";
import type { Context } from "../platform/context.ts";
import { done, type Outcome, refused } from "../quantity/problem.ts";
import { recordAct } from "../store/audit.ts";
import { inTransaction } from "../store/database.ts";
import { type BatchState, batchOfFile, findBatch, publicationsOnBatch, setBatchState } from "../store/imports.ts";

/** Takes an import back: its readings count nowhere, the file and all assignments stay. Refused once a page stands on it. */
export async function undoImportWorkflow(context: Context, batchId: string): Promise<Outcome<BatchState>> {
  const permitted = requirePermission(context.person, "undo-import");
  if (!permitted.ok) return permitted;
  return inTransaction(context.db, async (tx) => {
    const batch = await findBatch(tx, batchId);
    if (!batch) return refused({ code: "unknown-import", found: batchId });
    if (batch.state !== "imported")
      return refused({ code: "import-not-loaded", where: { file: batch.fileName }, found: batch.state });
    const [page] = await publicationsOnBatch(tx, batchId);
    if (page)
      return refused({
        code: "import-published",
        where: { file: batch.fileName },
        found: `${page.slug}, revision ${page.revision}`,
      });
    await setBatchState(tx, batchId, "undone", context.clock());
    const of = { record: "batch", recordId: batchId, detail: { file: batch.fileName } };
    await recordAct(tx, { at: context.clock(), actor: permitted.value, action: "undo-import", ...of });
    return done("undone" as const);
  });
}

/** Brings an import back that was undone, with all its assignments. */
export async function redoImportWorkflow(context: Context, batchId: string): Promise<Outcome<BatchState>> {
  const permitted = requirePermission(context.person, "undo-import");
  if (!permitted.ok) return permitted;
  return inTransaction(context.db, async (tx) => {
    const batch = await findBatch(tx, batchId);
    if (!batch) return refused({ code: "unknown-import", found: batchId });
    if (batch.state !== "undone")
      return refused({ code: "import-not-undone", where: { file: batch.fileName }, found: batch.state });
    const other = await batchOfFile(tx, batch.sha256);
    if (other) return refused({ code: "already-imported", where: { file: batch.fileName }, found: other.fileName });
    await setBatchState(tx, batchId, "imported", context.clock());
    const of = { record: "batch", recordId: batchId, detail: { file: batch.fileName } };
    await recordAct(tx, { at: context.clock(), actor: permitted.value, action: "redo-import", ...of });
    return done("imported" as const);
  });
}
