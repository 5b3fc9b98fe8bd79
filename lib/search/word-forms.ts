const decadeWords = ["twenties", "thirties", "forties", "fifties", "sixties", "seventies", "eighties", "nineties"];

/**
 * The forms under which one folded word is found: itself, its likely singulars (English and Spanish: -s, -es, -ies),
 * and for a decade its other spellings. Both the index and the question are widened by it, so either may be plural.
 * A form that is no word harms nothing: it only finds what was widened to the same form.
 *
 * @example wordForms("berries") // ["berries", "berrie", "berri", "berry"]
 * @example wordForms("1970s") // ["1970s", "70s", "1970"]
 */
export function wordForms(word: string): string[] {
  return [...new Set([word, ...singulars(word), ...decades(word)])];
}

function singulars(word: string): string[] {
  if (word.length < 4 || /\d/.test(word) || !word.endsWith("s") || word.endsWith("ss")) return [];
  const forms = [word.slice(0, -1)];
  if (word.endsWith("es") && word.length > 4) forms.push(word.slice(0, -2));
  if (word.endsWith("ies") && word.length > 4) forms.push(`${word.slice(0, -3)}y`);
  return forms;
}

function decades(word: string): string[] {
  const named = decadeWords.indexOf(word);
  if (named >= 0) return [`19${named + 2}0s`, `${named + 2}0s`];
  if (/^\d0s$/.test(word)) return [`19${word}`];
  if (/^(?:19|20)\d0s$/.test(word)) return [word.slice(2), word.slice(0, -1)];
  return [];
}
