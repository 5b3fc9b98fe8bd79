import { publicationLog } from "@/lib/store/published.ts";
import { answered, jsonReply, preflight } from "../reply.ts";

export const dynamic = "force-dynamic";
export const OPTIONS = preflight;

/** The whole publication log, in order. */
export const GET = (request: Request): Promise<Response> =>
  answered(request, async () => jsonReply(request, { entries: await publicationLog() }));
