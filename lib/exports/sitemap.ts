import { listLimits } from "../limits/list-limits.ts";
import { paths } from "../platform/paths.ts";
import type { LogEntry } from "../publication/snapshot.ts";
import { languages, recordLanguage } from "../wording/language.ts";
import { pathIn } from "../wording/localized-paths.ts";
import { absoluteUrl } from "./published-revision.ts";
import { xmlText } from "./xml-text.ts";

/** How many items one page of the sitemap names, in each language: a few MB, far below the 50,000 addresses that may be. */
export const itemsOnPage = 5000;
const namespace = 'xmlns="http://www.sitemaps.org/schemas/sitemap/0.9" xmlns:xhtml="http://www.w3.org/1999/xhtml"';

/** Pages that are always there, and that of every limit. */
const standing = (["home", "limits", "methods", "amounts", "corrections", "log"] as const).map((name) => paths[name]());
const standingPaths = (): string[] => [...standing, ...listLimits().map(({ id }) => paths.limit(id))];

/** An item by its page and the day it was last published. */
export type MappedItem = Pick<LogEntry, "slug" | "publishedAt">;

/** How many pages there are for so many items; an empty registry has its standing pages still. */
export const sitemapPages = (items: number): number => Math.max(1, Math.ceil(items / itemsOnPage));

/** A page of the sitemap with its items; the standing pages and every limit stand on the first (sitemaps.org protocol). */
export function sitemapPage(page: number, items: readonly MappedItem[], baseUrl: string): string {
  /** The page in each language, each with its twins. */
  const inAll = (at: string, lastmod: string | null): string[] =>
    languages.map((language) =>
      urlElement(absoluteUrl(baseUrl, pathIn(at, language)), lastmod, alternatesOf(baseUrl, at)),
    );
  return document("urlset", [
    ...(page === 1 ? standingPaths().flatMap((at) => inAll(at, null)) : []),
    ...items.flatMap(({ slug, publishedAt }) => inAll(paths.item(slug), publishedAt)),
  ]);
}

/** What names the pages of a sitemap, where there are several. */
export const sitemapIndex = (pages: number, { baseUrl, path }: { baseUrl: string; path: string }): string =>
  document(
    "sitemapindex",
    Array.from({ length: pages }, (_, i) => {
      const at = `${absoluteUrl(baseUrl, path)}?page=${i + 1}`;
      return `  <sitemap><loc>${xmlText(at)}</loc></sitemap>`;
    }),
  );

/** The same page in each language, and the one for whoever reads none of them. */
const alternatesOf = (baseUrl: string, path: string): string =>
  [...languages.map((language) => [language, language] as const), ["x-default", recordLanguage] as const]
    .map(([name, language]) => {
      const href = xmlText(absoluteUrl(baseUrl, pathIn(path, language)));
      return `<xhtml:link rel="alternate" hreflang="${name}" href="${href}"/>`;
    })
    .join("");

const urlElement = (at: string, lastmod: string | null, alternates: string): string =>
  `  <url><loc>${xmlText(at)}</loc>${lastmod === null ? "" : `<lastmod>${xmlText(lastmod)}</lastmod>`}${alternates}</url>`;

const document = (root: string, lines: string[]): string =>
  `<?xml version="1.0" encoding="UTF-8"?>\n<${root} ${namespace}>\n${lines.join("\n")}\n</${root}>\n`;
