/**
 * US grade level of a text: 0.39·(words/sentences) + 11.8·(syllables/words) − 15.59.
 *
 * Formula: Kincaid, Fishburne, Rogers and Chissom (1975), "Derivation of New Readability Formulas", Naval Technical
 * Training Command Research Branch Report 8-75 (coefficients from memory). A sentence ends at a full stop, colon, question or
 * exclamation mark (Flesch 1948, "each full unit of speech marked off by a period, colon, …", from memory). Syllables are
 * counted by groups of vowels, a silent final e apart, which counts some too many ("likelihood": 4) and so errs on the strict
 * side; a number counts as a word of one syllable.
 */
export function gradeLevel(text: string): number {
  const sentences = text.split(/[.!?:]+(?:\s|$)/).filter((s) => /\w/.test(s));
  const words = text.match(/[\p{L}\p{N}][\p{L}\p{N}'’.,/\u202F-]*/gu) ?? [];
  const syllables = words.reduce((sum, word) => sum + syllablesOf(word), 0);
  return 0.39 * (words.length / sentences.length) + 11.8 * (syllables / words.length) - 15.59;
}

export function syllablesOf(word: string): number {
  const letters = word.toLowerCase().replace(/[^a-z]/g, "");
  if (letters === "") return 1;
  const groups = letters
    .replace(/(?:[^laeiouy]es|[^laeiouytd]ed|[^laeiouy]e)$/, (end) => end.charAt(0))
    .match(/[aeiouy]+/g);
  return Math.max(1, groups?.length ?? 0);
}
