import { request } from "node:http";
import type { Browser, Page } from "playwright-core";
import sharp from "sharp";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { axe } from "../support/axe.ts";
import { keepPicture, newPage, openBrowser, overflow, phone, signIn } from "../support/browser.ts";
import { served } from "../support/served.ts";

let browser: Browser;
beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(async () => {
  await browser.close();
});

const picture = (background: string, width = 1200): Promise<Buffer> =>
  sharp({ create: { width, height: Math.round(width * 0.75), channels: 3, background } })
    .jpeg()
    .toBuffer();
const file = (name: string, buffer: Buffer) => ({ name, mimeType: "image/jpeg", buffer });

/** The bench page of an item that is published, with its parts and readings. */
async function benchItem(page: Page, name: RegExp): Promise<string> {
  await page.goto("/bench");
  const href = await page.getByRole("main").getByRole("link", { name }).first().getAttribute("href");
  return href ?? "";
}

/** Both schemes are looked at; each change of scheme is waited for. */
async function axeInBoth(page: Page): Promise<string[]> {
  const found: string[] = [];
  for (const colorScheme of ["light", "dark"] as const) {
    await page.emulateMedia({ colorScheme });
    found.push(...(await axe(page)));
  }
  await page.emulateMedia({ colorScheme: "light" });
  return found;
}

describe("photos of an item", () => {
  it("go up several at once, what is no photo is refused by its content, and all of it can be undone", async () => {
    const { page, context } = await newPage(browser);
    await signIn(page, "tester");
    const item = await benchItem(page, /Harlequin nesting bowls/);
    await page.goto(`${item}/photos`);
    const shelf = page.getByRole("listitem").filter({ has: page.getByLabel("What it shows") });
    const before = await shelf.count();
    await page
      .getByLabel("Photos", { exact: true })
      .setInputFiles([
        file("red.jpg", await picture("#a33")),
        file("bill.jpg", Buffer.from("%PDF-1.7\n%âãÏÓ\n")),
        file("blue.jpg", await picture("#33a", 2400)),
      ]);
    await page.getByRole("button", { name: "Send the photos" }).click();
    await page.getByText("3 of 3 files sent").waitFor();
    expect(await page.getByRole("list", { name: "Files" }).innerText()).toMatch(
      /bill\.jpg[\s\S]*not taken[\s\S]*this is a PDF document, whatever its name says/,
    );
    await expect.poll(() => shelf.count()).toBe(before + 2);
    const last = shelf.last();
    await last.getByLabel("What it shows").fill("Plain blue card, for the tests");
    await last.getByRole("button", { name: "Save the words" }).click();
    await page.getByText("The words are saved.").waitFor();
    await last.getByRole("button", { name: /^Earlier/ }).click();
    await expect.poll(() => shelf.nth(before).getByLabel("What it shows").inputValue()).toMatch(/Plain blue card/);
    await shelf
      .last()
      .getByRole("button", { name: /^Take away/ })
      .click();
    await expect.poll(() => shelf.count()).toBe(before + 1);
    await page.getByRole("button", { name: "Put it back" }).first().click();
    await expect.poll(() => shelf.count()).toBe(before + 2);
    expect(await axeInBoth(page)).toEqual([]);
    await keepPicture(page, "photos-1280");
    await page.setViewportSize(phone);
    expect(await overflow(page)).toBe(0);
    await keepPicture(page, "photos-390");

    // A draft's photo is for those who work here; a published one is for everybody.
    const src = (await shelf.last().getByRole("img").getAttribute("src")) ?? "";
    const stranger = await browser.newContext({ baseURL: served().base });
    expect((await page.request.get(src)).status()).toBe(200);
    expect((await stranger.request.get(src)).status()).toBe(404);
    await stranger.close();
    await context.close();
  });

  it("of a published page come in the width that fits, and nothing moves when they arrive", async () => {
    const { page, context } = await newPage(browser, { viewport: phone, javaScriptEnabled: false });
    await page.goto("/items?q=mug");
    await page.getByRole("main").getByRole("link", { name: /mug/i }).first().click();
    const photo = page.getByRole("main").getByRole("img").first();
    const [srcset, sizes, width, height] = await Promise.all(
      ["srcset", "sizes", "width", "height"].map((name) => photo.getAttribute(name)),
    );
    expect(srcset).toMatch(/^\/photos\/\S+ 480w, \/photos\/\S+ 960w, \/photos\/\S+ 1200w$/);
    expect([sizes, width, height]).toEqual([expect.stringContaining("92vw"), "1200", "900"]);
    await photo.scrollIntoViewIfNeeded();
    const answer = await page.request.get((await photo.getAttribute("src")) ?? "");
    expect(answer.headers()).toMatchObject({
      "content-type": "image/webp",
      "cache-control": "public, max-age=31536000, immutable",
    });
    await context.close();
  });

  it("larger than allowed are stopped on the way, whatever their head announces", async () => {
    const { page, context } = await newPage(browser);
    await signIn(page, "tester");
    const item = await benchItem(page, /Harlequin nesting bowls/);
    const cookie = (await context.cookies()).map(({ name, value }) => `${name}=${value}`).join("; ");
    const url = new URL(`${item}/photos/upload`, served().base);
    const status = await new Promise<number | string>((resolve) => {
      const sending = request(
        url,
        {
          method: "POST",
          headers: { cookie, accept: "application/json", "content-type": "multipart/form-data; boundary=b" },
        },
        (answer) => {
          resolve(answer.statusCode ?? 0);
          sending.destroy();
        },
      );
      sending.on("error", (error) => resolve(error.message));
      sending.write('--b\r\ncontent-disposition: form-data; name="photo"; filename="a.jpg"\r\n\r\n');
      // Without a length in its head: chunk after chunk, until it is answered.
      const chunk = Buffer.alloc(1_000_000);
      let sent = 0;
      const more = () => {
        if (sent < 60 && !sending.destroyed) {
          sent += 1;
          sending.write(chunk, () => setImmediate(more));
        } else sending.end();
      };
      more();
    });
    expect(status).toBe(413);
    await context.close();
  });
});

