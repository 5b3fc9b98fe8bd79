import { requirePermission } from "../access/require-permission.ts";
import type { Context } from "../platform/context.ts";
import { sha256 } from "../platform/sha256.ts";
import { done, type Outcome, refused } from "../quantity/problem.ts";
import { openFile } from "../readings/open-file.ts";
import { recordAct } from "../store/audit.ts";
import { inTransaction } from "../store/database.ts";
import { type Batch, batchOfFile, createBatch, keepRawFile } from "../store/imports.ts";

/** The largest instrument file taken, in bytes. 100,000 readings of 20 elements are about 30 MB. */
export const largestFile = 50_000_000;

/**
 * Keeps a file byte for byte and opens an import that waits for its mapping. The same file again is recognised: the
 * answer is the import it already has. Refused where the file is too large or holds no table; nothing is kept then.
 */
export async function receiveFileWorkflow(
  context: Context,
  file: { name: string; bytes: Uint8Array; source?: "file" | "hand" },
): Promise<Outcome<{ batch: Batch; known: boolean }>> {
  const permitted = requirePermission(context.person, "import-readings");
  if (!permitted.ok) return permitted;
  const where = { file: file.name };
  if (file.bytes.length > largestFile)
    return refused({ code: "too-large", where, found: megabytes(file.bytes.length), allowed: megabytes(largestFile) });
  const digest = sha256(file.bytes);
  const known = await batchOfFile(context.db, digest);
  if (known) return done({ batch: known, known: true });
  const opened = await openFile(file.bytes, { maxBytes: largestFile });
  if (!opened.ok) return refused(...opened.problems.map((p) => ({ ...p, where: { ...p.where, ...where } })));
  return inTransaction(context.db, async (tx) => {
    const rawFileId = await keepRawFile(tx, { name: file.name, bytes: file.bytes, sha256: digest });
    const source = file.source ?? "file";
    const batch = await createBatch(tx, { rawFileId, fileName: file.name, source, createdById: permitted.value.id });
    const of = { record: "batch", recordId: batch.id, detail: { file: file.name } };
    await recordAct(tx, { at: context.clock(), actor: permitted.value, action: "receive-file", ...of });
    return done({ batch, known: false });
  });
}

const megabytes = (bytes: number): string => `${(bytes / 1e6).toFixed(1)} MB`;
