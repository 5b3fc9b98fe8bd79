import { foldedWords, joinedRuns } from "./fold.ts";
import { wordForms } from "./word-forms.ts";

/**
 * Neighbouring words of a name written as one, so that "keyring" finds a key ring.
 *
 * @example compoundsOf("Star key ring") // "starkey keyring"
 */
export const compoundsOf = (name: string): string => {
  const words = foldedWords(name);
  const pairs = words.slice(1).map((word, i) => `${words[i]}${word}`);
  return [...new Set(pairs.filter((pair) => /^\p{L}{5,16}$/u.test(pair)))].join(" ");
};

/**
 * A text as it is laid into the index: its folded words in order, so that a phrase can be found, and after them the other
 * forms of its words and its codes with their hyphens taken out.
 *
 * @example indexText("Two mugs, No. 12-345") // "two mugs no 12 345 mug 12345"
 */
export function indexText(text: string): string {
  const words = foldedWords(text);
  const seen = new Set(words);
  const more = [...words.flatMap(wordForms), ...joinedRuns(text)].filter((form) => !seen.has(form));
  return [...words, ...new Set(more)].join(" ");
}

/** The distinct words of indexed texts that a misspelt word may have meant: letters only, four or more. */
export const guessableWords = (texts: readonly string[]): string[] => [
  ...new Set(texts.flatMap((text) => text.split(" ")).filter((word) => /^\p{L}{3,40}$/u.test(word))),
];
