import { describe, expect, test } from "vitest";
import { applicability } from "@/lib/limits/applicability.ts";
import { changesFor } from "@/lib/limits/changes-for.ts";
import { decide, type Held } from "@/lib/limits/decide.ts";
import { decideSum } from "@/lib/limits/decide-sum.ts";
import { madeBetween, makingOf, makingProblem } from "@/lib/limits/iso-day.ts";
import { changesBetween } from "@/lib/limits/limits-in-force.ts";
import { scopeFit } from "@/lib/limits/scope-fit.ts";
import { subjectOf } from "@/lib/limits/subject-of.ts";
import { allLimits } from "@/lib/limits/tables/all-limits.ts";
import type { Subject } from "@/lib/limits/types.ts";
import { ageGroups, itemCategories, materials } from "@/lib/quantity/item-words.ts";
import { refusalCode } from "../support/refusal-code.ts";

/** Invented results and objects. */
const held = (over: Partial<Held> = {}): Held => ({
  ...{ state: "quantified", value: 100, u: 5, nuEff: null, interval: null, asymmetric: false },
  ...{ below: null, upperBound: null, uneven: false },
  ...over,
});
const bowl: Subject = {
  ...{ category: "bowl", ageGroup: "adult", foodContact: true, mouthable: false },
  ...{ material: "glaze", form: "coating", accessible: true, madeOn: null },
};
const sum = { value: 100, failsAt: ">" as const, sum: true, substances: ["Pb", "Cd"] };

describe("what a decision cannot be made from", () => {
  test("a quantified result without a value, or without an uncertainty", () => {
    const none = { verdict: "cannot-say", probabilityAbove: null };
    expect(decide(held({ value: null }), { value: 90, failsAt: ">" })).toEqual(none);
    expect(decide(held({ u: null }), { value: 90, failsAt: ">" })).toEqual(none);
    expect(decideSum({ Pb: held({ u: null }), Cd: held() }, sum)).toEqual(none);
  });

  test("an interval of no width around an uneven-sided value leaves no doubt", () => {
    const exact = held({ asymmetric: true, interval: [100, 100] });
    expect(decide(exact, { value: 100, failsAt: ">" })).toEqual({ verdict: "below", probabilityAbove: 0 });
    expect(decide(exact, { value: 100, failsAt: ">=" })).toEqual({ verdict: "above", probabilityAbove: 1 });
    expect(decide(exact, { value: 99, failsAt: ">" })).toEqual({ verdict: "above", probabilityAbove: 1 });
  });

  test("an end without bound says nothing on its side, and a content is surely above a limit of zero", () => {
    const open = held({ asymmetric: true, interval: [0, Number.POSITIVE_INFINITY] });
    expect(decide(open, { value: 90, failsAt: ">" })).toEqual({ verdict: "too-close", probabilityAbove: 0.5 });
    expect(decide(open, { value: 1000, failsAt: ">" })).toEqual({ verdict: "too-close", probabilityAbove: 0.5 });
    expect(decide(open, { value: 0, failsAt: ">" })).toEqual({ verdict: "above", probabilityAbove: 1 });
  });

  test("a sum is refused with a risk that is none, or against a limit that is no sum", () => {
    const both = { Pb: held(), Cd: held() };
    for (const risk of [0, 0.5, Number.NaN])
      expect(refusalCode(() => decideSum(both, sum, risk))).toBe("risk-out-of-range");
    expect(refusalCode(() => decideSum(both, { ...sum, sum: false }))).toBe("not-a-sum");
    expect(refusalCode(() => decideSum(both, { ...sum, value: null }))).toBe("not-a-sum");
  });

  test("a sum with one substance bounded and one without bound", () => {
    const bounded = held({ state: "not-quantified", value: null, u: null, upperBound: 20 });
    expect(decideSum({ Pb: held({ value: 40 }), Cd: bounded }, sum)).toMatchObject({ verdict: "below" });
    expect(decideSum({ Pb: held({ value: 40 }), Cd: { ...bounded, upperBound: null } }, sum).verdict).toBe(
      "cannot-say",
    );
    expect(decideSum({ Pb: held({ value: 40 }), Cd: held({ state: "no-readings" }) }, sum).verdict).toBe("cannot-say");
  });
});

