import AxeBuilder from "@axe-core/playwright";
import type { Browser, BrowserContext, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { desktop, newPage, openBrowser, overflow, phone, signIn } from "../support/browser.ts";
import { deskScreens, publicScreens, type Screen, unreachedRoutes } from "../support/every-page.ts";

/** Rules: WCAG 2.2 A and AA as axe-core tests them, and that no two landmarks of a page have one name. */
const tags = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"];

let browser: Browser;
let open: { page: Page; context: BrowserContext };
let desk: { page: Page; context: BrowserContext };
let screens: Screen[];
beforeAll(async () => {
  browser = await openBrowser();
  open = await newPage(browser);
  desk = await newPage(browser);
  await signIn(desk.page, "owner");
  screens = [...(await publicScreens(open.page)), ...(await deskScreens(desk.page))];
}, 600_000);
afterAll(async () => {
  await browser.close();
});

const pageOf = (screen: Screen): Page => (screen.role === null ? open : desk).page;
const faults = async (page: Page, apart: string[] = []): Promise<string[]> =>
  (
    await new AxeBuilder({ page })
      .options({
        runOnly: { type: "tag", values: tags },
        rules: Object.fromEntries([
          ["landmark-unique", { enabled: true }],
          ...apart.map((id) => [id, { enabled: false }]),
        ]),
      })
      .analyze()
  ).violations.map((v) => `${v.id}: ${v.nodes.map((n) => n.html.slice(0, 160)).join(" | ")}`);

describe("every screen", () => {
  it("is found: the style page, items, a limit, bench and review", () => {
    const names = screens.map((s) => s.name);
    expect(names.length).toBeGreaterThan(30);
    expect(new Set(names).size).toBe(names.length);
    expect(names).toEqual(
      expect.arrayContaining(["style", "front", "revision", "limit", "bench-item-1", "bench-file", "review-item"]),
    );
  });

  it("is every page that readers have, in both languages", () => {
    const readers = unreachedRoutes(screens).filter((route) => !/^\/(bench|review|account)(\/|$)/.test(route));
    // Nothing of the scenario has a second revision.
    const difference = "/items/[slug]/revisions/[n]/difference";
    expect(readers).toEqual([`/es${difference}`, difference]);
    const paths = screens.filter(({ role }) => role === null).map(({ path }) => path);
    expect(paths.filter((path) => /^\/es(\/|$)/.test(path)).length).toBeGreaterThan(15);
  });

  it.each([
    ["phone", "light", phone],
    ["phone", "dark", phone],
    ["desktop", "light", desktop],
    ["desktop", "dark", desktop],
  ] as const)(
    "on a %s in %s: axe finds nothing, and nothing is wider than the window",
    async (_on, scheme, size) => {
      const found: string[] = [];
      for (const screen of screens) {
        const page = pageOf(screen);
        await page.setViewportSize(size);
        await page.emulateMedia({ media: "screen", colorScheme: scheme });
        await page.goto(screen.path);
        for (const fault of await faults(page)) found.push(`${screen.path}: ${fault}`);
        const wide = await overflow(page);
        if (wide > 0) found.push(`${screen.path}: ${wide} px too wide`);
      }
      expect(found).toEqual([]);
    },
    1_800_000,
  );

  it("gives no two of its elements one id", async () => {
    const found: string[] = [];
    // The style page shows one component in many states.
    for (const screen of screens.filter(({ name }) => name !== "style")) {
      const page = pageOf(screen);
      await page.goto(screen.path);
      const twice = await page.evaluate(() => {
        const ids = [...document.querySelectorAll("[id]")].map((each) => each.id);
        return ids.filter((id, at) => ids.indexOf(id) !== at);
      });
      if (twice.length > 0) found.push(`${screen.path}: ${twice.join(", ")}`);
    }
    expect(found).toEqual([]);
  }, 900_000);

  it("fits 320 px without scrolling sideways (WCAG 1.4.10)", async () => {
    const found: string[] = [];
    for (const screen of screens) {
      const page = pageOf(screen);
      await page.setViewportSize({ width: 320, height: 640 });
      await page.goto(screen.path);
      const wide = await overflow(page);
      if (wide > 0) found.push(`${screen.path}: ${wide} px`);
    }
    expect(found).toEqual([]);
  }, 900_000);

  it("prints without anything that sticks, and without its navigation", async () => {
    const found: string[] = [];
    for (const screen of screens) {
      const page = pageOf(screen);
      await page.setViewportSize(desktop);
      await page.emulateMedia({ media: "print", colorScheme: "light" });
      await page.goto(screen.path);
      const stuck = await page.evaluate(() =>
        [...document.querySelectorAll("body *")]
          .filter((each) => ["sticky", "fixed"].includes(getComputedStyle(each).position))
          .filter((each) => each.getClientRects().length > 0)
          .map((each) => each.className),
      );
      if (stuck.length > 0) found.push(`${screen.path}: ${stuck.join(", ")}`);
      if (await page.getByRole("navigation", { name: /^(Main|Principal)$/ }).isVisible())
        found.push(`${screen.path}: navigation`);
      await page.emulateMedia({ media: "screen" });
    }
    expect(found).toEqual([]);
  }, 900_000);
});

describe("the style page", () => {
  const at = async (id: string) => {
    const { page } = open;
    await page.setViewportSize(desktop);
    await page.emulateMedia({ media: "screen", colorScheme: "light" });
    await page.goto("/style", { waitUntil: "networkidle" });
    return page.locator(`#example-${id}`);
  };

  it("quantity: what is typed is understood as it is typed", async () => {
    const example = await at("quantity-empty");
    await example.getByLabel("Thickness of the wall").focus();
    await open.page.keyboard.type("0,25");
    await expect.poll(() => example.innerText()).toContain("Understood: 0.25 mm.");
    await open.page.keyboard.press("Control+A");
    await open.page.keyboard.type("0.01 in");
    await expect.poll(() => example.innerText()).toContain("Understood: 0.01 in, which is 0.254 mm.");
    await open.page.keyboard.press("Control+A");
    await open.page.keyboard.type("1,234");
    await expect.poll(() => example.innerText()).toContain("can be read in two ways");
  });

  it("combobox: letters, arrow and Enter choose; the form sends the value; Escape closes", async () => {
    const example = await at("combobox");
    const box = example.getByRole("combobox", { name: "Time zone" });
    await box.focus();
    await open.page.keyboard.type("kol");
    await open.page.getByRole("option", { name: "Asia/Kolkata" }).waitFor();
    await open.page.keyboard.press("ArrowDown");
    await open.page.keyboard.press("Enter");
    await expect.poll(() => box.inputValue()).toBe("Asia/Kolkata");
    expect(await example.locator('input[type="hidden"][name="zone"]').inputValue()).toBe("Asia/Kolkata");
    await open.page.keyboard.press("ArrowDown");
    await open.page.getByRole("listbox").waitFor();
    // While the list is open the rest is hidden from screen readers; it cannot be reached either, since Tab closes the list first.
    expect(await faults(open.page, ["aria-hidden-focus"])).toEqual([]);
    await open.page.keyboard.press("Escape");
    await open.page.getByRole("listbox").waitFor({ state: "detached" });
    await open.page.keyboard.press("ArrowDown");
    await open.page.getByRole("listbox").waitFor();
    await open.page.keyboard.press("Tab");
    await open.page.getByRole("listbox").waitFor({ state: "detached" });
    expect(await open.page.locator("[aria-hidden=true] a, a[aria-hidden=true]").count()).toBe(0);
  });

  it("date with zone: says the offset, and that an hour came twice", async () => {
    const example = await at("date-zone");
    await expect
      .poll(() => example.innerText())
      .toContain("Understood: 3 October 2026, 14:05, Europe/Lisbon (UTC+01:00).");
    await example.getByLabel("Day").fill("2026-10-25");
    await example.getByLabel("Time", { exact: true }).fill("01:30");
    await expect.poll(() => example.innerText()).toContain("came twice");
  });

  it("rows to tick: Space, Shift and arrows, all at once, and sorting by keyboard", async () => {
    const example = await at("ticked-rows");
    const box = (n: number) => example.getByRole("checkbox", { name: new RegExp(`^Reading ${n},`) });
    const ticked = () => example.getByRole("checkbox", { name: /^Reading/, checked: true }).count();
    await box(1).focus();
    await open.page.keyboard.press("Space");
    await open.page.keyboard.press("Shift+ArrowDown");
    await open.page.keyboard.press("Shift+ArrowDown");
    expect(await ticked()).toBe(3);
    await expect.poll(() => example.innerText()).toContain("3 of 5 ticked");
    await open.page.keyboard.press("Space");
    await open.page.keyboard.press("ArrowDown");
    await open.page.keyboard.press("ArrowDown");
    await open.page.keyboard.press("Shift+Space");
    expect(await ticked()).toBe(5);
    await example.getByRole("checkbox", { name: "Tick all rows" }).press("Space");
    expect(await ticked()).toBe(0);
    const heading = example.getByRole("button", { name: "Lead (ppm)" });
    await heading.press("Enter");
    const first = () => example.locator("tbody tr").first().innerText();
    expect(await example.getByRole("columnheader", { name: "Lead (ppm)" }).getAttribute("aria-sort")).toBe("ascending");
    expect(await first()).toContain("18");
    await heading.press("Enter");
    expect(await first()).toContain("412");
    await box(1).click();
    await box(3).click({ modifiers: ["Shift"] });
    expect(await ticked()).toBeGreaterThan(2);
  });

  it("dialog: takes the focus, keeps it, Escape gives it back; yes is done", async () => {
    const example = await at("dialog");
    const opener = example.getByRole("button", { name: "Take this part away" });
    await opener.press("Enter");
    const dialog = example.getByRole("dialog", { name: "Take “handle rivet” away?" });
    await dialog.waitFor();
    expect(await faults(open.page)).toEqual([]);
    await open.page.keyboard.press("Escape");
    await dialog.waitFor({ state: "hidden" });
    expect(await opener.evaluate((button) => button === document.activeElement)).toBe(true);
    await opener.press("Enter");
    await dialog.getByRole("button", { name: "Take it away" }).press("Enter");
    await expect.poll(() => example.innerText()).toContain("is gone");
  });

  it("undo notice: by keyboard", async () => {
    const example = await at("undo");
    await example.getByRole("button", { name: "Undo" }).press("Enter");
    await example.getByRole("button", { name: "Put them there again" }).waitFor();
  });

  it("file drop: says that a file must be chosen; several can be", async () => {
    const example = await at("file-drop");
    expect(await example.locator("input[type=file]").getAttribute("multiple")).not.toBeNull();
    await example.locator("input[type=file]").evaluate((input: HTMLInputElement) => {
      input.required = false;
    });
    await example.getByRole("button", { name: "Read the files" }).press("Enter");
    await example.getByRole("alert").waitFor();
  });

  it.each(["readings-chart", "control-chart"])("%s: arrow keys tell one point after the other in words", async (id) => {
    const example = await at(id);
    const chart = example.getByRole("group", { name: /^Drawing/ });
    await chart.focus();
    const told = () => example.locator('[role="status"]').innerText();
    await open.page.keyboard.press("ArrowRight");
    const first = await told();
    expect(first).toMatch(/\d/);
    await open.page.keyboard.press("ArrowRight");
    expect(await told()).not.toBe(first);
    await open.page.keyboard.press("Home");
    expect(await told()).toBe(first);
    await open.page.keyboard.press("Escape");
    expect(await told()).toBe("");
    // The pointer gets the same words.
    const dot = example.locator("svg.recharts-surface circle").first();
    await dot.hover();
    await expect.poll(() => example.locator(".recharts-tooltip-wrapper").innerText()).toMatch(/\d/);
  });

  it("is whole in forced colours and with reduced motion", async () => {
    const { page, context } = await newPage(browser, { forcedColors: "active", reducedMotion: "reduce" });
    const wrong: string[] = [];
    page.on("pageerror", (error) => wrong.push(error.message));
    await page.goto("/style", { waitUntil: "networkidle" });
    // Paper and ink give way to the system's colours; a button keeps an edge to be seen by.
    const edge = await page
      .locator("#example-buttons button")
      .first()
      .evaluate((button) => getComputedStyle(button).borderTopStyle);
    expect(edge).toBe("solid");
    const moving = await page.evaluate(
      () =>
        [...document.querySelectorAll("*")].filter((each) => {
          const { transitionDuration, animationName } = getComputedStyle(each);
          return animationName !== "none" || transitionDuration.split(",").some((time) => Number.parseFloat(time) > 0);
        }).length,
    );
    expect(moving).toBe(0);
    // A bar of a strip stands out from the paper behind it.
    const bar = await page
      .locator("#example-strip-above svg rect")
      .first()
      .evaluate((rect) => getComputedStyle(rect).fill);
    const paper = await page.evaluate(() => getComputedStyle(document.body).backgroundColor);
    expect(bar).not.toBe(paper);
    expect(wrong).toEqual([]);
    await context.close();
  });
});

describe("an item page", () => {
  it.each([
    ["phone", phone],
    ["desktop", desktop],
  ] as const)("does not move while it loads on a %s, and asks for no second face of type", async (_on, viewport) => {
    const item = screens.find((s) => s.name.startsWith("item-"));
    const { page, context } = await newPage(browser, { viewport });
    await page.addInitScript(() => {
      const seen = { shift: 0 };
      Object.assign(window, { seen });
      new PerformanceObserver((list) => {
        for (const entry of list.getEntries()) seen.shift += (entry as unknown as { value: number }).value;
      }).observe({ type: "layout-shift", buffered: true });
    });
    await page.goto(item?.path ?? "/", { waitUntil: "networkidle" });
    await page.mouse.wheel(0, 3000);
    await page.waitForTimeout(500);
    expect(await page.evaluate(() => (window as unknown as { seen: { shift: number } }).seen.shift)).toBe(0);
    const displays = await page.evaluate(() =>
      [...document.styleSheets]
        .flatMap((sheet) => [...sheet.cssRules])
        .filter((rule) => rule instanceof CSSFontFaceRule && rule.style.getPropertyValue("src").includes("url("))
        .map((rule) => (rule as CSSFontFaceRule).style.getPropertyValue("font-display")),
    );
    expect(displays.length).toBeGreaterThan(0);
    expect(new Set(displays)).toEqual(new Set(["optional"]));
    await context.close();
  });
});

describe("bench and review", () => {
  it("name who is signed in; public pages ask nobody and set nothing", async () => {
    await desk.page.setViewportSize(desktop);
    await desk.page.goto("/bench");
    const bar = desk.page.getByRole("navigation", { name: "Your workplaces" });
    expect(await bar.getByRole("link").allInnerTexts()).toEqual([
      "Bench",
      "Review",
      "People",
      "Terms",
      "Odaline Farrowby",
    ]);
    await desk.page.goto("/items");
    expect(await desk.page.getByRole("navigation", { name: "Your workplaces" }).count()).toBe(0);
    const answer = await open.page.request.get("/items");
    expect(answer.headers()["set-cookie"]).toBeUndefined();
  });

  it("on a phone the main action stays at the foot of the window", async () => {
    await desk.page.setViewportSize(phone);
    for (const path of ["/bench", "/bench/by-hand"]) {
      await desk.page.goto(path);
      const name = path === "/bench" ? "Load a file" : /^Keep/;
      const role = path === "/bench" ? "link" : "button";
      const box = await desk.page.getByRole(role, { name }).last().boundingBox();
      expect(box?.y, path).toBeGreaterThan(phone.height * 0.66);
      expect((box?.y ?? 0) + (box?.height ?? 0), path).toBeLessThanOrEqual(phone.height);
    }
  });
});
