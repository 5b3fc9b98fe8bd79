import type { Clock } from "../platform/clock.ts";
import { signingKey } from "../platform/signing-key.ts";
import { type LogHead, signedText } from "../publication/log-head.ts";
import type { Database } from "../store/database.ts";
import { headAt, keepHead } from "../store/log-heads.ts";
import { lastEntry } from "../store/publications.ts";

/**
 * Signs the log's newest entry with the registry's key, unless it is signed already: in the wake of a publication, when
 * the server starts, and whenever the log is shown, so that an entry whose signing was interrupted is signed at the next
 * look. Null where nothing is published. It stands outside the publishing transaction: a key that cannot be read
 * must not keep an entry from being published.
 */
export async function signLogHead(
  db: Database,
  { dataDir, clock }: { dataDir: string; clock: Clock },
): Promise<LogHead | null> {
  const last = await lastEntry(db);
  if (!last) return null;
  const signed = await headAt(db, last.seq);
  if (signed) return signed;
  const { publicKey, sign } = signingKey(dataDir);
  const head = { seq: last.seq, hash: last.hash, signedAt: clock().toISOString() };
  return keepHead(db, { ...head, publicKey, signature: sign(signedText(head)) });
}
