import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { parseWrittenNumber } from "@/lib/quantity/written-number.ts";

const read = (text: string, options: Parameters<typeof parseWrittenNumber>[1] = { decimal: "point" }) => {
  const outcome = parseWrittenNumber(text, options);
  return outcome.ok ? [outcome.value.value, outcome.value.decimals] : outcome.problems[0]?.code;
};

describe("parseWrittenNumber", () => {
  it.each([
    ["412", 412, 0],
    ["0.250", 0.25, 3],
    ["5.", 5, 0],
    [".5", 0.5, 1],
    [" 12.30 ", 12.3, 2],
    ["+7", 7, 0],
    ["-3.2", -3.2, 1],
    ["\u22123.2", -3.2, 1],
    ["-0.0", 0, 1],
    ["1,234.5", 1234.5, 1],
    ["1,234,567", 1234567, 0],
    ["1 234.5", 1234.5, 1],
    ["1\u202f234", 1234, 0],
    ["1'234.50", 1234.5, 2],
    ["1.20E-3", 0.0012, 5],
    ["1.2e3", 1200, 0],
    ["00012", 12, 0],
  ])("reads %j with a decimal point", (text, value, decimals) => expect(read(text)).toEqual([value, decimals]));

  it("reads a decimal comma", () => {
    expect(read("0,250", { decimal: "comma" })).toEqual([0.25, 3]);
    expect(read("1.234,5", { decimal: "comma" })).toEqual([1234.5, 1]);
    expect(read("1 234,5", { decimal: "comma" })).toEqual([1234.5, 1]);
  });

  it("takes the other mark as thousands only where it is stated or certain", () => {
    expect(read("1,234")).toBe("number-ambiguous");
    expect(read("1,234", { decimal: "point", thousands: "comma" })).toEqual([1234, 0]);
    expect(read("1.234", { decimal: "comma" })).toBe("number-ambiguous");
    expect(read("1 234", { decimal: "point", thousands: "comma" })).toBe("number-ambiguous");
    expect(read("1,5", { decimal: "point", thousands: "comma" })).toBe("number-ambiguous");
    expect(read("1.5", { decimal: "point", thousands: "point" })).toBe("number-ambiguous");
  });

  it.each([
    ["", "number-empty"],
    ["   ", "number-empty"],
    ["1e400", "number-too-large"],
    ["-1e400", "number-too-large"],
    ["1e-400", "number-too-small"],
    ["NaN", "not-a-number"],
    ["Infinity", "not-a-number"],
    ["<5", "not-a-number"],
    ["5 %", "not-a-number"],
    ["5ppm", "not-a-number"],
    ["0x10", "not-a-number"],
    ["--1", "not-a-number"],
    ["1e", "not-a-number"],
    ["=1+1", "not-a-number"],
    ["٣", "not-a-number"],
    ["1.2.3", "number-ambiguous"],
    ["12,34", "number-ambiguous"],
    ["1,23.4", "number-ambiguous"],
    ["1,234 567", "number-ambiguous"],
    [".", "not-a-number"],
    [",", "not-a-number"],
  ])("refuses %j (%s)", (text, code) => expect(read(text)).toBe(code));

  it("keeps the text, and reads back every printed decimal", () => {
    fc.assert(
      fc.property(fc.integer({ min: -1e9, max: 1e9 }), fc.integer({ min: 0, max: 8 }), (whole, decimals) => {
        const text = (whole / 10 ** decimals).toFixed(decimals);
        const outcome = parseWrittenNumber(text, { decimal: "point" });
        expect(outcome).toEqual({ ok: true, value: { text, value: Number(text) + 0, decimals } });
        expect(read(text.replace(".", ","), { decimal: "comma" })).toEqual([Number(text) + 0, decimals]);
      }),
    );
  });
});
