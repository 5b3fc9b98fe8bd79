import { mkdirSync } from "node:fs";
import { join } from "node:path";
import type { Browser, BrowserContext, Page } from "playwright-core";
import { launchBrowser } from "./browser-launch.ts";
import { served } from "./served.ts";

export const phone = { width: 390, height: 844 };
export const desktop = { width: 1280, height: 900 };

export const openBrowser = launchBrowser;

export async function newPage(
  browser: Browser,
  options: Parameters<Browser["newContext"]>[0] = {},
): Promise<{ page: Page; context: BrowserContext }> {
  // Without motion: a colour on its way from one scheme to the other is nobody's contrast.
  const context = await browser.newContext({
    baseURL: served().base,
    viewport: desktop,
    reducedMotion: "reduce",
    ...options,
  });
  const page = await context.newPage();
  page.setDefaultTimeout(20_000);
  return { page, context };
}

export async function signIn(page: Page, role: "owner" | "tester" | "reviewer"): Promise<void> {
  const [email = "", password = ""] = (served().passwords[role] ?? "").split(" ");
  await page.goto("/account/sign-in");
  await page.getByLabel("E-mail").fill(email);
  await page.getByLabel("Password").fill(password);
  await page.getByRole("main").getByRole("button", { name: "Sign in" }).click();
  await page.waitForURL((url) => !url.pathname.endsWith("/sign-in"));
}

/** Keeps a picture for a person to look at, when SCREENSHOTS names a folder. */
export async function keepPicture(page: Page, name: string): Promise<void> {
  const folder = process.env["SCREENSHOTS"];
  if (!folder) return;
  mkdirSync(folder, { recursive: true });
  await page.screenshot({ path: join(folder, `${name}.png`), fullPage: true });
}

/** Pixels by which the page is wider than its window; 0 is right. */
export const overflow = (page: Page): Promise<number> =>
  page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
