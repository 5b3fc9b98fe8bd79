import { spawn, spawnSync } from "node:child_process";
import { join } from "node:path";
import { createInterface } from "node:readline";
import pg from "pg";
import { logTables, openDumpedLog } from "../../lib/store/dumped-log.ts";
import type { StoredLog } from "../../lib/store/stored-log.ts";
import { findPostgres } from "../postgres.mjs";
import { why } from "./registry-place.ts";
import { UsageError } from "./usage-error.ts";

/** What a dump says of the database at the moment it was made. */
export type Dumped = { server: number; entries: number; head: string | null };

/**
 * Writes a PostgreSQL database as it stands at one moment into one file, in pg_dump's custom format, while others go on working. The count
 * and the head of the log are read from the same moment.
 */
export async function dumpDatabase(databaseUrl: string, file: string): Promise<Dumped> {
  const program = find("pg_dump", "backed up");
  return connected(databaseUrl, async (client) => {
    const server = await serverVersion(client);
    if (program.version < server)
      throw new UsageError(
        `The server is PostgreSQL ${server}, and the pg_dump found is of version ${program.version}, which cannot read it: install the client programs of version ${server}, or say where they are with POSTGRES_BIN.`,
      );
    await client.query("BEGIN ISOLATION LEVEL REPEATABLE READ READ ONLY");
    const { rows: moments } = await client.query<{ id: string }>("SELECT pg_export_snapshot() AS id");
    const { rows } = await client.query<{ entries: number; head: string | null }>(
      `SELECT count(*)::int AS entries, (SELECT hash FROM "Publication" ORDER BY seq DESC LIMIT 1) AS head FROM "Publication"`,
    );
    await run(program.path, databaseUrl, [
      "--format=custom",
      "--no-owner",
      "--no-privileges",
      `--snapshot=${moments[0]?.id}`,
      `--file=${file}`,
    ]);
    await client.query("COMMIT");
    return { server, entries: rows[0]?.entries ?? 0, head: rows[0]?.head ?? null };
  });
}

/** Refuses before anything is written: no pg_restore, one too old for the dump, an older server, a database that holds something. */
export async function checkTarget(databaseUrl: string, dumpedFrom: number): Promise<void> {
  const program = find("pg_restore", "restored");
  if (program.version < dumpedFrom)
    throw new UsageError(
      `The backup is of PostgreSQL ${dumpedFrom}, and the pg_restore found is of version ${program.version}: install the client programs of version ${dumpedFrom} or newer, or say where they are with POSTGRES_BIN.`,
    );
  await connected(databaseUrl, async (client) => {
    const server = await serverVersion(client);
    if (server < dumpedFrom)
      throw new UsageError(
        `The backup is of PostgreSQL ${dumpedFrom}, and the server that DATABASE_URL names is of version ${server}: restore into version ${dumpedFrom} or newer.`,
      );
    const { rows } = await client.query<{ name: string }>(
      `SELECT tablename AS name FROM pg_tables WHERE schemaname NOT IN ('pg_catalog', 'information_schema') ORDER BY 1`,
    );
    if (rows.length > 0)
      throw new UsageError(
        `The database that DATABASE_URL names is not empty (it holds ${rows.length === 1 ? "a table" : `${rows.length} tables`}, "${rows[0]?.name}" among them); restore into an empty one, so that nothing is lost: createdb makes it.`,
      );
  });
}

/** The dump into an empty database, in one transaction: all of it is there, or nothing. */
export async function restoreDatabase(databaseUrl: string, file: string): Promise<void> {
  const { path } = find("pg_restore", "restored");
  // Comments belong to extensions, whose owner may be another.
  const plain = ["--no-owner", "--no-privileges", "--no-comments", "--single-transaction", "--exit-on-error"];
  await run(path, databaseUrl, [...plain, file]);
}

/** The log that a dump holds, without a server. */
export async function dumpLog(file: string): Promise<StoredLog> {
  const { path } = find("pg_restore", "looked into");
  const tables = logTables.map((table) => `--table=${table}`);
  const child = spawn(path, ["--data-only", ...tables, "--file=-", file], { stdio: ["ignore", "pipe", "pipe"] });
  const ended = outcome(child);
  const log = await openDumpedLog(createInterface({ input: child.stdout, crlfDelay: Number.POSITIVE_INFINITY }));
  const fault = await ended;
  if (fault === null) return log;
  log.close();
  throw new UsageError(`"${file}" cannot be read as a PostgreSQL dump: ${fault}.`);
}

function find(name: "pg_dump" | "pg_restore", done: string): { path: string; version: number } {
  const folder = findPostgres([name]);
  if (folder === null)
    throw new UsageError(
      `A registry in PostgreSQL is ${done} with ${name}, which is not on this machine: install PostgreSQL's client programs, or say where they are with POSTGRES_BIN.`,
    );
  const path = join(folder, name);
  const told = spawnSync(path, ["--version"], { encoding: "utf8" });
  const version = Number(/\b(\d+)(?:\.\d+|devel|beta|rc)/.exec(told.stdout ?? "")?.[1]);
  if (!(version > 0)) throw new UsageError(`"${path}" does not say which version it is.`);
  return { path, version };
}

async function connected<T>(databaseUrl: string, work: (client: pg.Client) => Promise<T>): Promise<T> {
  const client = new pg.Client({ connectionString: databaseUrl, connectionTimeoutMillis: 10_000 });
  try {
    await client.connect();
    return await work(client);
  } catch (error) {
    if (error instanceof UsageError) throw error;
    throw new UsageError(`The registry's PostgreSQL database could not be read: ${why(error)}.`);
  } finally {
    await client.end().catch(() => undefined);
  }
}

const serverVersion = async (client: pg.Client): Promise<number> => {
  const { rows } = await client.query<{ server_version_num: string }>("SHOW server_version_num");
  return Math.floor(Number(rows[0]?.server_version_num) / 10_000);
};

/** Runs a client program; the password goes by the environment, since arguments can be read by everybody on the machine. */
async function run(path: string, databaseUrl: string, args: string[]): Promise<void> {
  const url = new URL(databaseUrl);
  const password = decodeURIComponent(url.password);
  url.password = "";
  const env = { ...process.env, ...(password ? { PGPASSWORD: password } : {}), LC_ALL: "C" };
  const child = spawn(path, ["--no-password", `--dbname=${url}`, ...args], {
    env,
    stdio: ["ignore", "ignore", "pipe"],
  });
  const fault = await outcome(child);
  if (fault !== null) throw new UsageError(fault);
}

/** Null where the program went well, else the first thing that it complained of. */
const outcome = (child: ReturnType<typeof spawn>): Promise<string | null> =>
  new Promise((resolve) => {
    let told = "";
    child.stderr?.on("data", (text: Buffer) => {
      told = `${told}${text}`.slice(0, 4000);
    });
    child.on("error", (error) => resolve(why(error)));
    child.on("close", (code) => resolve(code === 0 ? null : (told.trim().split("\n")[0] ?? "").replace(/\.$/, "")));
  });
