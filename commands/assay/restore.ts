import { chmodSync, copyFileSync, existsSync, mkdirSync, readdirSync, renameSync, statSync } from "node:fs";
import { dirname, join } from "node:path";
import { privateFolder } from "../../lib/files/private-files.ts";
import { sha256 } from "../../lib/platform/sha256.ts";
import { verifySignature } from "../../lib/platform/signing-key.ts";
import { verifyLog } from "../../lib/publication/verify-log.ts";
import { databaseDamage, openStoredLog, prepareRestored, type StoredLog } from "../../lib/store/stored-log.ts";
import { logFaultSentence } from "../../lib/wording/log-faults.ts";
import { databaseName, dumpName, fileDigest, type Manifest, readManifest } from "./backup-manifest.ts";
import { checkTarget, dumpLog, restoreDatabase } from "./postgres-dump.ts";
import { oneFolder, place, why } from "./registry-place.ts";
import { UsageError } from "./usage-error.ts";

/**
 * `npm run assay -- restore DIR`: a backup into an empty DATA_DIR, and for a registry in PostgreSQL into the empty database that
 * DATABASE_URL names. Everything is checked before anything is written: the hash of every file, a database file by SQLite's own check, and
 * every hash of the publication log.
 */
export async function run(args: string[]): Promise<number> {
  const folder = oneFolder(args, "restore");
  const registry = place();
  const { dataDir } = registry;
  const { databaseFile, databaseUrl } = registry;
  if (existsSync(dataDir) && (!statSync(dataDir).isDirectory() || readdirSync(dataDir).length > 0))
    throw new UsageError(`"${dataDir}" is not empty; restore into an empty DATA_DIR, so that nothing is lost.`);
  if (databaseFile !== null && existsSync(databaseFile))
    throw new UsageError(`There is already a database at "${databaseFile}".`);
  const manifest = readManifest(folder);
  const database = databaseOf(folder, manifest, databaseFile === null);
  if (databaseFile === null) await checkTarget(databaseUrl, manifest.postgres ?? 0);
  await checkFiles(folder, manifest);
  checkLog(await logOf(join(folder, database)), manifest);
  try {
    mkdirSync(dataDir, { recursive: true });
    for (const { path } of manifest.files.filter((file) => file.path !== database)) copyInto(folder, dataDir, path);
    // The database comes last: a folder without it was not restored to the end.
    if (databaseFile === null) await restoreDatabase(databaseUrl, join(folder, database));
    else takeDatabase(join(folder, database), databaseFile);
  } catch (error) {
    throw new UsageError(`The restoring stopped, and "${dataDir}" is not whole: ${why(error)}.`);
  }
  process.stdout.write(
    `Restored ${manifest.entries} log entries and ${manifest.files.length} files to ${dataDir}${databaseFile === null ? " and PostgreSQL" : ""}\n`,
  );
  return 0;
}

/** The name of the backup's database; refuses one of the other kind. */
function databaseOf(folder: string, manifest: Manifest, intoPostgres: boolean): string {
  const has = (name: string) => manifest.files.some((file) => file.path === name);
  const [wanted, other] = intoPostgres ? [dumpName, databaseName] : [databaseName, dumpName];
  if (has(wanted)) return wanted;
  if (!has(other)) throw new UsageError(`The backup "${folder}" lists no database.`);
  throw new UsageError(
    intoPostgres
      ? "The backup is of a registry in SQLite, and DATABASE_URL names PostgreSQL: restore it without DATABASE_URL, then move it with export and import."
      : "The backup is of a registry in PostgreSQL: say with DATABASE_URL into which empty database it is to come.",
  );
}

function takeDatabase(from: string, databaseFile: string): void {
  mkdirSync(dirname(databaseFile), { recursive: true });
  copyFileSync(from, `${databaseFile}.restoring`);
  prepareRestored(`${databaseFile}.restoring`);
  renameSync(`${databaseFile}.restoring`, databaseFile);
}

async function checkFiles(folder: string, manifest: Manifest): Promise<void> {
  for (const { path, sha256: expected } of manifest.files) {
    let found: string;
    try {
      found = await fileDigest(join(folder, path));
    } catch (error) {
      throw new UsageError(`The backup's file ${path} could not be read: ${why(error)}.`);
    }
    if (found !== expected) throw new UsageError(`The backup's file ${path} was changed since the backup was made.`);
  }
}

async function logOf(file: string): Promise<StoredLog> {
  if (file.endsWith(dumpName)) return dumpLog(file);
  const damage = databaseDamage(file);
  if (damage !== null) throw new UsageError(`The backup's database is damaged: ${damage}.`);
  return openStoredLog(file);
}

function checkLog({ entries, heads, snapshot, close }: StoredLog, manifest: Manifest): void {
  const head = manifest.head === null ? {} : { head: { seq: manifest.entries, hash: manifest.head } };
  const [fault] = verifyLog({ entries, snapshot, ...head, signed: { heads, verify: verifySignature } }, sha256);
  close();
  if (fault) throw new UsageError(`The backup's publication log does not hold. ${logFaultSentence(fault)}`);
}

/** Keys and originals keep their privacy: the folder for its owner only, and each file in it. */
function copyInto(folder: string, dataDir: string, path: string): void {
  const isPrivate = path.startsWith("keys/") || path.startsWith(`${privateFolder}/`);
  const to = join(dataDir, path);
  mkdirSync(dirname(to), { recursive: true, mode: isPrivate ? 0o700 : 0o755 });
  copyFileSync(join(folder, path), to);
  if (isPrivate) chmodSync(to, 0o600);
}
