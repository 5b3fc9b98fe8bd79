import { listLimits } from "../limits/list-limits.ts";
import { paths } from "../platform/paths.ts";
import { languages, recordLanguage } from "../wording/language.ts";
import { pathIn } from "../wording/localized-paths.ts";
import { absoluteUrl, newestRevisions, type PublishedRevision } from "./published-revision.ts";
import { xmlText } from "./xml-text.ts";

/** The most addresses one sitemap may hold (sitemaps.org protocol). */
export const sitemapLimit = 50_000;
const namespace = 'xmlns="http://www.sitemaps.org/schemas/sitemap/0.9" xmlns:xhtml="http://www.w3.org/1999/xhtml"';

/** Pages that are always there, and that of every limit. */
const standing = (["home", "limits", "methods", "amounts", "corrections", "log"] as const).map((name) => paths[name]());
const standingPaths = (): string[] => [...standing, ...listLimits().map(({ id }) => paths.limit(id))];

/**
 * The sitemap: the standing pages, every limit and every item that has not been withdrawn, with the day of its newest revision. Over
 * 50,000 addresses it becomes an index of pages (`?page=1` …), each asked for by `page`; null where there is no such page.
 */
export function sitemap(
  revisions: readonly Pick<PublishedRevision, "entry">[],
  { baseUrl, path, page }: { baseUrl: string; path: string; page?: number },
): string | null {
  /** The page in each language, each with its twins. */
  const inAll = (at: string, lastmod: string | null): string[] =>
    languages.map((language) =>
      urlElement(absoluteUrl(baseUrl, pathIn(at, language)), lastmod, alternatesOf(baseUrl, at)),
    );
  const urls = [
    ...standingPaths().flatMap((at) => inAll(at, null)),
    ...newestRevisions(revisions)
      .filter(({ entry }) => entry.kind !== "withdrawal")
      .flatMap(({ entry }) => inAll(paths.item(entry.slug), entry.publishedAt)),
  ];
  const pages = Math.ceil(urls.length / sitemapLimit);
  if (page === undefined && pages > 1) {
    const entries = Array.from({ length: pages }, (_, i) => {
      const at = `${absoluteUrl(baseUrl, path)}?page=${i + 1}`;
      return `  <sitemap><loc>${xmlText(at)}</loc></sitemap>`;
    });
    return document("sitemapindex", entries);
  }
  const from = ((page ?? 1) - 1) * sitemapLimit;
  const part = Number.isInteger(from) && from >= 0 ? urls.slice(from, from + sitemapLimit) : [];
  return part.length === 0 ? null : document("urlset", part);
}

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
