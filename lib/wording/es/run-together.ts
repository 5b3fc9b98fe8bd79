/** "de el peso" is "del peso", "a el suelo" is "al suelo"; a name that ends in its own full stop ends the sentence. */
export const runTogether = (text: string): string =>
  text.replace(/\b(de|a) el /g, (_, word: string) => (word === "a" ? "al " : "del ")).replace(/\.\.$/, ".");

/** A day takes its article, a month or a year does not: "el 14 de agosto de 2011", "agosto de 2011". */
export const withArticle = (when: string): string => (/^\d{1,2} de /.test(when) ? `el ${when}` : when);
