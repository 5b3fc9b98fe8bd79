import { preflight } from "@/app/api/v1/reply.ts";
import { sendFile } from "../send-file.ts";

export const dynamic = "force-dynamic";
export const OPTIONS = preflight;

/** One row for each reading and element of each item. */
export const GET = (request: Request): Promise<Response> => sendFile(request, "readings");
