/**
 * npm run bench -- [--rounds N]
 *
 * Times the hot work of the pure rooms and prints each time beside the same work elsewhere, as a ratio: a time alone says more
 * of the machine than of the code. Processor time of the whole process, its compiler's and collector's threads included, so that
 * waiting for other work counts for nobody; ours and theirs take turns, and the best of all rounds counts. What the others compute is
 * held against ours first; a difference ends the run.
 */

import { availableParallelism, loadavg } from "node:os";
import { parseArgs } from "node:util";
import { sha256 } from "../../lib/platform/sha256.ts";
import { answerQuestions } from "../../lib/readings/answer-questions.ts";
import { decodeBytes } from "../../lib/readings/decode-bytes.ts";
import { settleAndAsk } from "../../lib/readings/open-questions.ts";
import { proposeMapping } from "../../lib/readings/propose-mapping.ts";
import { readRows } from "../../lib/readings/read-rows.ts";
import { readTable } from "../../lib/readings/read-table.ts";
import { reconcile } from "../../lib/reconcile/reconcile.ts";
import { coverageFactor } from "../../lib/statistics/coverage-factor.ts";
import { chiSquareQuantile } from "../../lib/statistics/distributions.ts";
import { type MonteCarloInput, monteCarlo } from "../../lib/statistics/monte-carlo.ts";
import { type RandomEffects, randomEffects } from "../../lib/statistics/random-effects.ts";
import { longFile } from "./long-file.ts";
import { asInput, makeReadings, type Readings } from "./parts.ts";
import { metaforTime, NumpyPeer } from "./peer.ts";

const parts = 10_000;

function timed<T>(work: () => T): { ms: number; result: T } {
  const start = process.cpuUsage();
  const result = work();
  const { user, system } = process.cpuUsage(start);
  return { ms: (user + system) / 1000, result };
}

/** Best times of both sides over rounds that take turns. */
async function inTurn<T>(rounds: number, ours: () => T, theirs: () => Promise<number>): Promise<[number, number, T]> {
  let best: [number, number] = [Infinity, Infinity];
  let result: T | undefined;
  for (let round = 0; round < rounds; round++) {
    const run = timed(ours);
    result = run.result;
    best = [Math.min(best[0], run.ms), Math.min(best[1], await theirs())];
  }
  return [...best, result as T];
}

const ms = (time: number): string => `${time < 100 ? time.toFixed(1) : time.toFixed(0)} ms`;
const line = (what: string, ours: number, peer?: { what: string; time: number; goal?: number }): void => {
  const beside = peer
    ? `   ${(ours / peer.time).toFixed(2).padStart(6)} × ${peer.what} (${ms(peer.time)})${peer.goal ? `, goal ${peer.goal} ×` : ""}`
    : "";
  console.log(`${what.padEnd(52)} ${ms(ours).padStart(9)}${beside}`);
};

function mustAgree(what: string, ours: number[], theirs: number[], within: number): void {
  const worst = Math.max(...ours.map((value, i) => Math.abs(value - theirs[i]!) / Math.max(1e-300, Math.abs(value))));
  if (!(worst <= within)) throw new Error(`${what}: ours and theirs differ by ${worst} of the value`);
}

const estimate = (all: Readings[]): RandomEffects[] =>
  all.map(({ x, u }) => randomEffects(x, u, { tau2: "PM", interval: "HK-adhoc" }));

async function estimators(all: Readings[], numpy: NumpyPeer | null, rounds: number): Promise<number | null> {
  const data = new Uint8Array(new Float64Array([...all.flatMap(({ x }) => x), ...all.flatMap(({ u }) => u)]).buffer);
  const request = {
    ...{ sets: all.length, each: 5, t: coverageFactor(4, 0.95) },
    chi2: [chiSquareQuantile(0.975, 4), chiSquareQuantile(0.025, 4)],
  };
  let plain = Infinity;
  let their: { mean: number[]; half: number[] } | null = null;
  const [ours, theirs, fits] = await inTurn(
    rounds,
    () => estimate(all),
    async () => {
      const answer = await numpy?.ask("random-effects", request, data);
      if (!answer) return Infinity;
      plain = Math.min(plain, answer["plain"] as number);
      their = answer as unknown as typeof their;
      return answer.ms;
    },
  );
  const what = "randomEffects, PM and HK ad hoc, 10,000 × 5";
  if (their === null) line(what, ours);
  else {
    const { mean, half } = their as { mean: number[]; half: number[] };
    mustAgree(
      "mean",
      fits.map((fit) => fit.mean),
      mean,
      1e-12,
    );
    mustAgree(
      "half width",
      fits.map((fit) => (fit.interval[1] - fit.interval[0]) / 2),
      half,
      1e-9,
    );
    line(what, ours, { what: "NumPy, the same work", time: theirs, goal: 1 });
    line("", ours, { what: "NumPy without the interval of τ²", time: plain });
  }
  const few = all.slice(0, 500);
  const metafor = metaforTime(
    few.map(({ x }) => x),
    few.map(({ u }) => u),
  );
  if (metafor === null) console.log("R with metafor is not here: left out.");
  else {
    mustAgree(
      "metafor's mean",
      fits.slice(0, 500).map((fit) => fit.mean),
      metafor.means,
      1e-4,
    );
    line("", ours, { what: `metafor ${metafor.version}, reckoned from 500 sets`, time: metafor.ms });
  }
  return their === null ? null : theirs;
}

