import { canonicalJson, type Sha256 } from "./canonical-json.ts";
import { hashLogEntry, noPreviousHash } from "./log-entry.ts";
import { logHeadSchema, signedText, type VerifySignature } from "./log-head.ts";
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
  "head-malformed",
  "head-signature-wrong",
  "head-key-differs",
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
  /** Whether the text of entry `seq` is to be looked at; without it, every one is. */
  looksAt?: (seq: number) => boolean;
  /** A head known from elsewhere (one noted earlier): finds entries cut from the end. */
  head?: { seq: number; hash: string };
  /** The signed heads that came with the log, not trusted, and what their signatures are checked with. */
  signed?: { heads: readonly unknown[]; verify: VerifySignature; key?: string | undefined };
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
 * The field that differs is named too where the rest of the log says what should stand in it: the member which, put
 * back, gives the hash that the entry carries.
 *
 * A log cut short at its end is whole in itself; only `head` or a signed head shows it.
 */
export function verifyLog(log: LogToVerify, sha256: Sha256): LogFault[] {
  const entries = log.entries.map((raw) => {
    const parsed = strictEntry.safeParse(raw);
    return parsed.success ? parsed.data : null;
  });
  const faults = log.entries.flatMap((raw, index) => {
    const entry = entries[index] ?? null;
    if (entry === null) return [malformed(index + 1, raw)];
    const looked = log.looksAt?.(index + 1) ?? true;
    const stored = looked ? log.snapshot(index + 1) : undefined;
    return [
      ...chainFaults(entry, index, { entries, stored, sha256 }),
      ...(looked ? snapshotFaults(entry, index + 1, stored, sha256) : []),
    ];
  });
  if (log.snapshot(entries.length + 1) !== undefined) faults.push(unlisted(entries.length + 1));
  if (log.head) faults.push(...headFaults(entries, log.head));
  if (log.signed) faults.push(...signedFaults(entries, log.signed));
  return faults;
}

type Around = { entries: (LogEntry | null)[]; stored: string | Uint8Array | undefined; sha256: Sha256 };

/** Faults of an entry against its place and its neighbours. `index` counts from 0. */
function chainFaults(entry: LogEntry, index: number, around: Around): LogFault[] {
  const { entries, sha256 } = around;
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
    if (next?.previousHash === computed)
      faults.push({ ...at, code: "entry-hash-changed", field: "hash", found: entry.hash, expected: computed });
    else {
      const field = changedField(entry, index, around) ?? "hash";
      const found = field === "hash" ? entry.hash : String(entry[field]);
      const expected = field === "hash" ? computed : String(wouldBe(index, around)[field]);
      faults.push({ ...at, code: "entry-fields-changed", field, found, expected });
    }
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

/** What the rest of the log says an entry's members should be: its place, the entry before, and the text it published. */
function wouldBe(index: number, { entries, stored, sha256 }: Around): Partial<LogEntry> {
  const before = index === 0 ? noPreviousHash : entries[index - 1]?.hash;
  const place = { seq: index + 1, ...(before === undefined ? {} : { previousHash: before }) };
  if (stored === undefined) return place;
  const read = readSnapshot(textOf(stored));
  if (!read.ok) return place;
  const { slug, revision, kind, publishedAt } = read.value;
  return { ...place, snapshotSha256: sha256(stored), slug, revision, kind, publishedAt };
}

/** The member which, put back to what the rest of the log says, gives the hash that the entry carries; null: none does alone. */
function changedField(entry: LogEntry, index: number, around: Around): keyof LogEntry | null {
  const members = Object.entries(wouldBe(index, around)) as [keyof LogEntry, never][];
  const mended = members.find(
    ([field, value]) => hashLogEntry({ ...entry, [field]: value }, around.sha256) === entry.hash,
  );
  return mended?.[0] ?? null;
}

const textOf = (stored: string | Uint8Array): string =>
  typeof stored === "string" ? stored : new TextDecoder("utf-8", { ignoreBOM: true }).decode(stored);

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
  const text = textOf(stored);
  const read = readSnapshot(text);
  if (!read.ok) {
    const problem = read.problems[0]!;
    return [
      {
        ...at,
        code: "snapshot-unreadable",
        ...(problem.where?.field ? { field: problem.where.field } : {}),
        found: problem.found!,
        expected: problem.allowed ?? "a snapshot",
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
  const problem = strictEntry.safeParse(raw).error!.issues[0]!;
  const member = problem.code === "unrecognized_keys" ? problem.keys[0] : problem.path.map(String).join(".");
  return {
    code: "entry-malformed",
    seq,
    slug: null,
    revision: null,
    ...(member ? { field: member } : {}),
    found: problem.message,
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

/** Faults of the signed heads: their form, their signatures, the key, and the entries they speak of. */
function signedFaults(
  entries: (LogEntry | null)[],
  { heads, verify, key }: NonNullable<LogToVerify["signed"]>,
): LogFault[] {
  return heads.flatMap((raw): LogFault[] => {
    const parsed = logHeadSchema.strict().safeParse(raw);
    const claimed = (raw as { seq?: unknown } | null)?.seq;
    const seq = typeof claimed === "number" ? claimed : null;
    const at = { seq, slug: null, revision: null };
    if (!parsed.success) {
      const issue = parsed.error.issues[0]!;
      const field = issue.code === "unrecognized_keys" ? issue.keys[0] : issue.path.map(String).join(".");
      const found = issue.message;
      return [{ ...at, code: "head-malformed", ...(field ? { field } : {}), found, expected: "a signed head" }];
    }
    const { publicKey, signature } = parsed.data;
    if (!verify(publicKey, signedText(parsed.data), signature)) {
      // Where the log's own hash makes the signature right again, that member was changed.
      const hash = entries[parsed.data.seq - 1]?.hash ?? "";
      const byHash = verify(publicKey, signedText({ ...parsed.data, hash }), signature);
      const [field, found, expected] = byHash
        ? ["hash", parsed.data.hash, hash]
        : ["signature", signature, "the signature of this head by this key"];
      return [{ ...at, code: "head-signature-wrong", field, found, expected }];
    }
    const other: LogFault[] =
      key === undefined || key === publicKey
        ? []
        : [{ ...at, code: "head-key-differs", field: "publicKey", found: publicKey, expected: key }];
    return [...other, ...headFaults(entries, parsed.data)];
  });
}