describe("spots on a photo", () => {
  it("are marked, moved, named and joined by keyboard alone, and seen at their true size", async () => {
    const { page, context } = await newPage(browser);
    await signIn(page, "tester");
    const item = await benchItem(page, /Harlequin nesting bowls/);
    await page.goto(`${item}/photos`);
    const way = page.getByRole("link", { name: /^Spots and known length/ }).first();
    await way.focus();
    await page.keyboard.press("Enter");
    await page.waitForURL(/\/photos\/[^/]+$/);

    await page.getByRole("button", { name: "Mark a known length" }).press("Enter");
    const end = page.getByRole("button", { name: /^One end of the known length/ });
    await end.focus();
    await page.keyboard.press("Shift+ArrowLeft");
    expect(await end.getAttribute("aria-label")).toContain("23.0 % from the left, 90.0 % from the top");
    await page.getByLabel("Other end from the left, in %").fill("73");
    await page.keyboard.press("Enter");
    await page.getByLabel("Length between the ends").fill("200");
    await page.getByRole("button", { name: "Save the known length" }).press("Enter");
    await page.getByText("The known length is marked: 200 mm.").waitFor();

    const spots = page.getByRole("table", { name: "Spots on this photo" });
    for (const n of [1, 2]) {
      await page.getByRole("button", { name: "Mark a spot in the middle" }).press("Enter");
      await page.getByText(/^Spot \S+ is marked/).waitFor();
      await expect.poll(() => spots.getByRole("row").count()).toBe(n + 1);
      // The new mark has the focus, so that the arrow keys move it at once.
      await expect
        .poll(() => page.evaluate(() => document.activeElement?.getAttribute("aria-label") ?? ""))
        .toMatch(new RegExp(`^${n}: `));
      for (let press = 0; press < 4; press += 1)
        await page.keyboard.press(n === 1 ? "Shift+ArrowLeft" : "Shift+ArrowUp");
      await page.keyboard.press("ArrowDown");
      await page.getByText(/^Spot \S+ is moved/).waitFor();
    }
    const places = () =>
      spots.getByRole("textbox").evaluateAll((boxes) => boxes.map((b) => (b as HTMLInputElement).value));
    await expect.poll(places).toEqual(["42.0", "50.2", "50.0", "42.2"]);
    await page.reload();
    await expect.poll(places).toEqual(["42.0", "50.2", "50.0", "42.2"]);
    expect(await axeInBoth(page)).toEqual([]);
    await keepPicture(page, "spots-1280");

    // Half the width is 200 mm: a window of w mm is w / 400 of the width.
    const circle = page.locator("svg circle").first();
    const [r, box] = await Promise.all([
      circle.getAttribute("r"),
      circle.evaluate((c) => (c as SVGCircleElement).ownerSVGElement?.viewBox.baseVal.width ?? 0),
    ]);
    const windowMm = ((2 * Number(r)) / box) * 400;
    expect(windowMm).toBeCloseTo(8, 1);
    await page.getByText("The circles are as large as the analyser’s window, 8 mm across").waitFor();

    // A click marks one too, Delete takes it off, and the undo brings it back.
    const stage = page.locator("[class*=photo-stage] img, [class*=frame] img").first();
    const size = await stage.boundingBox();
    await stage.click({ position: { x: (size?.width ?? 0) * 0.9, y: (size?.height ?? 0) * 0.2 }, force: true });
    await expect.poll(() => spots.getByRole("row").count()).toBe(4);
    await page.getByRole("button", { name: /^3: / }).press("Delete");
    await expect.poll(() => spots.getByRole("row").count()).toBe(3);
    await page.getByRole("button", { name: "Undo" }).first().click();
    await expect.poll(() => spots.getByRole("row").count()).toBe(4);
    await page.setViewportSize(phone);
    expect(await overflow(page)).toBe(0);
    await keepPicture(page, "spots-390");
    await context.close();
  });
});
