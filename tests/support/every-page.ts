import type { Page } from "playwright-core";
import { paths } from "../../lib/platform/paths.ts";
import { pathIn } from "../../lib/wording/localized-paths.ts";
import { requestPage } from "../../lib/wording/test-requests.ts";
import { pageRoutes, routeOf } from "./routes.ts";

/** A screen of the product: a short name for its pictures, its address, and whether one must be signed in. */
export type Screen = { name: string; path: string; role: "owner" | null };

const fixedPublic: [string, string][] = [
  // First, so that the items taken are those of which there are several revisions.
  ["corrections", "/corrections"],
  ["front", "/"],
  ["items", "/items"],
  ["search", "/items?q=mug"],
  ["search-none", "/items?q=zebra%20teapot"],
  ["scan", "/scan"],
  ["limits", "/limits"],
  ["methods", "/methods"],
  ["amounts", "/amounts"],
  // A blob of solder with a loading and an area: everything the calculator can show.
  [
    "amounts-worked",
    "/amounts?from=shape&shape=sphere&diameter=2+to+3&densityFrom=alloy&rest=Sn&content=40+to+60&contentUnit=%25&loading=5&over=2808",
  ],
  ["amounts-wrong", "/amounts?from=weight&weight=350&content=140&contentUnit=%25&loading=0"],
  ["log", "/log"],
  ["sign-in", "/account/sign-in"],
  ["style", "/style"],
  // The Spanish twins: one of each kind, since all but the words is the same.
  ["es-front", "/es"],
  ["es-search", "/es/items?q=mug"],
  ["es-search-none", "/es/items?q=zebra%20teapot"],
  ["es-scan", "/es/scan"],
  ["es-limits", "/es/limits"],
  ["es-methods", "/es/methods"],
  [
    "es-amounts",
    "/es/amounts?from=shape&shape=sphere&diameter=2+to+3&densityFrom=alloy&rest=Sn&content=40+to+60&contentUnit=%25&loading=5&over=2808",
  ],
  ["es-log", "/es/log"],
  ["es-corrections", "/es/corrections"],
  ["es-request", "/es/requests/new"],
  // Last, so that the twin taken of an item is one that is there.
  ["not-found", "/items/no-such-item"],
  ["es-not-found", "/es/no-such-page"],
];

const fixedDesk: [string, string][] = [
  ["bench", "/bench"],
  ["bench-import", "/bench/import"],
  ["bench-hand", "/bench/by-hand"],
  ["bench-table", "/bench/table"],
  ["bench-readings", "/bench/readings"],
  ["bench-readings-all", "/bench/readings?state=all&element=Pb"],
  ["bench-new-items", "/bench/readings/new-items"],
  ["bench-instruments", "/bench/instruments"],
  ["bench-sessions", "/bench/sessions"],
  ["bench-new-session", "/bench/sessions/new"],
  ["bench-check-standards", "/bench/check-standards"],
  ["bench-new-check-standard", "/bench/check-standards/new"],
  ["bench-new-item", "/bench/items/new"],
  ["review", "/review"],
  ["account", "/account"],
  ["people", "/account/people"],
  ["bench-not-found", "/bench/items/no-such-item"],
];

/** How pictures of a route are called where its own segments do not say it best, and how many of its pages are taken. */
const routeNames: Record<string, { name: string; most?: number }> = {
  "/items/[slug]": { name: "item", most: 3 },
  "/items/[slug]/revisions/[n]": { name: "revision" },
  "/limits/[id]": { name: "limit" },
  "/es/limits/[id]": { name: "es-limit" },
  "/es/items/[slug]": { name: "es-item" },
  "/es/items/[slug]/revisions/[n]": { name: "es-revision" },
  "/bench/items/[id]": { name: "bench-item", most: 2 },
  "/bench/imports/[id]": { name: "bench-file" },
  "/review/[id]": { name: "review-item" },
};
const nameOf = (route: string): string =>
  routeNames[route]?.name ??
  route
    .split("/")
    .filter((segment) => segment !== "")
    .map((segment) => (segment.startsWith("[") ? "one" : segment))
    .join("-");

