import type { Sha256 } from "./canonical-json.ts";
import { sealedText } from "./log-entry.ts";
import { type LogHead, logHeadSchema, signedText } from "./log-head.ts";
import type { RecomputedResult } from "./recompute.ts";
import { type LogEntry, logEntrySchema } from "./snapshot.ts";
import { type LogFault, verifyLog } from "./verify-log.ts";

/** SHA-256 as a browser has it. */
export type Digest = (data: string | Uint8Array<ArrayBuffer>) => Promise<string>;
/** Whether a signature holds; null where this machine cannot check Ed25519. */
export type CheckSignature = (publicKey: string, text: string, signature: string) => Promise<boolean | null>;

export type RevisionToCheck = {
  /** The bytes of the snapshot as they came. */
  bytes: Uint8Array<ArrayBuffer>;
  slug: string;
  revision: number;
  /** The answer of /api/v1/log, not trusted. */
  log: { entries: readonly unknown[]; head?: unknown };
};

export type RevisionCheck = {
  /** The entry that lists the revision; null where the log has none. */
  entry: LogEntry | null;
  /** How many entries the log has. */
  entries: number;
  faults: LogFault[];
  /** "none": no head came with the log; "unable": it came, and this machine cannot check it. */
  signature: "agrees" | "wrong" | "unable" | "none";
  head: LogHead | null;
};

/**
 * Checks one revision against the log from outside: the SHA-256 of its bytes, the seal of every entry and its link to the
 * one before, and the signature of the head. For machines that hash asynchronously: everything is hashed first, then
 * `verifyLog` asks what was found.
 */
export async function checkRevision(
  { bytes, slug, revision, log }: RevisionToCheck,
  digest: Digest,
  check: CheckSignature,
): Promise<RevisionCheck> {
  const entries = log.entries.flatMap((raw) => {
    const parsed = logEntrySchema.safeParse(raw);
    return parsed.success ? [parsed.data] : [];
  });
  const at = log.entries.findIndex((raw) => {
    const one = logEntrySchema.safeParse(raw).data;
    return one?.slug === slug && one.revision === revision;
  });
  const entry = logEntrySchema.safeParse(log.entries[at]).data ?? null;
  const own = await digest(bytes);
  const seals = new Map(await Promise.all(entries.map(async (one) => pair(sealedText(one), digest))));
  const sha256: Sha256 = (data) => (typeof data === "string" ? (seals.get(data) ?? "") : own);
  const head = logHeadSchema.safeParse(log.head).data ?? null;
  const holds = head && (await check(head.publicKey, signedText(head), head.signature));
  // A machine that cannot check leaves the signature out, and says so.
  const verify = (_: string, text: string) => holds === null || (holds && head !== null && text === signedText(head));
  const heads = log.head === undefined || log.head === null ? [] : [log.head];
  const faults = verifyLog(
    {
      entries: log.entries,
      snapshot: (seq) => (seq === at + 1 ? bytes : undefined),
      looksAt: (seq) => seq === at + 1,
      signed: { heads, verify },
    },
    sha256,
  );
  const signature = heads.length === 0 ? "none" : holds === null && head ? "unable" : holds ? "agrees" : "wrong";
  return { entry, entries: log.entries.length, faults, signature, head };
}

const pair = async (text: string, digest: Digest): Promise<[string, string]> => [text, await digest(text)];

/** Results whose inputs, hashed anew, are not those that the snapshot's digest was made over. */
export async function changedInputs(results: readonly RecomputedResult[], digest: Digest): Promise<RecomputedResult[]> {
  const differs = await Promise.all(
    results.map(
      async ({ inputsText, published }) => inputsText !== null && (await digest(inputsText)) !== published.inputsDigest,
    ),
  );
  return results.filter((_, i) => differs[i]);
}
