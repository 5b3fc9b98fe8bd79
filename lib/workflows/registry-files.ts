import { createHash } from "node:crypto";
import { csvHeader, csvLine } from "../exports/csv-table.ts";
import { dataPackage, type PackagedFile } from "../exports/data-package.ts";
import { beforeAnything } from "../exports/published-revision.ts";
import { readingColumns, readingRows } from "../exports/readings-csv.ts";
import { resultColumns, resultRows } from "../exports/results-csv.ts";
import type { LogEntry, Snapshot } from "../publication/snapshot.ts";
import type { Database } from "../store/database.ts";
import { registry } from "../store/publications.ts";
import { itemsAsOf, publicationLog } from "../store/published.ts";

const csvType = "text/csv; charset=utf-8; header=present";

/** The tables of the whole registry: a header line, then the lines of each item's newest revision. */
const tables = {
  results: {
    header: csvHeader(resultColumns),
    lines: (snapshot: Snapshot) =>
      resultRows(snapshot)
        .map((row) => csvLine(resultColumns, row))
        .join(""),
  },
  readings: {
    header: csvHeader(readingColumns),
    lines: (snapshot: Snapshot) =>
      readingRows(snapshot)
        .map((row) => csvLine(readingColumns, row))
        .join(""),
  },
};

/** The files of the whole registry: what anyone may take away, and what `assay export` writes. */
export const registryFiles = {
  results: { name: "results.csv", type: csvType, chunks: (db, seq) => tableChunks("results", db, seq) },
  readings: { name: "readings.csv", type: csvType, chunks: (db, seq) => tableChunks("readings", db, seq) },
  log: { name: "log.json", type: "application/json", chunks: logChunks },
} as const satisfies Record<
  string,
  { name: string; type: string; chunks: (db: Database, seq: number) => AsyncGenerator<string> }
>;
export type RegistryFile = keyof typeof registryFiles;
export const registryFileNames = Object.keys(registryFiles) as RegistryFile[];

async function* tableChunks(table: keyof typeof tables, db: Database, seq: number): AsyncGenerator<string> {
  yield tables[table].header;
  for await (const { snapshot } of itemsAsOf(seq, db)) yield tables[table].lines(snapshot);
}

/** The log as JSON, open at its end: what comes after the entries is for whoever sends it. */
export async function* logText(log: AsyncGenerator<LogEntry[]>): AsyncGenerator<string> {
  yield '{"entries":[';
  let between = "";
  for await (const entries of log) {
    yield between + entries.map((entry) => JSON.stringify(entry)).join(",");
    between = ",";
  }
}

async function* logChunks(db: Database, seq: number): AsyncGenerator<string> {
  yield* logText(publicationLog(seq, db));
  yield "]}\n";
}

type Size = Omit<PackagedFile, "path">;

/** Counts and hashes text as it passes by. */
export function measure(): { add: (chunk: string) => void; size: () => Size } {
  const hash = createHash("sha256");
  let bytes = 0;
  return {
    add: (chunk) => {
      hash.update(chunk);
      bytes += Buffer.byteLength(chunk);
    },
    size: () => ({ bytes, sha256: hash.digest("hex") }),
  };
}

/** Size and hash of every file, worked out by making them once, all in one pass, without keeping them. */
export async function measureFiles(db: Database, seq: number): Promise<Record<RegistryFile, Size>> {
  const made = { results: measure(), readings: measure(), log: measure() };
  made.results.add(tables.results.header);
  made.readings.add(tables.readings.header);
  for await (const { snapshot } of itemsAsOf(seq, db)) {
    made.results.add(tables.results.lines(snapshot));
    made.readings.add(tables.readings.lines(snapshot));
  }
  for await (const chunk of logChunks(db, seq)) made.log.add(chunk);
  return { results: made.results.size(), readings: made.readings.size(), log: made.log.size() };
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
