import { describe, expect, test } from "vitest";
import { decisionsByResult, decisionsFor } from "@/lib/limits/decisions-for.ts";
import type { Subject } from "@/lib/limits/types.ts";
import type { ReconcileResult } from "@/lib/reconcile/types.ts";

/** Invented results of an invented part. */
const result = (element: string, over: Partial<ReconcileResult> = {}): ReconcileResult => ({
  method: { name: "cupboard-assay-reconcile", version: "1", policy: "1" },
  inputsDigest: "0".repeat(64),
  element,
  quantity: "bulk-mass-fraction",
  unit: "mg/kg",
  state: "quantified",
  model: "random-effects",
  value: 120,
  u: 5,
  U: 10,
  k: 2,
  nuEff: null,
  interval: [110, 130],
  asymmetric: false,
  below: null,
  upperBound: null,
  stated: { value: "120", U: "10", interval: null, below: null },
  spots: [],
  highestSpot: null,
  range: null,
  counts: { readings: 3, used: 3, setAside: 0, spots: 3, spotsDetected: 3 },
  scatter: null,
  budget: [],
  flags: [],
  withSetAside: null,
  crossCheck: null,
  notes: [],
  ...over,
});
const pan: Subject = {
  category: "pot-or-pan",
  ageGroup: "adult",
  foodContact: true,
  mouthable: false,
  material: "brass",
  form: "bulk",
  accessible: true,
  madeOn: null,
};
const applying = (days: { testDay: string; today: string }) =>
  decisionsFor(pan, [result("Pb")], days)
    .filter((d) => d.applies === "applies")
    .map((d) => `${d.limitId} ${d.which} ${d.day} ${d.verdict}`);

test("the same limit on both days comes once; a new one comes for today", () => {
  expect(applying({ testDay: "2025-06-01", today: "2026-11-24" })).toEqual([
    "MN-PB both 2025-06-01 above",
    "WA-COOK-90 today 2026-11-24 above",
  ]);
});

test("a number replaced since the test comes for the test's day, its successor for today", () => {
  expect(applying({ testDay: "2026-06-01", today: "2028-06-01" })).toEqual([
    "MN-PB both 2026-06-01 above",
    "WA-COOK-90 test-day 2026-06-01 above",
    "WA-COOK-10 today 2028-06-01 above",
  ]);
});

test("tested today: one set", () => {
  for (const decision of decisionsFor(pan, [result("Pb")], { testDay: "2026-11-24", today: "2026-11-24" }))
    expect(decision.which).toBe("both");
});

test("each decision names its element, limit, number and how far the limit was checked", () => {
  const [first] = decisionsFor(pan, [result("Pb")], { testDay: "2026-11-24", today: "2026-11-24" });
  expect(first).toMatchObject({
    limitId: "MN-PB",
    element: "Pb",
    value: 90,
    unit: "mg/kg",
    failsAt: ">",
    checked: "verified",
  });
  expect(first?.probabilityAbove).toBeCloseTo(1, 6);
});

test("a limit of another quantity gets no verdict", () => {
  const mug: Subject = { ...pan, category: "mug-or-cup", material: "glaze", form: "coating" };
  const others = decisionsFor(mug, [result("Pb")], { testDay: "2026-11-24", today: "2026-11-24" }).filter(
    (d) => d.applies === "other-quantity",
  );
  expect(others.length).toBeGreaterThan(2);
  for (const one of others) expect([one.verdict, one.probabilityAbove]).toEqual(["cannot-say", null]);
});

describe("a sum over elements (packaging, Reg. (EU) 2025/40)", () => {
  const box: Subject = { ...pan, category: "food-storage", material: "other-plastic" };
  const results = [
    result("Pb", { value: 60 }),
    result("Cd", { value: 70 }),
    result("Hg", { state: "not-detected", value: null, u: null, interval: null, below: 8 }),
    result("Cr", { state: "not-detected", value: null, u: null, interval: null, below: 12 }),
  ];
  const days = { testDay: "2026-11-24", today: "2026-11-24" };
  test("is judged from all its elements, comes with each result and once in the list", () => {
    const flat = decisionsFor(box, results, days).filter((d) => d.limitId === "EU-PACK-PPWR");
    expect(flat).toHaveLength(1);
    expect(flat[0]).toMatchObject({ element: "Pb+Cd+Hg+Cr(VI)", verdict: "above", applies: "for-reference" });
    const by = decisionsByResult(box, results, days).map((list) => list.some((d) => d.limitId === "EU-PACK-PPWR"));
    expect(by.slice(0, 3)).toEqual([true, true, true]);
  });
});

test("a rule in words is quoted, without a verdict", () => {
  const glass: Subject = { ...pan, category: "glassware", ageGroup: "child-under-3", material: "crystal" };
  const alert = decisionsFor(glass, [result("Pb")], { testDay: "2026-11-24", today: "2026-11-24" }).find(
    (d) => d.limitId === "FDA-IA-5210",
  );
  expect(alert?.verdict).toBe("cannot-say");
  expect(alert?.why).toContain("The rule: may be detained at the border");
});

test("days must be days", () => {
  expect(() => decisionsFor(pan, [], { testDay: "last week", today: "2026-11-24" })).toThrow(/YYYY-MM-DD/);
});
