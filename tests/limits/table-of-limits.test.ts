import { describe, expect, test } from "vitest";
import { historyOf } from "@/lib/limits/limits-in-force.ts";
import { listLimits } from "@/lib/limits/list-limits.ts";
import { allLimits } from "@/lib/limits/tables/all-limits.ts";
import { ageGroups, itemCategories, materials } from "@/lib/quantity/item-words.ts";
import { canonicalUnit } from "@/lib/quantity/kinds.ts";
import { tableRows } from "./table-rows.ts";

describe("the data against the table typed a second time", () => {
  test("the same limits, no more and no fewer", () => {
    expect(allLimits.map((limit) => limit.id).sort()).toEqual(tableRows.map((row) => row.id).sort());
  });

  test.each(tableRows.map((row) => [row.id, row.source, row] as const))("%s (%s)", (id, _source, row) => {
    const limit = allLimits.find((one) => one.id === id);
    expect(limit?.value === null ? null : limit?.value).toBe(row.value);
    expect({ failsAt: limit?.failsAt, from: limit?.from, until: limit?.until, checked: limit?.checked }).toEqual({
      failsAt: row.failsAt,
      from: row.from,
      until: row.until,
      checked: row.checked,
    });
  });
});

describe("every limit is whole", () => {
  test("ids are unique and fit a web address", () => {
    expect(new Set(allLimits.map((limit) => limit.id)).size).toBe(allLimits.length);
    for (const limit of allLimits) expect(limit.id).toMatch(/^[A-Z0-9-]+$/);
  });

  test.each(allLimits.map((limit) => [limit.id, limit] as const))("%s", (_id, limit) => {
    for (const words of [limit.title, limit.citation, limit.scope, limit.checkedNote, limit.jurisdiction, limit.family])
      expect(words.trim().length).toBeGreaterThan(3);
    expect(limit.substances.length).toBeGreaterThan(0);
    expect(limit.value === null).toBe(limit.rule !== null);
    if (limit.value !== null) expect(limit.value).toBeGreaterThan(0);
    if (limit.sum) expect(limit.substances.length).toBeGreaterThan(1);
    // A unit that is not the kind's own is one that the kind cannot be turned into.
    if (limit.unit !== canonicalUnit(limit.quantity))
      expect(["mg/dm²", "µg/cm²/h", "µg/cm²/week"]).toContain(limit.unit);
    expect(limit.target === "object" ? limit.criteria.length : 1).toBeGreaterThan(0);
    const all = [limit.title, limit.scope, limit.rule ?? "", limit.note ?? "", limit.checkedNote].join(" ");
    expect(all).not.toMatch(/\b(legal|illegal|safe|unsafe)\b(?! goods notice)/i);
    if (/from memory/.test(limit.checked)) expect(limit.checkedNote).toMatch(/from memory/i);
    if (limit.neverTookEffect) expect(limit.until! < limit.from).toBe(true);
    else if (limit.until !== null) expect(limit.until >= limit.from).toBe(true);
  });

  test("criteria use the registry's own words only", () => {
    for (const limit of allLimits)
      for (const c of limit.criteria) {
        for (const word of [...(c.categories ?? []), ...(c.categoriesUnsure?.categories ?? [])])
          expect(itemCategories).toContain(word);
        for (const word of [
          ...(c.materials ?? []),
          ...(c.materialsUnsure?.materials ?? []),
          ...(c.materialsOut?.materials ?? []),
        ])
          expect(materials).toContain(word);
        for (const word of [...(c.ages ?? []), ...(c.agesUnsure?.ages ?? [])]) expect(ageGroups).toContain(word);
      }
  });

  test("a family holds one substance, quantity kind and unit", () => {
    for (const family of new Set(allLimits.map((limit) => limit.family))) {
      const rows = historyOf(family);
      expect(new Set(rows.map((row) => row.substances.join("+"))).size, family).toBe(1);
      expect(new Set(rows.map((row) => `${row.quantity} ${row.unit}`)).size, family).toBe(1);
    }
  });

  test("exactly 0.5 % of lead in housing paint: two sections disagree, both are kept (40 CFR 745.103, 745.223)", () => {
    const bySection = (id: string) => allLimits.find((limit) => limit.id === id)?.failsAt;
    expect([bySection("LBP-MASS-745-103"), bySection("LBP-MASS-745-223")]).toEqual([">=", ">"]);
  });

  test("sums over elements are marked", () => {
    expect(allLimits.filter((limit) => limit.sum).map((limit) => limit.id)).toEqual([
      "TIP-100",
      "EU-PACK-94-600",
      "EU-PACK-94-250",
      "EU-PACK-94",
      "EU-PACK-PPWR",
    ]);
  });
});

test("the public list has the promised keys for every limit", () => {
  const keys =
    "id jurisdiction title citation substances quantity value unit failsAt scope from until nature checked".split(" ");
  const list = listLimits();
  expect(list).toHaveLength(allLimits.length);
  for (const limit of list) expect(Object.keys(limit).slice(0, keys.length)).toEqual(keys);
  expect(JSON.parse(JSON.stringify(list))).toEqual(list);
});
