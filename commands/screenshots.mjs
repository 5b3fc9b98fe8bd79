// npm run screenshots [-- NAME …]: every page and /style at three widths, light, dark and printed, into ./screenshots.
import { prepare } from "./prepare.mjs";

await prepare();
const { findChromium } = await import("./find-chromium.mjs");
try {
  process.env.CHROMIUM_PATH = await findChromium();
} catch (error) {
  console.error(error.message);
  process.exit(1);
}
const { build } = await import("./build.mjs");
build();
const { packageScripts, runPackage } = await import("./prepare.mjs");
process.exit(runPackage(packageScripts.tsx, ["commands/screenshots/main.ts", ...process.argv.slice(2)]).status ?? 1);
