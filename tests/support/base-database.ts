import { spawnSync } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import Database from "better-sqlite3";
import type { TestProject } from "vitest/node";

declare module "vitest" {
  export interface ProvidedContext {
    baseDatabase: string;
  }
}

/** Built once a run, in a folder of the run's own; each test copies the file, which is fast and needs no clean-up code. */
export default function setup(project: TestProject): () => void {
  const folder = mkdtempSync(join(tmpdir(), "assay-base-"));
  const file = join(folder, "base.db");
  const script = join(import.meta.dirname, "..", "..", "commands", "migrate.mjs");
  const run = spawnSync(process.execPath, [script, file], { encoding: "utf8" });
  if (run.status !== 0) throw new Error(`The test database could not be made.\n${run.stdout}${run.stderr}`);
  const db = new Database(file);
  db.pragma("wal_checkpoint(TRUNCATE)");
  db.close();
  project.provide("baseDatabase", file);
  return () => rmSync(folder, { recursive: true, force: true });
}
