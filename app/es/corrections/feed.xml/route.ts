import { atomHandler } from "@/app/_feeds/feed-handlers.ts";
import { preflight } from "@/app/api/v1/reply.ts";

export const dynamic = "force-dynamic";
export const OPTIONS = preflight;

/** Corrections and withdrawals only, as Atom. In Spanish. */
export const GET = atomHandler("corrections", "es");
