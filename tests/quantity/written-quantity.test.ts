import { describe, expect, it } from "vitest";
import { parseTypedNumber, parseWrittenQuantity } from "@/lib/quantity/written-quantity.ts";

// Unit conversions: SI Brochure 9th ed. 5.4.7 (1 % = 10 000 ppm); 1 in = 25.4 mm exactly (NIST SP 811 B.8).
describe("a number typed without saying which mark is decimal", () => {
  it.each([
    ["12.5", 12.5, 1],
    ["12,5", 12.5, 1],
    ["0,05", 0.05, 2],
    ["0,250", 0.25, 3],
    ["1.234", 1.234, 3],
    ["1,234.5", 1234.5, 1],
    ["1.234,5", 1234.5, 1],
    ["1 234,5", 1234.5, 1],
    ["1,234,567", 1234567, 0],
    ["1e3", 1000, 0],
    ["−4", -4, 0],
  ])("%s is %d", (text, value, decimals) => {
    const read = parseTypedNumber(text);
    expect(read.ok && [read.value.value, read.value.decimals]).toEqual([value, decimals]);
  });
  it.each([
    ["1,234", "number-ambiguous"],
    ["12,345", "number-ambiguous"],
    ["", "number-empty"],
    ["thick", "not-a-number"],
    ["1.2.3", "number-ambiguous"],
  ])("%s is refused as %s", (text, code) => {
    expect(codeOf(parseTypedNumber(text))).toBe(code);
  });
});

const codeOf = (outcome: ReturnType<typeof parseTypedNumber> | ReturnType<typeof parseWrittenQuantity>) =>
  outcome.ok ? null : outcome.problems[0]?.code;

describe("a quantity typed into a field", () => {
  it("reads 0,05 % as 500 mg/kg, without 500.0000001", () => {
    const read = parseWrittenQuantity("0,05 %", { wanted: "mg/kg" });
    expect(read.ok && read.value).toEqual({
      number: { text: "0,05 %", value: 0.05, decimals: 2 },
      unit: "%",
      inWanted: 500,
    });
  });
  it.each([
    ["412", "mg/kg", 412],
    ["412ppm", "ppm", 412],
    ["0.01 in", "in", 0.254],
    ["5 µg/cm2", "µg/cm²", 0.005],
    ["1e3 ug/g", "µg/g", 1000],
  ])("%s is in %s", (text, unit, inWanted) => {
    const wanted = unit === "in" ? "mm" : unit === "µg/cm²" ? "mg/cm²" : "mg/kg";
    const read = parseWrittenQuantity(text, { wanted });
    expect(read.ok && [read.value.unit, read.value.inWanted]).toEqual([unit, inWanted]);
  });
  it("takes the unit chosen beside it where the text names none, and the text's where it does", () => {
    const chosen = parseWrittenQuantity("2", { wanted: "mm", chosen: "cm" });
    expect(chosen.ok && chosen.value.inWanted).toBe(20);
    const named = parseWrittenQuantity("2 mm", { wanted: "mm", chosen: "cm" });
    expect(named.ok && named.value.inWanted).toBe(2);
  });
  it("refuses a unit of another dimension chosen beside it, and a number that its unit makes too large", () => {
    const chosen = parseWrittenQuantity("5", { wanted: "mg/kg", chosen: "g" });
    expect(chosen).toEqual({ ok: false, problems: [{ code: "unit-other-kind", found: "g", allowed: "mg/kg" }] });
    expect(codeOf(parseWrittenQuantity("1e308 %", { wanted: "mg/kg" }))).toBe("number-too-large");
  });
  it.each([
    ["5 mg/cm²", "unit-other-kind"],
    ["5 apples", "unit-other-kind"],
    ["1,234 ppm", "number-ambiguous"],
    ["ppm", "not-a-number"],
    ["<5", "not-a-number"],
    [" ", "number-empty"],
  ])("%s is refused as %s", (text, code) => {
    expect(codeOf(parseWrittenQuantity(text, { wanted: "mg/kg" }))).toBe(code);
  });
});
