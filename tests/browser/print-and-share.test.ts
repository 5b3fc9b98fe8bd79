import { execFileSync } from "node:child_process";
import { mkdtempSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import type { ItemsPage } from "@/lib/exports/api-schemas.ts";
import { keepPicture, newPage, openBrowser, overflow, phone } from "../support/browser.ts";

let browser: Browser;
beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(() => browser?.close());

const folder = mkdtempSync(join(tmpdir(), "assay-print-"));
const a4 = { width: 595.28, height: 841.89 }; // points; ISO 216, 210 mm × 297 mm

/** Pages of a PDF and their size: by pdfinfo where it is, else counted in the file itself. */
async function printed(page: Page, name: string): Promise<{ pages: number; width?: number; height?: number }> {
  const pdf = await page.pdf({ preferCSSPageSize: true });
  const file = join(folder, `${name}.pdf`);
  writeFileSync(file, pdf);
  try {
    const info = execFileSync("pdfinfo", [file], { encoding: "utf8" });
    const [, width, height] = /Page size:\s+([\d.]+) x ([\d.]+) pts/.exec(info) ?? [];
    return { pages: Number(/Pages:\s+(\d+)/.exec(info)?.[1]), width: Number(width), height: Number(height) };
  } catch {
    return { pages: pdf.toString("latin1").match(/\/Type\s*\/Page\b(?!s)/g)?.length ?? 0 };
  }
}

/** What stands below the edge of the sheet, and would be cut off in print. */
const cut = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const sheet = document.querySelector("article, main svg")?.closest("article, div") as HTMLElement;
    const edge = sheet.getBoundingClientRect().bottom + 1;
    return [...sheet.querySelectorAll("li, p, td, th")]
      .filter((one) => one.getBoundingClientRect().bottom > edge)
      .map((one) => one.textContent ?? "");
  });

describe("what is printed of an item", () => {
  it("is one A4 page for every published item: the report with its cautions, and the sheet of labels", async () => {
    const { page, context } = await newPage(browser);
    const { items } = (await (await page.request.get("/api/v1/items?limit=100")).json()) as ItemsPage;
    expect(items.length).toBeGreaterThan(9);
    const said = {
      "": ["not what comes out of it", "licensed assessor"],
      "/es": ["no qué sale de él", "evaluador acreditado"],
    };
    for (const { slug, revision } of items)
      for (const [root, cautions] of Object.entries(said)) {
        const at = `${root}/items/${slug}`;
        await page.goto(`${at}/report?revision=${revision}`);
        await page.emulateMedia({ media: "print" });
        const report = await printed(page, `${slug}-report`);
        expect(report.pages, `${at} report`).toBe(1);
        if (report.width !== undefined) {
          expect(Math.abs(report.width - a4.width)).toBeLessThan(1);
          expect(Math.abs(report.height! - a4.height)).toBeLessThan(1);
        }
        // At the width of an A4 page less its margins (186 mm, 96 px an inch).
        await page.setViewportSize({ width: 703, height: 1032 });
        expect(await cut(page), at).toEqual([]);
        const words = await page.locator("article").innerText();
        for (const caution of [...cautions, "SHA-256", `${at}/revisions/${revision}`])
          expect(words, at).toContain(caution);
      }
    // However long the words are, it stays one page, and the cautions with the address stay on it: the rest gives way.
    await page.evaluate(() => {
      for (const one of document.querySelectorAll("article h1, article header p:last-child, article td"))
        one.textContent = `${one.textContent} `.repeat(12);
    });
    expect((await printed(page, "stretched")).pages).toBe(1);
    expect(
      await page.evaluate(() => {
        const bottom = (selector: string) => document.querySelector(selector)!.getBoundingClientRect().bottom;
        return bottom("article footer") <= bottom("article") + 1;
      }),
    ).toBe(true);
    const [first] = items;
    for (const root of ["", "/es"]) {
      await page.goto(`${root}/items/${first!.slug}/labels`);
      expect((await printed(page, "labels")).pages).toBe(1);
      expect(await page.locator("main svg").count()).toBe(24);
    }
    await context.close();
  });

  it("fits a phone's screen, and answers what is not there with 404", async () => {
    const { page, context } = await newPage(browser, { viewport: phone });
    const { items } = (await (await page.request.get("/api/v1/items?limit=1")).json()) as ItemsPage;
    const { slug } = items[0]!;
    for (const name of ["report", "labels"]) {
      await page.goto(`/items/${slug}/${name}`);
      expect(await overflow(page), name).toBe(0);
      await keepPicture(page, `${name}-390`);
    }
    for (const path of [
      `/items/${slug}/report?revision=99`,
      `/items/${slug}/report?revision=x`,
      "/items/no-such/labels",
    ])
      expect((await page.goto(path))?.status(), path).toBe(404);
    const card = await page.request.get(`/items/${slug}/card.svg`);
    expect([card.status(), card.headers()["content-type"]]).toEqual([200, "image/svg+xml; charset=utf-8"]);
    const none = await page.request.get(`/items/${slug}/card.svg?revision=99`);
    expect([none.status(), none.headers()["content-type"]]).toEqual([404, "application/problem+json"]);
    await context.close();
  });
});
