import { pathsIn } from "../wording/localized-paths.ts";
import { type FeedFrame, feedEntry, feedRevisions, feedTitle } from "./feed-entry.ts";
import { absoluteUrl, type PublishedRevision } from "./published-revision.ts";

export const jsonFeedType = "application/feed+json; charset=utf-8";

/** The registry's revisions as a JSON Feed, version 1.1 (jsonfeed.org/version/1.1), newest first. */
export function jsonFeed(revisions: readonly PublishedRevision[], frame: FeedFrame) {
  const { language = "en" } = frame;
  const paths = pathsIn[language];
  return {
    version: "https://jsonfeed.org/version/1.1",
    title: feedTitle(frame),
    home_page_url: absoluteUrl(frame.baseUrl, frame.kind === "all" ? paths.home() : paths.corrections()),
    feed_url: absoluteUrl(frame.baseUrl, frame.path),
    language,
    authors: [{ name: frame.title, url: absoluteUrl(frame.baseUrl, paths.home()) }],
    items: feedRevisions(revisions, frame.kind).map((one) => {
      const entry = feedEntry(one, frame.baseUrl, language);
      return {
        id: entry.id,
        url: entry.url,
        title: entry.title,
        content_text: entry.summary,
        date_published: entry.published,
        date_modified: entry.published,
        authors: entry.authors.map((name) => ({ name })),
        tags: entry.tags,
        _revision: {
          about: absoluteUrl(frame.baseUrl, paths.log()),
          seq: one.entry.seq,
          revision: one.entry.revision,
          snapshot_sha256: one.entry.snapshotSha256,
        },
      };
    }),
  };
}
