import { describe, expect, it } from "vitest";
import { readGtin } from "@/lib/quantity/gtin.ts";

// Made-up numbers. Their check digits are worked out by hand after the GS1 General Specifications, 7.9: weights 3 and 1 from the right.
describe("a trade item number", () => {
  it("is 14 digits of text, whatever its length, spaces and hyphens", () => {
    expect(readGtin("2001234567893")).toEqual({ state: "ok", gtin: "02001234567893" });
    expect(readGtin("2-001234 567893")).toEqual({ state: "ok", gtin: "02001234567893" });
    // 2·3+1·1+2·3+3·1+4·3+5·1+6·3 = 51, so the last digit is 9.
    expect(readGtin("21234569")).toEqual({ state: "ok", gtin: "00000021234569" });
    // All nines before it: 9·(3·7 + 6) = 243, so 7.
    expect(readGtin("99999999999997")).toEqual({ state: "ok", gtin: "99999999999997" });
    expect(readGtin("000000000000")).toEqual({ state: "ok", gtin: "00000000000000" });
  });
  it("with another check digit says which digit was expected", () =>
    expect(readGtin("2001234567894")).toEqual({ state: "wrong-check-digit", found: "4", expected: "3" }));
  it.each(["", "123", "123456789", "200123456789x", "2.001234567893e12", "200123456789301"])("is none: %s", (text) =>
    expect(readGtin(text)).toEqual({ state: "not-a-code", found: text }),
  );
});
