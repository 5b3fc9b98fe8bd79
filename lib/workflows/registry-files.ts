import { createHash } from "node:crypto";
import { csvHeader, csvLine } from "../exports/csv-table.ts";
import { dataPackage, type PackagedFile } from "../exports/data-package.ts";
import { beforeAnything } from "../exports/published-revision.ts";
import { readingColumns, readingRows } from "../exports/readings-csv.ts";
import { resultColumns, resultRows } from "../exports/results-csv.ts";
import type { LogEntry } from "../publication/snapshot.ts";
import type { Database } from "../store/database.ts";
import { registry } from "../store/publications.ts";
import { itemsAsOf, publicationLog } from "../store/published.ts";

/** The files of the whole registry: what anyone may take away, and what `assay export` writes. */
export const registryFiles = {
  results: { name: "results.csv", type: "text/csv; charset=utf-8; header=present", chunks: resultsChunks },
  readings: { name: "readings.csv", type: "text/csv; charset=utf-8; header=present", chunks: readingsChunks },
  log: { name: "log.json", type: "application/json", chunks: logChunks },
} as const;
export type RegistryFile = keyof typeof registryFiles;
export const registryFileNames = Object.keys(registryFiles) as RegistryFile[];

/** A file with its size and hash, worked out by making it once without keeping it. */
export async function measureFile(db: Database, file: RegistryFile, seq: number): Promise<Omit<PackagedFile, "path">> {
  const hash = createHash("sha256");
  let bytes = 0;
  for await (const chunk of registryFiles[file].chunks(db, seq)) {
    hash.update(chunk);
    bytes += Buffer.byteLength(chunk);
  }
  return { bytes, sha256: hash.digest("hex") };
}

/**
 * datapackage.json of the registry as it stood at an entry of the log (null: nothing published yet). It says the same for
 * the same entry whenever it is asked, since everything in it comes from snapshots, but for the registry's name and terms.
 */
export async function describeRegistry(
  db: Database,
  head: LogEntry | null,
  { baseUrl, files }: { baseUrl: string; files: Record<RegistryFile, PackagedFile> },
): Promise<ReturnType<typeof dataPackage>> {
  return dataPackage({
    baseUrl,
    registry: await registry(db),
    seq: head?.seq ?? 0,
    created: head?.publishedAt ?? beforeAnything,
    files,
  });
}

async function* resultsChunks(db: Database, seq: number): AsyncGenerator<string> {
  yield csvHeader(resultColumns);
  for await (const { snapshot } of itemsAsOf(seq, db))
    yield resultRows(snapshot)
      .map((row) => csvLine(resultColumns, row))
      .join("");
}

async function* readingsChunks(db: Database, seq: number): AsyncGenerator<string> {
  yield csvHeader(readingColumns);
  for await (const { snapshot } of itemsAsOf(seq, db))
    yield readingRows(snapshot)
      .map((row) => csvLine(readingColumns, row))
      .join("");
}

async function* logChunks(db: Database, seq: number): AsyncGenerator<string> {
  const entries = (await publicationLog(db)).filter((entry) => entry.seq <= seq);
  yield `${JSON.stringify({ entries })}\n`;
}
