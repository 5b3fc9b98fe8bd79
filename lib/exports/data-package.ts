import { paths } from "../platform/paths.ts";
import type { Snapshot } from "../publication/snapshot.ts";
import { tableSchema } from "./csv-table.ts";
import { licenceOf } from "./licence.ts";
import { absoluteUrl } from "./published-revision.ts";
import { readingColumns, readingKey } from "./readings-csv.ts";
import { resultColumns, resultKey } from "./results-csv.ts";

/** A file of the package as it was written: its path in the package, its size and its SHA-256. */
export type PackagedFile = { path: string; bytes: number; sha256: string };

export type DataPackageInput = {
  baseUrl: string;
  registry: Snapshot["registry"];
  /** Highest `seq` of the log that the package holds; it is the package's version. */
  seq: number;
  created: string; // ISO time with offset
  files: { results: PackagedFile; readings: PackagedFile; log?: PackagedFile };
};

/**
 * datapackage.json, version 2 (datapackage.org), of the whole registry: results.csv, readings.csv and, where given, the
 * publication log, each with size, hash and, for tables, every field described. Units of one fixed kind stand in the
 * field's own `unit` (a UCUM code); other units have a column beside their number.
 */
export function dataPackage({ baseUrl, registry, seq, created, files }: DataPackageInput) {
  const licence = licenceOf(registry.licence);
  return {
    $schema: "https://datapackage.org/profiles/2.0/datapackage.json",
    name: "cupboard-assay-registry",
    id: absoluteUrl(baseUrl, paths.home()),
    title: `${registry.name}: everything published`,
    description: `${registry.invented ? "Invented data, made for a demonstration. " : ""}Content of parts of household goods, measured by handheld X-ray fluorescence. Total content only: it does not show what comes out of a part or gets into a body.`,
    homepage: absoluteUrl(baseUrl, paths.home()),
    version: `1.0.${seq}`,
    created,
    licenses: [
      {
        name: licence.name.replace(/[^-a-zA-Z0-9._]+/g, "-"),
        title: licence.title,
        ...(licence.path ? { path: licence.path } : {}),
      },
    ],
    contributors: [
      {
        title: registry.name,
        roles: ["publisher"],
        ...(registry.contact?.includes("@") ? { email: registry.contact } : {}),
      },
    ],
    sources: [{ title: `The published snapshots, log entries 1 to ${seq}`, path: absoluteUrl(baseUrl, paths.log()) }],
    keywords: ["X-ray fluorescence", "household goods", "lead"],
    resources: [
      table(
        "results",
        "One row for each part and element of each item's newest revision",
        files.results,
        tableSchema(resultColumns, resultKey),
      ),
      table(
        "readings",
        "One row for each reading and element",
        files.readings,
        tableSchema(readingColumns, readingKey),
      ),
      ...(files.log
        ? [
            {
              name: "log",
              title: "The publication log: a hash chain over every revision",
              path: files.log.path,
              format: "json",
              mediatype: "application/json",
              encoding: "utf-8",
              bytes: files.log.bytes,
              hash: `sha256:${files.log.sha256}`,
            },
          ]
        : []),
    ],
  };
}

const table = (name: string, title: string, file: PackagedFile, schema: ReturnType<typeof tableSchema>) => ({
  name,
  title,
  type: "table" as const,
  path: file.path,
  format: "csv",
  mediatype: "text/csv",
  encoding: "utf-8",
  bytes: file.bytes,
  hash: `sha256:${file.sha256}`,
  schema,
});
