import { randomBytes } from "node:crypto";
import { mkdir, open, rename, rm, stat } from "node:fs/promises";
import { join } from "node:path";

/** How an unfinished file ends; one that is left over was cut short by a kill and is listed by `verify-files`. */
export const unfinishedEnd = ".part";

/**
 * Writes a file whole or not at all: beside its place, forced to the disk, then renamed. A record that names the file
 * is written after this, so a kill at any moment leaves at most a file that no record names. Names are made of the
 * content: where one is there already, at the right size, it is left.
 */
export async function writeWhole(folder: string, name: string, bytes: Uint8Array, mode = 0o644): Promise<void> {
  const place = join(/* turbopackIgnore: true */ folder, name);
  if ((await stat(place).catch(() => null))?.size === bytes.length) return;
  await mkdir(folder, { recursive: true, mode: mode === 0o600 ? 0o700 : 0o755 });
  const beside = `${place}.${randomBytes(6).toString("hex")}${unfinishedEnd}`;
  try {
    const file = await open(beside, "wx", mode);
    try {
      await file.writeFile(bytes);
      await file.sync();
    } finally {
      await file.close();
    }
    await rename(beside, place);
  } catch (error) {
    await rm(beside, { force: true });
    throw error;
  }
  await forceFolder(folder);
}

/** The new name itself has to reach the disk too. Where a folder cannot be opened for that, the system does without. */
async function forceFolder(folder: string): Promise<void> {
  const handle = await open(folder, "r").catch(() => null);
  if (!handle) return;
  try {
    await handle.sync().catch(() => undefined);
  } finally {
    await handle.close();
  }
}
