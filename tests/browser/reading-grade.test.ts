import type { Browser } from "playwright-core";
import { afterAll, beforeAll, expect, it } from "vitest";
import type { ItemsPage } from "@/lib/exports/api-schemas.ts";
import { newPage, openBrowser, phone } from "../support/browser.ts";
import { gradeLevel } from "../support/flesch-kincaid.ts";
import { served } from "../support/served.ts";

let browser: Browser;
beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(() => browser?.close());

/** Each line of the first screen as a sentence, as one who reads it aloud would make it: the answer, how sure, what to do. */
const linesOf = (sections: Element[]): string[] =>
  sections.flatMap((section) =>
    [...section.querySelectorAll("h3, p, li")]
      .filter((line) => !line.querySelector("p, li") && !line.closest("figure, .visually-hidden, [aria-hidden=true]"))
      .map((line) => (line as HTMLElement).innerText.replace(/\s+/g, " ").trim())
      .filter((line) => line !== ""),
  );

// The grade of Kincaid, Fishburne, Rogers and Chissom (1975); see tests/support/flesch-kincaid.ts.
it("the first screen of every item page can be read after eight years of school", async () => {
  const { items } = (await (await fetch(`${served().base}/api/v1/items?limit=100`)).json()) as ItemsPage;
  const { page, context } = await newPage(browser, { viewport: phone, javaScriptEnabled: false });
  const graded: { slug: string; grade: number; worst: string[] }[] = [];
  for (const { slug } of items) {
    await page.goto(`/items/${slug}`);
    const lines = await page.locator("#answer, #how-sure, #what-to-do").evaluateAll(linesOf);
    const sentences = lines.map((line) => (/[.!?:]$/.test(line) ? line : `${line}.`));
    const worst = sentences
      .filter((line) => line.split(" ").length > 5)
      .sort((a, b) => gradeLevel(b) - gradeLevel(a))
      .slice(0, 3)
      .map((line) => `${gradeLevel(line).toFixed(1)} ${line}`);
    graded.push({ slug, grade: gradeLevel(sentences.join(" ")), worst });
  }
  await context.close();
  for (const { slug, grade, worst } of graded.sort((a, b) => b.grade - a.grade))
    console.log(`${slug.padEnd(30)} grade ${grade.toFixed(1)}${grade > 8 ? `\n    ${worst.join("\n    ")}` : ""}`);
  expect(graded.length).toBeGreaterThan(10);
  expect(graded.filter(({ grade }) => grade > 8)).toEqual([]);
});
