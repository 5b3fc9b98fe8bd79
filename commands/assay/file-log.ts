import { closeSync, existsSync, openSync, readFileSync, readSync, statSync } from "node:fs";
import { dirname, join } from "node:path";
import { z } from "zod";
import { logEntrySchema } from "../../lib/publication/snapshot.ts";
import { openStoredLog } from "../../lib/store/stored-log.ts";
import { openStoredPostgresLog } from "../../lib/store/stored-postgres-log.ts";
import { databaseName, dumpName } from "./backup-manifest.ts";
import { headName, snapshotPath } from "./exported-paths.ts";
import { dumpLog } from "./postgres-dump.ts";
import { why } from "./registry-place.ts";
import { UsageError } from "./usage-error.ts";
import type { OpenLog } from "./verify-log.ts";

const fileSchema = z.object({
  entries: z.array(z.unknown()),
  /** The texts in the order of the entries, where the file carries them itself. */
  snapshots: z.array(z.string()).optional(),
  /** The signed head, where the file carries it. */
  head: z.unknown().optional(),
});

/** The log of a database file, of an exported folder or a backup, of a dump, or of a JSON file of entries with its texts in it or beside it. */
export async function fileLog(path: string): Promise<OpenLog> {
  const file = isFolder(path) ? logIn(path) : path;
  if (startsAs(file, dumpStart)) {
    const { entries, heads, snapshot, close } = await dumpLog(file);
    return { log: { entries, snapshot }, heads, close };
  }
  if (startsAs(file, databaseStart)) {
    try {
      const { entries, heads, snapshot, close } = openStoredLog(file);
      return { log: { entries, snapshot }, heads, close };
    } catch (error) {
      throw new UsageError(`"${file}" is not a registry's database: ${why(error)}.`);
    }
  }
  const { entries, snapshots, head } = parsedFile(file);
  const beside = dirname(file);
  const snapshot = (seq: number): string | Uint8Array | undefined => {
    if (snapshots) return snapshots[seq - 1];
    const entry = logEntrySchema.pick({ slug: true, revision: true }).safeParse(entries[seq - 1]);
    const at = entry.success ? snapshotPath(entry.data.slug, entry.data.revision) : null;
    return at !== null && existsSync(join(beside, at)) ? readFileSync(join(beside, at)) : undefined;
  };
  const signed = head ?? headBeside(beside);
  const heads = signed === undefined || signed === null ? [] : [signed];
  return { log: { entries, snapshot }, heads, close: () => undefined };
}

/** The log of a PostgreSQL database. */
export async function postgresLog(url: string): Promise<OpenLog> {
  try {
    const { entries, heads, snapshot, close } = await openStoredPostgresLog(url);
    return { log: { entries, snapshot }, heads, close };
  } catch (error) {
    throw new UsageError(`The registry's PostgreSQL database could not be read: ${why(error)}.`);
  }
}

/** The signed head that an export lays beside its log. */
function headBeside(folder: string): unknown {
  const file = join(folder, headName);
  if (!existsSync(file)) return undefined;
  try {
    return JSON.parse(readFileSync(file, "utf8"));
  } catch (error) {
    throw new UsageError(`"${file}" cannot be read as a signed head: ${why(error)}.`);
  }
}

function logIn(folder: string): string {
  const found = ["log.json", databaseName, dumpName].find((name) => existsSync(join(folder, name)));
  if (found === undefined)
    throw new UsageError(`"${folder}" holds no log: none of log.json, ${databaseName} and ${dumpName}.`);
  return join(folder, found);
}

function isFolder(path: string): boolean {
  try {
    return statSync(path).isDirectory();
  } catch (error) {
    throw new UsageError(`"${path}" could not be read: ${why(error)}.`);
  }
}

/** SQLite's own first sixteen bytes (sqlite.org, "Database File Format" §1.3). */
const databaseStart = "SQLite format 3\0";
/** The first five bytes of pg_dump's custom format (PostgreSQL's source, pg_backup_archiver.c; from memory). */
const dumpStart = "PGDMP";

function startsAs(file: string, start: string): boolean {
  try {
    const opened = openSync(file, "r");
    const found = Buffer.alloc(start.length);
    readSync(opened, found, 0, found.length, 0);
    closeSync(opened);
    return found.toString("latin1") === start;
  } catch (error) {
    throw new UsageError(`"${file}" could not be read: ${why(error)}.`);
  }
}

function parsedFile(file: string): z.infer<typeof fileSchema> {
  try {
    return fileSchema.parse(JSON.parse(readFileSync(file, "utf8")));
  } catch {
    throw new UsageError(`"${file}" is no log: expected a registry's database, or JSON with a list "entries".`);
  }
}
