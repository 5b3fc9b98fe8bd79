/** A word with its ends marked, so that its first and last letters count in what it shares with another word. */
export const padded = (word: string): string => `__${word}_`;

/**
 * The runs of three characters of a word with its ends marked.
 *
 * @example trigrams("mug") // ["__m", "_mu", "mug", "ug_"]
 */
export function trigrams(word: string): string[] {
  const letters = [...padded(word)];
  return [...new Set(letters.slice(0, -2).map((_, i) => letters.slice(i, i + 3).join("")))];
}
