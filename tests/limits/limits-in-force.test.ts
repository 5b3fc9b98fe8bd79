import { describe, expect, test } from "vitest";
import {
  changesBetween,
  findLimit,
  historyOf,
  isInForce,
  limitsOn,
  neighboursOf,
} from "@/lib/limits/limits-in-force.ts";
import { allLimits } from "@/lib/limits/tables/all-limits.ts";
import { unknownStart } from "@/lib/limits/types.ts";
import { tableRows } from "./table-rows.ts";

const shift = (day: string, by: number) =>
  new Date(Date.parse(`${day}T00:00:00Z`) + by * 86_400_000).toISOString().slice(0, 10);
const on = (day: string) => new Set(limitsOn(day).map((limit) => limit.id));

describe("each limit on the day before, the day of and the day after each change", () => {
  test.each(tableRows.map((row) => [row.id, row.source, row] as const))("%s (%s)", (id, _source, row) => {
    if (row.until !== null && row.until < row.from) {
      for (const day of [shift(row.from, -1), row.from, shift(row.from, 1)]) expect(on(day).has(id)).toBe(false);
      return;
    }
    expect(on(shift(row.from, -1)).has(id)).toBe(false);
    expect(on(row.from).has(id)).toBe(true);
    expect(on(shift(row.from, 1)).has(id)).toBe(true);
    if (row.until === null) return expect(on("2099-01-01").has(id)).toBe(true);
    expect(on(shift(row.until, -1)).has(id)).toBe(true);
    expect(on(row.until).has(id)).toBe(true);
    expect(on(shift(row.until, 1)).has(id)).toBe(false);
  });
});

describe("families", () => {
  test.each([
    ["us-dust-floor", [40, 10, null]], // 66 FR 1206; 84 FR 32632; 89 FR 89416
    ["us-dust-sill", [250, 100, null]],
    ["us-clearance-floor", [40, 10, 5]], // 40 CFR 745.227(e)(8)(viii); 86 FR 983; 89 FR 89416
    ["us-clearance-sill", [250, 100, 40]],
    ["us-clearance-trough", [400, 400, 100]],
    ["us-paint-on-goods-pb", [5000, 600, 600, 90]], // 16 CFR 1500.17(a)(6); 16 CFR 1303
    ["us-childrens-products-pb", [600, 300, 100]], // 15 USC 1278a
    ["wa-cookware-pb", [5, 90, 10]], // RCW 70A.565.020
    ["eu-packaging-sum", [600, 250, 100, 100]], // 94/62/EC; (EU) 2025/40
    ["eu-toy-pb-dry", [13.5, 2, 2]], // 2009/48/EC; (EU) 2017/738; (EU) 2025/2509
    ["us-ceramic-pb-flat", [7, 7, 3]], // FDA notice T91-70
    ["us-soil-screening", [400, 200, 200]],
  ])("%s", (family, values) => {
    expect(historyOf(family).map((limit) => limit.value)).toEqual(values);
  });

  test("the limits before and after one", () => {
    expect(neighboursOf("EPA-DLHS-FLOOR-2019").previous?.id).toBe("EPA-DLHS-FLOOR-2001");
    expect(neighboursOf("EPA-DLHS-FLOOR-2019").next?.id).toBe("EPA-DLRL-2024-FLOOR");
    expect(neighboursOf("CPSIA-600").previous).toBeNull();
    expect(neighboursOf("CPSIA-100").next).toBeNull();
    expect(neighboursOf("no such limit")).toEqual({ previous: null, next: null });
  });

  test("within a family a number ends the day before the next begins, save where a rule gave time to comply", () => {
    const overlapping = new Set(["us-clearance-floor", "us-clearance-sill", "us-clearance-trough", "us-water-action"]);
    const apart = new Set(["eu-toy-pb-dry", "wa-cookware-pb"]); // 2030 replaces an act with no end written; one never began
    for (const family of new Set(allLimits.map((limit) => limit.family))) {
      const rows = historyOf(family);
      for (const [i, row] of rows.entries()) {
        const next = rows[i + 1];
        if (!next || overlapping.has(family) || apart.has(family)) continue;
        if (family.startsWith("us-intake")) continue; // benchmarks followed one another within a year
        expect(row.until === null ? null : shift(row.until, 1), `${row.id} then ${next.id}`).toBe(next.from);
      }
    }
  });
});

test("rule in effect, compliance not yet asked for: both sets of numbers stand (89 FR 89416)", () => {
  const between = on("2025-06-01");
  expect(between.has("EPA-DLCL-2021-FLOOR")).toBe(true);
  expect(between.has("EPA-DLAL-2024-FLOOR")).toBe(true);
  expect(on("2026-01-12").has("EPA-DLCL-2021-FLOOR")).toBe(false);
  expect(findLimit("EPA-DLAL-2024-FLOOR")?.complianceFrom).toBe("2026-01-12");
});

test("what changed since a test", () => {
  expect(changesBetween("2025-12-31", "2026-01-01").map((c) => `${c.limit.id} ${c.what} ${c.on}`)).toEqual([
    "WA-COOK-90 began 2026-01-01",
  ]);
  expect(changesBetween("2026-08-11", "2026-08-12").map((c) => `${c.limit.id} ${c.what}`)).toEqual([
    "EU-PACK-94 ended",
    "EU-PACK-PPWR began",
  ]);
  expect(changesBetween("2026-08-12", "2026-08-12")).toEqual([]);
});

test("a day must be a day", () => {
  for (const day of ["2026-02-30", "2026-1-1", "yesterday", "", "2026-13-01"])
    expect(() => limitsOn(day), day).toThrow(/YYYY-MM-DD/);
});

test("a limit whose start nobody read says so, and only such a limit has the stand-in day", () => {
  for (const limit of allLimits) expect(limit.fromKnown === "unknown", limit.id).toBe(limit.from === unknownStart);
  expect(isInForce(findLimit("FDA-CD-FLAT")!, "2026-11-24")).toBe(true);
});
