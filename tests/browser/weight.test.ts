import type { Browser, CDPSession } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import type { ItemsPage } from "@/lib/exports/api-schemas.ts";
import { desktop, newPage, openBrowser, phone } from "../support/browser.ts";
import { served } from "../support/served.ts";

let browser: Browser;
beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(() => browser?.close());

const goal = 100_000;

/** Bytes on the wire (headers and compressed body) by kind of resource, until the network is still. */
async function weighed(cdp: CDPSession, go: () => Promise<unknown>): Promise<Record<string, number>> {
  const kinds = new Map<string, string>();
  const bytes: Record<string, number> = {};
  await cdp.send("Network.enable");
  cdp.on("Network.responseReceived", ({ requestId, type }) => kinds.set(requestId, type));
  cdp.on("Network.loadingFinished", ({ requestId, encodedDataLength }) => {
    const kind = kinds.get(requestId) ?? "?";
    bytes[kind] = (bytes[kind] ?? 0) + encodedDataLength;
  });
  await go();
  return bytes;
}

describe("what an item page weighs", () => {
  it.each([
    ["a phone", phone],
    ["a desktop", desktop],
  ])(
    "on %s is under 100 kB on the wire without photos, all of document, style, scripts and fonts counted",
    async (_, viewport) => {
      const { items } = (await (await fetch(`${served().base}/api/v1/items?limit=100`)).json()) as ItemsPage;
      const rows: { slug: string; total: number; bytes: Record<string, number> }[] = [];
      for (const { slug } of items) {
        const { page, context } = await newPage(browser, { viewport });
        const cdp = await context.newCDPSession(page);
        const bytes = await weighed(cdp, () => page.goto(`/items/${slug}`, { waitUntil: "networkidle" }));
        const total = Object.entries(bytes).reduce((sum, [kind, size]) => (kind === "Image" ? sum : sum + size), 0);
        rows.push({ slug, total, bytes });
        await context.close();
      }
      rows.sort((a, b) => b.total - a.total);
      for (const { slug, total, bytes } of rows)
        console.log(
          `${slug.padEnd(30)} ${(total / 1000).toFixed(1).padStart(6)} kB: ${Object.entries(bytes)
            .map(([kind, size]) => `${kind} ${(size / 1000).toFixed(1)}`)
            .join(", ")}`,
        );
      expect(rows.length).toBeGreaterThan(10);
      expect(rows.filter(({ total }) => total >= goal)).toEqual([]);
    },
  );

  it("sends the same page first and later, whole, without the framework's scripts", async () => {
    const { items } = (await (await fetch(`${served().base}/api/v1/items?limit=1`)).json()) as ItemsPage;
    const { slug = "", revision = 1 } = items[0] ?? {};
    const address = `${served().base}/items/${slug}/revisions/${revision}`;
    const [first, later] = [await (await fetch(address)).text(), await (await fetch(address)).text()];
    expect(later).toBe(first);
    expect(first).not.toMatch(/\/_next\/[^"]*\.js|__next_f|<template/);
    expect(first.match(/<script/g)).toHaveLength(2);
    expect(first).toContain("How the number was made");
    expect(first.trimEnd()).toMatch(/<\/html>$/);
  });

  it("offers items as one types, on an item page too", async () => {
    const { page, context } = await newPage(browser, { viewport: phone });
    const trouble: string[] = [];
    page.on("pageerror", (error) => trouble.push(error.message));
    await page.goto("/items/red-band-poppy-mug");
    await page.getByRole("combobox", { name: "Search tested items" }).pressSequentially("cornf", { delay: 20 });
    await page
      .getByRole("option", { name: /Cornflower/i })
      .first()
      .waitFor();
    await page.keyboard.press("ArrowDown");
    await page.keyboard.press("Enter");
    await page.waitForURL(/\/items\/cornflower/);
    expect(trouble).toEqual([]);
    await context.close();
  });
});
