// npm run crash [-- --kills N --database sqlite|postgres]: ends the served product at random moments under a mixed load and prints what
// was lost. PostgreSQL is a server of the run's own, which goes on while the product is ended. Needs no browser.
import { parseArgs } from "node:util";
import { prepare } from "./prepare.mjs";

const refuse = (why) => {
  console.error(why);
  process.exit(2);
};
const { values } = parseArgs({
  options: { kills: { type: "string" }, database: { type: "string", default: "sqlite" } },
});
const { database } = values;
if (!["sqlite", "postgres"].includes(database)) refuse("--database is sqlite or postgres.");
const kills = Number(values.kills ?? (database === "postgres" ? 50 : 200));
if (!Number.isInteger(kills) || kills < 1) refuse("--kills is a whole number from 1 up.");
await prepare();
const { findPostgres } = await import("./postgres.mjs");
if (database === "postgres" && findPostgres() === null)
  refuse("There is no PostgreSQL server on this machine (POSTGRES_BIN names its folder).");
const { build } = await import("./build.mjs");
build();
const { finish, vitest } = await import("./steps.mjs");
const tests = ["--config", "vitest.browser.config.ts", "tests/browser/killed-server.test.ts"];
const env = { CRASH_KILLS: String(kills), UPLOADS_A_QUARTER_HOUR: "1000000", ASSAY_TEST_DATABASE: database };
finish([vitest(`Crash test on ${database === "postgres" ? "PostgreSQL" : "SQLite"}`, tests, env)]);
