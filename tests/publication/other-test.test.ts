import { describe, expect, it } from "vitest";
import { decisionsOfTest, type OtherTest, readTestFigure, testResult } from "@/lib/publication/other-test.ts";
import { otherTestText } from "@/lib/wording/other-tests.ts";

const test: OtherTest = {
  ...{ id: "t", specimenId: "s", componentId: null, kind: "wipe", element: "Pb" },
  ...{ valueText: "20", value: 20, reportingLimit: null, unit: "µg/wipe", u: null, sampleAreaCm2: 464.5152 },
  ...{
    blankText: null,
    laboratory: "Invented laboratory",
    method: "invented",
    reportedOn: null,
    certificateName: null,
    note: "",
  },
};

describe("a wipe: mass over area", () => {
  // 464.5152 cm² is half a square foot exactly (1 ft = 30.48 cm, international foot): 20 µg ÷ 0.5 ft² = 40 µg/ft².
  it("20 µg from half a square foot is 40 µg/ft², and its uncertainty goes along", () => {
    const read = testResult({ ...test, u: 2 });
    expect(read).toMatchObject({ ok: true, value: { quantity: "dust-loading", unit: "µg/ft²", below: null } });
    expect(read.ok && read.value.value).toBeCloseTo(40, 10);
    expect(read.ok && read.value.u).toBeCloseTo(4, 10);
  });
  it('"< 5 µg" from half a square foot stays "< 10 µg/ft²", and is never a number', () => {
    const read = testResult({ ...test, valueText: "< 5", value: null, reportingLimit: 5, u: 1 });
    expect(read).toMatchObject({ ok: true, value: { value: null, u: null } });
    expect(read.ok && read.value.below).toBeCloseTo(10, 10);
    expect(read.ok && otherTestText({ result: read.value })).toBe("below 10 µg/ft²");
  });
  it("without its area, or with a leachate's unit, it is refused", () => {
    expect(testResult({ ...test, sampleAreaCm2: null })).toMatchObject({
      problems: [{ code: "area-zero", where: { field: "sampleAreaCm2" } }],
    });
    expect(testResult({ ...test, unit: "µg/mL" })).toMatchObject({ problems: [{ code: "test-unit" }] });
  });
});

it.each([
  ["leachate", "mg/L", 2.5, "leachate", 2.5], // 1 mg/L is 1 µg/mL
  ["laboratory", "% of a coating", 0.009, "coating-mass-fraction", 90],
  ["laboratory", "mg/cm² of a coating", 1.2, "coating-areal", 1.2],
  ["laboratory", "mg/kg migrated", 13, "migration", 13],
] as const)("%s in %s: %s", (kind, unit, value, quantity, expected) => {
  const read = testResult({ ...test, kind, unit, value, sampleAreaCm2: null });
  expect(read).toMatchObject({ ok: true, value: { quantity } });
  expect(read.ok && read.value.value).toBeCloseTo(expected, 10);
});

it("a unit of no kind of test is refused", () => {
  expect(testResult({ ...test, unit: "grains" })).toMatchObject({ problems: [{ code: "test-unit", found: "grains" }] });
});
it("a test that holds neither a value nor a limit is refused", () => {
  expect(testResult({ ...test, value: null, reportingLimit: null, valueText: "lost" })).toMatchObject({
    problems: [{ code: "test-value-unreadable", found: "lost" }],
  });
});

it.each([
  ["12,5", "", { value: 12.5, reportingLimit: null }],
  ["< 0.5", "", { value: null, reportingLimit: 0.5 }],
  ["<0,5", "0.5", { value: null, reportingLimit: 0.5 }],
  ["ND", "0.2", { value: null, reportingLimit: 0.2 }],
  ["nicht nachgewiesen", "< 0,2", { value: null, reportingLimit: 0.2 }],
  ["ND", "", "test-limit-missing"],
  ["< 0.5", "0.2", "test-two-limits"],
  ["0", "", "test-value-unreadable"],
  ["some", "", "test-value-unreadable"],
  ["12", "0", "test-limit-unreadable"],
  ["ND", "-1", "test-limit-unreadable"],
  ["<", "", "test-value-unreadable"],
  ["-3", "", "test-value-unreadable"],
  ["5", "x", "test-limit-unreadable"],
])("reads %j with the limit %j", (text, limit, expected) => {
  const read = readTestFigure(text, limit);
  if (typeof expected === "string") expect(read).toMatchObject({ ok: false, problems: [{ code: expected }] });
  else expect(read).toEqual({ ok: true, value: expected });
});

describe("held beside limits of its own kind only", () => {
  const subject = {
    ...{ category: "mug-or-cup", ageGroup: "adult" as const, foodContact: true, mouthable: false },
    ...{ material: "glaze", form: "coating" as const, accessible: true, madeOn: null },
  };
  const days = { testDay: "2026-10-01", today: "2026-11-28" };
  const leachate = { quantity: "leachate" as const, unit: "µg/mL", u: 0.1, below: null };
  const verdicts = (value: number) =>
    decisionsOfTest(subject, "Pb", { ...leachate, value }, days).map((d) => [d.unit, d.verdict]);
  it("a leachate meets leachate limits; far above and far below are told apart", () => {
    expect(verdicts(50).length).toBeGreaterThan(0);
    expect(new Set(verdicts(50).map(([unit]) => unit))).toEqual(new Set(["µg/mL"]));
    expect(verdicts(50).every(([, verdict]) => verdict === "above")).toBe(true);
    expect(verdicts(50)).not.toEqual(verdicts(0.001));
  });
  it("a value without an uncertainty decides nothing; a bound can", () => {
    const bare = decisionsOfTest(subject, "Pb", { ...leachate, value: 50, u: null }, days);
    expect(bare.filter((d) => d.value !== null).every((d) => d.verdict === "cannot-say")).toBe(true);
    const bound = decisionsOfTest(subject, "Pb", { ...leachate, value: null, u: null, below: 0.01 }, days);
    expect(bound.some((d) => d.verdict === "below")).toBe(true);
  });
});
