// npm run demo: installs, builds, loads the invented scenario into an embedded SQLite file and serves it.
import { join } from "node:path";
import { packageScripts, prepare, root, runPackage } from "./prepare.mjs";

await prepare();
const { freePort, migrateDatabase, serve } = await import("./serve.mjs");
const port = await freePort("npm run demo");
// A folder of its own, so that the invented items never mix with a real registry in ./data.
process.env.DATA_DIR ??= join(root, "data", "demo");
process.env.PORT = String(port);
const { build } = await import("./build.mjs");
build();
migrateDatabase();
if (runPackage(packageScripts.tsx, [join("commands", "load-scenario.ts")]).status !== 0) process.exit(1);
serve(port);
