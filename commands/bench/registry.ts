/**
 * npm run bench -- --part registry [--items 1000,10000,100000]
 *
 * A registry as readers meet it, at three sizes: search and suggestions beside the bare full-text query, an item page kept and one
 * that has to be made beside a static file of the same bytes from the same server, and the server's memory under that load. Ratios of one
 * run, by requests a second and by the server's own processor time, which other work on the machine hardly touches; they fail nothing.
 */
import { mkdirSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { parseArgs } from "node:util";
import autocannon from "autocannon";
import { z } from "zod";
import { openDatabase } from "../../lib/store/database.ts";
import { type Served, serveScenario } from "../../tests/support/serve-scenario.ts";
import { inventedItem } from "../registry/invented-items.ts";
import { madeRegistry } from "../registry/made.ts";
import { printSpeeds, type Speeds, variedQuestions } from "../registry/speeds.ts";
import { type Memory, memoryOf, processorTimeOf } from "./memory-of.ts";

const { values } = parseArgs({
  options: {
    items: { type: "string", default: "1000,10000,100000" },
    rounds: { type: "string" },
    part: { type: "string" },
  },
});
const sizes = values.items.split(",").map((text) => z.coerce.number().int().min(500).max(1_000_000).parse(text));

const connections = 10;
const seconds = 6;
const staticFolder = join(import.meta.dirname, "..", "..", ".next", "static", "bench");
const staticPage = "/_next/static/bench/page.html";
const gzip = { "accept-encoding": "gzip" };

/** `cost`: the server's processor time for a request, in ms. */
type Load = { perSecond: number; p95: number; cost: number };

/** As many requests a second as a few connections get answered; each connection asks its own share of the paths, in turn. */
async function load(served: Served, paths: string[], headers: Record<string, string>, once: boolean): Promise<Load> {
  let connection = 0;
  const before = processorTimeOf(served.pid());
  const result = await autocannon({
    url: served.base,
    connections,
    headers,
    ...(once ? { amount: paths.length } : { duration: seconds }),
    setupClient: (client) => {
      const mine = paths.filter((_, i) => paths.length < connections || i % connections === connection);
      connection += 1;
      client.setRequests(mine.map((path) => ({ method: "GET", path })));
    },
  });
  if (result.non2xx + result.errors > 0)
    throw new Error(`${result.non2xx} answers and ${result.errors} connections failed at ${paths[0]}`);
  const cost = (processorTimeOf(served.pid()) - before) / result["2xx"];
  return { perSecond: result["2xx"] / result.duration, p95: result.latency.p97_5, cost };
}

type Row = {
  size: number;
  speeds: Speeds;
  file: Load;
  kept: Load;
  made: Load;
  search: Load;
  memory: Memory | null;
};

async function pagesOf(folder: string, size: number, speeds: Speeds): Promise<Row> {
  const served = await serveScenario({ folder, passwords: {} });
  try {
    const item = `/items/${inventedItem(0).slug}`;
    const page = Buffer.from(await (await fetch(served.base + item)).arrayBuffer());
    const file = Buffer.from(await (await fetch(served.base + staticPage)).arrayBuffer());
    console.log(
      `  an item page: ${(page.length / 1000).toFixed(0)} kB; the static file: ${(file.length / 1000).toFixed(0)} kB`,
    );
    const each = async (headers: Record<string, string>, note: string) => {
      await load(served, [staticPage, item], headers, false);
      const static_ = await load(served, [staticPage], headers, false);
      const kept = await load(served, [item], headers, false);
      const again = await load(served, [staticPage], headers, false);
      // The file before and after, so that other work on the machine is no reader's fault.
      const mean = {
        perSecond: (static_.perSecond + again.perSecond) / 2,
        p95: Math.max(static_.p95, again.p95),
        cost: (static_.cost + again.cost) / 2,
      };
      console.log(
        `  ${note}: static file ${mean.perSecond.toFixed(0)}/s, kept item page ${kept.perSecond.toFixed(0)}/s: ${(kept.perSecond / mean.perSecond).toFixed(2)} × (goal 0.8); processor ${mean.cost.toFixed(2)} and ${kept.cost.toFixed(2)} ms, ${(mean.cost / kept.cost).toFixed(2)} ×`,
      );
      return { file: mean, kept };
    };
    await each(gzip, "compressed");
    const plain = await each({}, "uncompressed");
    const fresh = Array.from({ length: Math.min(size - 1, 600) }, (_, i) => `/items/${inventedItem(i + 1).slug}`);
    const made = await load(served, fresh, {}, true);
    console.log(
      `  item pages never asked for before: ${made.perSecond.toFixed(0)}/s, 1/${(plain.file.perSecond / made.perSecond).toFixed(1)} of the static file (goal 1/4); processor ${made.cost.toFixed(1)} ms, 1/${(made.cost / plain.file.cost).toFixed(1)}`,
    );
    const questions = variedQuestions(size).map((q) => `/items?q=${encodeURIComponent(q.slice(0, 200))}`);
    const search = await load(served, questions, {}, true);
    console.log(`  whole search pages: ${search.perSecond.toFixed(0)}/s, 97.5 in 100 within ${search.p95} ms`);
    const memory = memoryOf(served.pid());
    if (memory)
      console.log(
        `  server's memory: ${memory.now.toFixed(0)} MB after the load, ${memory.highest.toFixed(0)} MB at most`,
      );
    return { size, speeds, ...plain, made, search, memory };
  } finally {
    await served.stop();
  }
}

/** A file of an item page's own bytes, where the server finds static files when it starts. */
async function placeStaticPage(folder: string): Promise<void> {
  const served = await serveScenario({ folder, passwords: {} });
  const page = await (await fetch(`${served.base}/items/${inventedItem(0).slug}`)).text();
  await served.stop();
  mkdirSync(staticFolder, { recursive: true });
  writeFileSync(join(staticFolder, "page.html"), page);
}

const rows: Row[] = [];
try {
  for (const size of sizes) {
    const folder = await madeRegistry(size);
    console.log(`\n${size} items, ${size * 10} readings`);
    const db = openDatabase(join(folder, "registry.db"));
    const speeds = await printSpeeds(db, size);
    await db.$disconnect();
    if (rows.length === 0) await placeStaticPage(folder);
    rows.push(await pagesOf(folder, size, speeds));
  }
} finally {
  rmSync(staticFolder, { recursive: true, force: true });
}

const cell = (text: string, width: number) => text.padStart(width);
console.log("\nGrowth      search, ms                 suggestions, ms    pages a second               memory, MB");
console.log("   items   median    p95  worst   ×bare     p95  worst    static    kept  made anew     at most");
for (const { size, speeds, file, kept, made, memory } of rows)
  console.log(
    [
      ...[cell(String(size), 8), cell(speeds.search.median.toFixed(1), 8), cell(speeds.search.p95.toFixed(1), 6)],
      ...[cell(speeds.search.worst.toFixed(1), 6), cell((speeds.search.p95 / speeds.bare.p95).toFixed(2), 7)],
      ...[cell(speeds.suggestions.p95.toFixed(1), 7), cell(speeds.suggestions.worst.toFixed(1), 6)],
      ...[cell(file.perSecond.toFixed(0), 9), cell(kept.perSecond.toFixed(0), 7), cell(made.perSecond.toFixed(0), 10)],
      cell(memory ? memory.highest.toFixed(0) : "?", 11),
    ].join(" "),
  );
process.exit(0);
