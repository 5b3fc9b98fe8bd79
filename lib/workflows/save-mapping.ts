import { requirePermission } from "../access/require-permission.ts";
import type { Context } from "../platform/context.ts";
import { done, type Outcome, refused } from "../quantity/problem.ts";
import { type Mapping, mappingSchema } from "../readings/mapping.ts";
import { recordAct } from "../store/audit.ts";
import { inTransaction } from "../store/database.ts";
import { findBatch, writeDraftMapping } from "../store/imports.ts";

/** Keeps what has been said so far of a waiting file's columns; null forgets it, and the header is read afresh. */
export async function saveMappingWorkflow(
  context: Context,
  input: { batchId: string; mapping: Mapping | null; instrumentId: string | null },
): Promise<Outcome<null>> {
  const permitted = requirePermission(context.person, "import-readings");
  if (!permitted.ok) return permitted;
  const mapping = input.mapping === null ? null : JSON.stringify(mappingSchema.parse(input.mapping));
  return inTransaction(context.db, async (tx) => {
    const batch = await findBatch(tx, input.batchId);
    if (!batch) return refused({ code: "unknown-import", found: input.batchId });
    if (batch.state !== "uploaded")
      return refused({ code: "already-imported", where: { file: batch.fileName }, found: batch.state });
    await writeDraftMapping(tx, batch.id, mapping, input.instrumentId);
    const of = { record: "batch", recordId: batch.id, detail: { file: batch.fileName } };
    await recordAct(tx, { at: context.clock(), actor: permitted.value, action: "save-mapping", ...of });
    return done(null);
  });
}
