import { paths } from "../platform/paths.ts";
import { absoluteUrl, newestRevisions, type PublishedRevision } from "./published-revision.ts";
import { xmlText } from "./xml-text.ts";

/** The most addresses one sitemap may hold (sitemaps.org protocol). */
export const sitemapLimit = 50_000;
const namespace = 'xmlns="http://www.sitemaps.org/schemas/sitemap/0.9"';

/** Pages that are always there. */
const standing = [paths.home(), paths.limits(), paths.methods(), paths.amounts(), paths.corrections(), paths.log()];

/**
 * The sitemap: the standing pages and every item that has not been withdrawn, with the day of its newest revision. Over
 * 50,000 addresses it becomes an index of pages (`?page=1` …), each asked for by `page`; null where there is no such page.
 */
export function sitemap(
  revisions: readonly Pick<PublishedRevision, "entry">[],
  { baseUrl, path, page }: { baseUrl: string; path: string; page?: number },
): string | null {
  const urls = [
    ...standing.map((at) => urlElement(absoluteUrl(baseUrl, at), null)),
    ...newestRevisions(revisions)
      .filter(({ entry }) => entry.kind !== "withdrawal")
      .map(({ entry }) => urlElement(absoluteUrl(baseUrl, paths.item(entry.slug)), entry.publishedAt)),
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

const urlElement = (at: string, lastmod: string | null): string =>
  `  <url><loc>${xmlText(at)}</loc>${lastmod === null ? "" : `<lastmod>${xmlText(lastmod)}</lastmod>`}</url>`;

const document = (root: string, lines: string[]): string =>
  `<?xml version="1.0" encoding="UTF-8"?>\n<${root} ${namespace}>\n${lines.join("\n")}\n</${root}>\n`;
