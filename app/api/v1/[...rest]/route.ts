import { answered, preflight, problemReply } from "../reply.ts";

export const dynamic = "force-dynamic";
export const OPTIONS = preflight;

/** Any other address of the interface: a problem that a program can read, not a page. */
export const GET = (request: Request): Promise<Response> =>
  answered(request, async () => problemReply(request, [{ code: "not-found", found: new URL(request.url).pathname }]));
