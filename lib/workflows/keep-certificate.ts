import { requirePermission } from "../access/require-permission.ts";
import { keepPrivate } from "../files/private-files.ts";
import type { Context } from "../platform/context.ts";
import { done, type Outcome, refused } from "../quantity/problem.ts";
import { findCheckStandard, keepCertificate } from "../store/check-standards.ts";
import { inTransaction } from "../store/database.ts";

const mostBytes = 20_000_000;
/** The first bytes of what a certificate can be: PDF, PNG, JPEG, WebP. */
const signatures = [
  [0x25, 0x50, 0x44, 0x46],
  [0x89, 0x50, 0x4e, 0x47],
  [0xff, 0xd8, 0xff],
  [0x52, 0x49, 0x46, 0x46],
];

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
  const where = { file: name };
  if (bytes.length === 0) return refused({ code: "file-missing" });
  if (bytes.length > mostBytes)
    return refused({ code: "too-large", where, found: `${(bytes.length / 1e6).toFixed(1)} MB`, allowed: "20 MB" });
  if (!signatures.some((signature) => signature.every((byte, at) => bytes[at] === byte)))
    return refused({ code: "certificate-kind", where, found: name, allowed: "PDF, PNG, JPEG, WebP" });
  if (!(await findCheckStandard(context.db, { id }))) return refused({ code: "unknown-check-standard", found: id });
  const key = await keepPrivate(dataDir, bytes);
  return inTransaction(context.db, async (tx) => {
    await keepCertificate(tx, id, { key, name: name.slice(0, 200) });
    return done({ key });
  });
}
