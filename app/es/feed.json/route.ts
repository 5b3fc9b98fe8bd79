import { jsonFeedHandler } from "@/app/_feeds/feed-handlers.ts";
import { preflight } from "@/app/api/v1/reply.ts";

export const dynamic = "force-dynamic";
export const OPTIONS = preflight;

/** What was published last, as a JSON Feed. In Spanish. */
export const GET = jsonFeedHandler("es");
