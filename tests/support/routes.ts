import { readdirSync } from "node:fs";
import { join } from "node:path";

const app = join(import.meta.dirname, "..", "..", "app");

/** Every page of the product: its file from the root, and its route, "/items/[slug]"; groups in brackets are no part of an address. */
export const pageFiles = (): { file: string; route: string }[] =>
  readdirSync(app, { recursive: true, encoding: "utf8" })
    .filter((file) => file.endsWith("page.tsx") && /(^|\/)page\.tsx$/.test(file))
    .map((file) => {
      const segments = file.split("/").slice(0, -1);
      return { file: `app/${file}`, route: `/${segments.filter((segment) => !segment.startsWith("(")).join("/")}` };
    });

/** The routes of all pages, in order. */
export const pageRoutes = (): string[] =>
  pageFiles()
    .map(({ route }) => route)
    .sort();

const fits = (route: string, path: string): boolean => {
  const [ours, theirs] = [route.split("/"), path.split("/")];
  return (
    ours.length === theirs.length && ours.every((segment, at) => segment.startsWith("[") || segment === theirs[at])
  );
};

/**
 * The route an address belongs to; written segments go before open ones. Null for what is no page: a file, the API.
 *
 * `routeOf("/bench/items/new", pageRoutes())` is "/bench/items/new", never "/bench/items/[id]".
 */
export function routeOf(href: string, routes: readonly string[]): string | null {
  const path = href.split(/[?#]/)[0] ?? "";
  const open = (route: string): number => route.split("[").length;
  return routes.filter((route) => fits(route, path)).sort((a, b) => open(a) - open(b))[0] ?? null;
}
