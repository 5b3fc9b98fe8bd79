// npm run coverage -- [--trials N] … : makes sure the packages are there, then hands over to commands/coverage.ts.
import { dirname } from "node:path";
import { fileURLToPath } from "node:url";
import { ensurePackages, runTypeScript } from "./ensure-packages.mjs";

const root = dirname(dirname(fileURLToPath(import.meta.url)));
ensurePackages(root);
runTypeScript(root, "coverage.ts", process.argv.slice(2));
