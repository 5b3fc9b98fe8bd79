import { z } from "zod";
import { readQuery, wholeNumber } from "@/app/api/v1/read-query.ts";
import { answered, preflight, problemReply, reply } from "@/app/api/v1/reply.ts";
import { itemsOnPage, sitemapIndex, sitemapPage, sitemapPages } from "@/lib/exports/sitemap.ts";
import { environment } from "@/lib/platform/environment.ts";
import { paths } from "@/lib/platform/paths.ts";
import { standingItems } from "@/lib/store/published.ts";

export const dynamic = "force-dynamic";
export const OPTIONS = preflight;

const query = z.object({ page: wholeNumber().optional() });

/** The addresses that search engines should know; pages of it where there are very many. */
export const GET = (request: Request): Promise<Response> =>
  answered(request, async () => {
    const asked = readQuery(request, query);
    if (!asked.ok) return problemReply(request, asked.problems);
    const { baseUrl } = environment();
    const page = asked.value.page ?? 1;
    const { items, total } = await standingItems({ from: (page - 1) * itemsOnPage, take: itemsOnPage });
    const pages = sitemapPages(total);
    if (page > pages) return problemReply(request, [{ code: "not-found", found: `page ${page}` }]);
    const isIndex = asked.value.page === undefined && pages > 1;
    const xml = isIndex ? sitemapIndex(pages, { baseUrl, path: paths.sitemap() }) : sitemapPage(page, items, baseUrl);
    return reply(request, xml, { type: "application/xml; charset=utf-8", lasts: "newest" });
  });
