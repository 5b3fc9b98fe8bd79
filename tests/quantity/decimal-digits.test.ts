import { Decimal } from "decimal.js";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { plainText, readDigits, timesRatio, unitsOfPlace } from "@/lib/quantity/decimal-digits.ts";
import { roundToUncertainty } from "@/lib/quantity/round-to-uncertainty.ts";
import { convert } from "@/lib/quantity/units.ts";
import { refusalCode } from "../support/refusal-code.ts";

const Exact = Decimal.clone({ precision: 1200, toExpNeg: -9e15, toExpPos: 9e15 });

/** The same rule in arbitrary-precision arithmetic (decimal.js), as a second opinion. */
function byDecimal(value: string, U: string, digits: number, ties: "half-even" | "half-up") {
  const rule = ties === "half-even" ? Decimal.ROUND_HALF_EVEN : Decimal.ROUND_HALF_UP;
  const rounded = new Exact(U).toSignificantDigits(digits, rule);
  const place = rounded.e - digits + 1;
  const unit = new Exact(10).pow(place);
  const matched = new Exact(value).div(unit).toDecimalPlaces(0, rule).times(unit);
  const decimals = Math.max(0, -place);
  return { value: (matched.isZero() ? matched.abs() : matched).toFixed(decimals), U: rounded.toFixed(decimals) };
}

const ties = fc.constantFrom("half-even" as const, "half-up" as const);
// Few digits, so that exact ties come up often.
const short = fc
  .tuple(fc.integer({ min: -99_999, max: 99_999 }), fc.integer({ min: -6, max: 6 }))
  .map(([n, e]) => `${n}e${e}`);
const long = fc.double({ noNaN: true, noDefaultInfinity: true, min: -1e30, max: 1e30 }).map(String);

describe("rounding by digits", () => {
  it("agrees with decimal.js over 3,000 numbers, ties and carries among them", () => {
    fc.assert(
      fc.property(
        fc.oneof(short, long),
        fc.oneof(short, long),
        fc.integer({ min: 1, max: 15 }),
        ties,
        (x, u, digits, rule) => {
          fc.pre(Number(u) > 1e-300);
          expect(roundToUncertainty(x, u, { digits, ties: rule })).toEqual(byDecimal(x, u, digits, rule));
        },
      ),
      { numRuns: 3000 },
    );
  });

  it("reads signs, points and exponents", () => {
    expect(readDigits("x", "+0012.50")).toEqual({ negative: false, digits: "1250", power: -2 });
    expect(readDigits("x", "-.5E-3")).toEqual({ negative: true, digits: "5", power: -4 });
    expect(readDigits("x", "7.")).toEqual({ negative: false, digits: "7", power: 0 });
    expect(readDigits("x", "0.000")).toEqual({ negative: false, digits: "", power: -3 });
    expect(readDigits("x", 1e21)).toEqual({ negative: false, digits: "1", power: 21 });
  });

  it.each([".", "", "+", "e5", "1e", "1e12345", "--1", "1.2.3", "0x10", "NaN"])("refuses %j", (text) =>
    expect(refusalCode(() => readDigits("x", text))).toBe("not-a-decimal"),
  );
  it.each(["1e401", "1e-401", `1${"0".repeat(400)}`])("refuses %s: too many digits to print", (text) =>
    expect(refusalCode(() => readDigits("x", text))).toBe("out-of-range"),
  );

  it("counts whole units of a place", () => {
    const units = (text: string, place: number) => unitsOfPlace(readDigits("x", text), place, "half-even");
    expect(units("0.5", 0)).toBe("");
    expect(units("0.51", 0)).toBe("1");
    expect(units("1.5", 0)).toBe("2");
    expect(units("2.5", 0)).toBe("2");
    expect(units("2.5001", 0)).toBe("3");
    expect(units("0.04", 0)).toBe("");
    expect(units("99.9", 0)).toBe("100");
    expect(units("3", -2)).toBe("300");
    expect(unitsOfPlace(readDigits("x", "0.5"), 0, "half-up")).toBe("1");
  });

  it("writes units of a place without an exponent", () => {
    expect(plainText("", 3)).toBe("0");
    expect(plainText("", -2)).toBe("0.00");
    expect(plainText("12", 2)).toBe("1200");
    expect(plainText("12", -1)).toBe("1.2");
    expect(plainText("12", -4)).toBe("0.0012");
  });
});

describe("conversion by a power of ten", () => {
  it("gives the digits that exact arithmetic gives, large and small numbers too", () => {
    const number = fc
      .oneof(fc.double({ noNaN: true, noDefaultInfinity: true }), fc.double({ min: 0, max: 1e4, noNaN: true }))
      .map((x) => x + 0); // negative zero is written "0"
    fc.assert(
      fc.property(number, (x) => {
        expect(convert(x, "%", "mg/kg")).toBe(new Exact(x).times(10_000).toNumber());
        expect(convert(x, "µg/kg", "mg/kg")).toBe(new Exact(x).times("0.001").toNumber());
        expect(convert(x, "ppm", "mg/kg")).toBe(x);
      }),
      { numRuns: 1000 },
    );
  });

  it("leaves nothing nothing", () => {
    expect(timesRatio(0, 10_000n, 1n)).toBe(0);
  });

  it("forgets nothing when many spellings were met", () => {
    for (let i = 0; i < 1100; i++) expect(convert(2, `p${" ".repeat(i)}pm`, "%")).toBe(0.0002);
    expect(convert(0.07, "%", "ppm")).toBe(700);
  });
});
