import { feedSource } from "@/app/_feeds/feed-source.ts";
import { answered, jsonReply, preflight } from "@/app/api/v1/reply.ts";
import { jsonFeed, jsonFeedType } from "@/lib/exports/json-feed.ts";
import { paths } from "@/lib/platform/paths.ts";

export const dynamic = "force-dynamic";
export const OPTIONS = preflight;

/** What was published last, as a JSON Feed. */
export const GET = (request: Request): Promise<Response> =>
  answered(request, async () => {
    const { revisions, frame } = await feedSource("all", paths.feedJson());
    return jsonReply(request, jsonFeed(revisions, frame), { type: jsonFeedType });
  });
