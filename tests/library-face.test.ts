import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import * as library from "@/lib/index.ts";

it("the library's face exports the promised names and nothing else", () => {
  expect(Object.keys(library).sort()).toEqual(
    [
      "algorithmA",
      "censoredNormal",
      "censoredRandomEffects",
      "cochran",
      "combine",
      "coverageFactor",
      "cusum",
      "dixon",
      "ewma",
      "generalizedEsd",
      "grubbs",
      "guardBand",
      "huberProposal2",
      "individualsChart",
      "inversePrediction",
      "lognormalRandomEffects",
      "medianMad",
      "monteCarlo",
      "multirule",
      "nestedAnova",
      "oneWayAnova",
      "probabilityAbove",
      "randomEffects",
      "repeatability",
      "roundToUncertainty",
      "scores",
      "solidVolume",
      "upperBoundAllCensored",
      "weightedLine",
      "weightedMean",
      "xbarChart",
      "york",
    ].sort(),
  );
});

describe("every name of it says what it does, in its own docstring", () => {
  const face = readFileSync("lib/index.ts", "utf8");
  const exported = [...face.matchAll(/export \{ (\w+) \} from "\.\/(.+)";/g)].map(
    ([, name, file]) => [name!, file!] as const,
  );
  it.each(exported)("%s", (name, file) => {
    const text = readFileSync(`lib/${file}`, "utf8");
    const doc =
      new RegExp(`/\\*\\*(?:(?!\\*/)[\\s\\S])*\\*/\\nexport (?:const|function) ${name}\\b`).exec(text)?.[0] ?? "";
    expect(doc, "an example, which runs as a test of its own").toContain("@example");
    expect(doc, "what is refused").toMatch(/Refuses \(DomainError\)|@throws DomainError/);
    expect(doc, "a source with its year, edition or clause").toMatch(/\b(19|20)\d\d\b|ISO \d|GUM|handbook|Handbook/);
    expect(doc.length, "what, formula, units and variant in words").toBeGreaterThan(300);
  });
  it("thirty-two of them", () => expect(exported).toHaveLength(32));
});
