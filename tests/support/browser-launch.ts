import { type Browser, chromium } from "playwright-core";

const flags = [
  "--disable-gpu",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
];

/** The Chromium that CHROMIUM_PATH names, or the system's; `more`: what it is told besides. */
export async function launchBrowser(more: string[] = []): Promise<Browser> {
  const executablePath = process.env["CHROMIUM_PATH"] ?? "/usr/bin/chromium";
  const asRoot = process.getuid?.() === 0;
  return chromium.launch({ executablePath, args: [...(asRoot ? ["--no-sandbox"] : []), ...flags, ...more] });
}
