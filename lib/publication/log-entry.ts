import { DomainError } from "../quantity/domain-error.ts";
import { canonicalJson, type Sha256 } from "./canonical-json.ts";
import type { LogEntry, Snapshot } from "./snapshot.ts";

/** `previousHash` of the first entry: 64 zeros. */
export const noPreviousHash = "0".repeat(64);

export type LogEntryFields = Omit<LogEntry, "hash">;

/** The text that an entry's hash is made over: JCS({ seq, slug, revision, kind, publishedAt, snapshotSha256, previousHash }). */
export function sealedText(entry: LogEntryFields): string {
  const { seq, slug, revision, kind, publishedAt, snapshotSha256, previousHash } = entry;
  return canonicalJson({ seq, slug, revision, kind, publishedAt, snapshotSha256, previousHash });
}

/**
 * The hash that seals an entry: sha256(JCS({ seq, slug, revision, kind, publishedAt, snapshotSha256, previousHash })),
 * 64 lower-case hex digits. JCS is RFC 8785. Only these seven members enter, whatever else the object carries.
 */
export const hashLogEntry = (entry: LogEntryFields, sha256: Sha256): string => sha256(sealedText(entry));

/**
 * The log entry that publishes `snapshot` after `previous` (null: the first of all), and the canonical text to store
 * beside it, whose SHA-256 the entry holds. The text is stored byte for byte and never made again.
 *
 * Refused: a snapshot published before the entry it follows (`log-time-backwards`).
 */
export function nextLogEntry(
  snapshot: Snapshot,
  previous: LogEntry | null,
  sha256: Sha256,
): { entry: LogEntry; text: string } {
  if (previous && Date.parse(snapshot.publishedAt) < Date.parse(previous.publishedAt))
    throw new DomainError("log-time-backwards", "published before the entry it follows", snapshot.publishedAt);
  const text = canonicalJson(snapshot);
  const fields: LogEntryFields = {
    seq: (previous?.seq ?? 0) + 1,
    slug: snapshot.slug,
    revision: snapshot.revision,
    kind: snapshot.kind,
    publishedAt: snapshot.publishedAt,
    snapshotSha256: sha256(text),
    previousHash: previous?.hash ?? noPreviousHash,
  };
  return { entry: { ...fields, hash: hashLogEntry(fields, sha256) }, text };
}
