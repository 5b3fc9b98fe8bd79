import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { DomainError } from "@/lib/quantity/domain-error.ts";
import { roundToUncertainty } from "@/lib/quantity/round-to-uncertainty.ts";

describe("roundToUncertainty", () => {
  it("moves the place where rounding carries", () => {
    expect(roundToUncertainty("1234.5", "99.5")).toEqual({ value: "1230", U: "100" });
    expect(roundToUncertainty("0.123456", "0.00995")).toEqual({ value: "0.123", U: "0.010" });
  });

  it("prints no minus sign before zero, and never an exponent", () => {
    expect(roundToUncertainty("-0.001", "0.5")).toEqual({ value: "0.00", U: "0.50" });
    expect(roundToUncertainty("3", "99")).toEqual({ value: "3", U: "99" });
    expect(roundToUncertainty("3", "1000")).toEqual({ value: "0", U: "1000" });
    expect(roundToUncertainty("1e-9", "2.34e-11").value).toBe("0.000000001000");
    expect(roundToUncertainty("1.23456e25", "1e22")).toEqual({
      value: "12346000000000000000000000",
      U: "10000000000000000000000",
    });
  });

  it("rounds the decimal, not the binary number beside it", () => {
    expect(roundToUncertainty("2.675", "0.10", { ties: "half-up" }).value).toBe("2.68");
    expect(roundToUncertainty(2.675, 0.1, { ties: "half-up" }).value).toBe("2.68");
    expect(roundToUncertainty("2.665", "0.10").value).toBe("2.66");
  });

  it("takes one or more digits", () => {
    expect(roundToUncertainty("412.345", "9.07", { digits: 1 })).toEqual({ value: "412", U: "9" });
    expect(roundToUncertainty("412.345", "9.07", { digits: 3 })).toEqual({ value: "412.34", U: "9.07" });
  });

  it.each([
    ["1", "0"],
    ["1", "-1"],
    ["NaN", "1"],
    ["1", "Infinity"],
    ["", "1"],
    ["1", ""],
    ["1,5", "1"],
    ["0x1", "1"],
    ["1e999", "1"],
    ["1", "1e-999"],
    ["1e99999999", "1"],
  ])("refuses %j ± %j", (value, U) => expect(() => roundToUncertainty(value, U)).toThrow(DomainError));

  it("refuses other rules", () => {
    expect(() => roundToUncertainty("1", "1", { digits: 0 })).toThrow(DomainError);
    expect(() => roundToUncertainty("1", "1", { digits: 1.5 })).toThrow(DomainError);
    expect(() => roundToUncertainty("1", "1", { ties: "down" as "half-up" })).toThrow(DomainError);
  });

  it("stays within half a unit of the last place, keeps the digits, and changes nothing the second time", () => {
    const decimals = fc.tuple(fc.integer({ min: 1, max: 999_999 }), fc.integer({ min: -9, max: 6 }));
    fc.assert(
      fc.property(decimals, decimals, ([a, e], [b, f]) => {
        const r = roundToUncertainty(`${a}e${e}`, `${b}e${f}`);
        const digits = r.U.replace(".", "").replace(/^0+/, "");
        expect(digits.length >= 2 && Number(digits.slice(2) || "0") === 0).toBe(true);
        const place = r.U.includes(".") ? 10 ** -(r.U.split(".")[1]?.length ?? 0) : 10 ** (r.U.length - 2);
        expect(Math.abs(Number(r.value) - a * 10 ** e)).toBeLessThanOrEqual(place * 0.5 * (1 + 1e-9));
        expect(roundToUncertainty(r.value, r.U)).toEqual(r);
      }),
    );
  });
});
