import { sha256 } from "../platform/sha256.ts";
import { fileStore } from "./file-store.ts";

/**
 * Files as they came, kept for the registry and never served to the public: originals of photos with all they carry,
 * certificates. Each is named by the SHA-256 of its bytes, so its record is also its proof.
 */
export const privateFolder = "originals" as const;
const keyForm = /^[0-9a-f]{64}$/;

/** Keeps the bytes, and answers with their key: their SHA-256. */
export async function keepPrivate(dataDir: string, bytes: Uint8Array): Promise<string> {
  const key = sha256(bytes);
  await fileStore(dataDir).write(privateFolder, key, bytes);
  return key;
}

/** The bytes behind a key, or null: also for anything that is not a key, so that no path can be asked for. */
export async function readPrivate(dataDir: string, key: string): Promise<Uint8Array<ArrayBuffer> | null> {
  return keyForm.test(key) ? fileStore(dataDir).read(privateFolder, key) : null;
}
