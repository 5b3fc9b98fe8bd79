import { database } from "@/lib/store/database.ts";

export const dynamic = "force-dynamic";

/** "ok" when the database answers; 503 with a sentence when it does not. */
export async function GET(): Promise<Response> {
  try {
    await database().registry.count();
    return new Response("ok\n", {
      headers: { "content-type": "text/plain; charset=utf-8", "cache-control": "no-store" },
    });
  } catch (error) {
    console.error("healthz: the database does not answer", error);
    return new Response("The database does not answer.\n", { status: 503, headers: { "cache-control": "no-store" } });
  }
}
