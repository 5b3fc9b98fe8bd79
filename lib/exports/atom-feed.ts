import { pathsIn } from "../wording/localized-paths.ts";
import { type FeedFrame, feedEntry, feedRevisions, feedTitle } from "./feed-entry.ts";
import { absoluteUrl, type PublishedRevision } from "./published-revision.ts";
import { xmlText } from "./xml-text.ts";

export const atomType = "application/atom+xml; charset=utf-8";

/**
 * The registry's revisions as an Atom feed (RFC 4287), newest first: one entry for each revision, its id the permanent
 * address, `updated` the time of publication, which never moves.
 */
export function atomFeed(revisions: readonly PublishedRevision[], frame: FeedFrame): string {
  const { language = "en" } = frame;
  const paths = pathsIn[language];
  const entries = feedRevisions(revisions, frame.kind).map((one) => feedEntry(one, frame.baseUrl, language));
  const self = absoluteUrl(frame.baseUrl, frame.path);
  const page = absoluteUrl(frame.baseUrl, frame.kind === "all" ? paths.home() : paths.corrections());
  const lines = [
    '<?xml version="1.0" encoding="utf-8"?>',
    `<feed xmlns="http://www.w3.org/2005/Atom" xml:lang="${language}">`,
    `  <id>${xmlText(self)}</id>`,
    `  <title>${xmlText(feedTitle(frame))}</title>`,
    `  <updated>${xmlText(entries[0]?.published ?? frame.emptySince)}</updated>`,
    `  <link rel="self" type="application/atom+xml" href="${xmlText(self)}"/>`,
    `  <link rel="alternate" type="text/html" href="${xmlText(page)}"/>`,
    `  <author><name>${xmlText(frame.title)}</name></author>`,
    ...entries.flatMap((entry) => [
      "  <entry>",
      `    <id>${xmlText(entry.id)}</id>`,
      `    <title>${xmlText(entry.title)}</title>`,
      `    <published>${xmlText(entry.published)}</published>`,
      `    <updated>${xmlText(entry.published)}</updated>`,
      `    <link rel="alternate" type="text/html" href="${xmlText(entry.url)}"/>`,
      ...entry.authors.map((name) => `    <author><name>${xmlText(name)}</name></author>`),
      ...entry.tags.map((tag) => `    <category term="${xmlText(tag)}"/>`),
      `    <summary type="text">${xmlText(entry.summary)}</summary>`,
      "  </entry>",
    ]),
    "</feed>",
  ];
  return `${lines.join("\n")}\n`;
}
