import { describe, expect, test } from "vitest";
import { decide, type Held } from "@/lib/limits/decide.ts";
import { decideSum } from "@/lib/limits/decide-sum.ts";
import { guardedLimits } from "@/lib/limits/guarded-limits.ts";

/** Invented results. */
const held = (over: Partial<Held> = {}): Held => ({
  state: "quantified",
  value: 100,
  u: 5,
  nuEff: null,
  interval: null,
  asymmetric: false,
  below: null,
  upperBound: null,
  uneven: false,
  ...over,
});
const nonDetect = (below: number) => held({ state: "not-detected", value: null, u: null, below });
const bounded = (upperBound: number | null) => held({ state: "not-quantified", value: null, u: null, upperBound });
const at = (value: number | null, failsAt: ">" | ">=" = ">") => ({ value, failsAt });

describe("quantified, symmetric", () => {
  test("normal: 412 ± 9 against 400 is 0.909, too close (JCGM 106 7.2: P(Z > -1.3333) = 0.90879)", () => {
    const { verdict, probabilityAbove } = decide(held({ value: 412, u: 9 }), at(400));
    expect(verdict).toBe("too-close");
    expect(probabilityAbove).toBeCloseTo(0.90878878, 6);
  });

  test("the same numbers with 2 degrees of freedom are less sure (t table: P(T2 > -1.3333) = 0.843)", () => {
    // closed form for 2 degrees of freedom: F(t) = 1/2 + t / (2 sqrt(2 + t²))
    const t = 12 / 9;
    expect(decide(held({ value: 412, u: 9, nuEff: 2 }), at(400)).probabilityAbove).toBeCloseTo(
      0.5 + t / (2 * Math.sqrt(2 + t * t)),
      10,
    );
  });

  test("far above, far below", () => {
    expect(decide(held({ value: 412, u: 9 }), at(100)).verdict).toBe("above");
    expect(decide(held({ value: 12, u: 9 }), at(100)).verdict).toBe("below");
  });

  test("the verdict turns at the guarded limits (JCGM 106 8.3, 1.6449 u)", () => {
    const { below, above } = guardedLimits(100, { u: 6 });
    expect([below, above]).toEqual([expect.closeTo(90.1309, 4), expect.closeTo(109.8691, 4)]);
    const verdictAt = (value: number) => decide(held({ value, u: 6 }), at(100)).verdict;
    expect([
      verdictAt(below - 0.01),
      verdictAt(below + 0.01),
      verdictAt(above - 0.01),
      verdictAt(above + 0.01),
    ]).toEqual(["below", "too-close", "too-close", "above"]);
  });

  test("another risk moves the turn", () => {
    expect(decide(held({ value: 108, u: 6 }), at(100), 0.05).verdict).toBe("too-close");
    expect(decide(held({ value: 108, u: 6 }), at(100), 0.1).verdict).toBe("above");
  });
});

describe("the number itself", () => {
  test("a value known exactly at the limit passes where > fails and fails where >= fails", () => {
    expect(decide(held({ u: 0 }), at(100, ">"))).toEqual({ verdict: "below", probabilityAbove: 0 });
    expect(decide(held({ u: 0 }), at(100, ">="))).toEqual({ verdict: "above", probabilityAbove: 1 });
  });

  test.each([
    [nonDetect(5), 5, ">", "below"],
    [nonDetect(5), 5, ">=", "not-detected"],
    [nonDetect(4.9), 5, ">=", "below"],
    [nonDetect(5.1), 5, ">", "not-detected"],
    [bounded(5), 5, ">", "below"],
    [bounded(5), 5, ">=", "too-close"],
    [bounded(4.9), 5, ">=", "below"],
    [bounded(80), 5, ">", "too-close"],
  ] as const)("bound %# beside %d, fails at %s: %s", (result, value, failsAt, verdict) => {
    expect(decide(result, at(value, failsAt))).toEqual({ verdict, probabilityAbove: null });
  });

  test("reporting limits by area: < 5 µg/ft² cannot be shown to be below 5 where 5 fails; < 2.5 can (check value D7)", () => {
    expect(decide(nonDetect(5), at(5, ">=")).verdict).toBe("not-detected");
    expect(decide(nonDetect(2.5), at(5, ">=")).verdict).toBe("below");
    expect(decide(held({ value: 40, u: 0 }), at(40, ">=")).verdict).toBe("above"); // 20 µg on 0.5 ft², the sill level itself
  });
});

describe("asymmetric and uneven", () => {
  const uneven = held({ value: 100, u: 40, interval: [50, 300], asymmetric: true, uneven: true });

  test("the probability agrees with the stated interval: 0.025 at its upper end, 0.975 at its lower", () => {
    expect(decide(uneven, at(300)).probabilityAbove).toBeCloseTo(0.025, 9);
    expect(decide(uneven, at(50)).probabilityAbove).toBeCloseTo(0.975, 9);
    expect(decide(uneven, at(100)).probabilityAbove).toBeCloseTo(0.5, 12);
  });

  test("below needs the upper end of the interval below the limit, whatever the probability says", () => {
    const limit = at(290);
    expect(decide(uneven, limit).probabilityAbove).toBeLessThan(0.05);
    expect(decide(uneven, limit).verdict).toBe("too-close");
    expect(decide({ ...uneven, uneven: false }, limit).verdict).toBe("below");
    expect(decide(uneven, at(301)).verdict).toBe("below");
    expect(decide(uneven, at(300, ">=")).verdict).toBe("too-close");
    expect(decide({ ...held({ value: 10, u: 1 }), uneven: true }, at(100)).verdict).toBe("too-close"); // no interval
  });

  test("above on an uneven part", () => expect(decide(uneven, at(40)).verdict).toBe("above"));

  test("an end that says nothing gives even odds: never above, never below", () => {
    const open = { ...uneven, interval: [0, Number.POSITIVE_INFINITY] as [number, number] };
    expect(decide(open, at(1e9))).toEqual({ verdict: "too-close", probabilityAbove: 0.5 });
    expect(decide(open, at(1e-9))).toEqual({ verdict: "too-close", probabilityAbove: 0.5 });
  });

  test("without an interval: lognormal with s² = ln(1 + (u/value)²)", () => {
    const one = held({ value: 100, u: 100, asymmetric: true });
    const s = Math.sqrt(Math.log(2));
    expect(decide(one, at(100 * Math.exp(1.6448536269514722 * s))).probabilityAbove).toBeCloseTo(0.05, 9);
  });
});

