import { describe, expect, test } from "vitest";
import { standingOf } from "@/lib/limits/applicability.ts";
import { decide, type Held } from "@/lib/limits/decide.ts";
import { isInForce, limitsOn } from "@/lib/limits/limits-in-force.ts";
import { allLimits } from "@/lib/limits/tables/all-limits.ts";
import type { Subject } from "@/lib/limits/types.ts";

/** The worked judgements over time (check value D11), each a known value; the limits' sources stand beside them. */
const exactly = (value: number): Held => ({
  state: "quantified",
  value,
  u: 0,
  nuEff: null,
  interval: null,
  asymmetric: false,
  below: null,
  upperBound: null,
  uneven: false,
});
const verdicts = (value: number, day: string, families: string[]) =>
  limitsOn(day)
    .filter((limit) => families.includes(limit.family))
    .map((limit) => `${decide(exactly(value), limit).verdict} ${limit.value ?? "any reported value"}`);

describe("floor wipe of 7 µg/ft² (66 FR 1206; 84 FR 32632; 86 FR 983; 89 FR 89416)", () => {
  test.each([
    ["2018-06-01", ["below 40", "below 40"]],
    ["2021-06-01", ["below 10", "below 10"]],
    ["2024-12-01", ["below 10", "below 10"]],
    ["2025-06-01", ["below 10", "above any reported value", "above 5"]], // in effect, compliance not yet asked for
    ["2026-06-01", ["above any reported value", "above 5"]],
  ])("%s", (day, expected) => {
    expect(verdicts(7, day, ["us-dust-floor", "us-clearance-floor"])).toEqual(expected);
  });
});

describe("sill wipe of 60 µg/ft²", () => {
  test.each([
    ["2018-06-01", ["below 250", "below 250"]],
    ["2021-06-01", ["below 100", "below 100"]],
    ["2026-06-01", ["above any reported value", "above 40"]],
  ])("%s", (day, expected) => {
    expect(verdicts(60, day, ["us-dust-sill", "us-clearance-sill"])).toEqual(expected);
  });
});

const subject = (over: Partial<Subject>): Subject => ({
  category: "toy",
  ageGroup: "child-3-to-12",
  foodContact: false,
  mouthable: false,
  material: "abs",
  form: "bulk",
  accessible: true,
  madeOn: null,
  ...over,
});
const applying = (one: Subject, value: number, day: string, family: string) =>
  allLimits
    .filter((limit) => limit.family === family)
    .map((limit) => standingOf(limit, one, "bulk-mass-fraction", "Pb", day))
    .filter((standing) => standing?.applies === "applies")
    .map((standing) => `${decide(exactly(value), standing!.limit).verdict} ${standing!.limit.value}`);

describe("children's substrate at 150 ppm (15 USC 1278a; Pub. L. 112-28 section 1)", () => {
  const family = "us-childrens-products-pb";
  test("made 2010: beside 300, the number for goods of its time, even today", () => {
    expect(applying(subject({ madeOn: "2010" }), 150, "2026-11-24", family)).toEqual(["below 300"]);
    expect(applying(subject({ madeOn: "2010" }), 150, "2010-06-01", family)).toEqual(["below 300"]);
  });
  test("made 2012: above 100", () => {
    expect(applying(subject({ madeOn: "2012" }), 150, "2026-11-24", family)).toEqual(["above 100"]);
  });
  test("made on the effective day itself: still 300; the day after: 100", () => {
    expect(applying(subject({ madeOn: "2011-08-14" }), 150, "2026-11-24", family)).toEqual(["below 300"]);
    expect(applying(subject({ madeOn: "2011-08-15" }), 150, "2026-11-24", family)).toEqual(["above 100"]);
  });
  test("an old toy is above today's number, for reference, and the reason says when it was made", () => {
    const today = allLimits.find((limit) => limit.id === "CPSIA-100")!;
    const standing = standingOf(today, subject({ madeOn: "2010" }), "bulk-mass-fraction", "Pb", "2026-11-24");
    expect(standing?.applies).toBe("for-reference");
    expect(standing?.why).toContain("goods made from 15 August 2011, and this was made in 2010");
    expect(decide(exactly(150), today).verdict).toBe("above");
  });
});

describe("brass pan in Washington (RCW 70A.565.020 as amended 2025)", () => {
  const pan = subject({ category: "pot-or-pan", ageGroup: "adult", foodContact: true, material: "brass" });
  const family = "wa-cookware-pb";
  test("120 ppm: no limit in 2025, above 90 in 2026", () => {
    expect(applying(pan, 120, "2025-12-31", family)).toEqual([]);
    expect(applying(pan, 120, "2026-01-01", family)).toEqual(["above 90"]);
  });
  test("50 ppm: below 90 in 2026, above 10 in 2028", () => {
    expect(applying(pan, 50, "2026-06-01", family)).toEqual(["below 90"]);
    expect(applying(pan, 50, "2028-06-01", family)).toEqual(["above 10"]);
  });
  test("stainless steel is out of its scope", () => {
    expect(applying({ ...pan, material: "steel" }, 120, "2026-06-01", family)).toEqual([]);
  });
});

test("packaging: 94/62/EC to 11 August 2026, then (EU) 2025/40, the same number", () => {
  const on = (day: string) => allLimits.filter((l) => l.family === "eu-packaging-sum" && isInForce(l, day));
  expect(on("2026-08-11").map((l) => [l.id, l.value])).toEqual([["EU-PACK-94", 100]]);
  expect(on("2026-08-12").map((l) => [l.id, l.value])).toEqual([["EU-PACK-PPWR", 100]]);
});
