// npm run crash [-- --kills N]: ends the served product at random moments under a mixed load and prints what was lost. Needs no browser.
import { prepare } from "./prepare.mjs";

const kills = Number(process.argv[process.argv.indexOf("--kills") + 1] || 200);
if (!Number.isInteger(kills) || kills < 1) {
  console.error("--kills is a whole number from 1 up.");
  process.exit(2);
}
await prepare();
const { build } = await import("./build.mjs");
build();
const { finish, vitest } = await import("./steps.mjs");
const tests = ["--config", "vitest.browser.config.ts", "tests/browser/killed-server.test.ts"];
finish([vitest("Crash test", tests, { CRASH_KILLS: String(kills), UPLOADS_A_QUARTER_HOUR: "1000000" })]);
