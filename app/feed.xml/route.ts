import { atomHandler } from "@/app/_feeds/feed-handlers.ts";
import { preflight } from "@/app/api/v1/reply.ts";

export const dynamic = "force-dynamic";
export const OPTIONS = preflight;

/** What was published last, as Atom. */
export const GET = atomHandler("all", "en");
