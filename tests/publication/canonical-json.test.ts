import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { canonicalJson } from "@/lib/publication/canonical-json.ts";

const double = (bits: string): number => {
  const view = new DataView(new ArrayBuffer(8));
  view.setBigUint64(0, BigInt(`0x${bits}`));
  return view.getFloat64(0);
};

describe("RFC 8785 §3.2.2 and §3.2.4, the sample object and its UTF-8 bytes", () => {
  // The RFC's input, escapes as printed there.
  const input = String.raw`{
    "numbers": [333333333.33333329, 1E30, 4.50, 2e-3, 0.000000000000000000000000001],
    "string": "\u20ac$\u000F\u000aA'\u0042\u0022\u005c\\\"\/",
    "literals": [null, true, false]
  }`;
  it("prints the canonical text", () => {
    expect(canonicalJson(JSON.parse(input))).toBe(
      String.raw`{"literals":[null,true,false],"numbers":[333333333.3333333,1e+30,4.5,0.002,1e-27],"string":"€$\u000f\nA'B\"\\\\\"/"}`,
    );
  });
  it("begins and ends with the bytes of §3.2.4", () => {
    const bytes = Buffer.from(canonicalJson(JSON.parse(input))).toString("hex");
    expect(bytes.startsWith("7b226c69746572616c73223a5b6e756c6c2c747275652c66616c73655d2c22")).toBe(true);
    expect(bytes.endsWith("22e282ac245c75303030665c6e4127425c225c5c5c5c5c222f227d")).toBe(true);
  });
});

it("RFC 8785 §3.2.3: members sort by UTF-16 code units", () => {
  const input = String.raw`{
    "\u20ac": "Euro Sign", "\r": "Carriage Return", "\ufb33": "Hebrew Letter Dalet With Dagesh", "1": "One",
    "\ud83d\ude00": "Emoji: Grinning Face", "\u0080": "Control", "\u00f6": "Latin Small Letter O With Diaeresis"
  }`;
  expect(Object.values(JSON.parse(canonicalJson(JSON.parse(input))))).toHaveLength(7);
  const order = [...canonicalJson(JSON.parse(input)).matchAll(/:"([^"]+)"/g)].map((m) => m[1]);
  expect(order).toEqual([
    "Carriage Return",
    "One",
    "Control",
    "Latin Small Letter O With Diaeresis",
    "Euro Sign",
    "Emoji: Grinning Face",
    "Hebrew Letter Dalet With Dagesh",
  ]);
});

describe("RFC 8785 Appendix B, number serialisation samples", () => {
  it.each([
    ["0000000000000000", "0"],
    ["8000000000000000", "0"],
    ["0000000000000001", "5e-324"],
    ["8000000000000001", "-5e-324"],
    ["7fefffffffffffff", "1.7976931348623157e+308"],
    ["ffefffffffffffff", "-1.7976931348623157e+308"],
    ["4340000000000000", "9007199254740992"],
    ["c340000000000000", "-9007199254740992"],
    ["4430000000000000", "295147905179352830000"],
    ["44b52d02c7e14af5", "9.999999999999997e+22"],
    ["44b52d02c7e14af6", "1e+23"],
    ["44b52d02c7e14af7", "1.0000000000000001e+23"],
    ["444b1ae4d6e2ef4e", "999999999999999700000"],
    ["444b1ae4d6e2ef4f", "999999999999999900000"],
    ["444b1ae4d6e2ef50", "1e+21"],
    ["3eb0c6f7a0b5ed8c", "9.999999999999997e-7"],
    ["3eb0c6f7a0b5ed8d", "0.000001"],
    ["41b3de4355555553", "333333333.3333332"],
    ["41b3de4355555554", "333333333.33333325"],
    ["41b3de4355555555", "333333333.3333333"],
    ["41b3de4355555556", "333333333.3333334"],
    ["41b3de4355555557", "333333333.33333343"],
    ["becbf647612f3696", "-0.0000033333333333333333"],
    ["43143ff3c1cb0959", "1424953923781206.2"],
  ])("0x%s is %s", (bits, text) => {
    expect(canonicalJson(double(bits))).toBe(text);
  });
  it.each(["7fffffffffffffff", "7ff0000000000000", "fff0000000000000"])("0x%s is refused", (bits) => {
    expect(() => canonicalJson({ x: double(bits) })).toThrow(expect.objectContaining({ code: "not-finite" }));
  });
});

describe("what JSON cannot carry is refused, never dropped", () => {
  it.each([
    ["undefined in a member", { a: undefined }, "not-json"],
    ["undefined in a list", [undefined], "not-json"],
    ["a date", { a: new Date(0) }, "not-json"],
    ["a map", new Map(), "not-json"],
    ["a bigint", 1n, "not-json"],
    ["a lone high surrogate (RFC 8785 §3.2.2.2)", { a: "x\uD83D" }, "lone-surrogate"],
    ["a lone low surrogate as a name", { "\uDE00": 1 }, "lone-surrogate"],
  ])("%s", (_name, value, code) => {
    expect(() => canonicalJson(value)).toThrow(expect.objectContaining({ code }));
  });
});

it("names the place of what is no number, the root by its slash", () => {
  expect(() => canonicalJson(Number.NaN)).toThrow("not a finite number at /");
  expect(() => canonicalJson({ a: [1, Number.POSITIVE_INFINITY] })).toThrow("not a finite number at /a/1");
});

describe("for any JSON value", () => {
  /** The same value with every object's members in the opposite order. */
  const reversed = (value: unknown): unknown => {
    if (Array.isArray(value)) return value.map(reversed);
    if (typeof value !== "object" || value === null) return value;
    return Object.fromEntries(
      Object.entries(value)
        .reverse()
        .map(([key, inner]) => [key, reversed(inner)]),
    );
  };
  const json = fc.jsonValue({ maxDepth: 4, stringUnit: "grapheme" });

  it("the text reads back to the value, and is its own canonical form", () => {
    fc.assert(
      fc.property(json, (value) => {
        const text = canonicalJson(value);
        expect(canonicalJson(JSON.parse(text))).toBe(text);
        expect(JSON.parse(text)).toEqual(JSON.parse(JSON.stringify(value)));
      }),
    );
  });
  it("the order of members does not matter", () => {
    fc.assert(
      fc.property(json, (value) => {
        expect(canonicalJson(reversed(value))).toBe(canonicalJson(value));
      }),
    );
  });
});
