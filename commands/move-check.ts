import { spawnSync } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { parseArgs } from "node:util";
import { z } from "zod";
import { makeDatabase, startPostgres } from "./postgres.mjs";
import { madeRegistry } from "./registry/made.ts";

/**
 * Moves the invented scenario, and a generated registry of so many items, from SQLite to a PostgreSQL server of its own and
 * back into SQLite, by the very commands that people use, and prints what `import` prints with the time each step took.
 */
const root = join(import.meta.dirname, "..");
const { values } = parseArgs({ options: { items: { type: "string", default: "20000" } } });
const size = z.coerce.number().int().min(100).max(1_000_000).parse(values.items);

type Place = { dataDir: string; url: string };

function run(script: string, args: string[], { dataDir, url }: Place): string {
  const tsx = join(root, "node_modules", "tsx", "dist", "cli.mjs");
  const runner = script.endsWith(".ts") ? [tsx] : [];
  const env = { ...process.env, DATA_DIR: dataDir, DATABASE_URL: url, BASE_URL: "https://shelf.example" };
  const start = performance.now();
  const done = spawnSync(process.execPath, [...runner, join(root, "commands", script), ...args], {
    cwd: root,
    encoding: "utf8",
    env,
    maxBuffer: 1 << 28,
  });
  if (done.status !== 0) throw new Error(`${script} ${args.join(" ")}: ${done.stdout}${done.stderr}`);
  return `${done.stdout}  (${((performance.now() - start) / 1000).toFixed(1)} s)\n`;
}

const folders: string[] = [];
const fresh = (): string => {
  const folder = mkdtempSync(join(tmpdir(), "assay-move-"));
  folders.push(folder);
  return folder;
};
const sqlite = (dataDir: string): Place => ({ dataDir, url: `file:${join(dataDir, "registry.db")}` });

function move(from: Place, to: Place): void {
  const out = join(fresh(), "export");
  process.stdout.write(run("assay.mjs", ["export", out], from).replaceAll(out, "DIR"));
  process.stdout.write(run("assay.mjs", ["import", out], to));
  process.stdout.write(run("assay.mjs", ["verify-log"], to));
}

function thereAndBack(what: string, from: Place, name: string): void {
  const middle: Place = { dataDir: join(fresh(), "data"), url: makeDatabase(server, name) };
  console.log(`\n── ${what}: SQLite to PostgreSQL`);
  move(from, middle);
  console.log(`\n── ${what}: PostgreSQL to SQLite`);
  move(middle, sqlite(join(fresh(), "data")));
}

const server = await startPostgres({ durable: true });
try {
  const scenario = sqlite(join(fresh(), "data"));
  run("migrate.mjs", [], scenario);
  run("load-scenario.ts", [], scenario);
  thereAndBack("The scenario", scenario, "scenario");
  thereAndBack(`${size} generated items`, sqlite(await madeRegistry(size)), "generated");
} finally {
  server.stop();
  for (const folder of folders) rmSync(folder, { recursive: true, force: true });
}
