import { siteWords as spanish } from "./es/site-words.ts";
import type { ByLanguage, Sentences } from "./language.ts";

/** The frame of every page: header, footer, what is said of the page's language. */
export const siteWords = {
  name: "Cupboard Assay",
  description:
    "Everyday objects tested for lead and other metals: one honest number for each part, with how sure we are.",
  frontTitle: "Cupboard Assay: was mine tested?",
  skip: "Skip to the content",
  search: "Search tested items",
  placeholder: "Search items",
  suggestions: "Items",
  oneSuggestion: "item below the field",
  suggestionsBelow: "items below the field",
  main: "Main",
  items: "Items",
  limits: "Limits",
  amounts: "Amounts",
  methods: "Methods",
  corrections: "Corrections",
  signIn: "Sign in",
  record: "The whole record",
  log: "Publication log",
  howMade: "How results are made",
  dataInterface: "Data interface",
  feed: "Feed",
  warning: "Warning",
  language: "Language",
  more: "More of this list",
  next: "Next page",
  first: "Back to the first page",
  optional: "optional",
  choose: "Choose",
  moreFields: "More",
  mend: (n: number): string => (n === 1 ? "One thing needs mending" : `${n} things need mending`),

  broken: {
    title: "Something broke on our side",
    text: "Nothing you did was wrong, and nothing was lost. Try again; if it keeps happening, tell whoever runs this registry, with the time and the address of this page.",
    mark: (digest: string): string => `Mark of this error: ${digest}`,
    again: "Try again",
  },
};
export type SiteWords = Sentences<typeof siteWords>;
/** In a file of their own, since pieces that run in the browser say them. */
export const siteWordsIn: ByLanguage<SiteWords> = { en: siteWords, es: spanish };
