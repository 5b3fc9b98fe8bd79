import { answered, preflight, problemReply, reply } from "@/app/api/v1/reply.ts";
import { atomType } from "@/lib/exports/atom-feed.ts";
import { requestFeed } from "@/lib/exports/request-feed.ts";
import { environment } from "@/lib/platform/environment.ts";
import { loadRequest } from "../load-request.ts";

export const dynamic = "force-dynamic";
export const OPTIONS = preflight;

/** One request as an Atom feed, so that a reader is told without giving an address. */
export const GET = (request: Request, { params }: { params: Promise<{ id: string }> }): Promise<Response> =>
  answered(request, async () => {
    const { id } = await params;
    const found = await loadRequest(id);
    if (!found) return problemReply(request, [{ code: "not-found", found: id.slice(0, 60) }]);
    const { baseUrl } = environment();
    return reply(request, requestFeed({ ...found, baseUrl }), { type: atomType, lasts: "newest" });
  });
