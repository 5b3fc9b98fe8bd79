import { openApiDocument } from "@/lib/exports/openapi.ts";
import { environment } from "@/lib/platform/environment.ts";
import { database } from "@/lib/store/database.ts";
import { registry } from "@/lib/store/publications.ts";
import { answered, jsonReply, preflight } from "../reply.ts";

export const dynamic = "force-dynamic";
export const OPTIONS = preflight;

/** The read interface, described by itself. */
export const GET = (request: Request): Promise<Response> =>
  answered(request, async () => {
    const { name, licence, contact } = await registry(database());
    return jsonReply(request, openApiDocument({ baseUrl: environment().baseUrl, title: name, licence, contact }));
  });
