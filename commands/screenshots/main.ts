import { mkdirSync, rmSync } from "node:fs";
import { join } from "node:path";
import type { Browser, BrowserContext, Page } from "playwright-core";
import { launchBrowser } from "../../tests/support/browser-launch.ts";
import { deskScreens, publicScreens, type Screen, unreachedRoutes } from "../../tests/support/every-page.ts";
import { loadScenario, type Served, serveScenario } from "../../tests/support/serve-scenario.ts";

/**
 * Pictures of every screen, for a person to look at: 390, 768 and 1280 px wide, light, dark and as printed. Names on the command
 * line keep only the screens whose name holds one of them.
 */
const folder = join(import.meta.dirname, "..", "..", "screenshots");
const widths = [390, 768, 1280] as const;
const looks = ["light", "dark", "print"] as const;
const wanted = process.argv.slice(2);

/** Chromium draws at most this many px in one picture; a longer page goes on in a second one. */
const tallest = 16_000;

async function signIn(page: Page, served: Served): Promise<void> {
  const [email = "", password = ""] = (served.passwords["owner"] ?? "").split(" ");
  await page.goto("/account/sign-in");
  await page.getByLabel("E-mail").fill(email);
  await page.getByLabel("Password").fill(password);
  await page.getByRole("main").getByRole("button", { name: "Sign in" }).click();
  await page.waitForURL((url) => !url.pathname.endsWith("/sign-in"));
}

/** Photos further down are fetched only when they come near; a picture of the whole page wants them all. */
async function wakePhotos(page: Page): Promise<void> {
  await page.evaluate(async () => {
    for (const photo of document.images) photo.loading = "eager";
    await Promise.all([...document.images].map((photo) => photo.decode().catch(() => null)));
  });
}

async function picture(context: BrowserContext, screen: Screen): Promise<void> {
  const page = await context.newPage();
  for (const width of widths) {
    await page.setViewportSize({ width, height: 900 });
    await page.emulateMedia({ media: "screen", colorScheme: "light" });
    await page.goto(screen.path, { waitUntil: "networkidle" });
    await wakePhotos(page);
    for (const look of looks) {
      await page.emulateMedia(
        look === "print" ? { media: "print", colorScheme: "light" } : { media: "screen", colorScheme: look },
      );
      const height = await page.evaluate(() => document.documentElement.scrollHeight);
      for (let y = 0, part = 1; y < height; y += tallest, part += 1)
        await page.screenshot({
          path: join(folder, `${screen.name}-${width}-${look}${part > 1 ? `-${part}` : ""}.png`),
          clip: { x: 0, y, width, height: Math.min(tallest, height - y) },
          fullPage: true,
          timeout: 180_000,
        });
    }
  }
  await page.close();
}

async function takeAll(browser: Browser, served: Served): Promise<number> {
  const options = { baseURL: served.base, reducedMotion: "reduce" as const };
  const open = await browser.newContext(options);
  const desk = await browser.newContext(options);
  const deskPage = await desk.newPage();
  await signIn(deskPage, served);
  const openPage = await open.newPage();
  const every = [...(await publicScreens(openPage)), ...(await deskScreens(deskPage))];
  const unreached = unreachedRoutes(every);
  if (unreached.length > 0) console.log(`  No link leads to a page of: ${unreached.join(", ")}`);
  const screens = every.filter(({ name }) => wanted.length === 0 || wanted.some((word) => name.includes(word)));
  for (const screen of screens) {
    await picture(screen.role === null ? open : desk, screen);
    console.log(`  ${screen.name}`);
  }
  return screens.length;
}

if (wanted.length === 0) rmSync(folder, { recursive: true, force: true });
mkdirSync(folder, { recursive: true });
const scenario = loadScenario();
const served = await serveScenario(scenario);
const browser = await launchBrowser();
try {
  const count = await takeAll(browser, served);
  console.log(`${count} screens, ${count * widths.length * looks.length} pictures in ${folder}`);
} finally {
  await browser.close();
  await served.stop();
  rmSync(scenario.folder, { recursive: true, force: true });
}
process.exit(0);
