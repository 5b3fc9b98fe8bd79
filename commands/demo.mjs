// npm run demo: installs, builds, loads the invented scenario into an embedded SQLite file and serves it.
import { spawn } from "node:child_process";
import { createServer } from "node:net";
import { join } from "node:path";
import { packageScripts, prepare, root, runPackage } from "./prepare.mjs";

const portFree = (port) =>
  new Promise((resolve) => {
    const probe = createServer().once("error", () => resolve(false));
    probe.once("listening", () => probe.close(() => resolve(true))).listen(port);
  });

await prepare();
const port = Number(process.env.PORT ?? 3000);
if (!(await portFree(port))) {
  console.error(`Port ${port} is taken by another program. Choose one: PORT=3001 npm run demo`);
  process.exit(1);
}
// A folder of its own, so that the invented items never mix with a real registry in ./data.
process.env.DATA_DIR ??= join(root, "data", "demo");
process.env.PORT = String(port);
const { build } = await import("./build.mjs");
build();
const database = join(process.env.DATA_DIR, "registry.db");
const migrated = runPackage("../commands/migrate.mjs", [process.env.DATABASE_URL?.replace(/^file:/, "") ?? database]);
if (migrated.status !== 0) process.exit(1);
const loaded = runPackage(packageScripts.tsx, [join("commands", "load-scenario.ts")]);
if (loaded.status !== 0) process.exit(1);
const server = spawn(process.execPath, [join(root, "node_modules", packageScripts.next), "start", "-p", String(port)], {
  cwd: root,
  stdio: "inherit",
  env: { ...process.env, NODE_ENV: "production", NEXT_TELEMETRY_DISABLED: "1" },
});
for (const signal of ["SIGINT", "SIGTERM"]) process.on(signal, () => server.kill(signal));
server.on("exit", (code) => process.exit(code ?? 0));
