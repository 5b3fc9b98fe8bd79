import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import type { ItemsPage } from "@/lib/exports/api-schemas.ts";
import { keepPicture, newPage, openBrowser, overflow, phone } from "../support/browser.ts";
import { englishLeft } from "../support/english-left.ts";

let browser: Browser;
let page: Page;
let close: () => Promise<void>;
/** Items of the scenario, and what stands of them in attributes and file names. */
let slugs: string[];
beforeAll(async () => {
  browser = await openBrowser();
  // Nothing here needs scripts.
  const open = await newPage(browser, { viewport: phone, javaScriptEnabled: false });
  page = open.page;
  close = () => open.context.close();
  const items = (await (await page.request.get("/api/v1/items?limit=100")).json()) as ItemsPage;
  slugs = items.items.map(({ slug }) => slug);
});
afterAll(async () => {
  await close();
  await browser.close();
});

const markupOf = async (path: string): Promise<string> => (await page.request.get(path)).text();
/** Attributes cannot be marked with a language: names and captions in them are the record's own. */
/** A member of the log's entries by name. */
const named = ["revision,"];
const withoutNames = (markup: string): string => markup.replace(/ (?:alt|aria-label|value|title)="[^"]*"/g, "");

describe("pages in Spanish", () => {
  it("of every item, newest and first revision, hold no English sentence outside what is marked so", async () => {
    const left: string[] = [];
    for (const slug of slugs)
      for (const path of [
        `/es/items/${slug}`,
        `/es/items/${slug}/revisions/1`,
        `/es/items/${slug}/report`,
        `/es/items/${slug}/labels`,
      ]) {
        const markup = await markupOf(path);
        for (const text of englishLeft(withoutNames(markup), named)) left.push(`${path}: ${text.slice(0, 200)}`);
        // Reasons are published in English; every one that this version makes is told in Spanish all the same.
        for (const english of ["Cannot be compared", "in its scope", "For reference", "It may apply"])
          if (markup.includes(english)) left.push(`${path}: ${english}`);
      }
    expect(slugs.length).toBeGreaterThan(5);
    expect(left).toEqual([]);
  }, 600_000);

  it("of a limit, every one of them, hold none", async () => {
    const { limits } = (await (await page.request.get("/api/v1/limits")).json()) as { limits: { id: string }[] };
    expect(limits.length).toBeGreaterThan(200);
    const left: string[] = [];
    for (const { id } of limits)
      for (const text of englishLeft(await markupOf(`/es/limits/${encodeURIComponent(id)}`)))
        left.push(`${id}: ${text.slice(0, 200)}`);
    expect(left).toEqual([]);
  }, 600_000);

  it("and their feeds, cards and labels are told in Spanish, and name one another", async () => {
    const slug = slugs[0] ?? "";
    for (const path of ["/es/feed.xml", "/es/corrections/feed.xml"]) {
      const response = await page.request.get(path);
      expect(response.headers()["content-type"], path).toContain("atom+xml");
      expect(await response.text(), path).toContain('xml:lang="es"');
    }
    expect(await (await page.request.get("/es/feed.json")).json()).toMatchObject({ language: "es" });
    for (const name of ["card.svg", "label.svg"]) {
      const response = await page.request.get(`/es/items/${slug}/${name}`);
      expect(response.status(), name).toBe(200);
      expect(await response.text(), name).toContain('xml:lang="es"');
    }
    const typeOf = async (path: string, type: string) => {
      await page.goto(path);
      const href = await page.locator(`link[rel="alternate"][type="${type}"]`).getAttribute("href");
      return new URL(href ?? "", page.url()).pathname;
    };
    expect(await typeOf("/es", "application/atom+xml")).toBe("/es/feed.xml");
    expect(await typeOf("/es", "application/feed+json")).toBe("/es/feed.json");
    expect(await typeOf("/es/corrections", "application/atom+xml")).toBe("/es/corrections/feed.xml");
    // No page says any more that a page for readers is in English; signing in is.
    await page.goto(`/es/items/${slug}`);
    const english = page.locator("a", { hasText: "(en inglés)" });
    expect(await english.evaluateAll((links) => [...new Set(links.map((one) => one.getAttribute("href")))])).toEqual([
      "/bench",
    ]);
  });

  it("that stand by themselves hold none either", async () => {
    const left: string[] = [];
    const two = slugs
      .slice(0, 2)
      .map((slug) => `item=${slug}`)
      .join("&");
    for (const path of [
      "/es",
      "/es/items",
      "/es/items?q=mug",
      "/es/items?q=zzzz",
      "/es/items/no-such-item",
      `/es/items/compare?${two}`,
      "/es/items/compare",
      "/es/corrections",
      "/es/limits",
      "/es/limits?when=all&element=Pb",
      "/es/limits/CPSIA-100",
      "/es/limits/EPA-DLAL-2024-FLOOR",
      "/es/methods",
      "/es/log",
      "/es/amounts",
      "/es/amounts?from=weight&weight=165&content=140&contentUnit=%25&loading=0",
      "/es/requests/new?q=taza+azul",
      "/es/requests/new?q=x&problem=request-too-vague",
    ])
      for (const text of englishLeft(withoutNames(await markupOf(path)), named))
        left.push(`${path}: ${text.slice(0, 200)}`);
    expect(left).toEqual([]);
  }, 300_000);

  it("say their language, name their twins, and are not there where they are not", async () => {
    const slug = slugs[0] ?? "";
    await page.goto(`/es/items/${slug}`);
    expect(await page.locator("html").getAttribute("lang")).toBe("es");
    const head = async (selector: string) =>
      new URL((await page.locator(selector).getAttribute("href")) ?? "").pathname;
    expect(await head('link[rel="canonical"]')).toBe(`/es/items/${slug}`);
    expect(await head('link[hreflang="en"][rel="alternate"]')).toBe(`/items/${slug}`);
    expect(await head('link[hreflang="es"][rel="alternate"]')).toBe(`/es/items/${slug}`);
    for (const path of ["/es/bench", "/es/limits/no-such-limit", "/es/account/sign-in", "/es/nothing"])
      expect((await page.request.get(path)).status(), path).toBe(404);
    for (const path of ["/es/nothing", "/es/no/such/page", "/es/items/no-such-item", "/es/limits/no-such-limit"]) {
      await page.goto(path);
      expect(await page.locator("html").getAttribute("lang"), path).toBe("es");
      expect(await page.getByRole("heading", { level: 1 }).textContent(), path).toBe("Esta página no está aquí");
      expect(englishLeft(withoutNames(await page.content())), path).toEqual([]);
    }
    for (const at of ["/limits", "/limits/CPSIA-100", `/items/${slug}/labels`, "/methods", "/amounts"]) {
      await page.goto(`/es${at}`);
      expect(await head('link[rel="canonical"]'), at).toBe(`/es${at}`);
      expect(await head('link[hreflang="en"][rel="alternate"]'), at).toBe(at);
      expect(await head('link[hreflang="es"][rel="alternate"]'), at).toBe(`/es${at}`);
      await page.getByRole("banner").getByRole("link", { name: "English" }).click();
      await page.waitForURL((url) => url.pathname === at);
    }
    await page.goto(`/items/${slug}`);
    expect(await page.locator("html").getAttribute("lang")).toBe("en");
  });
});

