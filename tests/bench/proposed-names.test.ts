import { expect, it } from "vitest";
import { proposedNames } from "@/app/bench/readings/new-items/proposed-names.ts";

it.each([
  ["red mug / glaze, inside", "red mug", "glaze, inside"],
  ["red mug - glaze", "red mug", "glaze"],
  ["Tasse, Glasur", "Tasse", "Glasur"],
  ["half-pint mug", "half-pint mug", "whole"],
  ["1/4 inch rivet", "1/4 inch rivet", "whole"],
  ["  spoon  12 ", "spoon 12", "whole"],
])("%s", (sample, item, part) => {
  expect(proposedNames(sample)).toEqual({ item, part });
});
