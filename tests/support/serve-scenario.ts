import { type ChildProcess, spawn, spawnSync } from "node:child_process";
import { randomBytes } from "node:crypto";
import { cpSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { anyFreePort } from "../../commands/any-free-port.mjs";
import { makeDatabase } from "../../commands/postgres.mjs";

/** A started PostgreSQL server: the address of a database of it, and its psql. */
export type PostgresServer = { admin: string; psql: string };

const root = join(import.meta.dirname, "..", "..");
const bin = (script: string) => join(root, "node_modules", script);

export type LoadedScenario = {
  /** A data folder with the scenario loaded, to be copied. */
  folder: string;
  /** By role: "address password". */
  passwords: Record<string, string>;
  /** Where the records lie instead: a database to be copied, on a server of the run's own. */
  postgres?: (PostgresServer & { database: string }) | null;
};

export type Served = {
  base: string;
  passwords: LoadedScenario["passwords"];
  dataDir: string;
  /** Where its records are: file:… or postgres://… */
  databaseUrl: string;
  /** What the server has written to its standard output so far. */
  printed: () => string;
  /** The server's process. */
  pid: () => number | undefined;
  /** Ends the server as a power cut would; `start` serves the same folder again. */
  kill: () => Promise<void>;
  start: () => Promise<void>;
  stop: () => Promise<void>;
};

/** The test runner sets a BASE_URL of its own, which is none. */
const environmentOf = (dataDir: string, databaseUrl: string, port: number) => ({
  ...process.env,
  DATA_DIR: dataDir,
  DATABASE_URL: databaseUrl,
  PORT: String(port),
  BASE_URL: baseOf(port),
  NODE_ENV: "production" as const,
  NEXT_TELEMETRY_DISABLED: "1",
});

const fileIn = (folder: string): string => `file:${join(folder, "registry.db")}`;

/** Loads the scenario into a folder of its own, as `npm run demo` does; its records onto a PostgreSQL server where one is given. */
export function loadScenario(server: PostgresServer | null = null): LoadedScenario {
  const folder = mkdtempSync(join(tmpdir(), "assay-scenario-"));
  const database = "scenario";
  const env = environmentOf(folder, server ? makeDatabase(server, database) : fileIn(folder), 3000);
  run(process.execPath, [join(root, "commands", "migrate.mjs")], env);
  const printed = run(process.execPath, [bin("tsx/dist/cli.mjs"), join("commands", "load-scenario.ts")], env);
  const passwords = Object.fromEntries(
    [...printed.matchAll(/^ {2}(owner|tester|reviewer)\s+(\S+)\s+(\S+)$/gm)].map(([, role, email, password]) => [
      role,
      `${email} ${password}`,
    ]),
  ) as Record<string, string>;
  return { folder, passwords, postgres: server && { admin: server.admin, psql: server.psql, database } };
}

/**
 * Serves the built product, and the style page with it, over a copy of a loaded scenario: what is done there changes no other.
 * `settings` are more of its environment.
 */
export async function serveScenario(scenario: LoadedScenario, settings: Record<string, string> = {}): Promise<Served> {
  const port = await anyFreePort();
  const dataDir = mkdtempSync(join(tmpdir(), "assay-browser-"));
  cpSync(scenario.folder, dataDir, { recursive: true });
  const { postgres } = scenario;
  const copied = () => makeDatabase(postgres!, `served_${randomBytes(8).toString("hex")}`, postgres!.database);
  const databaseUrl = postgres ? copied() : fileIn(dataDir);
  let server: ChildProcess;
  let printed = "";
  const start = async (): Promise<void> => {
    server = await startedServer(dataDir, databaseUrl, port, settings, (text) => {
      printed += text;
    });
  };
  await start();
  return {
    base: baseOf(port),
    passwords: scenario.passwords,
    dataDir,
    databaseUrl,
    printed: () => printed,
    pid: () => server.pid,
    kill: () => ended(server, "SIGKILL"),
    start,
    stop: async () => {
      await ended(server, "SIGTERM");
      rmSync(dataDir, { recursive: true, force: true });
    },
  };
}

/** One more process of the product over the same registry, at an address of its own. */
export async function serveBeside({ dataDir, databaseUrl }: Served): Promise<Pick<Served, "base" | "pid" | "stop">> {
  const port = await anyFreePort();
  const server = await startedServer(dataDir, databaseUrl, port);
  return { base: baseOf(port), pid: () => server.pid, stop: () => ended(server, "SIGTERM") };
}

const baseOf = (port: number): string => `http://localhost:${port}`;

async function startedServer(
  dataDir: string,
  databaseUrl: string,
  port: number,
  settings: Record<string, string> = {},
  onPrinted: (text: string) => void = () => {},
): Promise<ChildProcess> {
  const server = spawn(process.execPath, [join(root, "server.mjs")], {
    cwd: root,
    env: { ...environmentOf(dataDir, databaseUrl, port), STYLE_PAGE: "1", ...settings },
    stdio: "pipe",
  });
  server.stdout?.on("data", (text: Buffer) => onPrinted(String(text)));
  server.stderr?.on("data", (text: Buffer) => process.stderr.write(text));
  await answering(`${baseOf(port)}/healthz`);
  return server;
}

function run(command: string, args: string[], env: NodeJS.ProcessEnv): string {
  const done = spawnSync(command, args, { cwd: root, env, encoding: "utf8" });
  if (done.status !== 0) throw new Error(`${args.join(" ")} failed:\n${done.stdout}${done.stderr}`);
  return done.stdout;
}

async function answering(url: string): Promise<void> {
  const until = performance.now() + 60_000;
  while (performance.now() < until) {
    const answer = await fetch(url).catch(() => null);
    if (answer?.ok) return;
    await new Promise((resolve) => setTimeout(resolve, 100));
  }
  throw new Error(`Nothing answers at ${url} after a minute.`);
}

const ended = (server: ChildProcess, signal: "SIGTERM" | "SIGKILL"): Promise<void> =>
  new Promise((resolve) => {
    if (server.exitCode !== null || server.signalCode !== null) return resolve();
    server.once("exit", () => resolve());
    server.kill(signal);
  });
