import { errorFacts, log } from "@/lib/platform/log.ts";
import { health } from "./health.ts";

export const dynamic = "force-dynamic";

/**
 * How the process is, for whoever keeps it running. `?live` asks only whether it answers at all (restart it where it does not);
 * without it, whether it is ready for readers: the database answers, the data folder can be written, the log has its head. Ready is 200,
 * else 503; the body is plain text, or JSON where it is asked for. It tells nothing that a reader of `/log` could not know.
 */
export async function GET(request: Request): Promise<Response> {
  const headers = { "cache-control": "no-store" };
  if (new URL(request.url).searchParams.has("live"))
    return new Response("live\n", { headers: { ...headers, "content-type": "text/plain; charset=utf-8" } });
  const { ready, checks } = await health((what, error) => log().error({ what, ...errorFacts(error) }, "not healthy"));
  const status = ready ? 200 : 503;
  if (request.headers.get("accept")?.includes("application/json"))
    return Response.json({ live: true, ready, ...checks }, { status, headers });
  const lines = [ready ? "ok" : "not ready", ...Object.entries(checks).map(([what, says]) => `${what}: ${says}`)];
  return new Response(`${lines.join("\n")}\n`, {
    status,
    headers: { ...headers, "content-type": "text/plain; charset=utf-8" },
  });
}
