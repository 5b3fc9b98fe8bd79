import { createHash } from "node:crypto";
import { createReadStream, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { pipeline } from "node:stream/promises";
import { z } from "zod";
import { photoFolder } from "../../lib/files/photo-store.ts";
import { privateFolder } from "../../lib/files/private-files.ts";
import { unfinishedEnd } from "../../lib/files/write-whole.ts";
import { signingKeyName } from "../../lib/platform/signing-key.ts";
import { UsageError } from "./usage-error.ts";

export const manifestName = "backup.json";
export const databaseName = "registry.db";
/** The database of a registry in PostgreSQL, in pg_dump's custom format. */
export const dumpName = "registry.dump";

/** A file of a backup. Only these places exist, so that no path of a hostile manifest leads out of the folder. */
const filePath = z
  .string()
  .regex(/^(?:registry\.db|registry\.dump|photos\/[\w-][\w.-]*|originals\/[0-9a-f]{64}|keys\/[\w-][\w.-]*)$/);

const manifestSchema = z.object({
  format: z.literal(1),
  madeAt: z.string(),
  entries: z.number().int().nonnegative(),
  head: z.string().nullable(),
  /** The server's version of PostgreSQL, where the registry lay in it. */
  postgres: z.number().int().positive().optional(),
  files: z.array(z.object({ path: filePath, bytes: z.number(), sha256: z.string() })),
});
export type Manifest = z.infer<typeof manifestSchema>;

export async function fileDigest(file: string): Promise<string> {
  const hash = createHash("sha256");
  await pipeline(createReadStream(file), hash);
  return hash.digest("hex");
}

/**
 * The files of DATA_DIR that a backup carries beside the database. The key that signs the log only where it is asked for:
 * whoever holds it can sign in the registry's name, and a registry without it makes a new one, which /log then says.
 */
export function companionFiles(dataDir: string, { withSigningKey }: { withSigningKey: boolean }): string[] {
  return [photoFolder, privateFolder, "keys"].flatMap((folder) => {
    try {
      return readdirSync(join(dataDir, folder), { withFileTypes: true })
        .filter((one) => one.isFile() && !one.name.endsWith(unfinishedEnd))
        .map((one) => `${folder}/${one.name}`)
        .filter((path) => withSigningKey || path !== `keys/${signingKeyName}`)
        .sort();
    } catch (error) {
      if ((error as NodeJS.ErrnoException).code === "ENOENT") return [];
      throw error;
    }
  });
}

/** The list of a backup's files; it is written last, so a backup without one was never finished. */
export function readManifest(folder: string): Manifest {
  let text: string;
  try {
    text = readFileSync(join(folder, manifestName), "utf8");
  } catch {
    throw new UsageError(`"${folder}" is not a finished backup: it has no ${manifestName}.`);
  }
  try {
    return manifestSchema.parse(JSON.parse(text));
  } catch {
    throw new UsageError(`"${join(folder, manifestName)}" cannot be read as the list of a backup.`);
  }
}
