// Builds the product where the last build is older than its sources.
import { existsSync, readdirSync, statSync } from "node:fs";
import { join } from "node:path";
import { packageScripts, root, runPackage } from "./prepare.mjs";

function newest(path) {
  const stat = statSync(path);
  if (!stat.isDirectory()) return stat.mtimeMs;
  return Math.max(stat.mtimeMs, ...readdirSync(path).map((name) => newest(join(path, name))));
}

export function build() {
  const made = join(root, ".next", "BUILD_ID");
  const sources = ["app", "lib", "next.config.ts", "proxy.ts", "package-lock.json", "instrumentation.ts"]
    .map((p) => join(root, p))
    .filter(existsSync);
  if (existsSync(made) && statSync(made).mtimeMs > Math.max(...sources.map(newest))) return;
  console.log("Building (about a minute) …");
  const run = runPackage(packageScripts.next, ["build"], { env: { NODE_ENV: "production" } });
  if (run.status !== 0) {
    console.error("The build failed; its message stands above.");
    process.exit(1);
  }
}
