import type { Page } from "playwright-core";

/** A screen of the product: a short name for its pictures, its address, and whether one must be signed in. */
export type Screen = { name: string; path: string; role: "owner" | null };

const fixedPublic: [string, string][] = [
  ["front", "/"],
  ["items", "/items"],
  ["search", "/items?q=mug"],
  ["search-none", "/items?q=zebra%20teapot"],
  ["limits", "/limits"],
  ["methods", "/methods"],
  ["corrections", "/corrections"],
  ["log", "/log"],
  ["not-found", "/items/no-such-item"],
  ["sign-in", "/account/sign-in"],
  ["style", "/style"],
];
/** Screens that may not be there yet; asked for, and left out where the product does not know them. */
const perhapsPublic: [string, string][] = [["amounts", "/amounts"]];

const fixedDesk: [string, string][] = [
  ["bench", "/bench"],
  ["bench-import", "/bench/import"],
  ["bench-hand", "/bench/by-hand"],
  ["bench-readings", "/bench/readings"],
  ["bench-instruments", "/bench/instruments"],
  ["bench-new-item", "/bench/items/new"],
  ["review", "/review"],
  ["account", "/account"],
  ["people", "/account/people"],
];
const perhapsDesk: [string, string][] = [["check-standards", "/review/check-standards"]];

const hrefs = (page: Page, selector: string): Promise<string[]> =>
  page
    .locator(selector)
    .evaluateAll((links) => [...new Set(links.map((link) => link.getAttribute("href") ?? ""))].filter(Boolean));

const exists = async (page: Page, path: string): Promise<boolean> => {
  const answer = await page.request.get(path);
  return answer.status() < 400;
};

/**
 * Every public screen: the fixed ones, and of items, revisions and limits the first few that the pages themselves lead to.
 */
export async function publicScreens(page: Page, most = 3): Promise<Screen[]> {
  const list = [...fixedPublic];
  for (const each of perhapsPublic) if (await exists(page, each[1])) list.push(each);
  await page.goto("/items");
  const items = (await hrefs(page, 'main a[href^="/items/"]')).filter((href) => /^\/items\/[^/?]+$/.test(href));
  await page.goto("/limits");
  const limits = (await hrefs(page, 'main a[href^="/limits/"]')).filter((href) => !href.includes("#"));
  for (const path of items.slice(0, most)) list.push([`item-${path.split("/").at(-1)}`, path]);
  const [first] = items;
  if (first) list.push(["revision", `${first}/revisions/1`]);
  for (const path of limits.slice(0, 1)) list.push(["limit", path]);
  return list.map(([name, path]) => ({ name, path, role: null }));
}

/** Every screen of bench, review and account, for somebody who may see them all. Needs a page that is signed in. */
export async function deskScreens(page: Page, most = 2): Promise<Screen[]> {
  const list = [...fixedDesk];
  for (const each of perhapsDesk) if (await exists(page, each[1])) list.push(each);
  await page.goto("/bench");
  const items = (await hrefs(page, 'main a[href^="/bench/items/"]')).filter((href) => !href.endsWith("/new"));
  const files = await hrefs(page, 'main a[href^="/bench/imports/"]');
  await page.goto("/review");
  const reviews = (await hrefs(page, 'main a[href^="/review/"]')).filter((href) => !href.endsWith("/check-standards"));
  items.slice(0, most).forEach((path, at) => {
    list.push([`bench-item-${at + 1}`, path]);
  });
  files.slice(0, 1).forEach((path) => {
    list.push(["bench-file", path]);
  });
  reviews.slice(0, 1).forEach((path) => {
    list.push(["review-item", path]);
  });
  return list.map(([name, path]) => ({ name, path, role: "owner" }));
}
