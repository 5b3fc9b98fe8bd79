import { describe, expect, it } from "vitest";
import { standingOf } from "@/lib/limits/applicability.ts";
import { allLimits } from "@/lib/limits/tables/all-limits.ts";
import type { Subject } from "@/lib/limits/types.ts";
import { ageGroups, itemCategories, materials } from "@/lib/quantity/item-words.ts";
import { quantityKinds } from "@/lib/quantity/kinds.ts";
import { reasonTold } from "@/lib/wording/reasons.ts";

const english = /\b(the|of|and|with|is|was|it|for|from|this|made|not)\b/i;
const kinds = Object.keys(quantityKinds) as (keyof typeof quantityKinds)[];

/** Every way a reason can come about: each word of the record beside each limit, dates known in every degree and not at all. */
function* subjects(): Generator<Subject> {
  const plain: Subject = {
    category: "toy",
    ageGroup: "child-under-3",
    foodContact: false,
    mouthable: true,
    accessible: true,
    material: "paint",
    form: "coating",
    madeOn: null,
    gotOn: null,
  };
  for (const category of itemCategories)
    for (const material of materials)
      for (const form of ["bulk", "coating"] as const) yield { ...plain, category, material, form };
  for (const category of itemCategories)
    for (const ageGroup of ageGroups)
      for (const foodContact of [true, false])
        for (const reach of [true, false])
          yield { ...plain, category, ageGroup, foodContact, mouthable: reach, accessible: reach, material: "glaze" };
  for (const madeOn of [null, "1975", "1978-02", "2009-08-14", "2010", "2012-05", "2020-01-01"])
    for (const gotOn of [null, "1970-01-01", "2010-06-01", "2026-05-03"])
      for (const material of ["paint", "brass", "pvc"] as const)
        for (const category of ["toy", "bib-or-baby-gear", "jewellery-or-key-ring"] as const)
          yield { ...plain, material, category, form: material === "paint" ? "coating" : "bulk", madeOn, gotOn };
}

describe("why a limit applies or does not, in Spanish", () => {
  it("is told whole for every limit beside every kind of part", () => {
    const reasons = new Set<string>();
    for (const subject of subjects())
      for (const limit of allLimits)
        for (const kind of new Set([limit.quantity, "bulk-mass-fraction", "coating-mass-fraction"] as const))
          for (const element of new Set([limit.substances[0]!, "Cr", "Br"]))
            for (const day of ["2025-06-01", "2026-11-24"]) {
              const standing = standingOf(limit, subject, kind, element, day);
              if (standing === null) continue;
              reasons.add(standing.why);
              if (limit.rule !== null) reasons.add(`${standing.why} The rule: ${limit.rule}.`);
            }
    expect(reasons.size).toBeGreaterThan(500);
    expect(kinds.length).toBeGreaterThan(8);
    const left = [...reasons].filter((why) => {
      const told = reasonTold(why, "es");
      return told === null || english.test(told) || /undefined/.test(told);
    });
    expect(left.slice(0, 20)).toEqual([]);
    // The same dates and figures in both.
    const digits = (text: string) =>
      text
        .replaceAll(",", ".")
        .match(/\d+(?:\.\d+)?/g)
        ?.sort() ?? [];
    for (const why of reasons) expect(digits(reasonTold(why, "es")!), why).toEqual(digits(why));
  }, 120_000);

  it("stays as it was published where a sentence is not one of ours", () => {
    expect(reasonTold("It is guidance, not a binding limit. Somebody else wrote this.", "es")).toBeNull();
    expect(reasonTold("It is guidance, not a binding limit.", "en")).toBe("It is guidance, not a binding limit.");
  });

  it("says dates as Spanish does", () => {
    const told = (why: string) => reasonTold(why, "es");
    expect(told("It binds goods made from 14 August 2011; this was made in May 2012.")).toBe(
      "Obliga para artículos hechos desde el 14 de agosto de 2011; este se hizo en mayo de 2012.",
    );
    expect(
      told("For reference only: it binds goods made up to 27 February 1978, and this was made on 3 May 2011."),
    ).toBe(
      "Solo como referencia: obliga para artículos hechos hasta el 27 de febrero de 1978, y este se hizo el 3 de mayo de 2011.",
    );
  });
});
