// Brings a bare clone to the point where the product can run: packages as locked, database client generated.
// Plain Node with no packages of its own, since it runs before there are any.
import { spawnSync } from "node:child_process";
import { createHash } from "node:crypto";
import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";

export const root = join(dirname(fileURLToPath(import.meta.url)), "..");
const stamp = join(root, "node_modules", ".cupboard-assay-lock");

const lockDigest = () =>
  createHash("sha256")
    .update(readFileSync(join(root, "package-lock.json")))
    .digest("hex");

function requireNode() {
  const [major = 0, minor = 0] = process.versions.node.split(".").map(Number);
  if (major > 20 || (major === 20 && minor >= 9)) return;
  console.error(`Node 20.9 or newer is needed; this is Node ${process.versions.node}.`);
  process.exit(1);
}

function installPackages() {
  if (existsSync(stamp) && readFileSync(stamp, "utf8") === lockDigest()) return;
  // On stderr, so that a command's stdout stays its own.
  console.error("Installing packages (a few minutes the first time) …");
  const run = spawnSync("npm", ["ci", "--include=dev", "--no-audit", "--no-fund", "--loglevel=error"], {
    cwd: root,
    stdio: ["ignore", 2, 2],
    shell: process.platform === "win32",
  });
  if (run.status !== 0) {
    console.error("The packages could not be installed; npm's own message stands above.");
    process.exit(run.status ?? 1);
  }
  writeFileSync(stamp, lockDigest());
}

export async function prepare() {
  requireNode();
  installPackages();
  const { generateClient } = await import("./generate-client.mjs");
  generateClient();
}

/** Runs a package's own command-line script with this Node, so that no shell is involved. */
export function runPackage(script, args, options = {}) {
  const { env, ...rest } = options;
  return spawnSync(process.execPath, [join(root, "node_modules", script), ...args], {
    cwd: root,
    stdio: "inherit",
    env: { ...process.env, NEXT_TELEMETRY_DISABLED: "1", CHECKPOINT_DISABLE: "1", ...env },
    ...rest,
  });
}

/** Runs one TypeScript file of commands/ with the arguments given to this one, and ends with its exit code. */
export async function runTypeScript(file, args = process.argv.slice(2)) {
  await prepare();
  const env = { TSX_TSCONFIG_PATH: join(root, "tsconfig.json") };
  process.exit(
    runPackage(packageScripts.tsx, [join(root, "commands", file), ...args], { env, cwd: process.cwd() }).status ?? 1,
  );
}

export const packageScripts = {
  next: "next/dist/bin/next",
  tsc: "typescript/bin/tsc",
  tsx: "tsx/dist/cli.mjs",
  vitest: "vitest/vitest.mjs",
  biome: "@biomejs/biome/bin/biome",
};
