import { z } from "zod";
import { readQuery } from "@/app/api/v1/read-query.ts";
import { answered, jsonReply, problemReply } from "@/app/api/v1/reply.ts";
import { suggestItems } from "@/lib/store/search.ts";
import { languages } from "@/lib/wording/language.ts";
import { pathsIn } from "@/lib/wording/localized-paths.ts";

export const dynamic = "force-dynamic";

const query = z.object({
  q: z.string().transform((text) => text.slice(0, 200)),
  language: z.enum(languages).default("en"),
});

/** The first few items whose name, mark or code goes on as typed. For our own search field: not part of the stable API. */
export const GET = (request: Request): Promise<Response> =>
  answered(request, async () => {
    const asked = readQuery(request, query);
    if (!asked.ok) return problemReply(request, asked.problems);
    const items = await suggestItems(asked.value.q);
    return jsonReply(
      request,
      items.map(({ slug, name }) => ({ slug, name, href: pathsIn[asked.value.language].item(slug) })),
    );
  });
