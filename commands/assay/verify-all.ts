import { join, resolve } from "node:path";
import { databaseDamage } from "../../lib/store/stored-log.ts";
import { databaseName } from "./backup-manifest.ts";
import { registryPlace } from "./registry-place.ts";
import { UsageError } from "./usage-error.ts";
import { run as verifyFiles } from "./verify-files.ts";
import { run as verifyLog } from "./verify-log.ts";

/**
 * `npm run assay -- verify-all [DATA_DIR]`: all that can be checked without a person: the database by SQLite's own check
 * (PostgreSQL keeps its own sums), every hash and signature of the log, every stored file. Everything is looked at, whatever was found before.
 * Exit code 0 where nothing is wrong, else 1.
 */
export async function run(args: string[]): Promise<number> {
  const [folder, ...others] = args;
  if (others.length > 0 || folder?.startsWith("-"))
    throw new UsageError("Name one folder at most: npm run assay -- verify-all [DATA_DIR].");
  const file = folder === undefined ? registryPlace().databaseFile : join(resolve(folder), databaseName);
  const damage = file === null ? null : damageOf(file);
  if (damage !== null) process.stdout.write(`damaged: ${damage}\n`);
  else if (file !== null) process.stdout.write("the database: whole\n");
  const log = await verifyLog(folder === undefined || file === null ? [] : [file]);
  const files = await verifyFiles(args);
  return damage === null && log === 0 && files === 0 ? 0 : 1;
}

/** A file too broken to be opened is damaged, not missing. */
function damageOf(file: string): string | null {
  try {
    return databaseDamage(file);
  } catch (error) {
    return (error as Error).message;
  }
}
