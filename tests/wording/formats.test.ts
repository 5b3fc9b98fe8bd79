import { describe, expect, it } from "vitest";
import {
  alsoAs,
  chancesText,
  dateInZone,
  groupDigits,
  listed,
  plainDate,
  resultText,
  significant,
  timeInZone,
} from "@/lib/wording/formats.ts";
import { type SampleState, samplePart } from "../support/sample-snapshot.ts";

const result = (state: SampleState) => samplePart(state).results[0]!;

describe("a result in one line", () => {
  it.each<[SampleState, string]>([
    ["above", "412 ± 35 mg/kg"],
    ["too-close", "92.1 ± 7.5 mg/kg"],
    ["not-detected", "not detected (below 5 mg/kg)"],
    ["not-quantified", "detected at 1 of 3 spots; at most 19.4 mg/kg"],
    ["uneven", "102 mg/kg (73 to 159 mg/kg)"],
  ])("%s: %s", (state, text) => {
    expect(resultText(result(state))).toBe(text);
  });
  it("range only", () => {
    expect(resultText({ ...result("uneven"), state: "range-only" })).toBe(
      "61 to 148 mg/kg, differing from spot to spot",
    );
  });
});

describe("numbers", () => {
  it.each([
    ["412", "412"],
    ["1240", "1240"],
    ["12400.5", "12\u202F400.5"],
    ["-1234567", "-1\u202F234\u202F567"],
    ["0.000001234", "0.000001234"],
  ])("groups %s (SI Brochure 9th ed., 5.4.4)", (text, grouped) => {
    expect(groupDigits(text)).toBe(grouped);
  });
  it.each([
    [412.86, "413"],
    [0.0412864, "0.0413"],
    [0.00000012345, "0.000000123"],
    [99999, "100000"],
    [1e21, "1000000000000000000000"],
    [5, "5"],
    [-0.5, "-0.5"],
    [0, "0"],
  ])("three digits of %d: %s", (value, text) => {
    if (value === 1e21)
      expect(significant(value)).toBe(String(value)); // toFixed gives up there, and so do we
    else expect(significant(value)).toBe(text);
  });
  it("says mg/kg in ppm, and in per cent from 0.1 % on", () => {
    expect(alsoAs("412", 412, "mg/kg")).toBe("412 ppm");
    expect(alsoAs("12400", 12400, "mg/kg")).toBe("12\u202F400 ppm, or 1.24 %");
    expect(alsoAs("1.0", 1, "mg/cm²")).toBeNull();
  });
});

describe("chances never claim more than the number says", () => {
  it.each([
    [1, "at least 99 chances in 100"],
    [0.99, "at least 99 chances in 100"],
    [0.9899, "about 98 chances in 100"],
    [0.95, "about 95 chances in 100"],
    [0.9499, "about 94 chances in 100"],
    [0.5, "about 50 chances in 100"],
    [0.29, "about 29 chances in 100"],
    [0.0501, "about 6 chances in 100"],
    [0.05, "about 5 chances in 100"],
    [0.01, "at most 1 chance in 100"],
    [0, "at most 1 chance in 100"],
  ])("%d: %s", (p, text) => {
    expect(chancesText(p)).toBe(text);
  });
  it.each([-0.1, 1.1, Number.NaN])("%d is no probability", (p) => {
    expect(() => chancesText(p)).toThrow(/probability/);
  });
});

describe("days and times", () => {
  it("are written out, the same on every machine", () => {
    expect(plainDate("2026-11-24")).toBe("24 November 2026");
    expect(plainDate("2026-03-01T23:59:00+01:00")).toBe("1 March 2026");
    expect(() => plainDate("24.11.2026")).toThrow(/ISO/);
  });
  it("carry the zone they are given in", () => {
    expect(timeInZone("2026-11-24T23:30:00+01:00", "UTC")).toBe("24 November 2026, 22:30 (UTC)");
    expect(dateInZone("2026-11-24T23:30:00Z", "Europe/Berlin")).toBe("25 November 2026");
    expect(() => timeInZone("2026-11-24T23:30:00", "UTC")).toThrow(/offset/);
  });
});

it("lists words as people do", () => {
  expect([listed([]), listed(["a"]), listed(["a", "b"]), listed(["a", "b", "c"])]).toEqual([
    "",
    "a",
    "a and b",
    "a, b and c",
  ]);
});
