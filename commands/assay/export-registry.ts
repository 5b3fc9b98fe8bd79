import { createWriteStream, mkdirSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { Readable } from "node:stream";
import { pipeline } from "node:stream/promises";
import type { FilePlace, FileStore } from "../../lib/files/file-store.ts";
import { systemClock } from "../../lib/platform/clock.ts";
import { sha256 } from "../../lib/platform/sha256.ts";
import { type Db, dialectOf } from "../../lib/store/database.ts";
import { type NamedFile, namedFiles } from "../../lib/store/named-files.ts";
import { lastEntry } from "../../lib/store/publications.ts";
import { type MovedTable, movedTableNames, rowLine, rowsOf, tableDigest } from "../../lib/store/whole-registry.ts";
import {
  filePath,
  type RegistryManifest,
  recordsPath,
  registryManifestName,
  type TableCount,
} from "./registry-manifest.ts";
import { UsageError } from "./usage-error.ts";

/** Every record and every file of a registry, as `import` reads them, into a folder for its owner only. */
export async function exportRegistry(tx: Db, store: FileStore, folder: string): Promise<RegistryManifest> {
  mkdirSync(join(folder, "records"), { recursive: true, mode: 0o700 });
  const tables: TableCount[] = [];
  for (const table of movedTableNames) tables.push(await writeTable(tx, table, folder));
  const files = await writeFiles(await namedFiles(tx), store, folder);
  const head = await lastEntry(tx);
  const manifest: RegistryManifest = {
    format: 1,
    madeAt: systemClock().toISOString(),
    from: dialectOf(tx),
    log: { entries: head?.seq ?? 0, head: head?.hash ?? null },
    tables,
    files,
  };
  // Last, so that a folder without it is an export that stopped on the way.
  writeFileSync(join(folder, registryManifestName), `${JSON.stringify(manifest, null, 2)}\n`, { mode: 0o600 });
  return manifest;
}

async function writeTable(tx: Db, table: MovedTable, folder: string): Promise<TableCount> {
  const digest = tableDigest();
  async function* lines(): AsyncGenerator<string> {
    for await (const row of rowsOf(tx, table)) {
      const line = rowLine(row);
      digest.add(line);
      yield `${line}\n`;
    }
  }
  await pipeline(Readable.from(lines()), createWriteStream(join(folder, recordsPath(table)), { mode: 0o600 }));
  return { name: table, ...digest.done() };
}

/** What the database holds now, without writing anything: the other half of the comparison. */
export async function countTables(db: Db): Promise<TableCount[]> {
  const counts: TableCount[] = [];
  for (const name of movedTableNames) {
    const digest = tableDigest();
    for await (const row of rowsOf(db, name)) digest.add(rowLine(row));
    counts.push({ name, ...digest.done() });
  }
  return counts;
}

async function writeFiles(named: NamedFile[], store: FileStore, folder: string): Promise<RegistryManifest["files"]> {
  const files: RegistryManifest["files"] = [];
  const seen = new Set<string>();
  for (const { place: kind, key: name, hashBegins, by } of named) {
    const place: FilePlace = kind === "private" ? "originals" : "photos";
    if (seen.has(`${place}/${name}`)) continue;
    seen.add(`${place}/${name}`);
    const bytes = await store.read(place, name);
    const digest = bytes === null ? null : sha256(bytes);
    if (bytes === null || digest === null || !digest.startsWith(hashBegins))
      throw new UsageError(
        `The file ${place}/${name}, named by ${by}, is ${bytes === null ? "missing from" : "not as recorded in"} ${store.where}; run npm run assay -- verify-files.`,
      );
    const to = join(folder, filePath(place, name));
    mkdirSync(dirname(to), { recursive: true, mode: 0o700 });
    writeFileSync(to, bytes, { mode: 0o600 });
    files.push({ place, name, bytes: bytes.length, sha256: digest });
  }
  return files;
}
