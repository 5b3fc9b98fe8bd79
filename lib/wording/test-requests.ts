import { requestPage as spanish } from "./es/test-requests.ts";
import { counted } from "./formats.ts";
import type { ByLanguage, Language, Sentences } from "./language.ts";
import { type ProblemWords, quoted } from "./problem-sentence.ts";

/** What a reader's request could not be. */
export const testRequestProblems: ProblemWords = {
  "request-too-vague": (p) =>
    `${quoted(p.found)} does not tell a tester what to look for. Write what it is and what is drawn or stamped on it: “blue mug, snail on the foot”.`,
};

export const requestPage = {
  title: "Please test this",
  lead: "Tell us what you have, as you would tell a friend on the phone. Testers see what is asked for most.",
  label: "What is it, and what is drawn or stamped on it?",
  hint: "For example: child’s mug, yellow, three ducks, a small anchor on the foot.",
  photo: "A photo, if you have one",
  photoHint: (megabytes: number): string =>
    `Of the whole thing, or of the mark on its foot; up to ${megabytes} MB. Only testers see it. We keep a small copy without place, time or phone in it, and delete it when the request is answered.`,
  privacy: "We keep these words and how often they were asked. We keep nothing about you.",
  send: "Ask for a test",
  caution: "We cannot promise a test. Until you know, use another one for food and for small children.",
  asked: (count: number): string =>
    count === 1 ? "Asked for once so far." : `Asked for ${counted(count, "time")} so far.`,
  states: {
    open: "Not tested yet.",
    tied: "A test has been made, or is being made.",
    closed: "We will not test this one. The people named below can help.",
  },
  read: "Read the result",
  notPublished: "A tester has it on the bench. Nothing is published yet.",
  follow: "To hear when something happens, keep this page’s address, or follow its feed. We do not need your e-mail.",
  feed: "Feed of this request",
  event: (description: string, state: string): string => `“${description}”: ${state}`,
  tested: (description: string): string => `Tested: “${description}”. Read the result.`,
} as const;

export type RequestPage = Sentences<typeof requestPage>;
export const requestPageIn: ByLanguage<RequestPage> = { en: requestPage, es: spanish };

export const requestQueue = {
  title: "Asked for by readers",
  tab: "Asked for",
  lead: "What readers would like tested, most asked for first. Tie a request to its item as soon as you have the object.",
  none: "Nobody is waiting",
  noneText: "Readers ask on the page that says “not tested here yet”. What they ask for comes here.",
  tie: "Tie to this item",
  close: "Cannot be tested",
  reopen: "Open again",
  waiting: "Waiting",
  answered: "Tied or closed",
  kept: "Kept.",
  offered: (shown: number, total: number): string =>
    shown < total
      ? `The ${shown} items last worked on are offered, of ${total}. Look for others by their names.`
      : `${counted(total, "item is", "items are")} offered.`,
  photoAlt: (description: string): string => `Photo sent with the request: ${description}`,
} as const;

export function requestEvent(
  description: string,
  state: "open" | "tied" | "closed",
  published: boolean,
  language: Language = "en",
): string {
  const words = requestPageIn[language];
  if (published) return words.tested(description);
  return words.event(description, state === "tied" ? words.notPublished : words.states[state]);
}
