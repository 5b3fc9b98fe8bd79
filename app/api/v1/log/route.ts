import { signedHead } from "@/app/_log/signed-head.ts";
import { streamed } from "@/app/data/streamed.ts";
import { sha256 } from "@/lib/platform/sha256.ts";
import { readDatabase } from "@/lib/store/database.ts";
import { lastEntry } from "@/lib/store/publications.ts";
import { publicationLog } from "@/lib/store/published.ts";
import { logText } from "@/lib/workflows/registry-files.ts";
import { answered, preflight, reply } from "../reply.ts";

export const dynamic = "force-dynamic";
export const OPTIONS = preflight;

/** The whole publication log, in order, and its head as signed; sent while it is read. */
export const GET = (request: Request): Promise<Response> =>
  answered(request, async () => {
    const head = await signedHead();
    // The head may speak of an entry that came while it was signed: the log is read after it, so that it holds that entry.
    const last = await lastEntry(readDatabase());
    const ending = `],"head":${JSON.stringify(head)}}\n`;
    return reply(request, () => streamed(logThen(last?.seq ?? 0, ending)), {
      type: "application/json",
      lasts: "newest",
      // Weak, as of the files of the whole registry: the last entry seals those before it.
      etag: `W/"${sha256(`${last?.hash ?? ""}${ending}`)}"`,
    });
  });

async function* logThen(seq: number, ending: string): AsyncGenerator<string> {
  yield* logText(publicationLog(seq));
  yield ending;
}
