import { fork, spawnSync } from "node:child_process";
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { parseArgs } from "node:util";
import Database from "better-sqlite3";
import { caseBytes } from "./case-bytes.ts";
import type { Order, Word } from "./worker.ts";

/** The longest a case may keep a processor, in ms; a busy machine's clock would say nothing of it. */
const longest = 5_000;
/** A case that says nothing for so long, by the clock, does not come back. */
const hangsAfter = 60_000;

const { values } = parseArgs({
  options: {
    files: { type: "string", default: "1000" },
    images: { type: "string", default: "200" },
    seed: { type: "string", default: "1" },
    only: { type: "string" },
  },
});
const seed = Number(values.seed);
const root = join(import.meta.dirname, "..", "..");
const scratch = mkdtempSync(join(tmpdir(), "assay-fuzz-"));
const baseDatabase = join(scratch, "base.db");
spawnSync(process.execPath, [join(root, "commands", "migrate.mjs"), baseDatabase], {
  stdio: ["ignore", "ignore", "inherit"],
});
const base = new Database(baseDatabase);
base.pragma("wal_checkpoint(TRUNCATE)");
base.close();

type Bug = { kind: Order["kind"]; n: number; what: string };
type Tally = { taken: number; refused: Map<string, number>; slowest: { n: number; ms: number }; bugs: Bug[] };

/** Runs cases in a process of its own until all are done; one that dies or hangs is noted, and the next goes on after it. */
async function runAll(kind: Order["kind"], count: number): Promise<Tally> {
  const tally: Tally = { taken: 0, refused: new Map(), slowest: { n: -1, ms: 0 }, bugs: [] };
  for (let from = values.only ? Number(values.only) : 0; from < count; ) from = await runFrom(kind, from, count, tally);
  return tally;
}

function runFrom(kind: Order["kind"], from: number, to: number, tally: Tally): Promise<number> {
  return new Promise((resolve) => {
    const child = fork(join(import.meta.dirname, "worker.ts"), { stdio: ["ignore", "inherit", "inherit", "ipc"] });
    let at = from;
    let hanging: NodeJS.Timeout | undefined;
    let hung = false;
    child.on("message", (word: Word) => {
      clearTimeout(hanging);
      if ("begins" in word) {
        at = word.begins;
        hanging = setTimeout(() => {
          hung = true;
          child.kill("SIGKILL");
        }, hangsAfter);
        return;
      }
      const ms = word.cpuMs;
      if (ms > longest) tally.bugs.push({ kind, n: word.ended, what: `kept a processor for ${Math.round(ms)} ms` });
      if (ms > tally.slowest.ms) tally.slowest = { n: word.ended, ms };
      const { ending } = word;
      if (ending.end === "taken") tally.taken += 1;
      else if (ending.end === "refused") tally.refused.set(ending.code, (tally.refused.get(ending.code) ?? 0) + 1);
      else tally.bugs.push({ kind, n: word.ended, what: ending.what });
      at = word.ended + 1;
      if (at % 1_000 === 0) console.log(`  ${kind}: ${at} of ${to}`);
    });
    child.on("exit", (code, signal) => {
      clearTimeout(hanging);
      if (code === 0) return resolve(to);
      tally.bugs.push({
        kind,
        n: at,
        what: hung ? `nothing for ${hangsAfter / 1000} s` : `the process ended: ${signal ?? code}`,
      });
      resolve(at + 1);
    });
    child.send({ kind, from, to, seed, baseDatabase, scratch } satisfies Order);
  });
}

const counted = (tally: Tally): string =>
  [...tally.refused]
    .sort(([, a], [, b]) => b - a)
    .map(([code, n]) => `${code} ${n}`)
    .join(", ");

const kept = join(root, ".cache", "fuzz");
let bugs = 0;
for (const [kind, count] of [
  ["files", values.only && values.files === "0" ? 0 : Number(values.files)],
  ["images", Number(values.images)],
] as const) {
  if (count === 0) continue;
  const began = performance.now();
  const tally = await runAll(kind, count);
  const refused = [...tally.refused.values()].reduce((sum, n) => sum + n, 0);
  console.log(
    `${count} mutated ${kind === "files" ? "instrument files" : "pictures"}, seed ${seed}: ${tally.taken} taken in, ${refused} refused with a sentence, ${tally.bugs.length} bugs; at most ${Math.round(tally.slowest.ms)} ms of a processor (case ${tally.slowest.n}), ${Math.round((performance.now() - began) / 1000)} s in all`,
  );
  console.log(`  refused: ${counted(tally)}`);
  for (const { n, what } of tally.bugs) {
    const { name, bytes } = await caseBytes({ kind, seed }, n);
    mkdirSync(kept, { recursive: true });
    writeFileSync(join(kept, `${kind}-${seed}-${n}-${name}`), bytes);
    console.log(`  BUG in case ${n} (${name}, kept in .cache/fuzz): ${what}`);
  }
  bugs += tally.bugs.length;
}
rmSync(scratch, { recursive: true, force: true });
process.exitCode = bugs === 0 ? 0 : 1;
