import { describe, expect, it } from "vitest";
import { gradeLevel, syllablesOf } from "../support/flesch-kincaid.ts";

describe("the readability measure itself", () => {
  it.each([
    ["lead", 1],
    ["glaze", 1],
    ["limit", 2],
    ["measured", 2],
    ["table", 2],
    ["milligrams", 3],
    ["detected", 3],
    ["uncertainty", 4],
  ])("%s has %i syllables", (word, n) => {
    expect(syllablesOf(word)).toBe(n);
  });
  it("follows the formula: 6 words, 1 sentence, 6 syllables", () => {
    expect(gradeLevel("The cat sat on the mat.")).toBeCloseTo(0.39 * 6 + 11.8 - 15.59, 10);
  });
  it("finds hard text hard, so that a pass means something", () => {
    expect(
      gradeLevel(
        "Heteroscedastic interlaboratory reproducibility necessitates conservative probabilistic interpretation of analytical determinations notwithstanding regulatory considerations.",
      ),
    ).toBeGreaterThan(20);
  });
});
