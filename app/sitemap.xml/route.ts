import { z } from "zod";
import { readQuery, wholeNumber } from "@/app/api/v1/read-query.ts";
import { answered, preflight, problemReply, reply } from "@/app/api/v1/reply.ts";
import { sitemap } from "@/lib/exports/sitemap.ts";
import { environment } from "@/lib/platform/environment.ts";
import { paths } from "@/lib/platform/paths.ts";
import { publicationLog } from "@/lib/store/published.ts";

export const dynamic = "force-dynamic";
export const OPTIONS = preflight;

const query = z.object({ page: wholeNumber().optional() });

/** The addresses that search engines should know; pages of it where there are very many. */
export const GET = (request: Request): Promise<Response> =>
  answered(request, async () => {
    const asked = readQuery(request, query);
    if (!asked.ok) return problemReply(request, asked.problems);
    const { page } = asked.value;
    const entries = (await publicationLog()).map((entry) => ({ entry }));
    const at = { baseUrl: environment().baseUrl, path: paths.sitemap(), ...(page === undefined ? {} : { page }) };
    const xml = sitemap(entries, at);
    if (xml === null) return problemReply(request, [{ code: "not-found", found: `page ${page}` }]);
    return reply(request, xml, { type: "application/xml; charset=utf-8", lasts: "newest" });
  });
