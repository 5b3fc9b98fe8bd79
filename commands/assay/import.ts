import { spawnSync } from "node:child_process";
import { createReadStream, existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { createInterface } from "node:readline";
import { type FileStore, fileStore } from "../../lib/files/file-store.ts";
import { keptFile } from "../../lib/platform/secret-file.ts";
import { sha256 } from "../../lib/platform/sha256.ts";
import { signingKeyName, verifySignature } from "../../lib/platform/signing-key.ts";
import { verifyLog } from "../../lib/publication/verify-log.ts";
import { type Database, type Db, inTransaction, openDatabase } from "../../lib/store/database.ts";
import { indexWhatIsMissing } from "../../lib/store/search-index.ts";
import {
  continueNumbers,
  firstUsedTable,
  insertRows,
  type MovedTable,
  movedTableNames,
  type Row,
  readRowLine,
  tableDigest,
} from "../../lib/store/whole-registry.ts";
import { categoryLabels, labelOf } from "../../lib/wording/labels.ts";
import { logFaultSentence } from "../../lib/wording/log-faults.ts";
import { countTables } from "./export-registry.ts";
import { fileLog, postgresLog } from "./file-log.ts";
import {
  comparison,
  filePath,
  type RegistryManifest,
  readRegistryManifest,
  recordsPath,
  registryFolder,
  registryManifestName,
  type TableCount,
} from "./registry-manifest.ts";
import { oneFolder, place, why } from "./registry-place.ts";
import { UsageError } from "./usage-error.ts";

/**
 * `npm run assay -- import DIR`: an exported registry into an empty one, whichever database each lies in. Everything is
 * checked before anything is written; records come in in one transaction and are read back and compared in it, so the
 * whole registry is there or nothing of it. At the end the log is verified.
 */
export async function run(args: string[]): Promise<number> {
  const given = oneFolder(args, "import");
  const folder = existsSync(join(given, registryManifestName)) ? given : join(given, registryFolder);
  const manifest = readRegistryManifest(folder);
  await checkExport(folder, manifest);
  const { databaseUrl, databaseFile, dataDir } = place();
  const store = fileStore(dataDir);
  makeTables();
  const db = openDatabase(databaseUrl);
  try {
    await refuseUsed(db, store);
    const after = await bringIn(db, store, folder, manifest);
    process.stdout.write(`${comparison(manifest.tables, after)}\n`);
    await indexWhatIsMissing(db, (category) => labelOf(categoryLabels, category));
  } finally {
    await db.$disconnect();
  }
  keepKey(folder, dataDir);
  await checkLog(databaseFile ?? databaseUrl, databaseFile === null, manifest);
  process.stdout.write(
    `Imported ${manifest.tables.reduce((sum, table) => sum + table.rows, 0)} records and ${manifest.files.length} files into ${databaseFile ?? "PostgreSQL"} and ${store.where}; ${manifest.log.entries} log entries, all hashes agree.\n`,
  );
  return 0;
}

/** Every hash of the export, before anything is written: a folder that was cut short or changed is not taken in. */
async function checkExport(folder: string, manifest: RegistryManifest): Promise<void> {
  const missing = movedTableNames.filter((name) => !manifest.tables.some((table) => table.name === name));
  if (missing.length > 0) throw new UsageError(`The export lists no records of ${missing.join(", ")}.`);
  for (const table of manifest.tables) {
    const digest = tableDigest();
    for await (const line of linesOf(folder, table.name)) digest.add(line);
    const found = digest.done();
    if (found.rows !== table.rows || found.sha256 !== table.sha256)
      throw new UsageError(`The export's ${recordsPath(table.name)} was changed since the export was made.`);
  }
  for (const file of manifest.files) {
    if (sha256(readFile(folder, file)) !== file.sha256)
      throw new UsageError(`The export's file ${file.place}/${file.name} was changed since the export was made.`);
  }
}

async function* linesOf(folder: string, table: MovedTable): AsyncGenerator<string> {
  const path = join(folder, recordsPath(table));
  if (!existsSync(path)) throw new UsageError(`The export lacks ${recordsPath(table)}.`);
  for await (const line of createInterface({ input: createReadStream(path), crlfDelay: Number.POSITIVE_INFINITY }))
    if (line !== "") yield line;
}

function readFile(folder: string, { place: where, name }: RegistryManifest["files"][number]): Uint8Array<ArrayBuffer> {
  try {
    return new Uint8Array(readFileSync(join(folder, filePath(where, name))));
  } catch (error) {
    throw new UsageError(`The export's file ${where}/${name} could not be read: ${why(error)}.`);
  }
}

/** In a process of its own: the engine keeps its connection, and with it the lock, until the process ends. */
function makeTables(): void {
  const migrate = join(import.meta.dirname, "..", "migrate.mjs");
  const run = spawnSync(process.execPath, [migrate], { encoding: "utf8" });
  if (run.status !== 0) throw new UsageError(`The database could not be prepared: ${lastLine(run.stderr)}.`);
}

const lastLine = (text: string): string => text.trim().split("\n").at(0) ?? "unknown";

async function refuseUsed(db: Database, store: FileStore): Promise<void> {
  const used = await firstUsedTable(db);
  if (used !== null)
    throw new UsageError(
      `The registry is not empty (${used} holds records); import into an empty one, so that nothing is mixed.`,
    );
  for (const where of ["photos", "originals"] as const)
    if ((await store.names(where)).length > 0)
      throw new UsageError(
        `There are files in ${store.where} under ${where}/; import into an empty one, so that nothing is mixed.`,
      );
}

async function bringIn(
  db: Database,
  store: FileStore,
  folder: string,
  manifest: RegistryManifest,
): Promise<TableCount[]> {
  const written: RegistryManifest["files"] = [];
  try {
    // Files first: a record that names one is never there without it.
    for (const file of manifest.files) {
      written.push(file);
      await store.write(file.place, file.name, readFile(folder, file));
    }
    return await inTransaction(db, (tx) => insertAll(tx, folder, manifest), { timeout: 21_600_000 });
  } catch (error) {
    for (const { place: where, name } of written) await store.remove(where, name).catch(() => undefined);
    if (error instanceof UsageError) throw error;
    throw new UsageError(`Nothing was imported: ${why(error)}.`);
  }
}

async function insertAll(tx: Db, folder: string, manifest: RegistryManifest): Promise<TableCount[]> {
  for (const table of movedTableNames)
    for await (const rows of batchesOf(folder, table)) await insertRows(tx, table, rows);
  await continueNumbers(tx);
  const after = await countTables(tx);
  const wrong = manifest.tables.find((one) => after.find(({ name }) => name === one.name)?.sha256 !== one.sha256);
  if (wrong) throw new UsageError(`Nothing was imported: ${wrong.name} came out other than it went in.`);
  return after;
}

/** Rows for one statement each: so many, or so many letters of them. */
async function* batchesOf(folder: string, table: MovedTable): AsyncGenerator<Row[]> {
  let rows: Row[] = [];
  let size = 0;
  for await (const line of linesOf(folder, table)) {
    const row = readRowLine(line);
    if (row === null) throw new UsageError(`The export's ${recordsPath(table)} holds a line that is no record.`);
    rows.push(row);
    size += line.length;
    if (rows.length < 500 && size < 4_000_000) continue;
    yield rows;
    rows = [];
    size = 0;
  }
  if (rows.length > 0) yield rows;
}

/** The key that signs the log, where the export was made with it. */
function keepKey(folder: string, dataDir: string): void {
  const key = join(folder, signingKeyName);
  if (existsSync(key)) keptFile(dataDir, signingKeyName, () => readFileSync(key, "utf8"));
}

async function checkLog(where: string, isPostgres: boolean, { log }: RegistryManifest): Promise<void> {
  const opened = await (isPostgres ? postgresLog(where) : fileLog(where));
  try {
    const head = log.head === null ? {} : { head: { seq: log.entries, hash: log.head } };
    const signed = { heads: opened.heads, verify: verifySignature };
    const [fault] = verifyLog({ ...opened.log, ...head, signed }, sha256);
    if (fault)
      throw new UsageError(`The registry came in whole, but its log does not hold. ${logFaultSentence(fault)}`);
  } finally {
    opened.close();
  }
}
