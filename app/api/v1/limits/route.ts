import { listLimits } from "@/lib/limits/list-limits.ts";
import { answered, jsonReply, preflight } from "../reply.ts";

export const dynamic = "force-dynamic";
export const OPTIONS = preflight;

/** Every limit the registry knows, past and present. */
export const GET = (request: Request): Promise<Response> =>
  answered(request, async () => jsonReply(request, { limits: listLimits() }));