describe("rules and gaps", () => {
  test("any reported value: a wipe reported without < meets it, a non-detect does not (89 FR 89416)", () => {
    const rule = { value: null, failsAt: ">=" as const, anyReportedValue: true };
    expect(decide(held({ value: 0.3 }), rule).verdict).toBe("above");
    expect(decide(nonDetect(2), rule).verdict).toBe("not-detected");
  });

  test("what cannot be said", () => {
    expect(decide(held(), { value: null, failsAt: ">" }).verdict).toBe("cannot-say");
    expect(decide(held({ u: null }), at(10)).verdict).toBe("cannot-say");
    expect(decide(held({ state: "no-readings", value: null, u: null }), at(10)).verdict).toBe("cannot-say");
    expect(decide(held({ state: "range-only", u: null }), at(10)).verdict).toBe("cannot-say");
    expect(decide(bounded(null), at(10)).verdict).toBe("cannot-say");
  });

  test("numbers outside the domain are refused", () => {
    for (const risk of [0, 0.5, -1, Number.NaN]) expect(() => decide(held(), at(10), risk)).toThrow(/risk/);
    expect(() => decide(held({ value: Number.NaN }), at(10))).toThrow(/finite/);
    expect(() => decide(held({ u: -1 }), at(10))).toThrow(/zero or more/);
    expect(() => decide(held(), at(Number.POSITIVE_INFINITY))).toThrow(/finite/);
    expect(() => decide(held({ asymmetric: true, interval: [101, 120] }), at(10))).toThrow(/hold its value/);
  });
});

describe("sums over elements", () => {
  const sum = { value: 100, failsAt: ">" as const, sum: true, substances: ["Pb", "Cd", "Hg", "Cr(VI)"] };
  const of = (value: number, u = 1) => held({ value, u });

  test("measured lead and cadmium above by themselves, whatever is missing", () => {
    expect(decideSum({ Pb: of(80), Cd: of(40) }, sum)).toEqual({
      verdict: "above",
      probabilityAbove: expect.closeTo(1, 9),
    });
  });

  test("something missing and not above: cannot say", () => {
    expect(decideSum({ Pb: of(8), Cd: of(4) }, sum).verdict).toBe("cannot-say");
  });

  test("bounds enter the most that it can be, and leave no probability", () => {
    const rest = { Cd: nonDetect(10), Hg: nonDetect(10) };
    expect(decideSum({ Pb: of(30), ...rest, Cr: nonDetect(20) }, sum)).toEqual({
      verdict: "below",
      probabilityAbove: null,
    });
    expect(decideSum({ Pb: of(70), ...rest, Cr: nonDetect(20) }, sum).verdict).toBe("too-close");
  });

  test("total chromium may show below, never above: it is not hexavalent chromium", () => {
    const rest = { Pb: of(5), Cd: of(5), Hg: of(5) };
    expect(decideSum({ ...rest, Cr: of(500) }, sum).verdict).toBe("too-close");
    expect(decideSum({ ...rest, Cr: of(20) }, sum).verdict).toBe("below");
    expect(decideSum({ ...rest, "Cr(VI)": of(500) }, sum).verdict).toBe("above");
  });

  test("nothing detected: below if the bounds' sum passes, else not detected", () => {
    const all = (below: number) => ({
      Pb: nonDetect(below),
      Cd: nonDetect(below),
      Hg: nonDetect(below),
      Cr: nonDetect(below),
    });
    expect(decideSum(all(25), sum).verdict).toBe("below");
    expect(decideSum(all(25), { ...sum, failsAt: ">=" }).verdict).toBe("not-detected");
    expect(decideSum(all(26), sum).verdict).toBe("not-detected");
  });

  test("uncertainties add plainly and the fewest degrees of freedom serve (JCGM 100 5.2.2 note 1)", () => {
    const two = { ...sum, substances: ["Pb", "Cd"] };
    const one = decide(held({ value: 110, u: 10, nuEff: 4 }), at(100));
    expect(
      decideSum({ Pb: held({ value: 60, u: 6, nuEff: 9 }), Cd: held({ value: 50, u: 4, nuEff: 4 }) }, two),
    ).toEqual(one);
  });

  test("an uneven member needs the sum of the upper ends to pass", () => {
    const two = { ...sum, substances: ["Pb", "Cd"] };
    const pb = held({ value: 40, u: 10, interval: [20, 95], asymmetric: true, uneven: true });
    expect(decideSum({ Pb: pb, Cd: nonDetect(3) }, two).verdict).toBe("below");
    expect(decideSum({ Pb: pb, Cd: nonDetect(6) }, two).verdict).toBe("too-close");
  });

  test("not a sum", () => {
    expect(() => decideSum({}, { ...sum, sum: false })).toThrow(/sum/);
    expect(() => decideSum({}, { ...sum, value: null })).toThrow(/sum/);
  });
});
