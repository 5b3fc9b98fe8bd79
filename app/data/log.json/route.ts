import { preflight } from "@/app/api/v1/reply.ts";
import { sendFile } from "../send-file.ts";

export const dynamic = "force-dynamic";
export const OPTIONS = preflight;

/** The publication log as a file. */
export const GET = (request: Request): Promise<Response> => sendFile(request, "log");
