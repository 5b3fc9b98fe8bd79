// Brings the database up to date and serves the built product; used by `npm start` and `npm run demo`.
import { spawn } from "node:child_process";
import { createServer } from "node:net";
import { join } from "node:path";
import { root, runPackage } from "./prepare.mjs";

const portFree = (port) =>
  new Promise((resolve) => {
    const probe = createServer().once("error", () => resolve(false));
    probe.once("listening", () => probe.close(() => resolve(true))).listen(port);
  });

/** The port asked for, or the end of the program with a sentence where it is taken. */
export async function freePort(command) {
  const port = Number(process.env.PORT ?? 3000);
  if (await portFree(port)) return port;
  console.error(`Port ${port} is taken by another program. Choose one: PORT=${port + 1} ${command}`);
  process.exit(1);
}

/** The registry of the environment: its address may hold a password, which has no place among a command's arguments. */
export function migrateDatabase() {
  if (runPackage("../commands/migrate.mjs", []).status !== 0) process.exit(1);
}

export function serve(port) {
  const server = spawn(process.execPath, [join(root, "server.mjs")], {
    cwd: root,
    stdio: "inherit",
    env: { ...process.env, PORT: String(port), NODE_ENV: "production", NEXT_TELEMETRY_DISABLED: "1" },
  });
  for (const signal of ["SIGINT", "SIGTERM"]) process.on(signal, () => server.kill(signal));
  server.on("exit", (code) => process.exit(code ?? 0));
}
