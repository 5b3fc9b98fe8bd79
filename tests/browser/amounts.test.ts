import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { parseAmounts, serialiseAmounts } from "@/lib/amounts/amounts-form.ts";
import { paths } from "@/lib/platform/paths.ts";
import { amountExamples } from "@/lib/wording/amount-figures.ts";
import { desktop, keepPicture, newPage, openBrowser, overflow, phone } from "../support/browser.ts";

let browser: Browser;
beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(async () => {
  await browser.close();
});

const address = (state: Record<string, string>): string => paths.amounts(serialiseAmounts(parseAmounts(state)));

/** Pages of a PDF: its page objects, of which Chromium writes one in plain text for each. */
const pagesOf = (pdf: Buffer): number => pdf.toString("latin1").match(/\/Type\s*\/Page[^s]/g)?.length ?? 0;

describe("the calculator without scripts", () => {
  it("shows the fields that the choices ask for, works the amount out, and keeps it in the address", async () => {
    const { page, context } = await newPage(browser, { javaScriptEnabled: false });
    await page.goto(paths.amounts());
    await page.getByRole("radio", { name: "Its weight" }).focus();
    await page.keyboard.press("Space");
    await page.getByLabel("Weight of the part").fill("350");
    await page.getByLabel("Content", { exact: true }).fill("100");
    expect(await page.getByLabel("Diameter", { exact: true }).isVisible()).toBe(false);
    await page.keyboard.press("Enter");
    await page.waitForURL(/weight=350/);
    // 350 g at 100 ppm (limits.md part D6, our arithmetic).
    expect(await page.getByRole("main").innerText()).toContain("35 mg");
    await context.close();
  });

  it("puts each mistake beside its field, in the whole width of it, and leads to it from the top", async () => {
    const { page, context } = await newPage(browser, { javaScriptEnabled: false });
    for (const viewport of [phone, desktop]) {
      await page.setViewportSize(viewport);
      await page.goto(address({ from: "weight", weight: "350", content: "140", contentUnit: "%" }));
      expect(await page.getByRole("alert").getByRole("link").count()).toBe(1);
      await page.getByRole("alert").getByRole("link").click();
      expect(page.url()).toContain("#amounts-content");
      const error = await page.locator("#amounts-content-error").boundingBox();
      const row = await page.locator("#amounts-content").locator("..").boundingBox();
      expect(error?.width).toBeGreaterThanOrEqual((row?.width ?? 0) - 1);
      expect(error?.height).toBeLessThan(110);
      expect(await overflow(page)).toBe(0);
      await keepPicture(page, `amounts-wrong-${viewport.width}`);
    }
    await context.close();
  });
});

describe("the handout", () => {
  const handouts = amountExamples.flatMap(({ text, state }) => [
    [text, state],
    [`${text}, over a tennis court`, { ...state, loading: "5", over: "2808" }],
  ]) as [string, Record<string, string>][];

  it.each(handouts)("%s: one page of A4 and one of Letter, with its drawings and cautions", async (_, state) => {
    const { page, context } = await newPage(browser);
    await page.goto(address(state), { waitUntil: "networkidle" });
    for (const format of ["A4", "Letter"] as const) expect(pagesOf(await page.pdf({ format })), format).toBe(1);
    await page.emulateMedia({ media: "print" });
    const words = await page.locator("[data-handout]").innerText();
    expect(words).toContain("In the object, not in a child");
    expect(words).toContain("licensed lead assessor");
    if (state["over"]) expect(words).toContain("Halved again and again");
    expect(await page.locator("[data-handout] figure svg:visible").count()).toBeGreaterThan(0);
    await context.close();
  });
});

describe("the drawings as files", () => {
  const bytes = async (page: Page, href: string) => {
    const answer = await page.request.get(href);
    return { type: answer.headers()["content-type"], body: await answer.body(), status: answer.status() };
  };
  it("SVG and PNG of what the page shows; nothing to draw is said in words", async () => {
    const { page, context } = await newPage(browser);
    await page.goto(address({ ...amountExamples[0]?.state, loading: "5" }));
    const links = page.getByRole("main").getByRole("link");
    const svg = await bytes(page, (await links.filter({ hasText: "SVG" }).getAttribute("href")) ?? "");
    expect(svg.type).toContain("image/svg+xml");
    expect(svg.body.toString("utf8")).toContain("of lead");
    const png = await bytes(page, (await links.filter({ hasText: "PNG" }).getAttribute("href")) ?? "");
    expect(png.type).toBe("image/png");
    expect([...png.body.subarray(0, 4)]).toEqual([0x89, 0x50, 0x4e, 0x47]);
    expect((await bytes(page, paths.amountsSvg("from=weight"))).status).toBe(404);
    await context.close();
  });
});
