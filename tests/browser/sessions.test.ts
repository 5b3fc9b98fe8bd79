import AxeBuilder from "@axe-core/playwright";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { keepPicture, newPage, openBrowser, overflow, phone, signIn } from "../support/browser.ts";

/** Every bench page of sessions, check standards and instruments, over the invented shelf with its failed check in the middle. */
let browser: Browser;
beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(async () => {
  await browser.close();
});

const tags = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"];
const faults = async (page: Page): Promise<string[]> =>
  (await new AxeBuilder({ page }).withTags(tags).analyze()).violations.map(
    (v) => `${page.url()} ${v.id}: ${v.nodes.map((n) => n.html.slice(0, 160)).join(" | ")}`,
  );
const linkTo = async (page: Page, list: string, text: RegExp): Promise<string> => {
  await page.goto(list);
  return (await page.getByRole("main").getByRole("link", { name: text }).first().getAttribute("href")) ?? "";
};
const openFolds = async (page: Page): Promise<void> => {
  for (const fold of await page.locator("main summary").all()) await fold.click();
};

describe("a session with a failed check in the middle", () => {
  it("is told on the bench and on the item's page; its doubtful readings feed nothing until the tester says why", async () => {
    const { page, context } = await newPage(browser);
    await signIn(page, "tester");
    const session = await linkTo(page, "/bench/sessions", /3 October 2026/);
    await page.goto(session);
    const main = page.getByRole("main");
    expect(await main.innerText()).toContain("not fit: cadmium, chromium and lead (Kunststoff)");
    await main
      .getByText(/readings are in doubt after the good check at 09:51, until the good check at 10:19/)
      .waitFor();
    await main.getByText("3 readings of items lie in it, and feed no number.").waitFor();
    // By keyboard alone: the reason, then the button.
    await page.getByLabel("Why they are used although a check failed").focus();
    await page.keyboard.type("Only to see what it would say.");
    await page.keyboard.press("Tab");
    await page.keyboard.press("Enter");
    await main.getByText(/used all the same, and every page that rests on them says so/).waitFor();
    await page.getByRole("button", { name: "Leave them out again" }).focus();
    await page.keyboard.press("Enter");
    await main.getByText("3 readings of items lie in it, and feed no number.").waitFor();
    await openFolds(page);
    const doubted = page
      .getByRole("table", { name: "Readings of this session" })
      .getByRole("row", { name: /R12 Lätzchen, Folie.*Pb/ });
    expect(await doubted.count()).toBe(3);
    await keepPicture(page, "session-failed-check-1280");

    await page.goto("/items/wipe-clean-bib-with-pears");
    const text = await page.getByRole("main").innerText();
    expect(text).toContain("Not fit: cadmium, chromium and lead (Kunststoff)");
    expect(text).toContain("Readings in that stretch are left out of every number here.");
    await context.close();
  });

  it("is on the item's page without scripts too", async () => {
    const { page, context } = await newPage(browser, { javaScriptEnabled: false });
    await page.goto("/items/pull-along-blue-train");
    const text = await page.getByRole("main").innerText();
    expect(text).toContain("Was the analyser fit?");
    expect(text).toContain("fit, with a correction");
    await context.close();
  });
});

describe("a check standard and a session are written down at 390 px", () => {
  it("an uncertainty that is missing gets its sentence, and “none stated” is taken", async () => {
    const { page, context } = await newPage(browser, { viewport: phone });
    await signIn(page, "tester");
    await page.goto("/bench/check-standards/new");
    await page.getByLabel("Name", { exact: true }).fill("Invented check disc");
    await page.getByLabel("Certified values").fill("Pb 120");
    await page.getByLabel("What it is").fill("invented disc");
    await page.getByLabel("Its material").selectOption("abs");
    await page.getByRole("button", { name: "Add the check standard" }).click();
    await page
      .getByRole("alert")
      .filter({ hasText: "The certificate’s uncertainty for “Pb 120” is missing" })
      .waitFor();
    await page.getByLabel("Certified values").fill("Pb 120 none stated");
    await page.getByRole("button", { name: "Add the check standard" }).click();
    await page.getByRole("heading", { name: "Invented check disc" }).waitFor();
    await page
      .getByText(/states no uncertainty for lead/)
      .first()
      .waitFor();
    expect(await overflow(page)).toBe(0);
    await page.getByText("Take it out of use", { exact: true }).first().click();
    await page.getByRole("button", { name: "Take it out of use" }).click();
    await page.getByRole("button", { name: "Bring it back into use" }).waitFor();
    await context.close();
  });
});

describe("every page", () => {
  it.each([
    ["light", phone],
    ["dark", phone],
    ["light", { width: 1280, height: 900 }],
    ["dark", { width: 1280, height: 900 }],
  ] as const)(
    "in %s at %j: axe finds nothing with every fold open, and nothing is wider than the window",
    async (colorScheme, viewport) => {
      const { page, context } = await newPage(browser, { colorScheme, viewport });
      await signIn(page, "tester");
      const session = await linkTo(page, "/bench/sessions", /3 October 2026/);
      const corrected = await linkTo(page, "/bench/sessions", /24 October 2026/);
      const standard = await linkTo(page, "/bench/check-standards", /Amber disc/);
      const instrument = await linkTo(page, "/bench/instruments", /Shelf analyser B/);
      const found: string[] = [];
      for (const path of [
        ...["/bench/sessions", "/bench/sessions/new", session, corrected, `${session}/edit`],
        ...["/bench/check-standards", "/bench/check-standards/new", standard, `${standard}/edit`, instrument],
        "/items/wipe-clean-bib-with-pears",
      ]) {
        await page.goto(path);
        await openFolds(page);
        found.push(...(await faults(page)));
        const wide = await overflow(page);
        if (wide > 0) found.push(`${path}: ${wide} px too wide`);
        await keepPicture(page, `${path.replaceAll(/\W+/g, "-")}-${colorScheme}-${viewport.width}`);
      }
      expect(found).toEqual([]);
      await context.close();
    },
    600_000,
  );
});
