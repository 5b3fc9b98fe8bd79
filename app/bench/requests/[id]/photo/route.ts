import { may } from "@/lib/access/permissions.ts";
import { requestContext } from "@/lib/access/request-context.ts";
import { readPhoto } from "@/lib/files/photo-store.ts";
import { environment } from "@/lib/platform/environment.ts";
import { database } from "@/lib/store/database.ts";
import { findTestRequest } from "@/lib/store/test-requests.ts";

/** The photo that came with a request: for whoever works at the bench, and nobody else. */
export async function GET(_: Request, { params }: { params: Promise<{ id: string }> }): Promise<Response> {
  const { id } = await params;
  const { person } = await requestContext();
  if (!may(person, "see-bench").yes) return missing();
  const key = (await findTestRequest(database(), id))?.photoKey ?? null;
  const bytes = key === null ? null : await readPhoto(environment().dataDir, key);
  if (!bytes) return missing();
  return new Response(bytes, { headers: { "content-type": "image/webp", "cache-control": "private, no-store" } });
}

const missing = (): Response =>
  new Response("No such photo.\n", {
    status: 404,
    headers: { "content-type": "text/plain; charset=utf-8", "cache-control": "no-store" },
  });
