import { requestFeedHandler } from "@/app/_feeds/feed-handlers.ts";
import { preflight } from "@/app/api/v1/reply.ts";

export const dynamic = "force-dynamic";
export const OPTIONS = preflight;

/** One request as an Atom feed, so that a reader is told without giving an address. */
export const GET = requestFeedHandler("en");
