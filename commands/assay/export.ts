import { createWriteStream, existsSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { Readable } from "node:stream";
import { pipeline } from "node:stream/promises";
import type { PackagedFile } from "../../lib/exports/data-package.ts";
import { fileStore } from "../../lib/files/file-store.ts";
import { readPhoto } from "../../lib/files/photo-store.ts";
import { sha256 } from "../../lib/platform/sha256.ts";
import { signingKeyName } from "../../lib/platform/signing-key.ts";
import { readSnapshot } from "../../lib/publication/read-snapshot.ts";
import { atOneMoment, type Database, type Db, openDatabase } from "../../lib/store/database.ts";
import { headAt } from "../../lib/store/log-heads.ts";
import { lastEntry } from "../../lib/store/publications.ts";
import { logEntryAt, storedRevision } from "../../lib/store/published.ts";
import {
  describeRegistry,
  measure,
  type RegistryFile,
  registryFileNames,
  registryFiles,
} from "../../lib/workflows/registry-files.ts";
import { exportRegistry } from "./export-registry.ts";
import { headName, snapshotPath } from "./exported-paths.ts";
import { registryFolder } from "./registry-manifest.ts";
import { emptyFolder, oneFolder, registryPlace, why } from "./registry-place.ts";
import { UsageError } from "./usage-error.ts";

const options = { published: "--published", key: "--with-signing-key" };

/**
 * `npm run assay -- export DIR [--published] [--with-signing-key]`: a registry as it stands at one moment, into a new folder. For everybody: every
 * snapshot byte for byte, the log, its signed head where there is one, results and readings as CSV, the photos that snapshots name,
 * and a datapackage.json that describes it; `verify-log DIR` checks it. Under registry/, for the registry alone: every record and
 * file, for `import`; `--published` leaves that out. The key that signs the log comes along only where it is asked for.
 */
export async function run(args: string[]): Promise<number> {
  const asked = (option: string) => args.includes(option);
  const folder = oneFolder(
    args.filter((arg) => !Object.values(options).includes(arg)),
    "export",
  );
  const { databaseUrl, dataDir, baseUrl } = registryPlace();
  emptyFolder(folder, "the export");
  const db = openDatabase(databaseUrl);
  try {
    return await atOneMoment(db, async (tx) => {
      // The package's functions only read, and a transaction reads as a connection does.
      const { seq, photos } = await exportPublished(tx as Database, { folder, dataDir, baseUrl });
      process.stdout.write(`Exported ${seq} published revisions and ${photos} photos to ${folder}\n`);
      if (!asked(options.published)) await exportWhole(tx, { folder, dataDir, withKey: asked(options.key) });
      return 0;
    });
  } catch (error) {
    if (error instanceof UsageError) throw error;
    throw new UsageError(`The export is not complete: ${why(error)}.`);
  } finally {
    await db.$disconnect();
  }
}

async function exportPublished(
  db: Database,
  { folder, dataDir, baseUrl }: { folder: string; dataDir: string; baseUrl: string },
): Promise<{ seq: number; photos: number }> {
  const head = await lastEntry(db);
  const seq = head?.seq ?? 0;
  const photos = await writeSnapshots(db, seq, folder);
  await writePhotos(photos, dataDir, folder);
  const files: [RegistryFile, PackagedFile][] = [];
  for (const file of registryFileNames) files.push([file, await writeFile(db, file, seq, folder)]);
  const signed = await headAt(db, seq);
  if (signed) writeFileSync(join(folder, headName), `${JSON.stringify(signed)}\n`);
  const described = await describeRegistry(db, head, {
    baseUrl,
    files: Object.fromEntries(files) as Record<RegistryFile, PackagedFile>,
  });
  writeFileSync(join(folder, "datapackage.json"), `${JSON.stringify(described, null, 2)}\n`);
  return { seq, photos: photos.size };
}

async function exportWhole(
  tx: Db,
  { folder, dataDir, withKey }: { folder: string; dataDir: string; withKey: boolean },
): Promise<void> {
  const to = join(folder, registryFolder);
  mkdirSync(to, { mode: 0o700 });
  const { tables, files } = await exportRegistry(tx, fileStore(dataDir), to);
  const key = join(dataDir, "keys", signingKeyName);
  if (withKey && existsSync(key)) writeFileSync(join(to, signingKeyName), readFileSync(key), { mode: 0o600 });
  const records = tables.reduce((sum, table) => sum + table.rows, 0);
  process.stdout.write(
    `${registryFolder}/ holds the whole registry for import: ${records} records and ${files.length} files, with people's addresses and password hashes${withKey ? " and the key that signs the log" : ", without the key that signs the log"}; keep it private.\n`,
  );
}

/** Writes every revision's text and answers with the photos they name: key and SHA-256. */
async function writeSnapshots(db: Database, last: number, folder: string): Promise<Map<string, string>> {
  const photos = new Map<string, string>();
  for (let seq = 1; seq <= last; seq += 1) {
    const entry = await logEntryAt(seq, db);
    const stored = entry && (await storedRevision(entry.slug, entry.revision, db));
    const at = entry && snapshotPath(entry.slug, entry.revision);
    if (!stored || !at)
      throw new UsageError(`Entry ${seq} of the log cannot be exported; run npm run assay -- verify-log.`);
    const read = readSnapshot(stored.json);
    if (!read.ok || sha256(stored.json) !== stored.entry.snapshotSha256)
      throw new UsageError(
        `The published text of entry ${seq} is not what the log holds; run npm run assay -- verify-log.`,
      );
    for (const photo of read.value.photos)
      for (const { key, sha256: digest } of [photo, ...(photo.sizes ?? [])]) photos.set(key, digest);
    mkdirSync(dirname(join(folder, at)), { recursive: true });
    writeFileSync(join(folder, at), stored.json);
  }
  return photos;
}

async function writePhotos(photos: Map<string, string>, dataDir: string, folder: string): Promise<void> {
  if (photos.size > 0) mkdirSync(join(folder, "photos"));
  for (const [key, digest] of photos) {
    const bytes = await readPhoto(dataDir, key);
    if (bytes === null) throw new UsageError(`The photo ${key} is missing from "${join(dataDir, "photos")}".`);
    if (sha256(bytes) !== digest) throw new UsageError(`The photo ${key} is not the one that was published.`);
    writeFileSync(join(folder, "photos", key), bytes);
  }
}

/** One file of the data package, written while it is made and measured while it is written. */
async function writeFile(db: Database, file: RegistryFile, seq: number, folder: string): Promise<PackagedFile> {
  const { name, chunks } = registryFiles[file];
  const { add, size } = measure();
  async function* measured(): AsyncGenerator<string> {
    for await (const chunk of chunks(db, seq)) {
      add(chunk);
      yield chunk;
    }
  }
  await pipeline(Readable.from(measured()), createWriteStream(join(folder, name)));
  return { path: name, ...size() };
}
