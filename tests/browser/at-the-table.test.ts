import type { Browser, BrowserContext, Page } from "playwright-core";
import sharp from "sharp";
import { afterAll, beforeAll, expect, it } from "vitest";
import { axe } from "../support/axe.ts";
import { keepPicture, newPage, openBrowser, overflow, phone, signIn } from "../support/browser.ts";

let browser: Browser;
beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(async () => {
  await browser.close();
});

const name = "Jug shot in the cellar";

/** Fills a sheet as a person with a phone would. */
async function writeSheet(page: Page): Promise<void> {
  await page.getByRole("button", { name: "Begin a sheet" }).click();
  await page.getByLabel("Name", { exact: true }).fill(name);
  await page.getByLabel("Kind of object").selectOption("mug-or-cup");
  await page.getByLabel("What you call the object").fill("jug 1");
  await page.getByLabel("How it was got").fill("found in the cellar");
  await page.getByLabel("Who paid for it and for the test").fill("nobody");
  await page.getByLabel("Part under the analyser").fill("glaze, outside");
  await page.getByLabel("Material").selectOption("glaze");
  await page.getByLabel("Form", { exact: true }).selectOption("coating");
  const buffer = await sharp({ create: { width: 1000, height: 800, channels: 3, background: "#464" } })
    .jpeg()
    .toBuffer();
  await page.getByLabel("Take a photo").setInputFiles({ name: "IMG_1.jpg", mimeType: "image/jpeg", buffer });
  const mark = page.getByRole("button", { name: /^Mark a spot in the middle/ });
  await mark.click();
  await page.getByRole("button", { name: "1: spot 1" }).press("Shift+ArrowLeft");
  await mark.click();
  await page.getByLabel("What photo 1 shows").fill("Green jug from the side");
  await page.getByLabel("Where: time zone").selectOption("UTC");
  await page.getByLabel("The errors cover").selectOption("2");
  await page.getByLabel("What was under the window").selectOption("coating-mass-fraction");
  for (const [at, value, error] of [
    [0, "412", "36"],
    [1, "405", "35"],
  ] as const) {
    await page.getByRole("button", { name: /^Add a(nother)? reading/ }).click();
    await page.locator(`#reading-${at}-spot`).selectOption(String(at + 1));
    await page.locator(`#reading-${at}-Pb-value`).fill(value);
    await page.locator(`#reading-${at}-Pb-error`).fill(error);
  }
  await page.getByText("Kept on this phone, not handed in").waitFor();
}

const countItems = async (context: BrowserContext): Promise<number> => {
  const page = await context.newPage();
  await page.goto("/bench");
  const links = await page.getByRole("main").getByRole("link", { name }).count();
  await page.close();
  return links;
};

it("a sheet written without a connection outlives its tab, and is sent once when there is one again", async () => {
  const { page, context } = await newPage(browser, { viewport: phone, hasTouch: true });
  await signIn(page, "tester");
  await page.goto("/bench/table");
  await page.getByRole("button", { name: "Begin a sheet" }).waitFor();
  await context.setOffline(true);
  await writeSheet(page);
  expect(await overflow(page)).toBe(0);
  await keepPicture(page, "table-sheet-390");
  await page.getByRole("button", { name: "Hand it in" }).click();
  await page.getByText("Kept on this phone, not sent yet", { exact: true }).waitFor();
  await page.getByText("1 sheet kept on this phone, not sent yet.").waitFor();
  // By hand it goes no better without a connection, and says so by staying.
  await page.getByRole("button", { name: "Send now" }).click();
  await page.getByText("Kept on this phone, not sent yet", { exact: true }).waitFor();
  await keepPicture(page, "table-waiting-390");
  await page.close();
  await context.setOffline(false);

  // The connection breaks after the registry has taken the first step and before its answer comes.
  const second = await context.newPage();
  second.setDefaultTimeout(30_000);
  let cut = 0;
  await second.route("**/bench/table/send", async (route) => {
    if (cut > 0) return route.continue();
    cut += 1;
    await route.fetch();
    await route.abort("connectionreset");
  });
  await second.goto("/bench/table");
  await expect.poll(() => cut).toBe(1);
  await second.getByText("Kept on this phone, not sent yet", { exact: true }).waitFor();
  await second.getByRole("button", { name: "Send now" }).click();
  await second.getByText("Sent", { exact: true }).waitFor();
  await keepPicture(second, "table-sent-390");
  for (const colorScheme of ["light", "dark"] as const) {
    await second.emulateMedia({ colorScheme });
    expect(await axe(second)).toEqual([]);
  }
  // Opened again, and from another tab, nothing goes a second time.
  await second.reload();
  await second.getByText("Sent", { exact: true }).waitFor();
  expect(await countItems(context)).toBe(1);

  await second.getByRole("link", { name: "Open the item" }).click();
  await second.getByRole("heading", { level: 1, name }).waitFor();
  const main = await second.getByRole("main").innerText();
  expect(main).toContain("Green jug from the side");
  expect(main).toContain("2: glaze, outside, spot 2");
  expect(await second.getByRole("main").locator("figure img").count()).toBe(1);
  await second.getByText(/Work on the readings of glaze, outside/).click();
  const readings = second.getByRole("table", { name: /^Readings of glaze, outside/ });
  expect(await readings.getByRole("row").count()).toBe(3);
  expect(await readings.innerText()).toMatch(/412 ± 36[\s\S]*405 ± 35/);
  await keepPicture(second, "table-item-390");

  // On the photo's own page both readings can be dealt to both spots in order of time, and taken back.
  await second.getByRole("link", { name: "Photos and spots" }).click();
  await second.getByRole("link", { name: /^Spots and known length/ }).click();
  await second.getByText("2 readings and 2 spots: 1 shot on each, in order of time.").waitFor();
  // A key before the page has woken up does nothing.
  await second.waitForLoadState("networkidle");
  await second.getByRole("button", { name: /^Join them in this order/ }).press("Enter");
  await second.getByText("2 readings are joined to spots.").waitFor();
  await second.getByRole("button", { name: "Undo" }).press("Enter");
  await second.getByText("2 readings are joined to spots.").waitFor({ state: "detached" });
  await context.close();
});

it("a sheet that was only begun is there again after the tab was closed", async () => {
  const { page, context } = await newPage(browser, { viewport: phone });
  await signIn(page, "tester");
  await page.goto("/bench/table");
  await page.getByRole("button", { name: "Begin a sheet" }).click();
  await page.getByLabel("Name", { exact: true }).fill("Half a sheet");
  await page.getByText("Kept on this phone, not handed in").waitFor();
  await page.getByRole("button", { name: "Hand it in" }).click();
  await page.getByText("Still missing: the material.").waitFor();
  for (const colorScheme of ["light", "dark"] as const) {
    await page.emulateMedia({ colorScheme });
    expect(await axe(page)).toEqual([]);
  }
  await page.close();
  const again = await context.newPage();
  await again.goto("/bench/table");
  await again.getByRole("heading", { name: "Half a sheet", level: 3 }).waitFor();
  await again.getByRole("button", { name: "Go on with it" }).click();
  expect(await again.getByLabel("Name", { exact: true }).inputValue()).toBe("Half a sheet");
  await context.close();
});
