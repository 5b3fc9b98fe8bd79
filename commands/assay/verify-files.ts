import { existsSync } from "node:fs";
import { join, resolve } from "node:path";
import { type FilePlace, type FileStore, fileStore, folderStore } from "../../lib/files/file-store.ts";
import { photoFolder } from "../../lib/files/photo-store.ts";
import { privateFolder } from "../../lib/files/private-files.ts";
import { unfinishedEnd } from "../../lib/files/write-whole.ts";
import { sha256 } from "../../lib/platform/sha256.ts";
import { type Database, openDatabase } from "../../lib/store/database.ts";
import { type NamedFile, namedFiles, rawFiles } from "../../lib/store/named-files.ts";
import { databaseName } from "./backup-manifest.ts";
import { registryPlace } from "./registry-place.ts";
import { UsageError } from "./usage-error.ts";

const folders: Record<NamedFile["place"], FilePlace> = { photos: photoFolder, private: privateFolder };

/**
 * `npm run assay -- verify-files [DATA_DIR]`: every file that a record names is there with the right SHA-256, and every
 * stored file is named by a record. One line for each that is not: `missing`, `changed`, `orphan` (whole, but no record
 * names it: harmless, left by a stop between file and record) and `unfinished`. Exit code 0 where there is none, else 1.
 */
export async function run(args: string[]): Promise<number> {
  const { store, databaseUrl } = placeOf(args);
  const db = openDatabase(databaseUrl);
  try {
    // The folders before the records: a file whose record is being written meanwhile is then no orphan.
    const stored = await storedFiles(store);
    const named = byPath(await namedFiles(db));
    const all = [...(await wrongFiles(named, store)), ...(await wrongRawFiles(db)), ...strayFiles(stored, named)];
    const faults = [...new Set(all)];
    for (const line of faults) process.stdout.write(`${line}\n`);
    const raw = await db.rawFile.count();
    if (faults.length > 0) {
      process.stderr.write(`The files and the records do not agree: ${counted(faults.length, "fault")}.\n`);
      return 1;
    }
    process.stdout.write(
      `${counted(named.size, "stored file")} and ${counted(raw, "instrument file")}: all there, all named, all as recorded\n`,
    );
    return 0;
  } finally {
    await db.$disconnect();
  }
}

const counted = (n: number, what: string): string => `${n} ${what}${n === 1 ? "" : "s"}`;

function placeOf(args: string[]): { store: FileStore; databaseUrl: string } {
  const [folder, ...others] = args;
  if (folder === undefined) {
    const { dataDir, databaseUrl } = registryPlace();
    return { store: fileStore(dataDir), databaseUrl };
  }
  if (others.length > 0 || folder.startsWith("-"))
    throw new UsageError("Name one folder at most: npm run assay -- verify-files [DATA_DIR].");
  const databaseFile = join(resolve(folder), databaseName);
  if (!existsSync(databaseFile)) throw new UsageError(`There is no registry at "${databaseFile}".`);
  return { store: folderStore(resolve(folder)), databaseUrl: `file:${databaseFile}` };
}

/** What each path has to hash to, and who says so; one file may be named several times. */
function byPath(named: NamedFile[]): Map<string, NamedFile[]> {
  const paths = new Map<string, NamedFile[]>();
  for (const file of named) {
    const path = `${folders[file.place]}/${file.key}`;
    paths.set(path, [...(paths.get(path) ?? []), file]);
  }
  return paths;
}

async function wrongFiles(named: Map<string, NamedFile[]>, store: FileStore): Promise<string[]> {
  const faults: string[] = [];
  for (const [path, records] of named) {
    const [place, name] = path.split("/") as [FilePlace, string];
    const bytes = await store.read(place, name);
    const digest = bytes === null ? null : sha256(bytes);
    if (digest === null) faults.push(`missing: ${path}, named by ${records[0]?.by}`);
    else
      for (const { hashBegins, by } of records)
        if (!digest.startsWith(hashBegins)) faults.push(`changed: ${path} is not what ${by} recorded`);
  }
  return faults;
}

async function wrongRawFiles(db: Database): Promise<string[]> {
  const faults: string[] = [];
  for await (const { name, sha256: recorded, bytes } of rawFiles(db))
    if (sha256(bytes) !== recorded) faults.push(`changed: instrument file “${name}” is not what was received`);
  return faults;
}

const strayFiles = (stored: string[], named: Map<string, NamedFile[]>): string[] =>
  stored
    .filter((path) => !named.has(path))
    .map((path) =>
      path.endsWith(unfinishedEnd)
        ? `unfinished: ${path}, cut short while it was written`
        : `orphan: ${path}, named by no record`,
    );

async function storedFiles(store: FileStore): Promise<string[]> {
  const paths: string[] = [];
  for (const place of Object.values(folders))
    paths.push(...(await store.names(place)).map((name) => `${place}/${name}`));
  return paths;
}
