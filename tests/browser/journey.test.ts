import { join } from "node:path";
import AxeBuilder from "@axe-core/playwright";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { keepPicture, newPage, openBrowser, overflow, phone, signIn } from "../support/browser.ts";

const uglyDay = join(import.meta.dirname, "..", "..", "sample-data", "files", "ugly-day.csv");
let browser: Browser;
beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(async () => {
  await browser.close();
});

const axe = async (page: Page) =>
  (await new AxeBuilder({ page }).withTags(["wcag2a", "wcag2aa", "wcag21aa", "wcag22aa"]).analyze()).violations.map(
    (v) => `${v.id}: ${v.nodes[0]?.html ?? ""}`,
  );

/** Says which of the file's columns are what, where the header does not, and answers what is asked. */
async function explainColumns(page: Page): Promise<void> {
  await page.getByLabel("What “When” is").selectOption("dateTime");
  await page.getByLabel("What “Place on it” is").selectOption("spot");
  await page.getByLabel("What “Counted” is").selectOption("seconds");
  // Its record says what its errors cover and how its clock is set; the file says neither.
  await page.getByLabel("Which analyser took these?").selectOption({ label: "Shelf analyser B (SB-0092)" });
}

describe("a tester takes the ugliest file to a published page, and a reader finds it", () => {
  it("goes the whole way", async () => {
    const { page, context } = await newPage(browser);
    const noise: string[] = [];
    page.on("console", (message) => message.type() === "error" && noise.push(message.text()));
    await signIn(page, "tester");
    await page.goto("/bench/import");
    await page.getByLabel("The analyser’s file").setInputFiles(uglyDay);
    await page.getByRole("button", { name: "Read the file" }).click();
    await page.waitForURL(/\/bench\/imports\//);
    await keepPicture(page, "journey-columns-1280");
    // An open question stops the loading, and says which.
    await page.getByRole("button", { name: "Load the readings" }).click();
    await expect.poll(() => page.getByRole("alert").filter({ hasText: "Not loaded yet" }).count()).toBe(1);
    await explainColumns(page);
    await page.getByLabel("share of the mass of a solid part").check();
    await page.getByRole("button", { name: "Load the readings" }).click();
    await page.getByText("Every row accounted for").waitFor();
    const rows = await page.getByRole("table", { name: "Rows of the file" }).innerText();
    expect(rows.replace(/\s+/g, " ")).toContain(
      "Read and kept 26 Set aside, with the reason 6 Blank 3 Header, units and lines above it 7 All rows of the file 42",
    );
    expect(await axe(page)).toEqual([]);
    await keepPicture(page, "journey-loaded-1280");

    await page.getByRole("link", { name: "Put readings on parts" }).click();
    const part = /Harlequin nesting bowls.*/;
    const options = await page.getByLabel("Put them on the part").locator("option").allTextContents();
    const bowls = options.filter((text) => part.test(text));
    expect(bowls.length).toBeGreaterThan(1);
    const samples = (await page.getByLabel("Tick a whole sample").locator("option").allTextContents()).filter((s) =>
      s.startsWith("R17"),
    );
    expect(samples.length).toBeGreaterThan(1);
    for (const sample of samples) {
      await page.getByLabel("Tick a whole sample").selectOption({ label: sample });
      await page.getByLabel("Put them on the part").selectOption({ label: bestPart(sample, bowls) });
      await page.getByRole("button", { name: "Put the ticked readings there" }).click();
      await page.getByText(/now on “/).waitFor();
      await page
        .getByLabel("Tick a whole sample")
        .locator("option", { hasText: sample })
        .waitFor({ state: "detached" });
    }

    await page.goto("/bench");
    await page.getByRole("link", { name: /Harlequin nesting bowls/ }).click();
    await page.getByRole("heading", { name: "Results so far" }).waitFor();
    await keepPicture(page, "journey-item-1280");
    expect(await axe(page)).toEqual([]);
    await publish(page);
    expect(noise).toEqual([]);
    await context.close();
  });

  it("a reader on a phone, without scripts, finds it and reads the answer first", async () => {
    const { page, context } = await newPage(browser, { viewport: phone, javaScriptEnabled: false });
    await page.goto("/");
    await page.getByRole("main").getByRole("searchbox").fill("nesting bowls");
    await page.getByRole("main").getByRole("button", { name: "Search" }).click();
    await page
      .getByRole("link", { name: /Harlequin nesting bowls/ })
      .first()
      .click();
    await page.getByRole("heading", { level: 1, name: /Harlequin nesting bowls/ }).waitFor();
    const text = await page.getByRole("main").innerText();
    expect(text.indexOf("The answer")).toBeGreaterThan(0);
    expect(text).toMatch(/\d+ ± \d+ mg\/kg|not detected|\(\d/);
    expect(text).toContain("no known safe level of lead");
    expect(await overflow(page)).toBe(0);
    await keepPicture(page, "journey-reader-390");
    await context.close();
  });

  it("a reader whose object was not tested is told so plainly", async () => {
    const { page, context } = await newPage(browser, { viewport: phone });
    await page.goto("/items?q=zebra%20teapot");
    const text = await page.getByRole("main").innerText();
    expect(text.toLowerCase()).toContain("not tested here yet");
    expect(await axe(page)).toEqual([]);
    await keepPicture(page, "journey-not-tested-390");
    await context.close();
  });
});

/** The part of the bowls whose words the sample's words name most of. */
function bestPart(sample: string, parts: string[]): string {
  const words =
    sample
      .toLowerCase()
      .replace("gelb innen", "turmeric inside")
      .match(/\p{L}+/gu) ?? [];
  const scored = parts.map((text) => ({ text, score: words.filter((w) => text.toLowerCase().includes(w)).length }));
  return scored.sort((a, b) => b.score - a.score)[0]?.text ?? "";
}

/** The shelf asks for one approval: a reviewer looks at it in a browser of their own. */
async function publish(page: Page): Promise<void> {
  const path = new URL(page.url()).pathname;
  await page.getByRole("radio", { name: "Nothing does" }).check();
  await page.getByRole("button", { name: "Ask for a review" }).click();
  await page.getByText("Waiting for a reviewer").waitFor();
  const { page: reviewer, context } = await newPage(browser);
  await signIn(reviewer, "reviewer");
  await reviewer.goto(path.replace("/bench/items/", "/review/"));
  await reviewer.getByRole("radio", { name: "Nothing does" }).check();
  await reviewer.getByRole("button", { name: "Take it up for review" }).click();
  await reviewer.getByRole("radio", { name: /I approve/ }).check();
  await reviewer.getByRole("button", { name: "Give this decision" }).click();
  await reviewer.getByText("Approved. The tester can publish it").waitFor();
  await context.close();
  await page.goto(path);
  await page.getByRole("button", { name: "Publish", exact: true }).click();
  await page.getByText("Public page:").waitFor();
}
