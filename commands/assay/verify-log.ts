import { parseArgs } from "node:util";
import { isPostgresUrl } from "../../lib/platform/environment.ts";
import { sha256 } from "../../lib/platform/sha256.ts";
import { verifySignature } from "../../lib/platform/signing-key.ts";
import { type LogToVerify, verifyLog } from "../../lib/publication/verify-log.ts";
import { logFaultSentence } from "../../lib/wording/log-faults.ts";
import { fetchedLog } from "./fetched-log.ts";
import { fileLog, postgresLog } from "./file-log.ts";
import { registryPlace } from "./registry-place.ts";
import { UsageError } from "./usage-error.ts";

/** A log that can be looked at, and the signed heads that came with it. */
export type OpenLog = { log: LogToVerify; heads: readonly unknown[]; close: () => void };

/**
 * `npm run assay -- verify-log [FILE|URL] [--head NUMBER:HASH] [--key KEY]`: derives every hash of the publication log again and
 * checks the signatures of its heads. Without an argument, of the database in DATA_DIR; else of a database file, an exported
 * folder or its log.json, or a registry's address. `--head` is a head noted earlier, `--key` the registry's public key. Exit code 0 where all agree, 1 where something differs; each fault is one line with its name and sentence.
 */
export async function run(args: string[]): Promise<number> {
  const { where, head, key } = readArguments(args);
  const { log, heads, close } = await openLog(where);
  try {
    if (key !== undefined && heads.length === 0)
      throw new UsageError("The log carries no signed head, so the key you gave cannot be checked against it.");
    const signed = { heads, verify: verifySignature, key };
    const faults = verifyLog({ ...log, ...(head ? { head } : {}), signed }, sha256);
    for (const fault of faults) process.stdout.write(`${fault.code}: ${logFaultSentence(fault)}\n`);
    if (faults.length > 0) {
      const those = faults.length === 1 ? "1 fault" : `${faults.length} faults`;
      process.stderr.write(`The log does not hold: ${those} in ${entriesText(log.entries.length)}.\n`);
      return 1;
    }
    process.stdout.write(`${entriesText(log.entries.length)}, all hashes agree${signatures(heads)}${newest(log)}\n`);
    return 0;
  } finally {
    close();
  }
}

const entriesText = (n: number): string => (n === 1 ? "1 entry" : `${n} entries`);

/** How many signed heads agree and with which keys: the key to note down, or to hold beside the one noted. */
function signatures(heads: readonly unknown[]): string {
  const keys = new Set((heads as { publicKey: string }[]).map((head) => head.publicKey));
  if (heads.length === 0) return "; no signed head came with it";
  const those = heads.length === 1 ? "1 signature agrees" : `${heads.length} signatures agree`;
  return `; ${those}, ${keys.size === 1 ? "key" : `${keys.size} keys`} ${[...keys].join(" then ")}`;
}

/** The head to note down: a log cut short later does not show it by itself. */
const newest = (log: LogToVerify): string => {
  const last = log.entries.at(-1) as { hash: string } | undefined;
  return last === undefined ? "" : `; newest: ${log.entries.length}:${last.hash}`;
};

function openLog(where: string | undefined): Promise<OpenLog> {
  if (where === undefined) {
    const { databaseFile, databaseUrl } = registryPlace();
    return databaseFile === null ? postgresLog(databaseUrl) : fileLog(databaseFile);
  }
  if (isPostgresUrl(where)) return postgresLog(where);
  return /^https?:\/\//i.test(where) ? fetchedLog(where) : fileLog(where);
}

type Asked = { where: string | undefined; head: LogToVerify["head"]; key: string | undefined };

function readArguments(args: string[]): Asked {
  try {
    const options = { head: { type: "string" }, key: { type: "string" } } as const;
    const { values, positionals } = parseArgs({ args, allowPositionals: true, options });
    if (positionals.length > 1) throw new UsageError(`One log at a time: "${positionals[1]}" came after another.`);
    const asked = { where: positionals[0], head: undefined, key: values.key };
    if (values.head === undefined) return asked;
    const [, seq, hash] = /^([1-9]\d{0,8}):([0-9a-f]{64})$/.exec(values.head) ?? [];
    if (seq === undefined || hash === undefined)
      throw new UsageError(`--head is an entry's number and its hash, as in 12:ab34…; found "${values.head}".`);
    return { ...asked, head: { seq: Number(seq), hash } };
  } catch (error) {
    if (error instanceof UsageError) throw error;
    throw new UsageError(
      `${(error as Error).message.split(/[.\n]/)[0]}; the options are --head NUMBER:HASH and --key KEY.`,
    );
  }
}
