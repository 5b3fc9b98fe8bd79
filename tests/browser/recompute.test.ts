import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import type { ItemsPage } from "@/lib/exports/api-schemas.ts";
import { resultsByWeight } from "@/lib/publication/leading-decision.ts";
import { readSnapshot } from "@/lib/publication/read-snapshot.ts";
import { resultText } from "@/lib/wording/formats.ts";
import { keepPicture, newPage, openBrowser, overflow, phone } from "../support/browser.ts";
import { served } from "../support/served.ts";

let browser: Browser;
beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(() => browser?.close());

const plain = (text: string): string => text.replace(/\s+/g, " ");

describe("a reader's own browser", () => {
  it("makes ten items' published digits again from the public files alone, equal to the page", async () => {
    const { page, context } = await newPage(browser);
    const asked: string[] = [];
    page.on("request", (request) => asked.push(new URL(request.url()).pathname));
    const { items } = (await (await page.request.get("/api/v1/items?limit=100")).json()) as ItemsPage;
    const published = items.filter((item) => item.kind !== "withdrawal").slice(0, 10);
    expect(published).toHaveLength(10);
    let results = 0;
    for (const { slug, revision } of published) {
      await page.goto(`/items/${slug}`);
      const body = plain(await page.locator("article").innerText());
      await page.getByRole("link", { name: "Fetch the readings and recompute" }).click();
      await page.getByRole("button", { name: "Fetch the readings and recompute" }).waitFor();
      asked.length = 0;
      await page.getByRole("button", { name: "Fetch the readings and recompute" }).click();
      const panel = page.locator("#recompute");
      await panel.getByText(/^Agrees\. All \d+ published figures/).waitFor({ timeout: 60_000 });
      const words = plain(await panel.innerText());
      expect(words, slug).not.toMatch(/Differs\.|could not be done/);
      for (const line of [
        /Agrees\. readings\.csv holds the same \d+ rows? as the revision\./,
        /Agrees\. The inputs of (the result|all \d+ results) ha(s|ve) the published SHA-256\./,
        /Agrees\. This revision’s bytes have the SHA-256 that entry \d+ of the log holds/,
        /(Agrees\. The signature of entry \d+, the log’s head, holds|this browser does not know Ed25519)/,
      ])
        expect(words, slug).toMatch(line);
      // From the public files alone, and nothing else.
      const files = asked.filter((path) => path.startsWith("/api/"));
      expect([...new Set(files)].sort()).toEqual(
        [`/api/v1/items/${slug}`, `/api/v1/items/${slug}/readings.csv`, "/api/v1/log"].sort(),
      );
      // Every digit made here is the one that the page prints.
      const read = readSnapshot(await (await page.request.get(`/api/v1/items/${slug}?revision=${revision}`)).text());
      if (!read.ok) throw new Error(slug);
      const rows = await panel
        .locator("tbody tr")
        .evaluateAll((all) =>
          all.map((row) => [...row.querySelectorAll("th, td")].map((cell) => cell.textContent ?? "")),
        );
      const all = read.value.specimens.flatMap((s) => s.parts.flatMap((p) => p.results));
      expect(rows.map((row) => plain(row[2]!))).toEqual(all.map((result) => plain(resultText(result))));
      expect(rows.map((row) => row[2])).toEqual(rows.map((row) => row[1]));
      const [lead] = resultsByWeight(read.value);
      if (lead) expect(body).toContain(plain(resultText(lead.result)));
      results += rows.length;
    }
    console.log(`10 items, ${results} results made again in Chromium ${browser.version()}`);
    await context.close();
  });

  it("sees through a registry that changed a figure, a reading, the log or its signature", async () => {
    const { page, context } = await newPage(browser);
    const { items } = (await (await page.request.get("/api/v1/items?limit=1")).json()) as ItemsPage;
    const { slug, revision } = items[0]!;
    const tampered = async (path: string, change: (text: string) => string, says: RegExp) => {
      await page.route(
        (url) => url.pathname === path,
        async (route) => {
          const answer = await route.fetch();
          const text = await answer.text();
          expect(change(text)).not.toBe(text);
          await route.fulfill({ response: answer, body: change(text) });
        },
      );
      await page.goto(`/items/${slug}/revisions/${revision}/recompute`);
      await page.getByRole("button", { name: "Fetch the readings and recompute" }).click();
      await page.locator("#recompute").getByText(says).waitFor({ timeout: 60_000 });
      await page.unrouteAll();
    };
    const item = `/api/v1/items/${slug}`;
    await tampered(
      item,
      (t) => t.replace(/"stated":\{"U":(null|"[^"]*"),/, '"stated":{"U":"9.9",'),
      /do not come out as published/,
    );
    await tampered(
      item,
      (t) => t.replace(/"secondsCounted":(\d)/, '"secondsCounted":9$1'),
      /^Differs\. The inputs of 1 result have another SHA-256/,
    );
    await tampered(
      `${item}/readings.csv`,
      (t) => t.replace(/,true,|,false,/, ",,"),
      /readings\.csv differs from the revision in \d+ cell/,
    );
    await tampered("/api/v1/log", (t) => t.replace(/"seq":1,"slug":"/, '"seq":1,"slug":"x'), /Entry 1 .*was changed/);
    await tampered(
      "/api/v1/log",
      (t) => t.replace(/"signature":"(.)/, (_, c) => `"signature":"${c === "A" ? "B" : "A"}`),
      /signature of the signed head|does not know Ed25519/,
    );
    await context.close();
  });

  it("says so where the registry does not answer, and what to do without scripts; fits a phone", async () => {
    const { page, context } = await newPage(browser, { viewport: phone });
    const { items } = (await (await page.request.get("/api/v1/items?limit=1")).json()) as ItemsPage;
    const revision = `/items/${items[0]!.slug}/revisions/${items[0]!.revision}`;
    const address = `${revision}/recompute`;
    await page.goto(address);
    await page.route("**/api/v1/log", (route) => route.abort());
    await page.getByRole("button", { name: "Fetch the readings and recompute" }).click();
    await page.getByText("It could not be done: the registry did not answer.").waitFor();
    await page.unrouteAll();
    await page.getByRole("button", { name: "Fetch the readings and recompute" }).click();
    await page.getByText(/All \d+ published figures/).waitFor({ timeout: 60_000 });
    await page.locator("#recompute summary").click();
    expect(await overflow(page)).toBe(0);
    await keepPicture(page, "recompute-390");
    await context.close();
    const still = await newPage(browser, { javaScriptEnabled: false });
    await still.page.goto(address);
    expect(await still.page.locator("#recompute").innerText()).toContain(
      `npm run assay -- reproduce ${served().base}${revision}`,
    );
    await still.context.close();
  });
});
