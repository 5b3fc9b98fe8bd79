import { readFileSync } from "node:fs";
import { join } from "node:path";
import { z } from "zod";
import { movedTableNames } from "../../lib/store/whole-registry.ts";
import { why } from "./registry-place.ts";
import { UsageError } from "./usage-error.ts";

/** Where an export keeps what only the registry itself may see, and where that lies in it. */
export const registryFolder = "registry";
export const registryManifestName = "registry.json";
export const recordsPath = (table: string): string => join("records", `${table}.jsonl`);
export const filePath = (place: string, name: string): string => join("files", place, name);

const sha256Form = z.string().regex(/^[0-9a-f]{64}$/);
const manifestSchema = z.object({
  format: z.literal(1),
  madeAt: z.string(),
  from: z.enum(["sqlite", "postgres"]),
  log: z.object({ entries: z.number().int().nonnegative(), head: z.string().nullable() }),
  tables: z.array(
    z.object({
      name: z.enum(movedTableNames as [(typeof movedTableNames)[number], ...typeof movedTableNames]),
      rows: z.number().int().nonnegative(),
      sha256: sha256Form,
    }),
  ),
  files: z.array(
    z.object({
      place: z.enum(["photos", "originals"]),
      // A name leads nowhere but into its place.
      name: z.string().regex(/^[\w-][\w.-]*$/),
      bytes: z.number().int().nonnegative(),
      sha256: sha256Form,
    }),
  ),
});
export type RegistryManifest = z.infer<typeof manifestSchema>;
export type TableCount = RegistryManifest["tables"][number];

export function readRegistryManifest(folder: string): RegistryManifest {
  let text: string;
  try {
    text = readFileSync(join(folder, registryManifestName), "utf8");
  } catch (error) {
    throw new UsageError(`"${folder}" holds no whole registry (${registryManifestName}): ${why(error)}.`);
  }
  try {
    return manifestSchema.parse(JSON.parse(text));
  } catch {
    throw new UsageError(
      `"${join(folder, registryManifestName)}" is not the list of an exported registry that this version reads.`,
    );
  }
}

/** Counts and hashes side by side; what differs is said at the line's end. */
export function comparison(before: readonly TableCount[], after: readonly TableCount[]): string {
  const rows = before.map((one) => {
    const other = after.find(({ name }) => name === one.name);
    const same = other?.rows === one.rows && other.sha256 === one.sha256;
    const text = (table: TableCount | undefined) => [String(table?.rows ?? "–"), table?.sha256.slice(0, 16) ?? "–"];
    const [rowsBefore = "", hashBefore = ""] = text(one);
    const [rowsAfter = "", hashAfter = ""] = text(other);
    return `${one.name.padEnd(18)} ${rowsBefore.padStart(9)} ${rowsAfter.padStart(9)}  ${hashBefore}  ${hashAfter}  ${same ? "same" : "DIFFERS"}`;
  });
  const heading = `${"table".padEnd(18)} ${"before".padStart(9)} ${"after".padStart(9)}  ${"SHA-256 before".padEnd(16)}  ${"SHA-256 after".padEnd(16)}`;
  return [heading, ...rows].join("\n");
}
