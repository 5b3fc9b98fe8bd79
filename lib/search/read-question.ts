import { type GtinReading, readGtin } from "../quantity/gtin.ts";
import { foldedWords, joinedRuns } from "./fold.ts";
import { wordForms } from "./word-forms.ts";

/** Words that say nothing about an object; left out unless the question holds nothing else. */
const fillers = new Set(
  "a an the of with and or for in on at from my is was were it its this that has have been tested test safe any some el la los las un una unos unas de del con y o para en es mi fue lo al se".split(
    " ",
  ),
);
const longestQuestion = 400;
const mostWords = 12;
const longestWord = 40;

/** What a question asks for: each group is one word asked for, with the ways it may be written; all groups must be met. */
export type Question = {
  groups: { word: string; forms: string[] }[];
  /** the whole question, folded, for whoever typed a mark or a name as it stands */
  phrase: string;
  /** what the question is as a product code; "not-a-code" for anything else */
  gtin: GtinReading;
};

/** A word and its neighbour written as one: "key ring" is found where it says "keyring". */
const compounds = ([before, word, after]: (string | undefined)[]): string[] =>
  [before && word && before + word, word && after && word + after].filter(
    (one): one is string => one !== undefined && /^\p{L}{5,16}$/u.test(one),
  );

/** The beginning of a long text, without the word that the cut goes through: half of it was not asked for, and would find much. */
const shortened = (text: string): string => {
  const begun = text.slice(0, longestQuestion);
  const cutThrough = /\S/.test(begun.slice(-1)) && /^\S/.test(text.slice(longestQuestion));
  return (cutThrough && begun.replace(/\S+$/, "").trim()) || begun;
};

/**
 * Reads what a person typed: folds it, leaves out fillers, keeps at most twelve words of at most forty characters,
 * and adds to each its other forms, the codes written with hyphens or spaces, and it and its neighbour written as one word. Nothing in it is ever syntax.
 *
 * @example readQuestion("The poppies").groups // [{ word: "poppies", forms: ["poppies", "poppie", "poppi", "poppy"] }]
 */
export function readQuestion(text: string): Question {
  const short = shortened(text);
  const words = [...new Set(foldedWords(short))].map((word) => word.slice(0, longestWord));
  const telling = words.filter((word) => !fillers.has(word));
  const asked = (telling.length > 0 ? telling : words).slice(0, mostWords);
  const joined = joinedRuns(short);
  return {
    groups: asked.map((word, i) => ({
      word,
      forms: [
        ...wordForms(word),
        ...joined.filter((run) => run !== word && run.includes(word) && run.length > 3),
        ...compounds([asked[i - 1], word, asked[i + 1]]),
      ],
    })),
    phrase: foldedWords(short).slice(0, mostWords).join(" "),
    gtin: readGtin(short.trim()),
  };
}
