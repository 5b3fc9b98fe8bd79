/**
 * npm run bench -- --part load [--seconds N --readers N --testers N]
 *
 * Readers alone, and then the same readers while testers import: how much longer they wait, and whether anything fails. On
 * SQLite, on PostgreSQL with one process and with four. Readers ask at a bounded rate, each a page every five seconds, as people
 * do, not as fast as they are answered; each tester loads a file of 200 readings within the window, at a moment of its own. The load's
 * own work runs on the same machine. Ratios of one run; they fail nothing.
 */
import { availableParallelism, loadavg } from "node:os";
import { join } from "node:path";
import { parseArgs } from "node:util";
import autocannon from "autocannon";
import { z } from "zod";
import { openDatabase } from "../../lib/store/database.ts";
import { builtActions, signedInCookie } from "../../tests/support/ask-door.ts";
import { importFile } from "../../tests/support/crash-load.ts";
import { loadScenario, type Served, serveBeside, serveScenario } from "../../tests/support/serve-scenario.ts";
import { findPostgres, startPostgres } from "../postgres.mjs";
import { memoryOf } from "./memory-of.ts";

const { values } = parseArgs({
  options: {
    seconds: { type: "string", default: "20" },
    readers: { type: "string", default: "200" },
    testers: { type: "string", default: "50" },
    rounds: { type: "string" },
    part: { type: "string" },
    items: { type: "string" },
  },
});
const whole = z.coerce.number().int().min(1).max(10_000);
const seconds = whole.parse(values.seconds);
const readers = whole.parse(values.readers);
const testers = whole.parse(values.testers);
const rowsOfAFile = 200;
const everySeconds = 5;

type Times = { count: number; failed: number; p50: number; p95: number; p99: number };

function timesOf(all: number[], failed: number): Times {
  const sorted = all.sort((a, b) => a - b);
  const at = (share: number) => sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? Number.NaN;
  return { count: all.length, failed, p50: at(0.5), p95: at(0.95), p99: at(0.99) };
}

/** What readers ask for: front page, pages of items, searches, limits, the log. */
async function readersPaths(databaseUrl: string): Promise<string[]> {
  const db = openDatabase(databaseUrl);
  const items = await db.item.findMany({ where: { state: "published" }, orderBy: { slug: "asc" } });
  await db.$disconnect();
  const searches = items.map(({ name }) => `/items?q=${encodeURIComponent(name.split(" ")[0] ?? "")}`);
  return ["/", "/limits", "/methods", "/log", ...items.map(({ slug }) => `/items/${slug}`), ...searches];
}

/** The readers' shares over the processes at once. */
async function read(bases: string[], paths: string[]): Promise<Times> {
  const times: number[] = [];
  const connections = Math.max(1, Math.round(readers / bases.length));
  let reader = 0;
  const results = await Promise.all(
    bases.map(
      (url) =>
        new Promise<autocannon.Result>((resolve, reject) => {
          const run = autocannon(
            {
              ...{ url, connections, duration: seconds, timeout: 30, headers: { "accept-encoding": "gzip" } },
              overallRate: Math.max(1, Math.round(connections / everySeconds)),
              setupClient: (client) => {
                // Each begins elsewhere, so that they do not all ask for the same at once.
                reader += 7;
                const from = reader % paths.length;
                const mine = [...paths.slice(from), ...paths.slice(0, from)];
                client.setRequests(mine.map((path) => ({ method: "GET", path })));
              },
            },
            (error, result) => (error ? reject(error) : resolve(result)),
          );
          run.on("response", (_client, _status, _bytes, ms) => times.push(ms));
        }),
    ),
  );
  return timesOf(
    times,
    results.reduce((sum, { non2xx, errors }) => sum + non2xx + errors, 0),
  );
}

/** Every tester's file once, spread over the window. */
async function importAll(bases: string[], cookie: string): Promise<Times> {
  const times: number[] = [];
  let failed = 0;
  await Promise.all(
    Array.from({ length: testers }, async (_, n) => {
      await new Promise((later) => setTimeout(later, (n / testers) * seconds * 1000));
      const start = performance.now();
      const answer = await importFile({ base: bases[n % bases.length]!, cookie }, rowsOfAFile);
      if (answer !== null && "batchId" in answer) times.push(performance.now() - start);
      else {
        failed += 1;
        console.log(`  an import failed: ${answer ? answer.refused.slice(0, 300) : "no answer"}`);
      }
    }),
  );
  return timesOf(times, failed);
}

const line = (what: string, { count, failed, p50, p95, p99 }: Times) =>
  console.log(
    `  ${what.padEnd(28)}${String(count).padStart(6)}${String(failed).padStart(8)}${[p50, p95, p99].map((t) => t.toFixed(0).padStart(8)).join("")}`,
  );

async function measure(name: string, served: Served, processes: number): Promise<void> {
  const others = [];
  for (let n = 1; n < processes; n += 1) others.push(await serveBeside(served));
  try {
    const all = [served, ...others];
    const bases = all.map(({ base }) => base);
    const cookie = await signedInCookie(
      served.base,
      builtActions(join(import.meta.dirname, "..", "..")),
      served.passwords["tester"] ?? "",
    );
    const paths = await readersPaths(served.databaseUrl);
    // Every page once, and an import, on each process: the first of each loads its code.
    for (const base of bases) {
      for (const path of paths) await (await fetch(base + path)).arrayBuffer();
      await importFile({ base, cookie }, rowsOfAFile);
    }
    console.log(`\n${name}                  ms:  answers  failed     p50     p95     p99`);
    const alone = await read(bases, paths);
    line("readers alone", alone);
    const [together, imports] = await Promise.all([read(bases, paths), importAll(bases, cookie)]);
    line("readers, testers importing", together);
    line(`imports of ${rowsOfAFile} readings`, imports);
    const highest = all.map(({ pid }) => memoryOf(pid())?.highest ?? Number.NaN);
    console.log(
      `  p95 of reads ${(together.p95 / alone.p95).toFixed(2)} × of idle (goal 3 ×); memory at most ${highest.map((mb) => mb.toFixed(0)).join(", ")} MB`,
    );
  } finally {
    for (const other of others) await other.stop();
    await served.stop();
  }
}

console.log(
  `${readers} readers, each a page every ${everySeconds} s; ${testers} testers, each a file in ${seconds} s; ${availableParallelism()} cores, ${loadavg()[0]!.toFixed(1)} processes waiting before`,
);
process.env["UPLOADS_A_QUARTER_HOUR"] = "1000000";
await measure("SQLite, one process", await serveScenario(loadScenario()), 1);
if (findPostgres() === null) console.log("\nThere is no PostgreSQL server here: left out.");
else {
  const server = await startPostgres({ durable: true });
  try {
    const scenario = loadScenario(server);
    await measure("PostgreSQL, one process", await serveScenario(scenario), 1);
    await measure("PostgreSQL, four processes", await serveScenario(scenario), 4);
  } finally {
    server.stop();
  }
}
process.exit(0);
