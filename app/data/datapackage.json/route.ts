import { answered, jsonReply, preflight, problemReply } from "@/app/api/v1/reply.ts";
import { environment } from "@/lib/platform/environment.ts";
import { paths } from "@/lib/platform/paths.ts";
import { database } from "@/lib/store/database.ts";
import { describeRegistry } from "@/lib/workflows/registry-files.ts";
import { packagedFiles, registryAt } from "../registry-at.ts";

export const dynamic = "force-dynamic";
export const OPTIONS = preflight;

/** The whole registry as a Data Package: what its files are, and what every column means. */
export const GET = (request: Request): Promise<Response> =>
  answered(request, async () => {
    const at = await registryAt(request);
    if (!at.ok) return problemReply(request, at.problems);
    const files = await packagedFiles(at.value);
    const { baseUrl } = environment();
    return jsonReply(request, await describeRegistry(database(), at.value.head, { baseUrl, files }), {
      lasts: at.value.fixed ? "a-day" : "newest",
      headers: { "content-location": paths.data.dataPackage(at.value.seq) },
    });
  });