describe("the limits of a page, in a fixed order", () => {
  const fit = { in: 0, unsure: 1, out: 2 };
  const places = [...new Set(allLimits.map((limit) => limit.jurisdiction))];
  const size = (value: number | null) => value ?? 0; // a rule without a number comes first

  test("by fit, by how little is open, what is laid upon objects first, then jurisdiction, number, id", () => {
    const subjects = itemCategories.flatMap((category, i) =>
      ageGroups.flatMap((ageGroup, j) =>
        [0, 1].map(
          (form): Subject => ({
            ...bowl,
            ...{ category, ageGroup, material: materials[(i + 3 * j + 5 * form) % materials.length]! },
            ...{ form: form === 0 ? "bulk" : "coating", mouthable: i % 2 === 0, foodContact: j % 2 === 0 },
          }),
        ),
      ),
    );
    let compared = 0;
    for (const subject of subjects)
      for (const kind of ["bulk-mass-fraction", "coating-mass-fraction", "coating-areal"] as const)
        for (const standing of ["applies", "for-reference", "other-quantity"]) {
          const shown = applicability(subject, kind, "Pb", "2026-11-24").filter((one) => one.applies === standing);
          for (const [i, one] of shown.slice(1).entries()) {
            const before = shown[i]!;
            const keys = (s: typeof one) => [
              ...[fit[s.fit], s.open, s.limit.target === "object" ? 0 : 1, places.indexOf(s.limit.jurisdiction)],
              size(s.limit.value),
            ];
            const [a, b] = [keys(before), keys(one)];
            const at = a.findIndex((key, k) => key !== b[k]);
            if (at >= 0) expect(a[at]!, `${before.limit.id}, ${one.limit.id}`).toBeLessThan(b[at]!);
            else expect(before.limit.id < one.limit.id).toBe(true);
            compared += 1;
          }
        }
    expect(compared).toBeGreaterThan(1000);
  });
});

describe("what a record leaves open", () => {
  test("a day of making that is none, or unreadable, bounds nothing", () => {
    for (const text of [null, "", "about 1990", "1990-13", "1990-00", "1990-02-30"])
      expect(madeBetween(text)).toBeNull();
  });

  test("a date of making as a form takes it, and what it says together with the day it was got", () => {
    const on = (madeOn: string | null) => makingProblem({ madeOn, gotOn: "2010-05-01" });
    expect([on(null), on("2010"), on("2010-05-01")]).toEqual([null, null, null]);
    expect(on("long ago")).toMatchObject({ code: "made-on-unreadable", found: "long ago" });
    expect(on("2011")).toMatchObject({ code: "made-after-got", allowed: "2010-05-01" });
    expect(makingOf({ madeOn: "2010", gotOn: "2010-05-01" })).toEqual({ first: "2010-01-01", last: "2010-05-01" });
    expect(makingOf({ madeOn: "2010", gotOn: "2011-05-01" })).toEqual({ first: "2010-01-01", last: "2010-12-31" });
  });

  test("a subject from a record without a day of making", () => {
    const item = { category: "bowl", ageGroup: "adult", foodContact: true, mouthable: false };
    const part = { material: "glaze", form: "coating" as const, accessible: true };
    expect(subjectOf({ item, specimen: { gotOn: "2026-01-02" }, part })).toEqual({ ...bowl, gotOn: "2026-01-02" });
    expect(subjectOf({ item, specimen: { madeOn: "1990", gotOn: null }, part })).toMatchObject({ madeOn: "1990" });
  });

  test("a limit without criteria has no object in its scope", () =>
    expect(scopeFit([], bowl)).toEqual({ fit: "out", reasons: [], ifs: [], grounds: [], unless: [] }));

  test("every limit that changed between two days far apart is told once, for some object", () => {
    const [from, to] = ["1970-01-01", "2030-01-01"];
    const told = new Set<string>();
    for (const category of itemCategories)
      for (const ageGroup of ageGroups)
        for (const material of ["glaze", "paint", "brass", "crystal", "pvc"])
          for (const kind of ["bulk-mass-fraction", "coating-mass-fraction"] as const) {
            const subject: Subject = {
              ...{ ...bowl, category, ageGroup, material, madeOn: null, gotOn: null },
              form: kind === "bulk-mass-fraction" ? "bulk" : "coating",
            };
            const changes = changesFor(subject, kind, "Pb", from, to);
            const keys = changes.map((one) => `${one.family} ${one.on}`);
            expect(new Set(keys).size).toBe(keys.length);
            for (const { before, after } of changes) {
              expect(before !== null || after !== null).toBe(true);
              for (const limit of [before, after]) if (limit) told.add(limit.id);
            }
          }
    const possible = changesBetween(from, to).map(({ limit }) => limit.id);
    expect(told.size).toBeGreaterThan(5);
    for (const id of told) expect(possible).toContain(id);
  });
});
