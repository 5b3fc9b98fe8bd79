// npm run bench [-- --part rooms|registry --rounds N --items N,N]: how fast the measurement is beside vectorised NumPy, R's metafor and
// Python's csv, and how fast a large registry answers beside its bare index and a static file; each in one run.
import { spawnSync } from "node:child_process";
import { join } from "node:path";
import { prepare, root } from "./prepare.mjs";

const asked = process.argv.slice(2);
const part = asked[asked.indexOf("--part") + 1];
const only = asked.includes("--part") ? part : null;
if (only !== null && only !== "rooms" && only !== "registry") {
  console.error("There is no part of that name: --part rooms, --part registry, or both without it.");
  process.exit(1);
}

await prepare();
// Bundled, as the site's own build bundles it: the on-the-fly compiler names every inner function as it is made, at run time.
const { buildSync } = await import("esbuild");
const outfile = join(root, ".cache", "bench", "main.cjs");
buildSync({
  entryPoints: [join(root, "commands", "bench", "main.ts")],
  outfile,
  bundle: true,
  platform: "node",
  target: "node20",
  format: "cjs",
  logLevel: "warning",
});
const env = { ...process.env, BENCH_SCRIPTS: join(root, "commands", "bench") };
if (only !== "registry") {
  const { status } = spawnSync(process.execPath, [outfile, ...asked], { stdio: "inherit", env });
  if (status !== 0) process.exit(status ?? 1);
}
if (only !== "rooms") {
  const { build } = await import("./build.mjs");
  build();
  const { packageScripts, runPackage } = await import("./prepare.mjs");
  process.exit(runPackage(packageScripts.tsx, ["commands/bench/registry.ts", ...asked]).status ?? 1);
}
