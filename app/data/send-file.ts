import { answered, problemReply, reply } from "@/app/api/v1/reply.ts";
import { paths } from "@/lib/platform/paths.ts";
import { database } from "@/lib/store/database.ts";
import { type RegistryFile, registryFiles } from "@/lib/workflows/registry-files.ts";
import { registryAt } from "./registry-at.ts";
import { streamed } from "./streamed.ts";

/** One file of the data package, sent while it is made. */
export const sendFile = (request: Request, file: RegistryFile): Promise<Response> =>
  answered(request, async () => {
    const at = await registryAt(request);
    if (!at.ok) return problemReply(request, at.problems);
    const { name, type, chunks } = registryFiles[file];
    const { head, seq, fixed } = at.value;
    return reply(request, () => streamed(chunks(database(), seq)), {
      type,
      lasts: fixed ? "a-day" : "newest",
      // Weak: the log's head settles what the file says, and its hash is not known before it is made.
      etag: `W/"${file}-${head?.hash ?? "empty"}"`,
      headers: {
        "content-location": paths.data[file](seq),
        "content-disposition": `attachment; filename="${name}"`,
      },
    });
  });
