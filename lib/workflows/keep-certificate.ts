import { requirePermission } from "../access/require-permission.ts";
import { certificateProblem } from "../files/certificate-file.ts";
import { keepPrivate } from "../files/private-files.ts";
import type { Context } from "../platform/context.ts";
import { done, type Outcome, refused } from "../quantity/problem.ts";
import { recordAct } from "../store/audit.ts";
import { findCheckStandard, keepCertificate } from "../store/check-standards.ts";
import { inTransaction } from "../store/database.ts";

/**
 * Keeps the certificate of a check standard as it came, for signed-in people of the bench only. The file is written before its record, so
 * that no record is without its file.
 *
 * Refused: no such standard, no file, more than 20 MB, what is neither a PDF nor a picture by its first bytes.
 */
export async function keepCertificateWorkflow(
  context: Context,
  dataDir: string,
  input: { id: string; name: string; bytes: Uint8Array },
): Promise<Outcome<{ key: string }>> {
  const permitted = requirePermission(context.person, "manage-instruments");
  if (!permitted.ok) return permitted;
  const { id, name, bytes } = input;
  const problem = certificateProblem(name, bytes);
  if (problem) return refused(problem);
  if (!(await findCheckStandard(context.db, { id }))) return refused({ code: "unknown-check-standard", found: id });
  const key = await keepPrivate(dataDir, bytes);
  return inTransaction(context.db, async (tx) => {
    await keepCertificate(tx, id, { key, name: name.slice(0, 200) });
    const of = { record: "check-standard", recordId: id, detail: { file: name.slice(0, 200) } };
    await recordAct(tx, { at: context.clock(), actor: permitted.value, action: "keep-certificate", ...of });
    return done({ key });
  });
}
