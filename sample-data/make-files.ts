import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import {
  type WriterOptions,
  type Written,
  writeGermanCsv,
  writeLongTsv,
  writeUglyCsv,
  writeWideCsv,
} from "./file-writers.ts";
import { hostileFiles } from "./hostile-files.ts";
import type { ShotPlan } from "./shot-plan.ts";
import { firstSitting, secondSitting } from "./shots-a.ts";
import { germanSitting } from "./shots-b.ts";
import { filmSitting, frenchSitting } from "./shots-c.ts";
import { uglySitting } from "./shots-ugly.ts";
import { type Shot, shoot } from "./simulate-shots.ts";

/** Writes the invented instrument files: `npx tsx sample-data/make-files.ts`. The same plans give the same bytes. */
export type MadeFile = { name: string; bytes: Uint8Array; shots: Shot[]; header: number; blank: number };

const operator = "T. Quillfeather";
const a: WriterOptions = { serial: "SA-0417", operator, k: 1 };
const b: WriterOptions = { serial: "SB-0092", operator, k: 3 };
const c: WriterOptions = { serial: "SC-0230", operator, k: 2 };

const utf8 = (text: string): Uint8Array => Buffer.from(text, "utf8");
const utf8Marked = (text: string): Uint8Array => Buffer.from(`\ufeff${text}`, "utf8");
const utf16Marked = (text: string): Uint8Array => Buffer.from(`\ufeff${text}`, "utf16le");
/** Windows-1252 for the characters used here: Latin-1 and the dash at 0x96. */
function windows1252(text: string): Uint8Array {
  return Uint8Array.from(text, (character) => {
    if (character === "–") return 0x96;
    const code = character.charCodeAt(0);
    if (code > 0xff || (code >= 0x80 && code < 0xa0)) throw new Error(`not in Windows-1252 here: ${character}`);
    return code;
  });
}

type Job = { plan: ShotPlan; write: (shots: Shot[], o: WriterOptions) => Written; options: WriterOptions };
const jobs: (Job & { encode: (text: string) => Uint8Array })[] = [
  { plan: firstSitting, write: writeWideCsv, options: a, encode: utf8 },
  { plan: secondSitting, write: writeWideCsv, options: a, encode: utf8 },
  { plan: germanSitting, write: writeGermanCsv, options: b, encode: windows1252 },
  { plan: frenchSitting, write: writeLongTsv, options: c, encode: utf16Marked },
  { plan: filmSitting, write: writeLongTsv, options: c, encode: utf16Marked },
  { plan: uglySitting, write: writeUglyCsv, options: b, encode: utf8Marked },
];

export function makeFiles(): MadeFile[] {
  return jobs.map(({ plan, write, options, encode }) => {
    const shots = shoot(plan);
    const { text, header, blank } = write(shots, options);
    return { name: plan.file, bytes: encode(text), shots, header, blank };
  });
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const folder = join(import.meta.dirname, "files");
  mkdirSync(folder, { recursive: true });
  for (const { name, bytes, shots } of makeFiles()) {
    writeFileSync(join(folder, name), bytes);
    console.log(`${name}: ${shots.length} shots, ${bytes.length} bytes`);
  }
  mkdirSync(join(folder, "hostile"), { recursive: true });
  for (const { name, bytes } of hostileFiles) writeFileSync(join(folder, "hostile", name), bytes);
}
