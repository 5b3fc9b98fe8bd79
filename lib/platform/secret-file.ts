import { randomBytes } from "node:crypto";
import { existsSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";

/** A text kept in DATA_DIR/keys, made at first use and readable by its owner only. */
export function keptFile(dataDir: string, name: string, make: () => string): string {
  const folder = join(/* turbopackIgnore: true */ dataDir, "keys");
  const file = join(/* turbopackIgnore: true */ folder, name);
  if (!existsSync(file)) {
    mkdirSync(folder, { recursive: true, mode: 0o700 });
    try {
      writeFileSync(file, make(), { mode: 0o600, flag: "wx" });
    } catch (error) {
      // Another process made it between the look and the write: theirs counts.
      if ((error as NodeJS.ErrnoException).code !== "EEXIST") throw error;
    }
  }
  return readFileSync(file, "utf8").trim();
}

/** A random secret of 32 bytes, kept the same way. */
export const secretFile = (dataDir: string, name: string): string =>
  keptFile(dataDir, name, () => randomBytes(32).toString("hex"));
