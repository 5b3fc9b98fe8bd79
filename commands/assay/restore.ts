import { chmodSync, copyFileSync, existsSync, mkdirSync, readdirSync, renameSync, statSync } from "node:fs";
import { dirname, join } from "node:path";
import { privateFolder } from "../../lib/files/private-files.ts";
import { sha256 } from "../../lib/platform/sha256.ts";
import { verifySignature } from "../../lib/platform/signing-key.ts";
import { verifyLog } from "../../lib/publication/verify-log.ts";
import { databaseDamage, openStoredLog, prepareRestored } from "../../lib/store/stored-log.ts";
import { logFaultSentence } from "../../lib/wording/log-faults.ts";
import { databaseName, fileDigest, type Manifest, readManifest } from "./backup-manifest.ts";
import { oneFolder, place, sqliteFile, why } from "./registry-place.ts";
import { UsageError } from "./usage-error.ts";

/**
 * `npm run assay -- restore DIR`: a backup into an empty DATA_DIR. Everything is checked before anything is written: the
 * hash of every file, the database by SQLite's own check, and every hash of the publication log.
 */
export async function run(args: string[]): Promise<number> {
  const folder = oneFolder(args, "restore");
  const registry = place();
  const { dataDir } = registry;
  const databaseFile = sqliteFile(registry, "restore its database with pg_restore, and DATA_DIR beside it");
  if (existsSync(dataDir) && (!statSync(dataDir).isDirectory() || readdirSync(dataDir).length > 0))
    throw new UsageError(`"${dataDir}" is not empty; restore into an empty DATA_DIR, so that nothing is lost.`);
  if (existsSync(databaseFile)) throw new UsageError(`There is already a database at "${databaseFile}".`);
  const manifest = readManifest(folder);
  await checkFiles(folder, manifest);
  checkDatabase(join(folder, databaseName), manifest);
  try {
    mkdirSync(dataDir, { recursive: true });
    for (const { path } of manifest.files.filter((file) => file.path !== databaseName)) copyInto(folder, dataDir, path);
    mkdirSync(dirname(databaseFile), { recursive: true });
    // The database takes its name last: a folder without it was not restored to the end.
    copyFileSync(join(folder, databaseName), `${databaseFile}.restoring`);
    prepareRestored(`${databaseFile}.restoring`);
    renameSync(`${databaseFile}.restoring`, databaseFile);
  } catch (error) {
    throw new UsageError(`The restoring stopped, and "${dataDir}" is not whole: ${why(error)}.`);
  }
  process.stdout.write(`Restored ${manifest.entries} log entries and ${manifest.files.length} files to ${dataDir}\n`);
  return 0;
}

async function checkFiles(folder: string, manifest: Manifest): Promise<void> {
  if (!manifest.files.some((file) => file.path === databaseName))
    throw new UsageError(`The backup "${folder}" lists no database.`);
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

function checkDatabase(file: string, manifest: Manifest): void {
  const damage = databaseDamage(file);
  if (damage !== null) throw new UsageError(`The backup's database is damaged: ${damage}.`);
  const { entries, heads, snapshot, close } = openStoredLog(file);
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
