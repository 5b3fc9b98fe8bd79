// npm run dev: the product with reload on change, over DATA_DIR (./data), without the scenario.
import { packageScripts, prepare, runPackage } from "./prepare.mjs";

await prepare();
const { freePort, migrateDatabase } = await import("./serve.mjs");
const port = await freePort("npm run dev");
migrateDatabase();
process.exit(runPackage(packageScripts.next, ["dev", "-p", String(port)]).status ?? 0);
