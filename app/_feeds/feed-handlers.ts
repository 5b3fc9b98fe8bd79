import { loadRequest } from "@/app/(catalogue)/requests/[id]/load-request.ts";
import { answered, jsonReply, problemReply, reply } from "@/app/api/v1/reply.ts";
import { atomFeed, atomType } from "@/lib/exports/atom-feed.ts";
import type { FeedFrame } from "@/lib/exports/feed-entry.ts";
import { jsonFeed, jsonFeedType } from "@/lib/exports/json-feed.ts";
import { requestFeed } from "@/lib/exports/request-feed.ts";
import { environment } from "@/lib/platform/environment.ts";
import type { Language } from "@/lib/wording/language.ts";
import { pathsIn } from "@/lib/wording/localized-paths.ts";
import { feedSource } from "./feed-source.ts";

/** What was published last, or corrections and withdrawals only, as Atom. */
export const atomHandler =
  (kind: FeedFrame["kind"], language: Language) =>
  (request: Request): Promise<Response> =>
    answered(request, async () => {
      const paths = pathsIn[language];
      const path = kind === "all" ? paths.feedXml() : paths.correctionsFeed();
      const { revisions, frame } = await feedSource(kind, path, language);
      return reply(request, atomFeed(revisions, frame), { type: atomType, lasts: "newest" });
    });

/** What was published last, as a JSON Feed. */
export const jsonFeedHandler =
  (language: Language) =>
  (request: Request): Promise<Response> =>
    answered(request, async () => {
      const { revisions, frame } = await feedSource("all", pathsIn[language].feedJson(), language);
      return jsonReply(request, jsonFeed(revisions, frame), { type: jsonFeedType });
    });

/** One request as an Atom feed, so that a reader is told without giving an address. */
export const requestFeedHandler =
  (language: Language) =>
  (request: Request, { params }: { params: Promise<{ id: string }> }): Promise<Response> =>
    answered(request, async () => {
      const { id } = await params;
      const found = await loadRequest(id);
      if (!found) return problemReply(request, [{ code: "not-found", found: id.slice(0, 60) }]);
      const { baseUrl } = environment();
      return reply(request, requestFeed({ ...found, baseUrl, language }), { type: atomType, lasts: "newest" });
    });
