import type { Language } from "../wording/language.ts";
import { pathsIn } from "../wording/localized-paths.ts";
import { requestEvent, requestPageIn } from "../wording/test-requests.ts";
import { absoluteUrl, type PublishedRevision } from "./published-revision.ts";
import { xmlText } from "./xml-text.ts";

type Request = {
  id: string;
  description: string;
  state: "open" | "tied" | "closed";
  firstAt: Date;
  answeredAt: Date | null;
};

/** What became of one request as an Atom feed (RFC 4287): an entry when it was asked, taken up or closed, and published. */
export function requestFeed({
  request,
  published,
  baseUrl,
  language = "en",
}: {
  request: Request;
  published: Pick<PublishedRevision, "entry"> | null;
  baseUrl: string;
  language?: Language;
}): string {
  const [paths, { title }] = [pathsIn[language], requestPageIn[language]];
  const page = absoluteUrl(baseUrl, paths.request(request.id));
  const events = [
    { id: `${page}#asked`, at: request.firstAt.toISOString(), url: page, state: "open" as const, published: false },
    ...(request.answeredAt && request.state !== "open"
      ? [
          {
            id: `${page}#${request.state}`,
            at: request.answeredAt.toISOString(),
            url: page,
            state: request.state,
            published: false,
          },
        ]
      : []),
    ...(published
      ? [
          {
            id: `${page}#revision-${published.entry.revision}`,
            at: published.entry.publishedAt,
            url: absoluteUrl(baseUrl, paths.item(published.entry.slug)),
            state: request.state,
            published: true,
          },
        ]
      : []),
  ].reverse();
  const lines = [
    '<?xml version="1.0" encoding="utf-8"?>',
    `<feed xmlns="http://www.w3.org/2005/Atom" xml:lang="${language}">`,
    `  <id>${xmlText(page)}</id>`,
    `  <title>${xmlText(`${title}: ${request.description}`)}</title>`,
    `  <updated>${xmlText(events[0]!.at)}</updated>`,
    `  <link rel="self" type="application/atom+xml" href="${xmlText(absoluteUrl(baseUrl, paths.requestFeed(request.id)))}"/>`,
    `  <link rel="alternate" type="text/html" href="${xmlText(page)}"/>`,
    `  <author><name>${xmlText(title)}</name></author>`,
    ...events.flatMap((event) => [
      "  <entry>",
      `    <id>${xmlText(event.id)}</id>`,
      `    <title>${xmlText(requestEvent(request.description, event.state, event.published, language))}</title>`,
      `    <updated>${xmlText(event.at)}</updated>`,
      `    <link rel="alternate" type="text/html" href="${xmlText(event.url)}"/>`,
      `    <summary type="text">${xmlText(requestEvent(request.description, event.state, event.published, language))}</summary>`,
      "  </entry>",
    ]),
    "</feed>",
  ];
  return `${lines.join("\n")}\n`;
}
