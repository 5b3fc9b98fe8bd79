import { describe, expect, it } from "vitest";
import { amountSources, amountsSchema, densitySources, parseAmounts } from "@/lib/amounts/amounts-form.ts";
import { leachedInto, overDailyIntake } from "@/lib/amounts/arithmetic-comparisons.ts";
import { areaComparators, massComparators, nearestAreas, nearestMasses } from "@/lib/amounts/comparators.ts";
import { computeAmounts } from "@/lib/amounts/compute-amounts.ts";
import { geometryShapes } from "@/lib/amounts/geometry.ts";
import type { Estimate } from "@/lib/amounts/types.ts";
import { referenceLoadings } from "@/lib/limits/reference-loadings.ts";
import { accessProblems } from "@/lib/wording/access-problems.ts";
import {
  amountFieldLabels,
  amountFieldName,
  amountSourceLabels,
  densitySourceLabels,
  shapeLabels,
  shareName,
} from "@/lib/wording/amount-labels.ts";
import { amountProblems } from "@/lib/wording/amount-problems.ts";
import {
  amountCautions,
  areaText,
  coatingSentence,
  comparatorSource,
  comparisonText,
  densitySentence,
  dominatesSentence,
  estimateText,
  grainSentence,
  halvingText,
  massSentence,
  massText,
  nearestSentence,
  referenceSentence,
  spreadSentence,
} from "@/lib/wording/amounts.ts";
import { problemSentences } from "@/lib/wording/problems.ts";
import { publicationProblems } from "@/lib/wording/publication-problems.ts";
import { readingProblems } from "@/lib/wording/reading-problems.ts";
import { typedProblems } from "@/lib/wording/typed-words.ts";
import { workflowProblems } from "@/lib/wording/workflow-problems.ts";
import { gradeLevel } from "../support/flesch-kincaid.ts";

// Invented figures.
const references = referenceLoadings();
const solder = {
  from: "shape",
  shape: "disc",
  diameter: "17.91",
  thickness: "1.35",
  densityFrom: "alloy",
  rest: "Sn",
  content: "30 to 60",
  contentUnit: "%",
  loading: "5",
  over: "2808",
} as const;
const compute = (search: Record<string, string>) =>
  computeAmounts(parseAmounts(search), 1, { references, draws: 20_000 });
const estimate = (over: Partial<Estimate<"mg">>): Estimate<"mg"> => ({
  unit: "mg",
  value: 34.02,
  u: 0,
  interval: [34.02, 34.02],
  shortest: [34.02, 34.02],
  atMost: false,
  ...over,
});

describe("estimates in words", () => {
  it.each<[Partial<Estimate<"mg">>, string]>([
    [{}, "34.02 mg"],
    [{ u: 5, interval: [25.31, 48.44] }, "34 mg (25 to 48 mg)"],
    [{ u: 0.5, interval: [33.03, 35.04] }, "34.0 mg (33.0 to 35.0 mg)"],
    [{ value: 1327.9, u: 317, interval: [828, 1938] }, "1.3 g (0.83 to 1.9 g)"],
    [{ value: 0.0123, u: 0.001, interval: [0.0101, 0.0149] }, "12 µg (10 to 15 µg)"],
    [{ atMost: true, interval: [0, 1.7523] }, "at most 1.8 mg"],
  ])("%j is %j", (over, text) => expect(estimateText(estimate(over))).toBe(text));
  it("a bound is never rounded down", () => {
    expect(estimateText(estimate({ atMost: true, interval: [0, 1.71] }))).toBe("at most 1.8 mg");
    expect(estimateText(estimate({ atMost: true, interval: [0, 1.7] }))).toBe("at most 1.7 mg");
  });
  it("masses and areas", () => {
    expect(massText(2188.8, 5)).toBe("2.1888 g");
    expect(areaText(6804, 4)).toBe("6804 ft² (632.1 m²)");
  });
});

describe("the calculator's answer in sentences", () => {
  const result = compute({ ...solder, sealed: "yes" });
  if (!result.mass || !result.spread || !result.onArea || !result.grain) throw new Error("not worked out");
  const [mass, spread, onArea, grain] = [result.mass, result.spread, result.onArea, result.grain];
  it("says how much, that it is an estimate, and what to know better", () => {
    expect(massSentence(mass, "Pb")).toMatch(
      /^This part holds about 1\.3 g \(0\.8\d to 1\.9 g\) of lead\. This is an estimate: /,
    );
    expect(dominatesSentence(mass)).toMatch(
      /^Most of the doubt comes from the content \(\d+ %\)\. Measure that better first\.$/,
    );
    expect(densitySentence(mass.density as NonNullable<typeof mass.density>)).toMatch(
      /^Density used: 8\.686 g\/cm³\. /,
    );
  });
  it("says how far it would go, at each dated loading and down the ladder", () => {
    expect(spreadSentence(spread)).toMatch(/^Spread evenly, it would come to 5 µg\/ft² over /);
    expect(referenceSentence(result.references[0] as (typeof result.references)[number])).toMatch(
      /^At 40 µg\/ft², the dust limit for floors from 6 March 2001 to 5 January 2020: /,
    );
    expect(halvingText({ halvings: 2, mass: 768.54, loading: 10 })).toBe("Halved 2 times, 768.5 mg: 10 µg/ft²");
    expect(onArea.ladder.map((step) => halvingText(step))[0]).toMatch(/^All of it, /);
    expect(grainSentence(grain, "Pb")).toMatch(/^As one ball of pure lead, 1\.33 g would be 6\.1 mm across\.$/);
  });
  it("compares with what people know", () => {
    expect(nearestSentence(nearestAreas(2808)[0] as ReturnType<typeof nearestAreas>[number])).toBe(
      "About the area of a tennis court (doubles lines).",
    );
    expect(nearestSentence(nearestAreas(7000)[0] as ReturnType<typeof nearestAreas>[number])).toBe(
      "About 2.5 times the area of a tennis court (doubles lines).",
    );
    expect(nearestSentence(nearestMasses(0.01)[0] as ReturnType<typeof nearestMasses>[number])).toBe(
      "About 17 % of the weight of a grain of table salt.",
    );
    for (const one of [...areaComparators, ...massComparators])
      expect(comparatorSource(one)).toMatch(/; .*(assumption|verified|second-hand)/);
  });
  it("a coat both ways", () => {
    const { coating } = compute({
      from: "coat",
      area: "25",
      coatLoading: "1",
      coatThickness: "100",
      densityFrom: "entered",
      density: "1.5",
    });
    expect(coatingSentence(coating as NonNullable<typeof coating>)).toBe(
      "In a coat of this thickness and density, 1 mg/cm² and 66\u202F670 mg/kg are the same thing.",
    );
  });
  it("arithmetic carries its label", () => {
    const days = overDailyIntake(0.175, 2.2);
    const leached = leachedInto(0.5, 350);
    if (!days.ok || !leached.ok) throw new Error("refused");
    expect(comparisonText(days.value)).toMatch(/^79\.5 days of the benchmark\. Arithmetic only: /);
    expect(comparisonText(leached.value)).toMatch(/^175 µg\. Arithmetic only: /);
  });
});

