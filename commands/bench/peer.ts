import { type ChildProcess, spawn, spawnSync } from "node:child_process";
import { join } from "node:path";
import { createInterface } from "node:readline";

const scripts = process.env["BENCH_SCRIPTS"] ?? __dirname;

export type Answer = { ms: number } & Record<string, unknown>;

/** A Python with NumPy that answers one request at a time; null where there is none. */
export class NumpyPeer {
  readonly #child: ChildProcess;
  readonly #lines: AsyncIterator<string>;
  versions = "";

  private constructor(child: ChildProcess) {
    this.#child = child;
    this.#lines = createInterface({ input: child.stdout! })[Symbol.asyncIterator]();
  }

  static async start(): Promise<NumpyPeer | null> {
    const present = spawnSync("python3", ["-c", "import numpy"], { stdio: "ignore" });
    if (present.status !== 0) return null;
    // One thread: these sets are too small to share, and ours has one too; and the kernels that NumPy itself finds best.
    const { OPENBLAS_CORETYPE: _core, OPENBLAS_L2_SIZE: _cache, ...own } = process.env;
    const env = { ...own, OMP_NUM_THREADS: "1", OPENBLAS_NUM_THREADS: "1" };
    const child = spawn("python3", [join(scripts, "numpy_work.py")], { stdio: ["pipe", "pipe", "inherit"], env });
    const peer = new NumpyPeer(child);
    const { numpy, python } = (await peer.#next()) as unknown as { numpy: string; python: string };
    peer.versions = `NumPy ${numpy}, Python ${python}`;
    return peer;
  }

  async #next(): Promise<Answer> {
    const { value, done } = await this.#lines.next();
    if (done) throw new Error("the NumPy script ended early");
    return JSON.parse(value);
  }

  async ask(task: string, request: Record<string, unknown>, data: Uint8Array = new Uint8Array()): Promise<Answer> {
    const padded = new Uint8Array(8 * Math.ceil(data.length / 8));
    padded.set(data);
    const line = { task, rounds: 1, doubles: padded.length / 8, bytes: data.length, ...request };
    this.#child.stdin!.write(`${JSON.stringify(line)}\n`);
    this.#child.stdin!.write(padded);
    return this.#next();
  }

  stop(): void {
    this.#child.stdin!.end();
  }
}

/** Milliseconds for 10,000 sets in R's metafor, reckoned from fewer; null where R or metafor is missing. */
export function metaforTime(x: number[][], u: number[][]): { ms: number; means: number[]; version: string } | null {
  const run = spawnSync("Rscript", ["--vanilla", join(scripts, "metafor_work.R")], {
    input: [...x, ...u].map((row) => row.join(" ")).join("\n"),
    encoding: "utf8",
    maxBuffer: 1 << 26,
  });
  if (run.error || run.status === 3) return null;
  if (run.status !== 0) throw new Error(`metafor gave up: ${run.stderr.trim()}`);
  const [version = "", seconds = "", ...means] = run.stdout.trim().split("\n");
  return { version, ms: (Number(seconds) * 1000 * 10_000) / x.length, means: means.map(Number) };
}
