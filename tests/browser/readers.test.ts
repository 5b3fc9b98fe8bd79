import AxeBuilder from "@axe-core/playwright";
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { keepPicture, newPage, openBrowser, overflow, phone, signIn } from "../support/browser.ts";

let browser: Browser;
beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(() => browser.close());

describe("a reader who asks “was mine tested?”", () => {
  it("is offered items as they type, by keyboard alone", async () => {
    const { page, context } = await newPage(browser, { viewport: phone });
    await page.goto("/");
    const field = page.locator("#front-search");
    await field.click();
    await field.pressSequentially("popyp mu", { delay: 20 });
    const option = page.getByRole("option", { name: /Poppy mug/ });
    await option.waitFor();
    expect(await field.getAttribute("aria-expanded")).toBe("true");
    await keepPicture(page, "reader-suggestions-phone");
    expect((await new AxeBuilder({ page }).analyze()).violations.map((v) => v.id)).toEqual([]);
    await page.keyboard.press("ArrowDown");
    expect(await option.getAttribute("aria-selected")).toBe("true");
    await page.keyboard.press("Escape");
    expect(await page.getByRole("option").count()).toBe(0);
    expect(await field.inputValue()).toBe("popyp mu");
    await page.keyboard.press("Enter");
    await page.waitForURL(/\/items\?q=popyp/);
    expect(await page.getByText("“poppy” was looked for instead").count()).toBe(1);
    expect(await page.getByRole("link", { name: "Poppy mug with red band" }).count()).toBe(1);
    await context.close();
  });

  it.each([
    ["without scripts", false],
    ["with scripts", true],
  ])("is told in their language that there is nothing at an address, %s", async (_, javaScriptEnabled) => {
    const { page, context } = await newPage(browser, { viewport: phone, javaScriptEnabled });
    for (const [path, title] of [
      ["/items/no-such-mug", "This page is not here"],
      ["/items/red-band-poppy-mug/revisions/99", "This page is not here"],
      ["/limits/none", "This page is not here"],
      ["/no-such-page", "This page is not here"],
      ["/es/items/no-such-mug", "Esta página no está aquí"],
      ["/es/no-such-page", "Esta página no está aquí"],
    ] as const) {
      const answer = await page.goto(path);
      expect(answer?.status(), path).toBe(404);
      await page.getByRole("heading", { level: 1, name: title }).waitFor();
      expect(await page.getByRole("main").count(), path).toBe(1);
      expect(await page.locator("html").getAttribute("lang"), path).toBe(path.startsWith("/es") ? "es" : "en");
      expect(await page.getByRole("search").count(), path).toBeGreaterThan(0);
    }
    await context.close();
  });

  it("narrows down, compares two, and shares the address", async () => {
    const { page, context } = await newPage(browser, { viewport: phone, javaScriptEnabled: false });
    await page.goto("/items?q=bowl");
    expect(await overflow(page)).toBe(0);
    await page.goto("/items?sort=name&category=toy");
    const ticks = page.getByRole("checkbox");
    await ticks.nth(0).check();
    await ticks.nth(1).check();
    await page.getByRole("button", { name: "Compare the marked items" }).click();
    expect(page.url()).toContain("/items/compare?item=");
    expect(await page.getByRole("columnheader").count()).toBe(2);
    expect(await overflow(page)).toBe(0);
    await keepPicture(page, "reader-compare-phone");
    await context.close();
  });

  it("asks for a test without scripts; a tester ties it to an item; the page and its feed say so", async () => {
    const { page, context } = await newPage(browser, { viewport: phone, javaScriptEnabled: false });
    await page.goto("/items?q=tin+drum+with+two+herons");
    expect(await page.getByRole("heading", { name: "Not tested here yet" }).count()).toBe(1);
    await keepPicture(page, "reader-not-tested-phone");
    await page.getByRole("link", { name: "Ask us to test this one" }).click();
    await page.getByRole("button", { name: "Ask for a test" }).click();
    await page.waitForURL(/\/requests\/[\w-]{6,}$/);
    expect(await page.getByText("Asked for once so far.").count()).toBe(1);
    await keepPicture(page, "reader-request-phone");
    const address = page.url();
    await context.close();

    const desk = await newPage(browser);
    await signIn(desk.page, "tester");
    await desk.page.goto("/bench/requests");
    await keepPicture(desk.page, "bench-requests");
    expect((await new AxeBuilder({ page: desk.page }).analyze()).violations.map((v) => v.id)).toEqual([]);
    const request = desk.page.getByRole("listitem").filter({ hasText: "tin drum with two herons" });
    await request.getByLabel("Item").selectOption({ index: 1 });
    await request.getByRole("button", { name: "Tie to this item" }).click();
    await desk.page.getByRole("heading", { name: "Tied or closed" }).waitFor();
    await desk.page.goto(address);
    expect(await desk.page.getByText("Not tested yet.").count()).toBe(0);
    const feed = await desk.page.request.get(`${address}/feed.xml`);
    expect(feed.headers()["content-type"]).toContain("application/atom+xml");
    expect(await feed.text()).toContain("tin drum with two herons");
    await desk.context.close();
  });

  it("is told of a mistyped product code apart from one that is not there", async () => {
    const { page, context } = await newPage(browser, { viewport: phone });
    await page.goto("/items?q=2000004170012");
    expect(await page.getByText("its last digit does not fit").count()).toBe(1);
    await page.goto("/items?q=2000-0041-70011");
    expect(await page.getByRole("link", { name: /Swing-top storage jar/ }).count()).toBe(1);
    await context.close();
  });

  it("reads on in the log and among the corrections from any entry, without scripts", async () => {
    const { page, context } = await newPage(browser, { viewport: phone, javaScriptEnabled: false });
    await page.goto("/log?before=4");
    const numbers = await page
      .locator("table tbody tr")
      .evaluateAll((rows) => rows.map((row) => row.children[0]?.textContent));
    expect(numbers).toEqual(["3", "2", "1"]);
    expect(await page.locator("#head").count()).toBe(0);
    await page.getByRole("link", { name: "Back to the first page" }).click();
    expect(new URL(page.url()).pathname + new URL(page.url()).search).toBe("/log");
    expect(await page.locator("#head").count()).toBe(1);
    await page.goto("/es/corrections?before=1");
    await page.getByRole("link", { name: "Volver a la primera página" }).click();
    expect(await page.locator("main h2").count()).toBe(1);
    for (const odd of ["x", "0", "-1", "1e9", "99999999999"]) {
      const answer = await page.goto(`/log?before=${odd}`);
      expect([answer?.status(), await page.locator("#head").count()], odd).toEqual([200, 1]);
    }
    await context.close();
  });
});
