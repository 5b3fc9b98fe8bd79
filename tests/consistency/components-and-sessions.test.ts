import { describe, expect, it } from "vitest";
import { surveyFactors } from "@/lib/consistency/factor-survey.ts";
import type { LocatedReading } from "@/lib/consistency/located-reading.ts";
import { sessionPrecision } from "@/lib/consistency/session-precision.ts";
import { varianceComponents } from "@/lib/consistency/variance-components.ts";
import { mandelHCritical } from "@/lib/statistics/mandel-h-critical.ts";
import { mandelKCritical } from "@/lib/statistics/mandel-k-critical.ts";
import { refusalCode } from "../support/refusal-code.ts";

// Readings below are invented for the tests.
const reading = (value: number, at: Partial<LocatedReading>): LocatedReading => ({
  id: "",
  value,
  specimen: null,
  instrument: null,
  operator: null,
  session: null,
  spot: null,
  ...at,
});
const two = [
  reading(10, { specimen: "a", spot: "1" }),
  reading(12, { specimen: "a", spot: "1" }),
  reading(15, { specimen: "a", spot: "2" }),
  reading(20, { specimen: "b", spot: "1" }),
  reading(23, { specimen: "b", spot: "2" }),
];

describe("varianceComponents", () => {
  it("takes the same inner label under two outer levels as two", () => {
    const r = varianceComponents(two, { outer: "specimen", inner: "spot" });
    if (r.status !== "ok") throw new Error(r.status);
    expect(r.components.map(({ source }) => source)).toEqual(["specimen", "spot", "repeat"]);
    // The example of nestedAnova: two readings at spot a1, one at each of the other three.
    expect(r.components.map(({ anovaRaw }) => anovaRaw)).toEqual([
      expect.closeTo(38.6547619, 6),
      expect.closeTo(4.7857143, 6),
      2,
    ]);
    expect(r.components.reduce((sum, { share }) => sum + (share as number), 0)).toBeCloseTo(1, 12);
    for (const { sd, reml } of r.components) expect(sd * sd).toBeCloseTo(reml, 12);
  });
  it("readings that all agree have no shares", () => {
    const same = two.map((one) => ({ ...one, value: 7 }));
    const r = varianceComponents(same, { outer: "specimen" });
    expect(r.components?.map(({ share }) => share)).toEqual([null, null]);
    expect(r.mean).toBe(7);
  });
  it("says why it cannot tell, and leaves nothing out to be able to", () => {
    const status = (readings: LocatedReading[], ...levels: ["specimen" | "session", "spot"?]) => {
      const [outer, inner] = levels;
      const r = varianceComponents(readings, inner ? { outer, inner } : { outer });
      return r.status === "ok" ? "ok" : `${r.status} ${r.factor}`;
    };
    expect(status([], "specimen")).toBe("no-readings specimen");
    expect(status(two, "session")).toBe("level-unknown session");
    expect(status([...two, reading(1, { specimen: "b" })], "specimen", "spot")).toBe("level-unknown spot");
    expect(status(two.slice(0, 3), "specimen")).toBe("one-level specimen");
    expect(status(two.slice(2, 4), "specimen")).toBe("no-repeats specimen");
    expect(status(two.slice(1), "specimen", "spot")).toBe("no-repeats spot");
    expect(status([...two.slice(0, 2), two[3] as LocatedReading], "specimen", "spot")).toBe("no-nesting spot");
    expect(
      refusalCode(() => varianceComponents([...two, reading(Number.NaN, { specimen: "a" })], { outer: "specimen" })),
    ).toBe("not-finite");
  });
});

describe("surveyFactors", () => {
  it("counts levels and names the factors that changed together", () => {
    const readings = [
      reading(1, { operator: "x", session: "mon", spot: "1", instrument: "i" }),
      reading(2, { operator: "x", session: "mon", spot: "2", instrument: "i" }),
      reading(5, { operator: "y", session: "tue", spot: "1", instrument: "i" }),
      reading(6, { operator: "y", session: "tue", spot: "2", instrument: "i" }),
    ];
    const { alone, inseparable } = surveyFactors(readings);
    expect(alone.map(({ factor, levels, result }) => [factor, levels, result.status])).toEqual([
      ["specimen", 0, "level-unknown"],
      ["instrument", 1, "one-level"],
      ["operator", 2, "ok"],
      ["session", 2, "ok"],
      ["spot", 2, "ok"],
    ]);
    expect(inseparable).toEqual([["operator", "session"]]);
    expect(surveyFactors([...readings, reading(3, { operator: "x", session: "tue", spot: "1" })]).inseparable).toEqual(
      [],
    );
  });
});

