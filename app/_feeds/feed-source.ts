import type { FeedFrame } from "@/lib/exports/feed-entry.ts";
import { beforeAnything } from "@/lib/exports/published-revision.ts";
import { environment } from "@/lib/platform/environment.ts";
import { database } from "@/lib/store/database.ts";
import { registry } from "@/lib/store/publications.ts";
import { logEntryAt, type PublishedItem, recentRevisions } from "@/lib/store/published.ts";
import type { Language } from "@/lib/wording/language.ts";

/** How many revisions a feed holds; readers fetch often and keep what they have seen. */
export const feedLength = 50;

/** What a feed is made from: its newest revisions and its frame. */
export async function feedSource(
  kind: FeedFrame["kind"],
  path: string,
  language: Language,
): Promise<{ revisions: PublishedItem[]; frame: FeedFrame }> {
  const [revisions, first, { name }] = await Promise.all([
    recentRevisions(feedLength, kind === "all" ? {} : { kinds: ["correction", "withdrawal"] }),
    logEntryAt(1),
    registry(database()),
  ]);
  const frame = {
    baseUrl: environment().baseUrl,
    title: name,
    kind,
    path,
    language,
    // A feed without an entry is as old as the log.
    emptySince: first?.publishedAt ?? beforeAnything,
  };
  return { revisions, frame };
}
