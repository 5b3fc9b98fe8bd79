import { readFile } from "node:fs/promises";
import { join } from "node:path";
import { sha256 } from "../platform/sha256.ts";
import { writeWhole } from "./write-whole.ts";

/**
 * Files as they came, kept for the registry and never served to the public: originals of photos with all they carry,
 * certificates. Each is named by the SHA-256 of its bytes, so its record is also its proof.
 */
export const privateFolder = "originals";
const keyForm = /^[0-9a-f]{64}$/;
const folder = (dataDir: string) => join(/* turbopackIgnore: true */ dataDir, privateFolder);

/** Keeps the bytes, and answers with their key: their SHA-256. */
export async function keepPrivate(dataDir: string, bytes: Uint8Array): Promise<string> {
  const key = sha256(bytes);
  await writeWhole(folder(dataDir), key, bytes, 0o600);
  return key;
}

/** The bytes behind a key, or null: also for anything that is not a key, so that no path can be asked for. */
export async function readPrivate(dataDir: string, key: string): Promise<Uint8Array<ArrayBuffer> | null> {
  if (!keyForm.test(key)) return null;
  try {
    return new Uint8Array(await readFile(join(folder(dataDir), key)));
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === "ENOENT") return null;
    throw error;
  }
}
