import { findRevision } from "@/app/api/v1/items/[slug]/find-revision.ts";
import { answered, problemReply, reply } from "@/app/api/v1/reply.ts";
import { environment } from "@/lib/platform/environment.ts";
import { readSnapshot } from "@/lib/publication/read-snapshot.ts";
import type { Snapshot } from "@/lib/publication/snapshot.ts";
import { latestPublished } from "@/lib/store/published.ts";
import type { Language } from "@/lib/wording/language.ts";

/** What a drawing has to know beside its revision: where the registry stands, the newest revision, whose language it is told in. */
export type PictureFrame = { baseUrl: string; newest: number; language: Language };

/** A handler that answers with a drawing of one revision (the newest without a number), with what the newest one is. */
export const pictureHandler =
  (make: (snapshot: Snapshot, frame: PictureFrame) => string, language: Language) =>
  (request: Request, { params }: { params: Promise<{ slug: string }> }): Promise<Response> =>
    answered(request, async () => {
      const { slug } = await params;
      const found = await findRevision(request, slug);
      if (!found.ok) return problemReply(request, found.problems);
      const snapshot = readSnapshot(found.value.json);
      if (!snapshot.ok) throw new Error(`snapshot ${found.value.entry.seq}: ${snapshot.problems[0]?.code}`);
      const newest = (await latestPublished(slug))?.entry.revision ?? snapshot.value.revision;
      return reply(request, make(snapshot.value, { baseUrl: environment().baseUrl, newest, language }), {
        type: "image/svg+xml; charset=utf-8",
        lasts: "newest",
        // A drawing runs nothing and asks for nothing.
        headers: { "content-security-policy": "default-src 'none'; style-src 'unsafe-inline'" },
      });
    });
