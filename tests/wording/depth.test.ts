import { describe, expect, it } from "vitest";
import { readingDepth } from "@/lib/attenuation/reading-depth.ts";
import { materials } from "@/lib/quantity/item-words.ts";
import { depthCaution, depthSentence, depthWords, roughly, thicknessSentence } from "@/lib/wording/depth.ts";

describe("depth in words", () => {
  it("says how deep lead is seen in glaze", () => {
    expect(depthSentence("Pb", readingDepth("glaze", "Pb")!)).toBe(
      "The analyser sees lead about 0.9 mm deep in glaze.",
    );
    expect(depthSentence("Cd", readingDepth("pvc", "Cd")!)).toBe(
      "The analyser sees cadmium about 6 mm deep in vinyl (PVC).",
    );
    expect(depthSentence("Pb", readingDepth("brass", "Pb")!)).toBe(
      "The analyser sees lead about 0.03 mm deep in brass.",
    );
  });

  it.each([
    [0.936, "0.9"],
    [1.14, "1.1"],
    [23.6, "20"],
    [0.0124, "0.012"],
    [105, "110"],
    [0.96, "1"],
    [9.76, "10"],
    [0, "0"],
  ])("%d mm is printed as %s", (mm, text) => {
    expect(roughly(mm)).toBe(text);
  });

  it("says what the part's thickness means", () => {
    expect(thicknessSentence({ ofThick: null, share: 0.99 })).toBeNull();
    expect(thicknessSentence({ ofThick: 0.995, share: 0.99 })).toContain("thicker than that");
    expect(thicknessSentence({ ofThick: 0.7078, share: 0.99 })).toContain("about 71 in 100 parts");
    expect(thicknessSentence({ ofThick: 0.9899, share: 0.99 })).toContain("about 98 in 100 parts");
    expect(thicknessSentence({ ofThick: 0.004, share: 0.99 })).toContain("less than 1 in 100 parts");
  });

  it("is silent where no depth is known, and never without its caution", () => {
    expect(depthWords({ element: "Pb" })).toBeNull();
    for (const material of materials) {
      const depth = readingDepth(material, "Pb");
      if (depth) expect(depthWords({ element: "Pb", depth: { ...depth, ofThick: null } })).toContain(depthCaution);
    }
  });
});
