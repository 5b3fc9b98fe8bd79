// npm run bench [-- --rounds N]: how fast the measurement is beside vectorised NumPy, R's metafor and Python's csv, in one run.
import { spawnSync } from "node:child_process";
import { join } from "node:path";
import { prepare, root } from "./prepare.mjs";

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
process.exit(spawnSync(process.execPath, [outfile, ...process.argv.slice(2)], { stdio: "inherit", env }).status ?? 1);
