// node commands/move-check.mjs [--items 20000]: moves the scenario and a generated registry to PostgreSQL and back, with the tables of counts and hashes.
import { runTypeScript } from "./prepare.mjs";

await runTypeScript("move-check.ts");
