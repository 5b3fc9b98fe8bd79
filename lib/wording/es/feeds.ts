import type { FeedWords } from "../feeds.ts";

export const feedWords: FeedWords = {
  corrections: (registry) => `${registry}: correcciones`,
  title: (name, kind, revision) => `${name} (${kind.toLowerCase()}, revisión ${revision})`,
  why: (reason) => `Por qué esta revisión: ${reason}`,
};
