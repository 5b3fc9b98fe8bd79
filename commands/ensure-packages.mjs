import { spawnSync } from "node:child_process";
import { existsSync } from "node:fs";
import { join } from "node:path";

/** Installs the pinned packages when this copy has none yet; says so on stderr, so that stdout stays the command's own. */
export function ensurePackages(root) {
  if (existsSync(join(root, "node_modules", "tsx", "package.json"))) return;
  process.stderr.write("Installing the packages this project needs (once) …\n");
  const npm = process.platform === "win32" ? "npm.cmd" : "npm";
  const done = spawnSync(npm, ["ci", "--no-audit", "--no-fund"], {
    cwd: root,
    stdio: ["ignore", 2, 2],
    shell: process.platform === "win32",
  });
  if (done.status !== 0) {
    process.stderr.write("The packages could not be installed; run npm ci and read what it says.\n");
    process.exit(1);
  }
}

/** Runs one TypeScript file of commands/ through tsx with the given arguments, and ends with its exit code. */
export function runTypeScript(root, file, args) {
  const child = spawnSync(process.execPath, ["--import", "tsx", join(root, "commands", file), ...args], {
    stdio: "inherit",
    env: { ...process.env, TSX_TSCONFIG_PATH: join(root, "tsconfig.json") },
  });
  process.exit(child.status ?? 1);
}
