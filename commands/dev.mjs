// npm run dev: the product with reload on change, over ./data (no scenario).
import { join } from "node:path";
import { packageScripts, prepare, runPackage } from "./prepare.mjs";

await prepare();
const dataDir = process.env.DATA_DIR ?? "data";
const file = process.env.DATABASE_URL?.replace(/^file:/, "") ?? join(dataDir, "registry.db");
if (runPackage("../commands/migrate.mjs", [file]).status !== 0) process.exit(1);
const run = runPackage(packageScripts.next, ["dev", "-p", process.env.PORT ?? "3000"]);
process.exit(run.status ?? 0);
