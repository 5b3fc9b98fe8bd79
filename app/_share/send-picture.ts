import { findRevision } from "@/app/api/v1/items/[slug]/find-revision.ts";
import { answered, problemReply, reply } from "@/app/api/v1/reply.ts";
import { environment } from "@/lib/platform/environment.ts";
import { readSnapshot } from "@/lib/publication/read-snapshot.ts";
import type { Snapshot } from "@/lib/publication/snapshot.ts";
import { latestPublished } from "@/lib/store/published.ts";

/** A drawing of one revision (the newest without a number), with what the newest one is. */
export const sendPicture = (
  request: Request,
  slug: string,
  make: (snapshot: Snapshot, about: { baseUrl: string; newest: number }) => string,
): Promise<Response> =>
  answered(request, async () => {
    const found = await findRevision(request, slug);
    if (!found.ok) return problemReply(request, found.problems);
    const snapshot = readSnapshot(found.value.json);
    if (!snapshot.ok) throw new Error(`snapshot ${found.value.entry.seq}: ${snapshot.problems[0]?.code}`);
    const newest = (await latestPublished(slug))?.entry.revision ?? snapshot.value.revision;
    return reply(request, make(snapshot.value, { baseUrl: environment().baseUrl, newest }), {
      type: "image/svg+xml; charset=utf-8",
      lasts: "newest",
      // A drawing runs nothing and asks for nothing.
      headers: { "content-security-policy": "default-src 'none'; style-src 'unsafe-inline'" },
    });
  });
