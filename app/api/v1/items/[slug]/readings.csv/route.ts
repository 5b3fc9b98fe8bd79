import { linkHeader } from "@/lib/exports/link-header.ts";
import { readingsCsv } from "@/lib/exports/readings-csv.ts";
import { environment } from "@/lib/platform/environment.ts";
import { paths } from "@/lib/platform/paths.ts";
import { readSnapshot } from "@/lib/publication/read-snapshot.ts";
import { answered, preflight, problemReply, reply } from "../../../reply.ts";
import { findRevision } from "../find-revision.ts";

export const dynamic = "force-dynamic";
export const OPTIONS = preflight;

type Params = { params: Promise<{ slug: string }> };

/** Every reading of an item at one revision, a row for each reading and element. */
export const GET = (request: Request, { params }: Params): Promise<Response> =>
  answered(request, async () => {
    const found = await findRevision(request, (await params).slug);
    if (!found.ok) return problemReply(request, found.problems);
    const { entry, json, fixed } = found.value;
    const snapshot = readSnapshot(json);
    if (!snapshot.ok) throw new Error(`snapshot ${entry.seq}: ${snapshot.problems[0]?.code}`);
    return reply(request, readingsCsv(snapshot.value), {
      type: "text/csv; charset=utf-8; header=present",
      lasts: fixed ? "a-day" : "newest",
      headers: {
        link: linkHeader(entry, environment().baseUrl),
        "content-location": paths.api.readings(entry.slug, entry.revision),
        "content-disposition": `attachment; filename="${entry.slug}-revision-${entry.revision}-readings.csv"`,
      },
    });
  });
