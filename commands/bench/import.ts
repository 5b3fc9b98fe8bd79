/**
 * npm run bench -- --part import [--rows N --rounds N]
 *
 * A file of 100,000 rows × 40 columns from bytes to readings in force, by the workflows that the pages call, beside what cannot be
 * left out by anybody: papaparse alone and prepared inserts of the same cells into a table of 40 columns, one transaction. On both
 * databases; each side in a process of its own, so that its peak memory is its own; both sides in turn, and the best of the rounds
 * counts. Ratios of one run; they fail nothing.
 */
import { spawnSync } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { parseArgs } from "node:util";
import { z } from "zod";
import { findPostgres, makeDatabase, startPostgres } from "../postgres.mjs";

const root = process.cwd();
const { values } = parseArgs({
  options: {
    rows: { type: "string", default: "100000" },
    rounds: { type: "string", default: "2" },
    part: { type: "string" },
    items: { type: "string" },
  },
});
const whole = z.coerce.number().int().min(1);
const rows = whole.max(1_000_000).parse(values.rows);
const rounds = whole.max(100).parse(values.rounds);

const measured = z.object({ seconds: z.number(), processor: z.number(), peak: z.number(), note: z.string() });
type Measured = z.infer<typeof measured>;
type Side = "ours" | "theirs" | "theirs-batched";

/** One side's work in a new process, over a database that nothing has been loaded into. */
function run(side: Side, url: string): Measured {
  const worker = join(import.meta.dirname, "import-worker.mjs");
  const env = { ...process.env, BASE_URL: "http://localhost:3000" };
  const done = spawnSync(process.execPath, [worker, side, url, String(rows)], { cwd: root, encoding: "utf8", env });
  if (done.status !== 0) throw new Error(`${side}: ${done.stdout}${done.stderr}`);
  return measured.parse(JSON.parse(done.stdout.trim().split("\n").at(-1) ?? ""));
}

const better = (one: Measured | undefined, other: Measured): Measured =>
  one && one.seconds <= other.seconds ? { ...one, peak: Math.max(one.peak, other.peak) } : other;

const line = (what: string, { seconds, processor, peak }: Measured) =>
  console.log(
    `${what.padEnd(58)}${seconds.toFixed(1).padStart(7)} s ${processor.toFixed(1).padStart(7)} s ${peak.toFixed(0).padStart(7)} MB`,
  );

function compare(name: string, fresh: () => string, sides: Side[]): void {
  const best = new Map<Side, Measured>();
  for (let round = 0; round < rounds; round += 1)
    for (const side of sides) best.set(side, better(best.get(side), run(side, fresh())));
  const ours = best.get("ours")!;
  const theirs = best.get("theirs")!;
  const batched = best.get("theirs-batched");
  console.log(`\n${name}${" ".repeat(Math.max(1, 60 - name.length))}elapsed  processor     peak`);
  line("the import, from bytes to readings in force", ours);
  console.log(`  of it ${ours.note}`);
  line("papaparse and prepared inserts, a row each", theirs);
  if (batched) line("papaparse and prepared inserts, 1,000 rows each", batched);
  const times = (peer: Measured) => `${(ours.seconds / peer.seconds).toFixed(2)} ×`;
  console.log(`  ${times(theirs)} (goal 3 ×)${batched ? `; ${times(batched)} where a thousand rows go at once` : ""}`);
}

function migrated(url: string): string {
  const made = spawnSync(process.execPath, [join(root, "commands", "migrate.mjs"), url], { encoding: "utf8" });
  if (made.status !== 0) throw new Error(made.stderr);
  return url;
}

console.log(`${rows.toLocaleString("en")} rows × 40 columns, best of ${rounds}; the peak is the process's own`);
const folder = mkdtempSync(join(tmpdir(), "assay-bench-"));
try {
  let copies = 0;
  compare("SQLite", () => `file:${migrated(join(folder, `registry-${++copies}.db`))}`, ["ours", "theirs"]);
  if (findPostgres() === null) console.log("\nThere is no PostgreSQL server here: left out.");
  else {
    const server = await startPostgres({ durable: true });
    try {
      compare("PostgreSQL", () => migrated(makeDatabase(server, `bench_${++copies}`)), [
        "ours",
        "theirs",
        "theirs-batched",
      ]);
    } finally {
      server.stop();
    }
  }
} finally {
  rmSync(folder, { recursive: true, force: true });
}
