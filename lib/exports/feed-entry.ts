import { itemAnswer } from "../wording/answers.ts";
import { feedWordsIn } from "../wording/feeds.ts";
import { labelsIn } from "../wording/labels.ts";
import type { Language } from "../wording/language.ts";
import { pathsIn } from "../wording/localized-paths.ts";
import { absoluteUrl, type PublishedRevision } from "./published-revision.ts";

/** What both feeds say of a revision. The id is the revision's permanent address and is never used again. */
export type FeedEntry = {
  id: string;
  url: string;
  title: string;
  summary: string;
  published: string;
  authors: string[];
  tags: string[];
};

export type FeedFrame = {
  baseUrl: string;
  title: string; // name of the registry
  /** ISO time with offset to state where the feed has no entry yet. */
  emptySince: string;
  /** "corrections" lists corrections and withdrawals only; the feed is then told apart by its title and address. */
  kind: "all" | "corrections";
  /** Path of the feed itself. */
  path: string;
  /** English without it. */
  language?: Language;
};

/** The revisions a feed holds, newest first. */
export const feedRevisions = (revisions: readonly PublishedRevision[], kind: FeedFrame["kind"]): PublishedRevision[] =>
  revisions
    .filter(({ entry }) => kind === "all" || entry.kind === "correction" || entry.kind === "withdrawal")
    .toSorted((a, b) => b.entry.seq - a.entry.seq);

export const feedTitle = ({ title, kind, language = "en" }: FeedFrame): string =>
  kind === "all" ? title : feedWordsIn[language].corrections(title);

export function feedEntry(
  { snapshot, entry }: PublishedRevision,
  baseUrl: string,
  language: Language = "en",
): FeedEntry {
  const words = feedWordsIn[language];
  const url = absoluteUrl(baseUrl, pathsIn[language].revision(entry.slug, entry.revision));
  const answer = itemAnswer(snapshot, language);
  const name = snapshot.item.name;
  const reason = snapshot.kind === "withdrawal" || snapshot.reason === null ? [] : [words.why(snapshot.reason)];
  return {
    id: url,
    url,
    title: entry.kind === "first" ? name : words.title(name, labelsIn[language].revision[entry.kind], entry.revision),
    summary: [answer.headline, ...answer.sentences, ...reason].join(" "),
    published: entry.publishedAt,
    authors: snapshot.testers.length > 0 ? snapshot.testers.map((t) => t.name) : [snapshot.registry.name],
    tags: [snapshot.item.category, entry.kind],
  };
}
