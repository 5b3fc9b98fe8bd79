import { existsSync, readdirSync } from "node:fs";
import { join, resolve } from "node:path";
import { photoFolder } from "../../lib/files/photo-store.ts";
import { privateFolder } from "../../lib/files/private-files.ts";
import { unfinishedEnd } from "../../lib/files/write-whole.ts";
import { sha256 } from "../../lib/platform/sha256.ts";
import { type Database, openDatabase } from "../../lib/store/database.ts";
import { type NamedFile, namedFiles, rawFiles } from "../../lib/store/named-files.ts";
import { databaseName, fileDigest } from "./backup-manifest.ts";
import { registryPlace } from "./registry-place.ts";
import { UsageError } from "./usage-error.ts";

const folders: Record<NamedFile["place"], string> = { photos: photoFolder, private: privateFolder };

/**
 * `npm run assay -- verify-files [DATA_DIR]`: every file that a record names is there with the right SHA-256, and every
 * stored file is named by a record. One line for each that is not: `missing`, `changed`, `orphan` (whole, but no record
 * names it: harmless, left by a stop between file and record) and `unfinished`. Exit code 0 where there is none, else 1.
 */
export async function run(args: string[]): Promise<number> {
  const { dataDir, databaseFile } = placeOf(args);
  const db = openDatabase(databaseFile);
  try {
    // The folders before the records: a file whose record is being written meanwhile is then no orphan.
    const stored = storedFiles(dataDir);
    const named = byPath(await namedFiles(db));
    const all = [...(await wrongFiles(named, dataDir)), ...(await wrongRawFiles(db)), ...strayFiles(stored, named)];
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

function placeOf(args: string[]): { dataDir: string; databaseFile: string } {
  const [folder, ...others] = args;
  if (folder === undefined) return registryPlace();
  if (others.length > 0 || folder.startsWith("-"))
    throw new UsageError("Name one folder at most: npm run assay -- verify-files [DATA_DIR].");
  const databaseFile = join(resolve(folder), databaseName);
  if (!existsSync(databaseFile)) throw new UsageError(`There is no registry at "${databaseFile}".`);
  return { dataDir: resolve(folder), databaseFile };
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

async function wrongFiles(named: Map<string, NamedFile[]>, dataDir: string): Promise<string[]> {
  const faults: string[] = [];
  for (const [path, records] of named) {
    const file = join(dataDir, path);
    const digest = existsSync(file) ? await fileDigest(file) : null;
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

const storedFiles = (dataDir: string): string[] =>
  Object.values(folders).flatMap((folder) =>
    existsSync(join(dataDir, folder))
      ? readdirSync(join(dataDir, folder), { recursive: true, withFileTypes: true })
          .filter((entry) => entry.isFile())
          .map((entry) => join(entry.parentPath, entry.name).slice(dataDir.length + 1))
          .sort()
      : [],
  );
