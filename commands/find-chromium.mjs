// A Chromium for the browser tests: the one CHROMIUM_PATH names, else the system's, else Debian's package when root,
// else Playwright's own.
import { spawnSync } from "node:child_process";
import { existsSync } from "node:fs";
import { join } from "node:path";
import { root } from "./prepare.mjs";

const places = {
  linux: ["/usr/bin/chromium", "/usr/bin/chromium-browser", "/usr/bin/google-chrome", "/snap/bin/chromium"],
  darwin: [
    "/Applications/Chromium.app/Contents/MacOS/Chromium",
    "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
  ],
  win32: [
    "C:\\Program Files\\Chromium\\Application\\chrome.exe",
    "C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe",
  ],
};

const systemChromium = () => (places[process.platform] ?? []).find((path) => existsSync(path));

function installDebianPackage() {
  if (process.platform !== "linux" || process.getuid?.() !== 0 || !existsSync("/usr/bin/apt-get")) return undefined;
  console.log("Installing Debian's chromium for the browser tests …");
  const env = { ...process.env, DEBIAN_FRONTEND: "noninteractive" };
  spawnSync("apt-get", ["update", "-qq"], { stdio: "inherit", env });
  spawnSync("apt-get", ["install", "-y", "-qq", "--no-install-recommends", "chromium"], {
    stdio: ["ignore", "ignore", "inherit"],
    env,
  });
  return systemChromium();
}

async function playwrightsOwn() {
  console.log("Asking Playwright for its own Chromium …");
  const cli = join(root, "node_modules", "playwright-core", "cli.js");
  if (spawnSync(process.execPath, [cli, "install", "chromium"], { stdio: "inherit" }).status !== 0) return undefined;
  const { chromium } = await import("playwright-core");
  return existsSync(chromium.executablePath()) ? chromium.executablePath() : undefined;
}

export async function findChromium() {
  const named = process.env.CHROMIUM_PATH;
  if (named && !existsSync(named)) throw new Error(`CHROMIUM_PATH names ${named}, and there is no such file.`);
  const found = named ?? systemChromium() ?? installDebianPackage() ?? (await playwrightsOwn());
  if (!found) throw new Error("No Chromium for the browser tests: install one, or name it in CHROMIUM_PATH.");
  return found;
}
