import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { editDistance, slipsAllowed } from "@/lib/search/edit-distance.ts";
import { fold, foldedWords, joinedRuns } from "@/lib/search/fold.ts";
import { compoundsOf, guessableWords, indexText } from "@/lib/search/index-text.ts";
import { readQuestion } from "@/lib/search/read-question.ts";
import { wordForms } from "@/lib/search/word-forms.ts";
import { wordsKey } from "@/lib/search/words-key.ts";

describe("folding", () => {
  it("drops case, accents and marks nobody sees", () => {
    expect(fold("\u200FÉMAILLE\u00AD Größe")).toBe("emaille grosse");
    expect(foldedWords("Child’s cup, 18/0")).toEqual(["childs", "cup", "18", "0"]);
  });
  it("joins codes written with hyphens, slashes and spaces", () => {
    expect(joinedRuns("No. 12-345/B and 40 12 3")).toEqual(["12345b", "40123"]);
  });
});

describe("a question that is too long", () => {
  const words = (text: string) => readQuestion(text).groups.map(({ word }) => word);
  it("ends before the word that the cut goes through", () => {
    expect(words(`${"red mug ".repeat(49)}daisy patterned`)).toEqual(["red", "mug", "daisy"]);
    expect(words(`${"red mug ".repeat(49)}daisy pa and more`)).toEqual(["red", "mug", "daisy", "pa"]);
  });
  it("keeps the beginning of one endless word", () => {
    expect(words("m".repeat(10_000))).toEqual(["m".repeat(40)]);
  });
});

describe("slips", () => {
  // Worked distances: Boytsov (2011), optimal string alignment; "ca" → "abc" is 3, not 2, since a part is edited once only.
  it.each([
    ["ca", "abc", 3],
    ["popyp", "poppy", 1],
    ["cornflwoer", "cornflower", 1],
    ["rabit", "rabbit", 1],
    ["kitten", "sitting", 3],
    ["", "ab", 2],
    ["same", "same", 0],
  ])("from %s to %s is %i", (a, b, slips) => {
    expect(editDistance(a, b, 5)).toBe(slips);
    expect(editDistance(b, a, 5)).toBe(slips);
  });
  it("ends above the most that is of use", () => {
    expect(editDistance("kitten", "sitting", 1)).toBe(2);
    expect(editDistance("a", "abcdef", 2)).toBe(3);
  });
  it("are never guessed in a code or a short word", () => {
    expect([slipsAllowed("a1234567"), slipsAllowed("mug"), slipsAllowed("poppy"), slipsAllowed("cornflower")]).toEqual([
      0, 0, 1, 2,
    ]);
  });
});

describe("a question", () => {
  it("leaves out fillers, unless there is nothing else", () => {
    expect(readQuestion("was my mug with the poppies tested?").groups.map((g) => g.word)).toEqual(["mug", "poppies"]);
    expect(readQuestion("the").groups.map((g) => g.word)).toEqual(["the"]);
  });
  it("reads a product code, and tells a wrong check digit from none", () => {
    expect(readQuestion(" 2001234-567893 ").gtin).toEqual({ state: "ok", gtin: "02001234567893" });
    expect(readQuestion("2001234567890").gtin.state).toBe("wrong-check-digit");
    expect(readQuestion("poppy").gtin.state).toBe("not-a-code");
  });
  it("finds a code however it is tied", () => {
    const found = new Set(indexText("Stamped 12-345/B").split(" "));
    for (const typed of ["12345b", "12-345/B", "12 345 b", "12-345"])
      for (const group of readQuestion(typed).groups)
        expect([...found].some((word) => group.forms.some((form) => word.startsWith(form)))).toBe(true);
  });
  it("is bounded and never syntax, whatever is typed", () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 12_000, unit: "binary" }), (text) => {
        const question = readQuestion(text);
        expect(question.groups.length).toBeLessThanOrEqual(12);
        for (const { forms } of question.groups)
          for (const form of forms) expect(form).toMatch(/^[\p{L}\p{N}]{1,44}$/u);
      }),
      { numRuns: 300 },
    );
  });
});

describe("the forms of a word", () => {
  it.each([
    ["seventies", ["seventies", "seventie", "seventi", "seventy", "1970s", "70s"]],
    ["70s", ["70s", "1970s"]],
    ["2010s", ["2010s", "10s", "2010"]],
    ["dishes", ["dishes", "dishe", "dish"]],
    ["glass", ["glass"]],
    ["mug", ["mug"]],
  ])("%s", (word, forms) => expect(wordForms(word)).toEqual(forms));
});

describe("what two texts have in common", () => {
  it("does not hang on the order of the words, also where one ends in a double s", () => {
    expect(wordsKey("mug of glass")).toBe("glass mug");
    expect(wordsKey("glass mugs")).toBe("glass mug");
    expect(wordsKey("the bus toy")).toBe(wordsKey("toy bus"));
  });
  it("is words of letters that a slip may have meant, each once", () =>
    expect(guessableWords(["two mugs 12345 mug", "mug b12 ox"])).toEqual(["two", "mugs", "mug"]));
  it("is names written as one word, of five to sixteen letters", () =>
    expect(compoundsOf("Ox in a key ring 7")).toBe("keyring"));
});