async function wholeReconcile(all: Readings[], numpy: NumpyPeer | null, rounds: number): Promise<void> {
  const inputs = all.map(asInput);
  const data = new Uint8Array(new Float64Array([...all.flatMap(({ x }) => x), ...all.flatMap(({ u }) => u)]).buffer);
  const request = {
    ...{ sets: all.length, each: 5, t: coverageFactor(4, 0.95) },
    chi2: [chiSquareQuantile(0.975, 4), chiSquareQuantile(0.025, 4)],
  };
  const models = new Map<string, number>();
  for (const input of inputs) {
    const { model } = reconcile(input, sha256);
    models.set(model, (models.get(model) ?? 0) + 1);
  }
  const [ours, theirs] = await inTurn(
    rounds,
    () => {
      for (const input of inputs) reconcile(input, sha256);
    },
    async () => (await numpy?.ask("random-effects", request, data))?.ms ?? Infinity,
  );
  const mix = [...models].map(([model, count]) => `${count} ${model}`).join(", ");
  line(
    `reconcile, whole, 10,000 × 5 (${mix})`,
    ours,
    numpy ? { what: "NumPy's estimator alone", time: theirs, goal: 10 } : undefined,
  );
}

function unevenParts(): void {
  const inputs = makeReadings(300, 0.6)
    .filter((_, part) => part % 3 === 2)
    .map(asInput);
  const { ms: time } = timed(() => inputs.map((input) => reconcile(input, sha256)));
  line(`reconcile, ${inputs.length} uneven parts (lognormal model)`, time);
}

async function propagation(numpy: NumpyPeer | null, rounds: number): Promise<void> {
  const draws = 1_000_000;
  const inputs: Record<"a" | "b" | "c" | "d", MonteCarloInput> = {
    a: { shape: "normal", mean: 3, sd: 0.1 },
    b: { shape: "normal", mean: 2, sd: 0.1 },
    c: { shape: "rectangular", min: 1, max: 2 },
    d: { shape: "lognormal", median: 1, gsd: Math.exp(0.1) },
  };
  let their: { mean: number; sd: number } | null = null;
  const [ours, theirs, got] = await inTurn(
    rounds,
    () => monteCarlo(({ a, b, c, d }) => a * b * c * d, inputs, { draws, seed: 1 }),
    async () => {
      const answer = await numpy?.ask("monte-carlo", { draws, seed: 1 });
      if (!answer) return Infinity;
      their = answer as unknown as typeof their;
      return answer.ms;
    },
  );
  const what = "monteCarlo, product of four inputs, 1,000,000 draws";
  if (their === null) return line(what, ours);
  const { mean, sd } = their as { mean: number; sd: number };
  // Two simulations: five standard errors of their difference.
  mustAgree("simulated mean", [got.mean], [mean], (5 * Math.SQRT2 * sd) / mean / Math.sqrt(draws));
  mustAgree("simulated sd", [got.sd], [sd], 5 / Math.sqrt(draws));
  line(what, ours, { what: "NumPy", time: theirs, goal: 2 });
}

const must = <T>(outcome: { ok: true; value: T } | { ok: false; problems: unknown }): T => {
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return outcome.value;
};

/** Bytes of a file to readings with every row accounted for, as an import does it. */
function readFile(bytes: Uint8Array): number {
  const table = must(readTable(must(decodeBytes(bytes)).text));
  const { mapping } = settleAndAsk(table, proposeMapping(table).mapping);
  const answers = { k: 2, timeZone: "Europe/Lisbon", quantity: "bulk-mass-fraction" } as const;
  const now = Date.parse("2026-11-24T12:00:00Z");
  return must(readRows(table, must(answerQuestions(mapping, answers)), { now })).readings.length;
}

async function longImport(numpy: NumpyPeer | null): Promise<void> {
  const rows = 100_000;
  const bytes = new TextEncoder().encode(longFile(rows));
  const [ours, theirs, count] = await inTurn(
    2,
    () => readFile(bytes),
    async () => (await numpy?.ask("csv", {}, bytes))?.ms ?? Infinity,
  );
  if (count !== rows) throw new Error(`${count} of ${rows} rows were read`);
  const what = `reading 100,000 rows × 40 columns (${(bytes.length / 1e6).toFixed(0)} MB)`;
  line(what, ours, numpy ? { what: "Python's csv, splitting alone", time: theirs } : undefined);
}

async function main(): Promise<void> {
  const { values } = parseArgs({
    options: { rounds: { type: "string", default: "9" }, part: { type: "string" }, items: { type: "string" } },
  });
  const rounds = Number(values.rounds);
  if (!(Number.isInteger(rounds) && rounds > 0)) throw new Error("--rounds needs a whole number above zero");
  const numpy = await NumpyPeer.start();
  console.log(
    `Node ${process.versions.node}; ${numpy?.versions ?? "Python with NumPy is not here: its columns are left out"}`,
  );
  console.log(`Processor time, best of ${rounds} rounds, both sides in turn; goals are ratios and fail nothing.`);
  console.log(`${availableParallelism()} cores, ${loadavg()[0]!.toFixed(1)} processes waiting for them on average\n`);
  const all = makeReadings(parts, 0.04);
  await estimators(all, numpy, rounds);
  await wholeReconcile(all, numpy, rounds);
  unevenParts();
  await propagation(numpy, rounds);
  await longImport(numpy);
  numpy?.stop();
}

main().catch((error: unknown) => {
  console.error(error instanceof Error ? error.message : error);
  process.exit(1);
});
