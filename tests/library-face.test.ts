import { expect, it } from "vitest";
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
