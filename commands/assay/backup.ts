import { copyFileSync, mkdirSync, statSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { systemClock } from "../../lib/platform/clock.ts";
import type { Environment } from "../../lib/platform/environment.ts";
import { copyDatabase, databaseDamage, openStoredLog } from "../../lib/store/stored-log.ts";
import { companionFiles, databaseName, dumpName, fileDigest, type Manifest, manifestName } from "./backup-manifest.ts";
import { dumpDatabase } from "./postgres-dump.ts";
import { emptyFolder, oneFolder, registryPlace, why } from "./registry-place.ts";
import { UsageError } from "./usage-error.ts";

const keyOption = "--with-signing-key";

/**
 * `npm run assay -- backup DIR [--with-signing-key]`: the database as it stands at one moment, photos with their originals
 * and keys, into a new folder, while the registry may go on working: SQLite's own online backup, or pg_dump. The key that signs the log comes along only where it is asked for. The database goes first: a photo that it names was on the disk before it.
 */
export async function run(args: string[]): Promise<number> {
  const withSigningKey = args.includes(keyOption);
  const folder = oneFolder(
    args.filter((arg) => arg !== keyOption),
    "backup",
  );
  const registry = registryPlace();
  const { dataDir } = registry;
  emptyFolder(folder, "the backup", 0o700);
  try {
    const database = await copied(registry, folder);
    const files = companionFiles(dataDir, { withSigningKey });
    for (const file of files) {
      mkdirSync(dirname(join(folder, file)), { recursive: true, mode: 0o700 });
      copyFileSync(join(dataDir, file), join(folder, file));
    }
    const manifest = { ...(await listed(folder, [database.name, ...files])), ...database.log };
    writeFileSync(join(folder, manifestName), `${JSON.stringify(manifest, null, 2)}\n`);
    process.stdout.write(
      `Backed up ${manifest.entries} log entries and ${manifest.files.length} files to ${folder}; it holds ${withSigningKey ? "the registry's keys, the one that signs the log among them" : "the registry's keys but for the one that signs the log"}, so keep it private.\n`,
    );
    if (registry.s3 !== null)
      process.stdout.write(
        `Photos and originals lie in the bucket "${registry.s3.bucket}" and are not in it: keep copies of the bucket, or use export.\n`,
      );
    return 0;
  } catch (error) {
    if (error instanceof UsageError) throw error;
    throw new UsageError(`The backup is not complete: ${why(error)}.`);
  }
}

type CopiedDatabase = { name: string; log: Pick<Manifest, "entries" | "head" | "postgres"> };

/** The database at one moment, as a file of the folder. */
async function copied({ databaseFile, databaseUrl }: Environment, folder: string): Promise<CopiedDatabase> {
  if (databaseFile === null) {
    const { server, entries, head } = await dumpDatabase(databaseUrl, join(folder, dumpName));
    return { name: dumpName, log: { entries, head, postgres: server } };
  }
  const copy = join(folder, databaseName);
  await copyDatabase(databaseFile, copy);
  const damage = databaseDamage(copy);
  if (damage !== null) throw new UsageError(`The registry's database is damaged: ${damage}.`);
  const { entries, close } = openStoredLog(copy);
  close();
  const last = entries.at(-1) as { hash: string } | undefined;
  return { name: databaseName, log: { entries: entries.length, head: last?.hash ?? null } };
}

async function listed(folder: string, paths: string[]): Promise<Pick<Manifest, "format" | "madeAt" | "files">> {
  const files: Manifest["files"] = [];
  for (const path of paths) {
    const file = join(folder, path);
    files.push({ path, bytes: statSync(file).size, sha256: await fileDigest(file) });
  }
  return { format: 1, madeAt: systemClock().toISOString(), files };
}
