import { signedHead } from "@/app/_log/signed-head.ts";
import { publicationLog } from "@/lib/store/published.ts";
import { answered, jsonReply, preflight } from "../reply.ts";

export const dynamic = "force-dynamic";
export const OPTIONS = preflight;

/** The whole publication log, in order, and its head as signed. */
export const GET = (request: Request): Promise<Response> =>
  answered(request, async () => {
    const head = await signedHead();
    // The head may speak of an entry that came while it was signed: the log is read after it, so that it holds that entry.
    return jsonReply(request, { entries: await publicationLog(), head });
  });
