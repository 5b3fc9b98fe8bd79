import { mkdtempSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import AxeBuilder from "@axe-core/playwright";
import { describe, expect, it } from "vitest";
import { keepPicture, newPage, overflow, phone } from "../support/browser.ts";
import { launchBrowser } from "../support/browser-launch.ts";
import { eanVideo } from "../support/ean-video.ts";

/** A browser whose camera sees this code. */
function browserSeeing(code: string) {
  const file = join(mkdtempSync(join(tmpdir(), "assay-camera-")), "camera.y4m");
  writeFileSync(file, eanVideo(code));
  return launchBrowser([
    "--use-fake-device-for-media-stream",
    "--use-fake-ui-for-media-stream",
    `--use-file-for-fake-video-capture=${file}`,
  ]);
}

describe("a bar code held before the camera", () => {
  it("is read by code of this registry alone, and finds its item", async () => {
    const browser = await browserSeeing("2000004170011");
    const { page } = await newPage(browser, { viewport: phone, permissions: ["camera"] });
    const asked: string[] = [];
    const refused: string[] = [];
    page.on("request", (request) => asked.push(request.url()));
    page.on("console", (message) => {
      if (/content.security.policy/i.test(message.text())) refused.push(message.text());
    });
    await page.goto("/items");
    await page.waitForLoadState("networkidle");
    expect(asked.filter((url) => url.endsWith(".wasm"))).toEqual([]);
    await page.getByRole("link", { name: "Scan the bar code" }).click();
    await page.waitForURL(/q=2000004170011/, { timeout: 60_000 });
    expect(await page.getByRole("link", { name: /Swing-top storage jar/ }).count()).toBe(1);
    // The search is what one goes back to, not the camera.
    await page.goBack();
    expect(new URL(page.url()).pathname + new URL(page.url()).search).toBe("/items");
    expect(asked.filter((url) => new URL(url).host !== new URL(page.url()).host && !url.startsWith("blob:"))).toEqual(
      [],
    );
    expect(refused).toEqual([]);
    await browser.close();
  });

  it("says so where it may not look, and lets the reader type", async () => {
    const browser = await launchBrowser(["--use-fake-device-for-media-stream"]);
    const { page, context } = await newPage(browser, { viewport: phone, permissions: [] });
    await page.goto("/scan");
    await page
      .getByRole("status")
      .getByText(/type the number under the bars/i)
      .waitFor();
    expect((await new AxeBuilder({ page }).analyze()).violations.map((v) => v.id)).toEqual([]);
    expect(await overflow(page)).toBe(0);
    await keepPicture(page, "scan-refused-phone");
    await context.grantPermissions(["camera"]);
    await page.getByRole("button", { name: "Try the camera again" }).click();
    await page.getByText("Looking for a bar code").waitFor();
    await page.getByRole("combobox", { name: "Or type the number under the bars" }).fill("2000004170011");
    await page.keyboard.press("Enter");
    await page.waitForURL(/q=2000004170011/);
    await context.close();
    await browser.close();
  });

  it("says what to do without scripts", async () => {
    const browser = await launchBrowser();
    const { page } = await newPage(browser, { viewport: phone, javaScriptEnabled: false });
    await page.goto("/es/scan");
    const said = await page.locator("main").innerText();
    expect(said).toContain("están desactivados");
    expect(said).not.toContain("Encendiendo la cámara");
    await page.getByRole("searchbox", { name: "O escriba el número" }).fill("2000004170011");
    await page.keyboard.press("Enter");
    await page.waitForURL(/es\/items\?q=2000004170011/);
    expect(await page.getByRole("link", { name: /Swing-top storage jar/ }).count()).toBe(1);
    await browser.close();
  });
});
