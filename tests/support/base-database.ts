import { spawnSync } from "node:child_process";
import { mkdirSync, rmSync } from "node:fs";
import { join } from "node:path";
import Database from "better-sqlite3";

export const baseDatabase = join(import.meta.dirname, "..", "..", ".cache", "test", "base.db");

/** Built once a run; each test copies the file, which is fast and needs no clean-up code. */
export default function setup(): void {
  const folder = join(baseDatabase, "..");
  rmSync(folder, { recursive: true, force: true });
  mkdirSync(folder, { recursive: true });
  const script = join(import.meta.dirname, "..", "..", "commands", "migrate.mjs");
  const run = spawnSync(process.execPath, [script, baseDatabase], { encoding: "utf8" });
  if (run.status !== 0) throw new Error(`The test database could not be made.\n${run.stdout}${run.stderr}`);
  const db = new Database(baseDatabase);
  db.pragma("wal_checkpoint(TRUNCATE)");
  db.close();
}
