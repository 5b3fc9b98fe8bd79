/** The languages in which readers' pages are told. Bench, review and account are English. */
export const languages = ["en", "es"] as const;
export type Language = (typeof languages)[number];
export type ByLanguage<Words> = Readonly<Record<Language, Words>>;

/** What testers, makers and the texts of rules are written in: shown as written, and marked so on pages of another language. */
export const recordLanguage: Language = "en";

/** Each language by its own name, and "in English" in that language, for a link that leads out of it. */
export const languageNames: ByLanguage<string> = { en: "English", es: "Español" };
export const inEnglish: ByLanguage<string> = { en: "", es: "(en inglés)" };

/**
 * The shape of a catalogue of sentences, whatever the language: a catalogue of another language that lacks a sentence, or takes other
 * arguments, does not compile.
 */
export type Sentences<Words> = Words extends string
  ? string
  : Words extends (...given: infer Given) => string
    ? (...given: Given) => string
    : Words extends number | boolean | null
      ? Words
      : Words extends readonly (infer One)[]
        ? readonly Sentences<One>[]
        : { readonly [Name in keyof Words]: Sentences<Words[Name]> };