const desk = /^\/(bench|review|account)(\/|$)/;

/**
 * Every screen of one side: the fixed ones, and of every other page of the product the first that its own links lead to from there.
 * What no link leads to is left out; `unreachedRoutes` names it.
 */
async function screensFrom(page: Page, fixed: [string, string][], role: Screen["role"]): Promise<Screen[]> {
  const routes = pageRoutes().filter((route) => desk.test(route) === (role !== null));
  const screens: Screen[] = fixed.map(([name, path]) => ({ name, path, role }));
  const fixedRoutes = new Set(screens.map(({ path }) => routeOf(path, routes)));
  // Whoever is signed in has no more to do there.
  fixedRoutes.add("/account/sign-in");
  // An address that does not exist belongs to the route of those that do.
  fixedRoutes.delete(role === null ? "/items/[slug]" : "/bench/items/[id]");
  const taken = new Map<string, number>();
  const seen = new Set(screens.map(({ path }) => path));
  for (let at = 0; at < screens.length; at++) {
    const screen = screens[at];
    if (screen === undefined) break;
    await page.goto(screen.path, { waitUntil: "domcontentloaded" });
    for (const href of await linksOf(page)) {
      const route = routeOf(href, routes);
      if (route === null || fixedRoutes.has(route) || seen.has(href)) continue;
      const count = (taken.get(route) ?? 0) + 1;
      const most = routeNames[route]?.most ?? 1;
      if (count > most) continue;
      taken.set(route, count);
      seen.add(href);
      const name = nameOf(route);
      const ending = route === "/items/[slug]" ? `-${href.split("/").at(-1)}` : most > 1 ? `-${count}` : "";
      screens.push({ name: `${name}${ending}`, path: href, role });
    }
  }
  return screens;
}

/** Addresses within the product that a page leads to, without their fragments. */
const linksOf = async (page: Page): Promise<string[]> => {
  const hrefs = await page
    .locator('a[href^="/"]')
    .evaluateAll((links) => links.map((link) => link.getAttribute("href") ?? ""));
  return [...new Set(hrefs.map((href) => href.split("#")[0] ?? ""))].filter(Boolean);
};

/** Asks for a test as a reader does; only whoever asked knows the address of the answer. */
async function askedRequest(page: Page): Promise<string> {
  await page.goto(paths.requestTest());
  await page.locator("#description").fill("child’s mug, yellow, three ducks, a small anchor on the foot");
  await page.getByRole("button", { name: requestPage.send }).click();
  await page.waitForURL((url) => /^\/requests\/(?!new$)[\w-]{6,}$/.test(url.pathname));
  return new URL(page.url()).pathname;
}

/** The public side, and what no link leads to: the items it found beside each other, and what became of a request; in each language. */
export async function publicScreens(page: Page): Promise<Screen[]> {
  const screens = await screensFrom(page, fixedPublic, null);
  const slugs = screens.flatMap(({ name, path }) => (name.startsWith("item-") ? [path.split("/").at(-1) ?? ""] : []));
  const unlinked: [string, string][] = [
    ["items-beside-each-other", paths.compare(slugs)],
    ["request-asked", await askedRequest(page)],
  ];
  const both = unlinked.flatMap(([name, path]): [string, string][] => [
    [name, path],
    [`es-${name}`, pathIn(path, "es")],
  ]);
  return [...screens, ...both.map(([name, path]) => ({ name, path, role: null }))];
}

/** Every screen of bench, review and account, for somebody who may see them all. Needs a page that is signed in. */
export const deskScreens = (page: Page): Promise<Screen[]> => screensFrom(page, fixedDesk, "owner");

/** Pages of the product of which no screen was found. */
export const unreachedRoutes = (screens: readonly Screen[]): string[] => {
  const routes = pageRoutes();
  const reached = new Set(screens.map(({ path }) => routeOf(path, routes)));
  return routes.filter((route) => !reached.has(route));
};