describe("a reader without scripts", () => {
  it("goes from the Spanish front page to an answer, stays in Spanish, and reads its number with a comma", async () => {
    await page.goto("/es");
    await keepPicture(page, "es-front-phone");
    await page.locator("#front-search").fill("popyp mug");
    await page.getByRole("main").getByRole("button", { name: "Buscar" }).click();
    await page.waitForURL(/\/es\/items\?q=popyp/);
    await keepPicture(page, "es-search-phone");
    await page.getByRole("link", { name: "Poppy mug with red band" }).click();
    await page.waitForURL(/\/es\/items\/[\w-]+$/);
    await keepPicture(page, "es-item-phone");
    expect(await overflow(page)).toBe(0);
    expect(await page.getByRole("heading", { name: "La respuesta" }).count()).toBe(1);
    const slug = new URL(page.url()).pathname.split("/").at(-1) ?? "";
    const { items } = (await (await page.request.get(`/api/v1/items?q=${slug}`)).json()) as ItemsPage;
    expect(items.length).toBeGreaterThan(0);
    const snapshot = await (await page.request.get(`/api/v1/items/${slug}`)).json();
    const stated: string[] = snapshot.specimens.flatMap(
      (one: { parts: { results: { state: string; stated: { value: string } }[] }[] }) =>
        one.parts.flatMap((part) =>
          part.results.filter(({ state }) => state === "quantified").map((result) => result.stated.value),
        ),
    );
    const text = ((await page.locator("main").textContent()) ?? "").replaceAll("\u202F", "");
    expect(stated.length).toBeGreaterThan(0);
    for (const value of stated) expect(text).toContain(value.replace(".", ","));
    // There and back: the link keeps the page one is on.
    await page.getByRole("banner").getByRole("link", { name: "English" }).click();
    await page.waitForURL((url) => url.pathname === `/items/${slug}`);
    await page.getByRole("banner").getByRole("link", { name: "Español" }).click();
    await page.waitForURL((url) => url.pathname === `/es/items/${slug}`);
  });

  it("keeps the question when the language changes", async () => {
    await page.goto("/items?q=bowl&sort=name");
    await page.getByRole("banner").getByRole("link", { name: "Español" }).click();
    await page.waitForURL((url) => url.pathname === "/es/items" && url.searchParams.get("q") === "bowl");
    expect(new URL(page.url()).searchParams.get("sort")).toBe("name");
  });

  it("works out an amount from numbers with a decimal comma, and reads the answer with one", async () => {
    await page.goto("/es/amounts");
    await page.getByLabel("Su peso", { exact: true }).check();
    await page.getByLabel("Peso de la parte", { exact: true }).fill("165,5");
    await page.getByLabel("Contenido", { exact: true }).fill("0,05");
    await page.locator('select[name="contentUnit"]').selectOption("%");
    await page.locator('input[name="loading"]').fill("5");
    await page.getByRole("button", { name: "Calcular" }).click();
    await page.waitForURL(/\/es\/amounts\?.*content=0%2C05/);
    // 165.5 g × 0.05 % = 82.75 mg (our arithmetic).
    expect(await page.locator("#amount .answer").textContent()).toContain("82,75 mg");
    expect(await page.getByLabel("Contenido", { exact: true }).inputValue()).toBe("0,05");
  });

  it("asks for a test in Spanish, and is told in Spanish what was wrong with the first try", async () => {
    await page.goto("/es/requests/new");
    await page.locator("#description").fill("x");
    await page.getByRole("button", { name: "Pedir un ensayo" }).click();
    await page.waitForURL(/\/es\/requests\/new\?.*problem=/);
    expect(await page.getByText("Hay una cosa que arreglar").count()).toBe(1);
    await page.locator("#description").fill("taza azul con un caracol en la base");
    await page.getByRole("button", { name: "Pedir un ensayo" }).click();
    await page.waitForURL(/\/es\/requests\/[\w-]{6,}$/);
    expect(await page.getByText("Pedido una vez hasta ahora.").count()).toBe(1);
  });
});