describe("sessionPrecision", () => {
  const sessions = (groups: Record<string, number[]>) =>
    Object.entries(groups).flatMap(([session, values]) => values.map((value) => reading(value, { session })));
  it("marks the session whose mean stands apart", () => {
    const groups = Object.fromEntries(
      ["a", "b", "c", "d", "e", "f", "g"].map((s, i) => [s, [100 + i / 10, 101 + i / 10]]),
    );
    const r = sessionPrecision(sessions({ ...groups, h: [140, 141] }));
    if (r.status !== "ok") throw new Error(r.status);
    expect(r.sessions.map(({ hMark }) => hMark)).toEqual([...Array(7).fill("none"), "outlier"]);
    expect(r.grubbs?.session).toBe("h");
    expect(r.sessions.every(({ kMark }) => kMark === "none")).toBe(true);
    expect(r.limits.repeatability).toBeCloseTo(2.8 * Math.SQRT1_2, 12);
    expect(r.limits.reproducibility).toBeGreaterThan(r.limits.repeatability);
  });
  it("marks the session that scatters more, with unequal numbers too", () => {
    const r = sessionPrecision(sessions({ a: [10, 10.1, 10.2], b: [10, 10.1], c: [10.1, 10.2], d: [7, 13] }));
    if (r.status !== "ok") throw new Error(r.status);
    expect(r.sessions.map(({ kMark }) => kMark)).toEqual(["none", "none", "none", "outlier"]);
    expect(r.cochran).toBeNull();
    const equal = sessionPrecision(sessions({ a: [10, 10.1], b: [10, 10.1], c: [10.1, 10.2], d: [7, 13] }));
    expect(equal.status === "ok" && equal.cochran?.session).toBe("d");
  });
  it("two sessions have no test of h; a single reading has no spread; agreement throughout has nothing to mark", () => {
    const r = sessionPrecision(sessions({ a: [10, 11], b: [15] }));
    if (r.status !== "ok") throw new Error(r.status);
    expect(r.sessions).toMatchObject([
      { h: expect.closeTo(-Math.SQRT1_2), hMark: null, k: 1, kMark: null },
      { sd: null, k: null, kMark: null },
    ]);
    expect(r.grubbs).toBeNull();
    const same = sessionPrecision(sessions({ a: [5, 5], b: [5, 5], c: [5, 5] }));
    if (same.status !== "ok") throw new Error(same.status);
    expect(same.sessions.map(({ hMark, kMark }) => [hMark, kMark])).toEqual(Array(3).fill([null, null]));
    expect(same.cochran).toMatchObject({ status: "no-spread", session: null });
  });
  it("says why it cannot tell", () => {
    expect(sessionPrecision([]).status).toBe("one-session");
    expect(sessionPrecision(sessions({ a: [1, 2] })).status).toBe("one-session");
    expect(sessionPrecision(sessions({ a: [1], b: [2] })).status).toBe("no-repeats");
    expect(sessionPrecision([...sessions({ a: [1, 2], b: [3, 4] }), reading(1, {})]).status).toBe("session-unknown");
  });
});

describe("Mandel's critical values", () => {
  it("refuse what has no test", () => {
    expect(refusalCode(() => mandelHCritical(2))).toBe("too-few-groups");
    expect(refusalCode(() => mandelHCritical(3.5))).toBe("too-few-groups");
    expect(refusalCode(() => mandelHCritical(5, { alpha: 1 }))).toBe("bad-level");
    expect(refusalCode(() => mandelKCritical(0, 4))).toBe("too-few");
    expect(refusalCode(() => mandelKCritical(1, 0.5))).toBe("too-few");
    expect(refusalCode(() => mandelKCritical(1, 4, { alpha: 0 }))).toBe("bad-level");
  });
});
