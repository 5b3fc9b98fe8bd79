import { parseArgs } from "node:util";
import { sha256 } from "../../lib/platform/sha256.ts";
import { type LogToVerify, verifyLog } from "../../lib/publication/verify-log.ts";
import { logFaultSentence } from "../../lib/wording/log-faults.ts";
import { fetchedLog } from "./fetched-log.ts";
import { fileLog } from "./file-log.ts";
import { registryPlace } from "./registry-place.ts";
import { UsageError } from "./usage-error.ts";

export type OpenLog = { log: LogToVerify; close: () => void };

/**
 * `npm run assay -- verify-log [FILE|URL] [--head NUMBER:HASH]`: derives every hash of the publication log again. Without an
 * argument, of the database in DATA_DIR; else of a database file, an exported folder or its log.json, or a registry's
 * address. Exit code 0 where all agree, 1 where something differs; each fault is one line with its name and sentence.
 */
export async function run(args: string[]): Promise<number> {
  const { where, head } = readArguments(args);
  const { log, close } = await openLog(where);
  try {
    const faults = verifyLog({ ...log, ...(head ? { head } : {}) }, sha256);
    for (const fault of faults) process.stdout.write(`${fault.code}: ${logFaultSentence(fault)}\n`);
    if (faults.length > 0) {
      const those = faults.length === 1 ? "1 fault" : `${faults.length} faults`;
      process.stderr.write(`The log does not hold: ${those} in ${entriesText(log.entries.length)}.\n`);
      return 1;
    }
    process.stdout.write(`${entriesText(log.entries.length)}, all hashes agree${newest(log)}\n`);
    return 0;
  } finally {
    close();
  }
}

const entriesText = (n: number): string => (n === 1 ? "1 entry" : `${n} entries`);

/** The head to note down: a log cut short later does not show it by itself. */
const newest = (log: LogToVerify): string => {
  const last = log.entries.at(-1) as { hash: string } | undefined;
  return last === undefined ? "" : `; newest: ${log.entries.length}:${last.hash}`;
};

function openLog(where: string | undefined): OpenLog | Promise<OpenLog> {
  if (where === undefined) return fileLog(registryPlace().databaseFile);
  return /^https?:\/\//i.test(where) ? fetchedLog(where) : fileLog(where);
}

function readArguments(args: string[]): { where: string | undefined; head: LogToVerify["head"] } {
  try {
    const { values, positionals } = parseArgs({ args, allowPositionals: true, options: { head: { type: "string" } } });
    if (positionals.length > 1) throw new UsageError(`One log at a time: "${positionals[1]}" came after another.`);
    if (values.head === undefined) return { where: positionals[0], head: undefined };
    const [, seq, hash] = /^([1-9]\d{0,8}):([0-9a-f]{64})$/.exec(values.head) ?? [];
    if (seq === undefined || hash === undefined)
      throw new UsageError(`--head is an entry's number and its hash, as in 12:ab34…; found "${values.head}".`);
    return { where: positionals[0], head: { seq: Number(seq), hash } };
  } catch (error) {
    if (error instanceof UsageError) throw error;
    throw new UsageError(`${(error as Error).message.split(/[.\n]/)[0]}; the only option is --head NUMBER:HASH.`);
  }
}
