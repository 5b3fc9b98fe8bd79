// npm run assay -- COMMAND … : makes sure the packages are there, then hands over to commands/assay/main.ts.
import { dirname } from "node:path";
import { fileURLToPath } from "node:url";
import { ensurePackages, runTypeScript } from "./ensure-packages.mjs";

const root = dirname(dirname(fileURLToPath(import.meta.url)));
ensurePackages(root);
runTypeScript(root, "assay/main.ts", process.argv.slice(2));
