import { secretFile } from "./secret-file.ts";
import { sha256 } from "./sha256.ts";

/**
 * A digest that stands for where a request came from on one day, by a key of this registry: good for counting, and of no use for
 * finding out who it was. The address is the nearest one the forwarding header names; behind a reverse proxy that is
 * set to overwrite the header it is the reader's own.
 */
export function askingPlace(headers: Headers, dataDir: string, now: Date): string {
  const address = headers.get("x-forwarded-for")?.split(",").at(-1)?.trim() ?? "";
  return sha256(`${secretFile(dataDir, "asking-place")} ${now.toISOString().slice(0, 10)} ${address}`).slice(0, 32);
}
