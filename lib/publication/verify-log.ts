import { canonicalJson, type Sha256 } from "./canonical-json.ts";
import { hashLogEntry, noPreviousHash } from "./log-entry.ts";
import { readSnapshot } from "./read-snapshot.ts";
import { type LogEntry, logEntrySchema, type Snapshot } from "./snapshot.ts";

/** What can differ. Each code has a sentence in lib/wording/log-faults.ts. */
export const logFaultCodes = [
  "entry-malformed",
  "entry-out-of-order",
  "entry-fields-changed",
  "entry-hash-changed",
  "previous-hash-differs",
  "snapshot-missing",
  "snapshot-changed",
  "snapshot-not-canonical",
  "snapshot-unreadable",
  "snapshot-tells-otherwise",
  "snapshot-unlisted",
  "head-differs",
] as const;
export type LogFaultCode = (typeof logFaultCodes)[number];

/** One thing wrong with the log: at which entry, in which revision of which item, what was found, what should stand. */
export type LogFault = {
  code: LogFaultCode;
  /** Number the entry should carry by its place; null where the fault belongs to no entry. */
  seq: number | null;
  slug: string | null;
  revision: number | null;
  /** The member that differs, where one is meant: "previousHash", "kind" … */
  field?: string;
  found: string;
  expected: string;
};

export type LogToVerify = {
  /** The entries in order, as parsed from JSON; not trusted, so typed unknown. */
  entries: readonly unknown[];
  /** The stored text or bytes of the snapshot that entry number `seq` published; undefined where there is none. */
  snapshot: (seq: number) => string | Uint8Array | undefined;
  /** A head known from elsewhere (the signed one, or one noted earlier): finds entries cut from the end. */
  head?: { seq: number; hash: string };
};

const strictEntry = logEntrySchema.strict();
const framed = ["slug", "revision", "kind", "publishedAt"] as const;

/**
 * Derives every hash of the log again and names what differs. An empty list means: every snapshot text is the one whose
 * SHA-256 its entry holds, every entry is sealed by its own hash, each follows the one before, and each snapshot says
 * of itself what the entry says of it. One changed bit in a snapshot is a `snapshot-changed` at its number; in an
 * entry's member an `entry-fields-changed`; in a stored hash an `entry-hash-changed`, told from the former by the next entry, which
 * still holds the old hash.
 *
 * A log cut short at its end is whole in itself; only `head` shows it.
 */
export function verifyLog(log: LogToVerify, sha256: Sha256): LogFault[] {
  const entries = log.entries.map((raw) => {
    const parsed = strictEntry.safeParse(raw);
    return parsed.success ? parsed.data : null;
  });
  const faults = log.entries.flatMap((raw, index) => {
    const entry = entries[index] ?? null;
    if (entry === null) return [malformed(index + 1, raw)];
    return [
      ...chainFaults(entry, index, entries, sha256),
      ...snapshotFaults(entry, index + 1, log.snapshot(index + 1), sha256),
    ];
  });
  if (log.snapshot(entries.length + 1) !== undefined) faults.push(unlisted(entries.length + 1));
  return log.head ? [...faults, ...headFaults(entries, log.head)] : faults;
}

/** Faults of an entry against its place and its neighbours. `index` counts from 0. */
function chainFaults(entry: LogEntry, index: number, entries: (LogEntry | null)[], sha256: Sha256): LogFault[] {
  const at = { seq: index + 1, slug: entry.slug, revision: entry.revision };
  const faults: LogFault[] = [];
  const computed = hashLogEntry(entry, sha256);
  const next = entries[index + 1];
  const before = index === 0 ? noPreviousHash : (entries[index - 1]?.hash ?? null);
  if (entry.seq !== index + 1)
    faults.push({
      ...at,
      code: "entry-out-of-order",
      field: "seq",
      found: String(entry.seq),
      expected: String(index + 1),
    });
  if (entry.hash !== computed) {
    // The next entry holds a copy of the true hash: if what we computed agrees with it, only the stored hash was touched.
    const code = next?.previousHash === computed ? "entry-hash-changed" : "entry-fields-changed";
    faults.push({ ...at, code, field: "hash", found: entry.hash, expected: computed });
  }
  if (before !== null && entry.previousHash !== before)
    faults.push({
      ...at,
      code: "previous-hash-differs",
      field: "previousHash",
      found: entry.previousHash,
      expected: before,
    });
  return faults;
}

/** Faults of the stored snapshot against the entry that lists it. */
function snapshotFaults(
  entry: LogEntry,
  seq: number,
  stored: string | Uint8Array | undefined,
  sha256: Sha256,
): LogFault[] {
  const at = { seq, slug: entry.slug, revision: entry.revision };
  if (stored === undefined)
    return [{ ...at, code: "snapshot-missing", found: "nothing", expected: entry.snapshotSha256 }];
  const digest = sha256(stored);
  if (digest !== entry.snapshotSha256)
    return [{ ...at, code: "snapshot-changed", found: digest, expected: entry.snapshotSha256 }];
  const text = typeof stored === "string" ? stored : new TextDecoder("utf-8", { ignoreBOM: true }).decode(stored);
  const read = readSnapshot(text);
  if (!read.ok) {
    const [problem] = read.problems;
    return [
      {
        ...at,
        code: "snapshot-unreadable",
        ...(problem?.where?.field ? { field: problem.where.field } : {}),
        found: problem?.found ?? problem?.code ?? "",
        expected: problem?.allowed ?? "a snapshot",
      },
    ];
  }
  const faults: LogFault[] = framed
    .filter((field) => read.value[field] !== entry[field])
    .map((field) => ({
      ...at,
      code: "snapshot-tells-otherwise",
      field,
      found: String(read.value[field as keyof Snapshot]),
      expected: String(entry[field]),
    }));
  if (canonicalJson(JSON.parse(text)) !== text)
    faults.push({ ...at, code: "snapshot-not-canonical", found: "another writing", expected: "canonical JSON" });
  return faults;
}

function malformed(seq: number, raw: unknown): LogFault {
  const problem = strictEntry.safeParse(raw).error?.issues[0];
  const member = problem?.code === "unrecognized_keys" ? problem.keys[0] : problem?.path.map(String).join(".");
  return {
    code: "entry-malformed",
    seq,
    slug: null,
    revision: null,
    ...(member ? { field: member } : {}),
    found: problem?.message ?? typeof raw,
    expected: "the eight members of a log entry",
  };
}

const unlisted = (seq: number): LogFault => ({
  code: "snapshot-unlisted",
  seq,
  slug: null,
  revision: null,
  found: "a snapshot without a log entry",
  expected: "nothing after the last entry",
});

function headFaults(entries: (LogEntry | null)[], head: { seq: number; hash: string }): LogFault[] {
  const entry = entries[head.seq - 1];
  if (entry?.hash === head.hash) return [];
  return [
    {
      code: "head-differs",
      seq: head.seq,
      slug: entry?.slug ?? null,
      revision: entry?.revision ?? null,
      found: entry?.hash ?? `the log ends at ${entries.length}`,
      expected: head.hash,
    },
  ];
}
