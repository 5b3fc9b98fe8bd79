import { linkHeader } from "@/lib/exports/link-header.ts";
import { environment } from "@/lib/platform/environment.ts";
import { paths } from "@/lib/platform/paths.ts";
import { answered, preflight, problemReply, reply } from "../../reply.ts";
import { findRevision } from "./find-revision.ts";

export const dynamic = "force-dynamic";
export const OPTIONS = preflight;

type Params = { params: Promise<{ slug: string }> };

/** The stored snapshot, byte for byte: its SHA-256 is the log's, and its ETag. */
export const GET = (request: Request, { params }: Params): Promise<Response> =>
  answered(request, async () => {
    const found = await findRevision(request, (await params).slug);
    if (!found.ok) return problemReply(request, found.problems);
    const { entry, json, fixed } = found.value;
    return reply(request, json, {
      type: "application/json",
      lasts: fixed ? "for-ever" : "newest",
      etag: `"${entry.snapshotSha256}"`,
      headers: {
        link: linkHeader(entry, environment().baseUrl),
        "content-location": paths.api.item(entry.slug, entry.revision),
      },
    });
  });
