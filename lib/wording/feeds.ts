import { feedWords as spanish } from "./es/feeds.ts";
import type { ByLanguage, Sentences } from "./language.ts";

/** What the feeds say beside the answer itself. */
export const feedWords = {
  corrections: (registry: string): string => `${registry}: corrections`,
  title: (name: string, kind: string, revision: number): string =>
    `${name} (${kind.toLowerCase()}, revision ${revision})`,
  why: (reason: string): string => `Why this revision: ${reason}`,
};
export type FeedWords = Sentences<typeof feedWords>;
export const feedWordsIn: ByLanguage<FeedWords> = { en: feedWords, es: spanish };
