import { feedSource } from "@/app/_feeds/feed-source.ts";
import { answered, preflight, reply } from "@/app/api/v1/reply.ts";
import { atomFeed, atomType } from "@/lib/exports/atom-feed.ts";
import { paths } from "@/lib/platform/paths.ts";

export const dynamic = "force-dynamic";
export const OPTIONS = preflight;

/** Corrections and withdrawals only, as Atom. */
export const GET = (request: Request): Promise<Response> =>
  answered(request, async () => {
    const { revisions, frame } = await feedSource("corrections", paths.correctionsFeed());
    return reply(request, atomFeed(revisions, frame), { type: atomType, lasts: "newest" });
  });
