// npm run bench [-- --part rooms|registry|import|load --rounds N --items N,N]: how fast the measurement is beside vectorised NumPy, R's
// metafor and Python's csv; how fast a large registry answers beside its bare index and a static file; a long import beside parsing and
// inserting alone; readers and testers at once beside readers alone. Each in one run.
import { spawnSync } from "node:child_process";
import { join } from "node:path";
import { prepare, root } from "./prepare.mjs";

const parts = ["rooms", "registry", "import", "load"];
const asked = process.argv.slice(2);
const only = asked.includes("--part") ? asked[asked.indexOf("--part") + 1] : null;
if (only !== null && !parts.includes(only)) {
  console.error(
    `There is no part of that name: ${parts.map((part) => `--part ${part}`).join(", ")}, or all without it.`,
  );
  process.exit(1);
}

await prepare();
const { buildSync } = await import("esbuild");
const folder = join(root, ".cache", "bench");

/** Bundled, as the site's own build bundles it: the on-the-fly compiler names every inner function as it is made, at run time. */
function bundled(name, options) {
  const outfile = join(folder, `${name}.${options.format === "esm" ? "mjs" : "cjs"}`);
  const entryPoints = [join(root, "commands", "bench", `${name}.ts`)];
  buildSync({
    entryPoints,
    outfile,
    bundle: true,
    platform: "node",
    target: "node20",
    logLevel: "warning",
    ...options,
  });
  return outfile;
}
const own = { format: "esm", packages: "external" };

/** Packages stay as they are installed: some are not made of JavaScript. */
const programs = {
  rooms: () => [bundled("main", { format: "cjs" })],
  import: () => {
    bundled("import-worker", own);
    return [bundled("import", own)];
  },
  registry: () => [join(root, "node_modules", "tsx", "dist", "cli.mjs"), "commands/bench/registry.ts"],
  load: () => [join(root, "node_modules", "tsx", "dist", "cli.mjs"), "commands/bench/load.ts"],
};
const env = { ...process.env, BENCH_SCRIPTS: join(root, "commands", "bench") };
for (const part of only === null ? parts : [only]) {
  if (part === "registry" || part === "load") (await import("./build.mjs")).build();
  const { status } = spawnSync(process.execPath, [...programs[part](), ...asked], { stdio: "inherit", env, cwd: root });
  if (status !== 0) process.exit(status ?? 1);
}