describe("cautions beside every mass and area", () => {
  it("say what an amount is not, that no level is known to be safe, what to do, and whom to ask", () => {
    const codes = amountCautions("Pb").map((one) => one.code);
    expect(codes).toEqual(["amount-not-in-child", "amount-not-dust", "no-known-level", "what-to-do", "local-rules"]);
    expect(amountCautions("Cd").map((one) => one.code)).not.toContain("no-known-level");
    const text = amountCautions("Pb")
      .map((one) => one.text)
      .join(" ");
    expect(text).toMatch(/not how much gets into a child/);
    expect(text).toMatch(/licensed lead assessor/);
    expect(text).toMatch(/Local codes/);
    expect(gradeLevel(text)).toBeLessThan(9);
  });
  it("no verdict by the words legal, illegal or safe", () => {
    const all = [
      ...amountCautions("Pb").map((one) => one.text),
      ...Object.values(amountProblems).map((say) => say({ code: "x" })),
    ];
    for (const text of all) expect(text.replace("no known safe level", "")).not.toMatch(/\b(il)?legal\b|\bsafe\b/i);
  });
});

describe("labels and problems", () => {
  it("every field, choice and shape has its label", () => {
    for (const field of Object.keys(amountsSchema.shape))
      expect(amountFieldLabels[field as keyof typeof amountFieldLabels]).toBeTruthy();
    for (const one of geometryShapes) expect(shapeLabels[one]).toBeTruthy();
    for (const one of amountSources) expect(amountSourceLabels[one]).toBeTruthy();
    for (const one of densitySources) expect(densitySourceLabels[one]).toBeTruthy();
    expect(amountFieldName("coatThickness")).toBe("the thickness of the coat");
    expect([shareName("density-rule"), shareName("outerDiameter")]).toEqual([
      "the rule for the density of an alloy",
      "the outer diameter",
    ]);
  });
  it.each<[Record<string, string>, string[]]>([
    [
      { from: "coat", area: "25", coatLoading: "1", coatThickness: "100" },
      [
        "A density is needed here. Choose a material, or enter a density. A size alone, or a thickness alone, does not give a weight.",
      ],
    ],
    [
      { ...solder, content: "101" },
      ["The content cannot be over 100 %. Found: “101”. Check the number and its unit: 1 % is 10,000 ppm."],
    ],
    [
      { ...solder, diameter: "18 to 17" },
      ["The range for the diameter is upside down. Write the smaller number first. Found: “18 to 17”."],
    ],
    [
      { ...solder, itemWeight: "2" },
      [
        "This part would be heavier than the whole object. Found: “2.95 g”. Allowed: at most 2 g. Check the sizes, the density and the weight.",
      ],
    ],
    [
      { ...solder, loading: "0" },
      [
        "The loading of dust must be more than zero: no amount, however small, comes to nothing when it is spread. Found: “0”.",
      ],
    ],
    [
      { ...solder, day: "1999-12-31" },
      ["On 31 December 1999 none of these dust limits was in force yet. Choose 6 March 2001 or later."],
    ],
    [
      { ...solder, diameter: "1,500" },
      [
        "The diameter can be read in two ways. Found: “1,500”. Write a point for decimals, and no marks between thousands.",
      ],
    ],
  ])("%j", (search, sentences) => expect(problemSentences(compute(search).problems)).toEqual(sentences));
  it("no code is worded elsewhere too", () => {
    const others = [readingProblems, workflowProblems, publicationProblems, accessProblems, typedProblems];
    const taken = new Set(others.flatMap((file) => Object.keys(file)));
    expect(Object.keys(amountProblems).filter((code) => taken.has(code))).toEqual([]);
  });
  it("every sentence stands without a field, a finding or an allowance", () => {
    for (const [code, say] of Object.entries(amountProblems)) {
      expect(say({ code }), code).toMatch(/^[A-Z“].*\.$/s);
      expect(say({ code }), code).not.toMatch(/undefined|null/);
    }
  });
});
