import { reasonSentence } from "./es/limit-reasons.ts";
import type { Language } from "./language.ts";

export const notComparableTitle = "Limits that cannot be compared";

/** Things that share a reason: what is said of all of them, and what is said of each beside it. */
export type ReasonGroup<T> = { shared: string; each: { of: T; own: string }[] };

const sentencesOf = (text: string): string[] => text.split(/(?<=[.!?])\s+(?=\p{Lu})/u);

/**
 * Groups things whose reasons begin with the same sentence, and says once what all of a group begin with: twelve limits
 * that cannot be compared for one reason are one reason and twelve limits.
 *
 * @example sharedReasons(["It migrates. Here.", "It migrates. There."], (text) => text) // [{ shared: "It migrates.", each: [{ of: "It migrates. Here.", own: "Here." }, { of: "It migrates. There.", own: "There." }] }]
 */
export function sharedReasons<T>(all: readonly T[], reasonOf: (one: T) => string): ReasonGroup<T>[] {
  const groups = new Map<string, { of: T; sentences: string[] }[]>();
  for (const of of all) {
    const sentences = sentencesOf(reasonOf(of));
    const key = sentences[0]!;
    groups.set(key, [...(groups.get(key) ?? []), { of, sentences }]);
  }
  return [...groups.values()].map((group) => {
    const shared = group[0]!.sentences.filter((_, at, list) =>
      group.every(({ sentences }) => list.slice(0, at + 1).every((sentence, i) => sentences[i] === sentence)),
    );
    return {
      shared: shared.join(" "),
      each: group.map(({ of, sentences }) => ({ of, own: sentences.slice(shared.length).join(" ") })),
    };
  });
}

/**
 * Why a limit applies or does not, in the language of the page. Null where a sentence is none that this version of the program says:
 * the reason is then shown as it was published.
 *
 * @example reasonTold("It is guidance, not a binding limit.", "es") // "Es una orientación, no un límite obligatorio."
 */
export function reasonTold(why: string, language: Language): string | null {
  if (language === "en") return why;
  const told = sentencesOf(why).map(reasonSentence);
  return told.includes(null) ? null : told.join(" ");
}
