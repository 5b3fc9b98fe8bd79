// npm test: installs what is missing, then lint, types, every test, and the browser tests over a real build.
import { prepare } from "./prepare.mjs";

await prepare();
const { countIntegration, finish, lint, postgres, types, vitest } = await import("./steps.mjs");
const { audit } = await import("./audit.mjs");
const results = [lint(), types(), audit()];
const all = vitest("Unit, published-source, property and integration tests", []);
const again = await postgres();
results.push(all, ...(again ? [again] : []));
const onPostgres = again ? `${countIntegration(again)} passed on PostgreSQL` : "not run on PostgreSQL";
console.log(`\nIntegration tests: ${countIntegration(all)} passed on SQLite, ${onPostgres}`);
const { findChromium } = await import("./find-chromium.mjs");
let chromium;
try {
  chromium = await findChromium();
} catch (error) {
  console.log(`Browser tests: ${error.message}`);
  results.push({ passed: 0, failed: 1 });
}
if (chromium) {
  const { build } = await import("./build.mjs");
  build();
  results.push(vitest("Browser tests", ["--config", "vitest.browser.config.ts"], { CHROMIUM_PATH: chromium }));
}
finish(results);
