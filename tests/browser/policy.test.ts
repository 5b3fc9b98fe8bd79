import type { Browser } from "playwright-core";
import { afterAll, beforeAll, expect, it } from "vitest";
import { newPage, openBrowser, signIn } from "../support/browser.ts";
import { deskScreens, publicScreens } from "../support/every-page.ts";

let browser: Browser;
beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(() => browser.close());

it("no page loads or runs what its content-security policy refuses; signed-in pages run no script without their number", async () => {
  const { page, context } = await newPage(browser);
  const refused: string[] = [];
  page.on("console", (message) => {
    if (/content.security.policy/i.test(message.text())) refused.push(`${page.url()}: ${message.text()}`);
  });
  await signIn(page, "owner");
  const screens = [...(await publicScreens(page)), ...(await deskScreens(page))];
  for (const { path } of screens) {
    const response = await page.goto(path);
    const policy = (await response?.allHeaders())?.["content-security-policy"] ?? "";
    expect(policy, path).toContain("object-src 'none'");
    const signedIn = /^\/(bench|review|account)/.test(new URL(page.url()).pathname);
    const scripts = /script-src [^;]*/.exec(policy)?.[0] ?? "";
    if (signedIn) {
      expect(scripts, path).toMatch(/'nonce-[\w+/=]+'/);
      expect(scripts, path).not.toContain("unsafe-inline");
    }
    // The page woke up: its own scripts ran.
    await page.waitForFunction(() => document.readyState === "complete");
  }
  expect(screens.length).toBeGreaterThan(10);
  expect(refused).toEqual([]);
  await context.close();
});
