import type { Browser, Page } from "playwright-core";
import sharp from "sharp";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { axe } from "../support/axe.ts";
import { keepPicture, newPage, openBrowser, overflow, phone, signIn } from "../support/browser.ts";
import { CountedPerson, tabTo } from "../support/counted-person.ts";
import { type JourneyFile, journeyFile, journeyThings } from "../support/journey-file.ts";

/**
 * The tester's day: 200 shots in one file, 15 things, 20 photos, spots, and a check that failed in the middle of the day; from the file to
 * items that wait for a reviewer. Every action of the person is counted.
 */
let browser: Browser;
beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(async () => {
  await browser.close();
});

/** An answer of the server is waited for as long as a busy machine may take. */
const patient = { timeout: 60_000 };
const fileOf = ({ name, text }: JourneyFile) => ({ name, mimeType: "text/csv", buffer: Buffer.from(text) });
const photo = async (at: number) => ({
  name: `phone-${at}.jpg`,
  mimeType: "image/jpeg",
  buffer: await sharp({
    create: { width: 800, height: 600, channels: 3, background: { r: (at * 53) % 255, g: (at * 97) % 255, b: 120 } },
  })
    .jpeg()
    .toBuffer(),
});

/** The instrument's file to readings in the registry. The mapping of an earlier file with this header is remembered. */
async function loadFile(me: CountedPerson, file: JourneyFile): Promise<void> {
  await me.go("/bench/import");
  await me.files(me.page.getByLabel("The analyser’s file"), fileOf(file));
  await me.button("Read the file");
  await me.page.waitForURL(/\/bench\/imports\//);
  await me.button("Load the readings");
  await me.page.getByText("Every row accounted for").waitFor();
}

/** Names of the file to items, with what is the same for all said once. */
async function makeItems(me: CountedPerson, count: number): Promise<string[]> {
  const { page } = me;
  await me.link("Put readings on parts");
  await me.link(/^Make items out of/);
  const forAll = page.getByRole("group", { name: "For all of them" });
  await me.choose(forAll.getByLabel("Kind of object"), "Plate or bowl");
  await me.choose(forAll.getByLabel("Material"), "Glaze");
  await me.choose(forAll.getByLabel("Form"), "Layer on something else");
  await me.fill(forAll.getByLabel("How they were got"), "lent by the shelf");
  await me.fill(forAll.getByLabel("Who paid for them and the test"), "the shelf");
  await me.button("Make the items and put the readings on them");
  await page.getByText(new RegExp(`^${count} items? made`)).waitFor();
  return page
    .getByRole("main")
    .locator('li a[href^="/bench/items/"]')
    .evaluateAll((links) => links.map((link) => link.getAttribute("href") ?? ""));
}

async function sendPhotos(me: CountedPerson, item: string, from: number, count: number): Promise<void> {
  const { page } = me;
  await me.go(`${item}/photos`);
  await me.files(
    page.getByLabel("Photos", { exact: true }),
    await Promise.all(Array.from({ length: count }, (_, n) => photo(from + n))),
  );
  await me.button("Send the photos");
  const words = page.getByLabel("What it shows");
  await expect.poll(() => words.count(), patient).toBe(count);
  for (let n = 0; n < count; n += 1) {
    await me.fill(words.nth(n), `Invented thing ${from + n}, a plain card`);
    await me.click(page.getByRole("button", { name: "Save the words" }).nth(n));
    await expect.poll(() => page.getByText("The words are saved.").count(), patient).toBeGreaterThan(n);
  }
}

/** Spots that the file names, marked on the first photo one after the other. */
async function markSpots(me: CountedPerson, count: number): Promise<void> {
  const { page } = me;
  await me.link(/^Spots and known length/);
  // A click before the page has woken up marks nothing.
  await page.waitForLoadState("networkidle");
  const stage = page.locator("[class*=photo-stage] img, [class*=frame] img").first();
  const rows = page.getByRole("table", { name: "Spots on this photo" }).getByRole("row");
  for (let n = 0; n < count; n += 1) {
    const size = await stage.boundingBox();
    const position = { x: (size?.width ?? 0) * (0.2 + 0.18 * n), y: (size?.height ?? 0) * 0.5 };
    await me.click(stage, { position, force: true });
    await expect.poll(() => rows.count(), patient).toBe(n + 2);
  }
}

describe("from the instrument's file to drafts that wait for review", () => {
  it("200 readings, 15 items, 20 photos, spots, and a failed check in the middle of the day", async () => {
    const { page, context } = await newPage(browser);
    const noise: string[] = [];
    page.on("console", (message) => message.type() === "error" && noise.push(message.text()));
    await signIn(page, "tester");
    const me = new CountedPerson(page);
    const began = Date.now();
    const file = journeyFile();
    expect(file).toMatchObject({ shots: 200, checks: 10 });
    await loadFile(me, file);
    expect((await page.getByRole("table", { name: "Rows of the file" }).innerText()).replace(/\s+/g, " ")).toContain(
      "Read and kept 200 Set aside, with the reason 0",
    );
    await keepPicture(page, "ten-minutes-loaded-1280");
    const importPage = page.url();

    const items = await makeItems(me, journeyThings.length);
    expect(items).toHaveLength(journeyThings.length);
    await keepPicture(page, "ten-minutes-items-1280");

    // The sitting: its times come from the file.
    await me.go("/bench/sessions");
    await me.click(
      page
        .locator("section", { hasText: /21 November 2026/ })
        .getByRole("link", { name: "Open a session from these times" })
        .first(),
    );
    await me.check(page.getByRole("checkbox", { name: /train/i }).first());
    await me.button("Open the session");
    await page.getByRole("heading", { name: /Session of 21 November 2026/ }).waitFor();
    expect(await page.getByRole("main").innerText()).toMatch(/check failed/i);
    await keepPicture(page, "ten-minutes-session-1280");

    let photos = 0;
    for (const [at, item] of items.entries()) {
      const count = at < 5 ? 2 : 1;
      await sendPhotos(me, item, photos + 1, count);
      photos += count;
      await markSpots(me, 4);
    }
    expect(photos).toBe(20);
    await keepPicture(page, "ten-minutes-spots-1280");

    // A thing shot between the last good check and the next: its page says so, in words.
    await page.goto(items[7] ?? "");
    expect(await page.getByRole("main").innerText()).toMatch(/check/i);
    await keepPicture(page, "ten-minutes-doubtful-1280");
    expect(await axe(page)).toEqual([]);

    let submitted = 0;
    for (const item of items.slice(0, 5)) {
      await me.go(item);
      await me.check(page.getByLabel("Nothing does").first());
      await me.button("Ask for a review");
      await page.getByRole("heading", { name: "Waiting for a reviewer" }).waitFor();
      submitted += 1;
    }
    const minutes = (Date.now() - began) / 60_000;
    console.log(
      `ten-minute journey: ${me.actions} actions of the person for ${file.shots} readings, ${items.length} items, ${photos} photos, ${4 * items.length} spots, ${submitted} sent to review; the machine took ${minutes.toFixed(1)} minutes`,
    );
    await page.goto(importPage);
    expect(await page.getByRole("main").innerText()).toMatch(/all on parts/);
    expect(noise).toEqual([]);
    await context.close();
  }, 900_000);

  it("its core by keyboard alone", async () => {
    const { page, context } = await newPage(browser);
    await signIn(page, "tester");
    await page.goto("/bench/import");
    // The system's own file window is no part of the page; all else is keys.
    await page.getByLabel("The analyser’s file").setInputFiles(fileOf(journeyFile({ day: 22, things: 2 })));
    await tabTo(page, /^Read the file$/);
    await page.keyboard.press("Enter");
    await page.waitForURL(/\/bench\/imports\//);
    await tabTo(page, /^Load the readings$/);
    await page.keyboard.press("Enter");
    await page.getByText("Every row accounted for").waitFor();
    await tabTo(page, /^Put readings on parts$/);
    await page.keyboard.press("Enter");
    await page.getByRole("table", { name: "Readings without a part" }).waitFor();
    // Ranges: by numbers, and by the arrows with Shift.
    await tabTo(page, /^Tick a range of numbers/);
    await page.keyboard.type("2-5");
    await page.keyboard.press("Enter");
    await page.getByText(/^4 of 26/).waitFor();
    await tabTo(page, /^Reading 1,/);
    await page.keyboard.press("Shift+ArrowDown");
    await page.keyboard.press("Shift+ArrowDown");
    await expect.poll(() => page.getByRole("checkbox", { checked: true }).count(), patient).toBeGreaterThanOrEqual(5);
    await tabTo(page, /^Make items out of/);
    await page.keyboard.press("Enter");
    await page.getByRole("group", { name: "For all of them" }).waitFor();
    for (const [field, keys] of [
      [/^Kind of object/, "Mug"],
      [/^Material/, "Glaze"],
      [/^Form/, "Layer"],
      [/^How they were got/, "lent"],
      [/^Who paid/, "the shelf"],
    ] as const) {
      await tabTo(page, field);
      await page.keyboard.type(keys);
    }
    await page.keyboard.press("Enter");
    await page.getByText(/^2 items made/).waitFor();
    await tabTo(page, /^K01 amber sugar bowl$/);
    await page.keyboard.press("Enter");
    await page.getByRole("heading", { name: "Results so far" }).waitFor();
    await tabTo(page, /^Nothing does/);
    await page.keyboard.press("Space");
    await tabTo(page, /^Ask for a review$/);
    await page.keyboard.press("Enter");
    await page.getByRole("heading", { name: "Waiting for a reviewer" }).waitFor();
    await context.close();
  }, 600_000);

  it("its core at 390 px, with nothing wider than the screen and nothing that axe finds, in both schemes", async () => {
    const { page, context } = await newPage(browser, { viewport: phone });
    await signIn(page, "tester");
    const me = new CountedPerson(page);
    const look = async (name: string, at: Page = page) => {
      expect([name, await overflow(at)]).toEqual([name, 0]);
      for (const colorScheme of ["light", "dark"] as const) {
        await at.emulateMedia({ colorScheme });
        expect([name, colorScheme, await axe(at)]).toEqual([name, colorScheme, []]);
      }
      await at.emulateMedia({ colorScheme: "light" });
      await keepPicture(at, `ten-minutes-${name}-390`);
    };
    await loadFile(me, journeyFile({ day: 23, things: 2 }));
    await look("loaded");
    const items = await makeItems(me, 2);
    await look("made");
    await page.goto("/bench/readings?state=all&element=Pb");
    await look("readings");
    await page.goto("/bench/readings/new-items");
    await look("new-items");
    await sendPhotos(me, items[0] ?? "", 90, 1);
    await look("photos");
    await markSpots(me, 2);
    await look("spots");
    await page.goto(items[0] ?? "");
    await look("item");
    await context.close();
  }, 600_000);
});
