import { describe, expect, test } from "vitest";
import { withUnit } from "@/lib/wording/formats.ts";
import { screeningSentence, turnsText } from "@/lib/wording/guard-bands.ts";

const result = {
  element: "Pb",
  quantity: "bulk-mass-fraction",
  state: "quantified" as const,
  value: 900,
  u: 20,
  nuEff: null,
  asymmetric: false,
  below: null,
  flags: [] as string[],
  unit: "mg/kg",
};

describe("where a verdict turns", () => {
  test("at the limit and 1.6449 u either side of it (JCGM 106 8.3)", () => {
    expect(turnsText({ ...result, u: 6 }, { value: 100, element: "Pb" })).toBe(
      `below up to 90.1, above from ${withUnit("110", "mg/kg")}`,
    );
  });
  test("with so much doubt that nothing could be shown to be below", () => {
    expect(turnsText({ ...result, u: 80 }, { value: 100, element: "Pb" })).toMatch(/^never below; above from 232/);
  });
  test.each([
    ["a lopsided result", { ...result, asymmetric: true }, { value: 100 }],
    ["an uneven part", { ...result, flags: ["uneven"] }, { value: 100 }],
    ["a non-detect", { ...result, state: "not-detected" as const }, { value: 100 }],
    ["a sum", result, { value: 100, element: "Pb+Cd" }],
    ["a rule without a number", result, { value: null }],
  ])("nothing is said of %s", (_, one, decision) => {
    expect(turnsText(one, decision)).toBeNull();
  });
});

describe("the screening table as an extra (IEC 62321-3-1:2013, second-hand)", () => {
  const plastic = { material: "abs", form: "bulk" as const };
  test.each([
    [640, "at or under the lower mark"],
    [900, "asks for a chemical test"],
    [1360, "at or over its upper mark"],
  ])("lead in a polymer at 3σ = 60: %f", (value, words) => {
    const said = screeningSentence(plastic, { ...result, value });
    expect(said).toContain(words);
    expect(said).toContain("lower mark 640");
    expect(said).toContain("upper mark 1360");
  });
  test("a non-detect is held by its detection limit", () => {
    const none = { ...result, state: "not-detected" as const, value: null, u: null, below: 5 };
    expect(screeningSentence(plastic, none)).toContain("at or under the lower mark");
  });
  test.each([
    ["an element it does not list", plastic, { ...result, element: "As" }],
    ["bromine in metal", { ...plastic, material: "brass" }, { ...result, element: "Br" }],
    ["a coat", { material: "abs", form: "coating" as const }, result],
    ["glass", { ...plastic, material: "glass" }, result],
  ])("nothing of %s", (_, part, one) => {
    expect(screeningSentence(part, one)).toBeNull();
  });
});
