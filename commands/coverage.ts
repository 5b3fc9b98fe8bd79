/**
 * npm run coverage -- [--trials N] [--threads N] [--quick] [--json]
 *
 * Simulates whole parts through the whole of `reconcile` over the grid of the method's "Honest intervals" and prints, for each
 * cell, how often the stated 95 % interval holds the true mean, how often it lies wholly below it (unsafe), its median
 * width, how often no interval is stated, and how often a verdict is wrong against a limit at 0.5, 0.9, 1.1 and 2 times
 * the mean. Seeded by cell, so the same numbers come out whatever the number of threads. Ends with the cells that
 * fall short of the aims.
 */
import { availableParallelism } from "node:os";
import { parseArgs } from "node:util";
import { Worker } from "node:worker_threads";
import { type Cell, type CellResult, grid } from "./coverage/cells.ts";
import { printTable } from "./coverage/table.ts";

await main();

async function main(): Promise<void> {
  const { values } = parseArgs({
    options: {
      trials: { type: "string", default: "10000" },
      threads: { type: "string", default: String(availableParallelism()) },
      quick: { type: "boolean", default: false },
      json: { type: "boolean", default: false },
    },
  });
  const trials = Number(values.trials);
  const threads = Number(values.threads);
  if (!(Number.isInteger(trials) && trials > 0 && Number.isInteger(threads) && threads > 0)) {
    process.stderr.write("--trials and --threads need a whole number above zero.\n");
    process.exitCode = 2;
    return;
  }
  const cells = grid(values.quick);
  const results = await simulateAll(cells, trials, threads);
  if (values.json) process.stdout.write(`${JSON.stringify({ trials, cells: results }, null, 1)}\n`);
  else printTable(results, trials);
}

/** Deals the cells out to the threads, one in turn to each, so that heavy ones are shared. */
async function simulateAll(cells: Cell[], trials: number, threads: number): Promise<CellResult[]> {
  const results: CellResult[] = new Array(cells.length);
  let finished = 0;
  const work = Array.from({ length: Math.min(threads, cells.length) }, (_, thread) => {
    const mine = cells.map((cell, index) => ({ cell, index })).filter(({ index }) => index % threads === thread);
    return new Promise<void>((resolve, reject) => {
      const worker = new Worker(new URL("./coverage/worker.mjs", import.meta.url), {
        workerData: { cells: mine, trials },
      });
      worker.on("message", ({ index, result }: { index: number; result: CellResult }) => {
        results[index] = result;
        finished += 1;
        if (process.stderr.isTTY) process.stderr.write(`\r${finished} of ${cells.length} cells`);
      });
      worker.on("error", reject);
      worker.on("exit", (code) => (code === 0 ? resolve() : reject(new Error(`a worker ended with code ${code}`))));
    });
  });
  await Promise.all(work);
  if (process.stderr.isTTY) process.stderr.write("\r");
  return results;
}
