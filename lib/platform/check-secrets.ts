import { existsSync, readdirSync, readFileSync, statSync } from "node:fs";
import { join } from "node:path";

/**
 * What is wrong with how secrets are kept in DATA_DIR/keys, one sentence each; empty where nothing is. Asked at the start: a key that
 * others of the machine can read is no secret, and one that was cut short lets anybody guess it.
 */
export function secretFaults(dataDir: string): string[] {
  const folder = join(/* turbopackIgnore: true */ dataDir, "keys");
  if (!existsSync(folder)) return [];
  // Windows keeps no such bits.
  const open = (path: string): boolean => process.platform !== "win32" && (statSync(path).mode & 0o077) !== 0;
  const faults = open(folder) ? [`${folder} can be opened by others of this machine; run: chmod 700 "${folder}"`] : [];
  for (const name of readdirSync(folder)) {
    const file = join(/* turbopackIgnore: true */ folder, name);
    if (!statSync(file).isFile()) continue;
    if (open(file)) faults.push(`${file} can be read by others of this machine; run: chmod 600 "${file}"`);
    if (!name.endsWith(".pem") && readFileSync(file, "utf8").trim().length < 32)
      faults.push(`${file} is too short for a secret; move it away, and a new one is made at the next start`);
  }
  return faults;
}
