import { spawnSync } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import Database from "better-sqlite3";
import type { ProvidedContext } from "vitest";
import type { TestProject } from "vitest/node";
import { makeDatabase, startPostgres } from "../../commands/postgres.mjs";

declare module "vitest" {
  export interface ProvidedContext {
    /** The prepared SQLite file. */
    baseDatabase: string;
    /** The prepared PostgreSQL database and its server's psql, where the run is on PostgreSQL. */
    postgres: { admin: string; base: string; psql: string } | null;
  }
}

const migrate = join(import.meta.dirname, "..", "..", "commands", "migrate.mjs");

/**
 * Built once a run; each test gets a copy of its own, which is fast and needs no clean-up code. With
 * ASSAY_TEST_DATABASE=postgres the copies are databases of a server of the run's own, which goes with it.
 */
export default async function setup(project: TestProject): Promise<() => void> {
  const folder = mkdtempSync(join(tmpdir(), "assay-base-"));
  const file = join(folder, "base.db");
  prepared(file);
  const db = new Database(file);
  db.pragma("wal_checkpoint(TRUNCATE)");
  db.close();
  project.provide("baseDatabase", file);
  const server = process.env.ASSAY_TEST_DATABASE === "postgres" ? await startPostgres() : null;
  try {
    project.provide("postgres", server && preparedOn(server));
  } catch (error) {
    server?.stop();
    throw error;
  }
  return () => {
    server?.stop();
    rmSync(folder, { recursive: true, force: true });
  };
}

function preparedOn(server: Awaited<ReturnType<typeof startPostgres>>): ProvidedContext["postgres"] {
  const { admin, psql } = server;
  const base = makeDatabase(server, "base");
  prepared(base);
  return { admin, base, psql };
}

function prepared(target: string): void {
  const run = spawnSync(process.execPath, [migrate, target], { encoding: "utf8" });
  if (run.status !== 0) throw new Error(`The test database could not be made.\n${run.stdout}${run.stderr}`);
}
