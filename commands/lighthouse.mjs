// npm run lighthouse [-- PATH …]: how Lighthouse judges the public pages on its phone profile. Lighthouse is no package of the
// product: this version is installed into .cache at the first run.
import { spawnSync } from "node:child_process";
import { existsSync, mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { prepare, root } from "./prepare.mjs";

const version = "12.2.3";
await prepare();
const folder = join(root, ".cache", `lighthouse-${version}`);
if (!existsSync(join(folder, "node_modules", "lighthouse"))) {
  console.log(`Installing Lighthouse ${version} into .cache …`);
  mkdirSync(folder, { recursive: true });
  writeFileSync(join(folder, "package.json"), '{ "private": true }\n');
  const args = ["install", "--save-exact", "--no-audit", "--no-fund", "--ignore-scripts", "--loglevel=error"];
  const run = spawnSync("npm", [...args, `lighthouse@${version}`], {
    cwd: folder,
    stdio: "inherit",
    shell: process.platform === "win32",
  });
  if (run.status !== 0) process.exit(run.status ?? 1);
}
const { findChromium } = await import("./find-chromium.mjs");
process.env.CHROMIUM_PATH = await findChromium();
const { build } = await import("./build.mjs");
build();
const { packageScripts, runPackage } = await import("./prepare.mjs");
const env = { LIGHTHOUSE: join(folder, "node_modules", "lighthouse", "cli", "index.js") };
process.exit(
  runPackage(packageScripts.tsx, ["commands/lighthouse/main.ts", ...process.argv.slice(2)], { env }).status ?? 1,
);
