import { closeSync, mkdtempSync, openSync, readSync, rmSync, writeSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

/**
 * Texts laid into a file of our own, to be asked for one at a time and without waiting, as a check of the log does: a registry of any size
 * passes through without filling the memory.
 */
export function spooledTexts() {
  const folder = mkdtempSync(join(tmpdir(), "assay-log-"));
  const file = openSync(join(folder, "texts"), "wx+", 0o600);
  const places: { at: number; length: number }[] = [];
  let end = 0;
  return {
    add: (text: string): void => {
      const bytes = Buffer.from(text, "utf8");
      writeSync(file, bytes, 0, bytes.length, end);
      places.push({ at: end, length: bytes.length });
      end += bytes.length;
    },
    /** Counted from 0; undefined where there are not so many. */
    nth: (n: number): Uint8Array | undefined => {
      const place = places[n];
      if (place === undefined) return undefined;
      const bytes = new Uint8Array(place.length);
      readSync(file, bytes, 0, place.length, place.at);
      return bytes;
    },
    close: (): void => {
      closeSync(file);
      rmSync(folder, { recursive: true, force: true });
    },
  };
}
