import { readQuestion } from "./read-question.ts";
import { wordForms } from "./word-forms.ts";

/**
 * What two descriptions of one thing have in common: their telling words, folded, in the singular, sorted. Two requests
 * with the same key are one request.
 *
 * @example wordsKey("A blue mug with two Poppies") // "blue mug poppie two"
 * @example wordsKey("two poppies, blue mug") // "blue mug poppie two"
 * @example wordsKey("glass mug") // "glass mug"
 */
export const wordsKey = (text: string): string =>
  [...new Set(readQuestion(text).groups.map(({ word }) => (word.endsWith("s") ? (wordForms(word)[1] ?? word) : word)))]
    .sort()
    .join(" ");
