/**
 * npm run coverage -- [--trials N] [--threads N] [--quick] [--file FILE] [--json]
 *
 * Simulates whole parts through the whole of `reconcile` over the grid of the method's "Honest intervals" and prints, for each
 * cell, how often the stated 95 % interval holds the true mean, how often it lies wholly below it (unsafe), its median
 * width, how often no interval is stated, and how often a verdict is wrong against a limit at 0.5, 0.9, 1.1 and 2 times
 * the mean. Seeded by cell and block, so the same numbers come out whatever the number of threads. Ends with the cells that
 * fall short of the aims.
 *
 * Work goes in blocks of 500 parts, one block of every cell before the second of any, so that a run that is stopped has judged the
 * whole grid alike. With `--file` each finished block is written there as one line, and a later run goes on from it; the file names
 * the method's version, and one of another version is refused. `--json` prints the table as the methods page keeps it.
 */
import { availableParallelism } from "node:os";
import { parseArgs } from "node:util";
import { Worker } from "node:worker_threads";
import { blockOf, grid } from "./coverage/cells.ts";
import { blockKey, type FinishedBlock, keepBlock, keptBlocks } from "./coverage/kept-blocks.ts";
import { printTable, resultsOf } from "./coverage/table.ts";
import { tableAsData } from "./coverage/table-as-data.ts";

await main();

async function main(): Promise<void> {
  const { values } = parseArgs({
    options: {
      trials: { type: "string", default: "10000" },
      threads: { type: "string", default: String(availableParallelism()) },
      quick: { type: "boolean", default: false },
      file: { type: "string" },
      json: { type: "boolean", default: false },
    },
  });
  const trials = Number(values.trials);
  const threads = Number(values.threads);
  if (!(Number.isInteger(trials) && trials > 0 && Number.isInteger(threads) && threads >= 0)) {
    process.stderr.write("--trials needs a whole number above zero, --threads one of zero or more.\n");
    process.exitCode = 2;
    return;
  }
  const cells = grid(values.quick);
  const wanted: FinishedBlock["ask"][] = [];
  for (let block = 0; block * blockOf < trials; block++)
    for (const cell of cells) wanted.push({ cell, block, trials: Math.min(blockOf, trials - block * blockOf) });
  const finished = values.file === undefined ? new Map<string, FinishedBlock>() : keptBlocks(values.file);
  if (finished === null) {
    process.stderr.write(`${values.file} was made by another version of the method; give another file.\n`);
    process.exitCode = 2;
    return;
  }
  // No threads: print what a file holds and simulate nothing.
  const open = threads === 0 ? [] : wanted.filter((ask) => !finished.has(blockKey(ask)));
  await simulateAll(open, threads, (done) => {
    finished.set(blockKey(done.ask), done);
    if (values.file !== undefined) keepBlock(values.file, done);
    if (process.stderr.isTTY) process.stderr.write(`\r${finished.size} of ${wanted.length} blocks`);
  });
  if (process.stderr.isTTY) process.stderr.write("\r");
  const results = resultsOf(cells, [...finished.values()]);
  if (values.json) process.stdout.write(`${tableAsData(results)}\n`);
  else printTable(results);
}

/** Hands each thread the next open block as soon as it has finished one. */
async function simulateAll(
  open: FinishedBlock["ask"][],
  threads: number,
  onFinished: (block: FinishedBlock) => void,
): Promise<void> {
  let next = 0;
  const work = Array.from({ length: Math.min(threads, open.length) }, () => {
    const worker = new Worker(new URL("./coverage/worker.mjs", import.meta.url));
    const handOut = (): void => worker.postMessage(open[next++] ?? null);
    return new Promise<void>((resolve, reject) => {
      worker.on("message", (block: FinishedBlock) => {
        onFinished(block);
        handOut();
      });
      worker.on("error", reject);
      worker.on("exit", (code) => (code === 0 ? resolve() : reject(new Error(`a worker ended with code ${code}`))));
      handOut();
    });
  });
  await Promise.all(work);
}
