const letters: Record<string, string> = { ß: "ss", ø: "o", æ: "ae", œ: "oe", đ: "d", ð: "d", ł: "l", þ: "th", ı: "i" };

/**
 * A text as search compares it: lower case, without accents, letters that do not come apart written out (ß → ss),
 * without marks that nobody sees (direction marks, joiners, soft hyphens).
 *
 * @example fold("Größe Café") // "grosse cafe"
 */
export function fold(text: string): string {
  return text
    .normalize("NFKD")
    .toLowerCase()
    .replace(/[\p{M}\p{Cf}]/gu, "")
    .replace(/[ßøæœđðłþı]/g, (letter) => letters[letter] as string);
}

/**
 * The words and numbers of a text, folded, in order. An apostrophe inside a word joins it: "child's" is "childs".
 *
 * @example foldedWords("Child's spoon, 18/0") // ["childs", "spoon", "18", "0"]
 */
export const foldedWords = (text: string): string[] =>
  fold(text)
    .replace(/(?<=\p{L})['’ʼ](?=\p{L})/gu, "")
    .match(/[\p{L}\p{N}]+/gu) ?? [];

/**
 * Runs of letters and digits tied by hyphens, dots, slashes or (between digits) single spaces, each with its ties taken
 * out: how a code is found however it was typed.
 *
 * @example joinedRuns("No. 12-345/B, 40 12 3") // ["12345b", "40123"]
 */
export const joinedRuns = (text: string): string[] =>
  (fold(text).match(/[\p{L}\p{N}]+(?:[-‐‑./_][\p{L}\p{N}]+)+|\p{N}+(?: \p{N}+)+/gu) ?? [])
    .map((run) => run.replace(/[^\p{L}\p{N}]/gu, ""))
    .filter((run) => run.length <= 40);
