import { describe, expect, test } from "vitest";
import { applicability, standingOf } from "@/lib/limits/applicability.ts";
import { madeBetween } from "@/lib/limits/iso-day.ts";
import { findLimit } from "@/lib/limits/limits-in-force.ts";
import { allLimits } from "@/lib/limits/tables/all-limits.ts";
import type { Subject } from "@/lib/limits/types.ts";
import { ageGroups, itemCategories, materials } from "@/lib/quantity/item-words.ts";
import { type QuantityKind, quantityKinds } from "@/lib/quantity/kinds.ts";

const today = "2026-11-24";
/** Invented objects. */
const mug: Subject = {
  category: "mug-or-cup",
  ageGroup: "adult",
  foodContact: true,
  mouthable: false,
  material: "glaze",
  form: "coating",
  accessible: true,
  madeOn: null,
};
const toy: Subject = {
  ...mug,
  category: "toy",
  ageGroup: "child-3-to-12",
  foodContact: false,
  material: "abs",
  form: "bulk",
  madeOn: "2020",
};
const painted: Subject = { ...toy, material: "paint", form: "coating" };
const standing = (id: string, one: Subject, kind: QuantityKind = "bulk-mass-fraction", element = "Pb", day = today) =>
  standingOf(findLimit(id)!, one, kind, element, day);
const ids = (one: Subject, kind: QuantityKind, element: string, applies: string, day = today) =>
  applicability(one, kind, element, day)
    .filter((s) => s.applies === applies)
    .map((s) => s.limit.id);

describe("the scope matters more than the number", () => {
  test("an adult's mug: the children's 100 ppm is for reference only (15 USC 1278a)", () => {
    expect(standing("CPSIA-100", mug)).toMatchObject({ applies: "for-reference", fit: "out" });
    expect(ids(mug, "bulk-mass-fraction", "Pb", "applies")).toEqual([]);
  });

  test("an adult's painted mug: 90 ppm in paint is for children's goods and furniture (16 CFR 1303)", () => {
    const one = { ...mug, material: "paint" };
    expect(standing("CPSC-PAINT-2009", one, "coating-mass-fraction")?.applies).toBe("for-reference");
  });

  test("a child's toy: the body by 1278a, its paint by 16 CFR 1303, never the one for the other", () => {
    expect(standing("CPSIA-100", toy)?.applies).toBe("applies");
    expect(standing("CPSIA-100", painted)?.fit).toBe("out");
    expect(standing("CPSC-PAINT-2009", painted, "coating-mass-fraction")?.applies).toBe("applies");
    expect(standing("CPSC-PAINT-2009", toy, "coating-mass-fraction")?.fit).toBe("out");
  });

  test("glaze and plating count as the body, not as paint (16 CFR 1303)", () => {
    const childMug: Subject = { ...mug, ageGroup: "child-3-to-12", madeOn: "2020" };
    expect(standing("CPSIA-100", childMug)?.applies).toBe("applies");
    expect(standing("CPSC-PAINT-2009", childMug, "coating-mass-fraction")?.fit).toBe("out");
  });

  test("a part nobody can reach is out (16 CFR 1500.87)", () => {
    expect(standing("CPSIA-100", { ...toy, accessible: false })?.fit).toBe("out");
  });

  test("Minnesota covers adult goods: mugs, pans and key rings (Minn. Stat. 325E.3892)", () => {
    const keyRing: Subject = {
      ...mug,
      category: "jewellery-or-key-ring",
      foodContact: false,
      material: "brass",
      form: "bulk",
    };
    expect(ids(keyRing, "bulk-mass-fraction", "Pb", "applies")).toEqual(["MN-PB"]);
    expect(standing("MN-PB", keyRing, "bulk-mass-fraction", "Pb", "2023-06-30")).toBeNull();
  });

  test("what a child can mouth (REACH entry 63 paragraph 7): other EU acts are left out, brass and keys left open", () => {
    const ornament: Subject = {
      ...toy,
      category: "ornament",
      ageGroup: "adult",
      mouthable: true,
      material: "zinc-alloy",
    };
    expect(standing("EU-63-MOUTH", ornament)?.applies).toBe("applies");
    expect(standing("EU-63-MOUTH", { ...ornament, mouthable: false })?.fit).toBe("out");
    expect(standing("EU-63-MOUTH", { ...ornament, foodContact: true })?.fit).toBe("out");
    expect(standing("EU-63-MOUTH", { ...ornament, material: "brass" })?.fit).toBe("unsure");
    expect(standing("EU-63-MOUTH", { ...ornament, category: "jewellery-or-key-ring" })?.fit).toBe("unsure");
    expect(standing("EU-63-MOUTH", toy)?.fit).toBe("out");
  });

  test("crystal is out of the EU's jewellery limit, and has no exemption in the US children's one", () => {
    const bead: Subject = { ...toy, category: "jewellery-or-key-ring", material: "crystal" };
    expect(standing("EU-63-JEWEL", bead)?.fit).toBe("out");
    expect(standing("CPSIA-100", bead)?.applies).toBe("applies");
  });
});

describe("dates of making", () => {
  test("not known: the limit stands with the date as a condition, said in words", () => {
    const one = standing("CPSIA-100", { ...toy, madeOn: null });
    expect(one?.applies).toBe("applies");
    expect(one?.why).toContain("if it was made from 15 August 2011, and when it was made is not known");
  });
  test("a year that the day falls in leaves it open, in words", () => {
    const one = standing("CPSIA-100", { ...toy, madeOn: "2011" });
    expect(one?.why).toContain("it is known only that it was made in 2011");
  });
  test("paint of 1975 is held beside the number of its time (16 CFR 1500.17(a)(6))", () => {
    const old = { ...painted, madeOn: "1975" };
    expect(ids(old, "coating-mass-fraction", "Pb", "applies")).toEqual(["FHSA-PAINT-1974"]);
    expect(standing("CPSC-PAINT-2009", old, "coating-mass-fraction")).toMatchObject({ fit: "out" });
  });
  test("put on the market (REACH): made since is in, made before is left open", () => {
    const ornament: Subject = { ...toy, category: "ornament", mouthable: true, material: "zinc-alloy" };
    expect(standing("EU-63-MOUTH", { ...ornament, madeOn: "2017" })?.fit).toBe("in");
    expect(standing("EU-63-MOUTH", { ...ornament, madeOn: "2010" })?.fit).toBe("unsure");
    expect(standing("EU-63-MOUTH", { ...ornament, madeOn: null })?.why).toContain("when that was is not known");
  });
});

describe("the day it was got bounds the day it was made, and sold (policy)", () => {
  const got = (gotOn: string | null, madeOn: string | null = null) => ({ ...toy, madeOn, gotOn });
  test.each([
    // 15 USC 1278a; Pub. L. 112-28 section 1: 300 ppm to goods made up to 14 August 2011, 100 ppm to those made since.
    ["2026-09-12", null, ["CPSIA-100"]],
    ["2011-08-14", null, ["CPSIA-300"]],
    ["2011-08-15", null, ["CPSIA-100"]],
    ["2010-05-01", "2009-12", ["CPSIA-300"]],
    [null, null, ["CPSIA-100"]],
  ])("got %s, made %s", (gotOn, madeOn, expected) => {
    const applying = ids(got(gotOn, madeOn), "bulk-mass-fraction", "Pb", "applies");
    expect(applying.filter((id) => id.startsWith("CPSIA"))).toEqual(expected);
  });
  test("a year that spans a change shows both numbers, each with its condition", () => {
    const one = got("2026-09-12", "2011");
    expect(ids(one, "bulk-mass-fraction", "Pb", "applies")).toEqual(expect.arrayContaining(["CPSIA-300", "CPSIA-100"]));
    for (const id of ["CPSIA-300", "CPSIA-100"])
      expect(standing(id, one)?.why).toContain("it is known only that it was made in 2011");
  });
  test("said in words: made by, made in a month, got before it was put on the market", () => {
    expect(standing("CPSIA-100", got("2010-05-01"))?.why).toContain("made by 1 May 2010, when it was got");
    expect(standing("CPSIA-100", got("2026-01-01", "2019-03"))?.why).toContain("this was made in March 2019");
    const ornament: Subject = { ...got("2015-02-01"), category: "ornament", mouthable: true, material: "zinc-alloy" };
    expect(standing("EU-63-MOUTH", ornament)).toMatchObject({ fit: "out" });
    expect(standing("EU-63-MOUTH", ornament)?.why).toContain("this was got on 1 February 2015, before that");
  });
  test.each([
    ["2010", { first: "2010-01-01", last: "2010-12-31" }],
    ["2012-02", { first: "2012-02-01", last: "2012-02-29" }],
    ["2012-02-29", { first: "2012-02-29", last: "2012-02-29" }],
    ["2011-02-29", null],
    ["2011-13", null],
    ["about 1990", null],
    [null, null],
  ])("%s means %o", (madeOn, expected) => {
    expect(madeBetween(madeOn)).toEqual(expected);
  });
});

describe("like with like", () => {
  test("a mug's glaze needs a leach test for the food limits, and the page says so", () => {
    const tests = applicability(mug, "bulk-mass-fraction", "Pb", today).filter((s) => s.applies === "other-quantity");
    expect(tests.map((s) => s.limit.id)).toEqual(
      expect.arrayContaining(["FDA-PB-CUP", "EU-CER-2-PB", "CA-GLAZE-CUP-PB"]),
    );
    for (const one of tests) expect(one.why).toContain("It would need a leach test in a laboratory");
  });
  test("a total below a migration limit cannot release more; above, it says nothing", () => {
    expect(standing("EU-TOY-PB-SCRAPED", toy)?.why).toContain("A total content below that number cannot release more");
    expect(standing("EU-63-MIGR", { ...toy, mouthable: true })?.why).not.toContain("A total content below");
  });
  test("release by area and content of a coating are not turned into one another", () => {
    expect(standing("EU-27-NI", toy, "migration", "Ni")?.applies).toBe("other-quantity"); // µg/cm²/week beside mg/kg
    expect(standing("EU-CER-1-PB", mug, "leachate")?.applies).toBe("other-quantity"); // mg/dm² beside µg/mL
    expect(standing("CPSC-PAINT-2009", painted, "coating-areal")?.applies).toBe("other-quantity");
  });
  test("total chromium is not hexavalent chromium", () => {
    const one = standing("EU-TOY-CRVI-SCRAPED", toy, "migration", "Cr");
    expect(one?.applies).toBe("other-quantity");
    expect(one?.why).toContain("hexavalent chromium");
  });
  test("a leach result of a mug is held beside the guidance, which says it is guidance", () => {
    const one = standing("FDA-PB-CUP", mug, "leachate");
    expect(one?.applies).toBe("applies");
    expect(one?.why).toContain("guidance, not a binding limit");
  });
  test("settlements and voluntary standards are never said to apply", () => {
    expect(standing("CA-P65-TABLE-HOLLOW", mug, "leachate")).toMatchObject({ applies: "for-reference", fit: "in" });
    expect(standing("ISO-8124-3-PB", toy, "migration")).toMatchObject({ applies: "for-reference", fit: "in" });
  });
});

describe("what a page shows", () => {
  const everything = itemCategories.flatMap((category) =>
    ageGroups.flatMap((ageGroup) =>
      materials.flatMap((material) =>
        (["bulk", "coating"] as const).map(
          (form): Subject => ({ ...mug, category, ageGroup, material, form, foodContact: material === "glaze" }),
        ),
      ),
    ),
  );

  test("no sentence ever says legal, illegal or safe, and each is a sentence", () => {
    for (const one of everything)
      for (const element of ["Pb", "Cd"])
        for (const { why } of applicability(one, "bulk-mass-fraction", element, today)) {
          expect(why).not.toMatch(/\b(il)?legal|\bunsafe|\bsafe\b|undefined|null|\.\./);
          expect(why).toMatch(/^[A-Z].*\.$/s);
        }
  });

  test("few for reference, in one fixed order, each limit once", () => {
    for (const one of everything) {
      const shown = applicability(one, "bulk-mass-fraction", "Pb", today);
      expect(shown.filter((s) => s.applies === "for-reference").length).toBeLessThanOrEqual(4);
      expect(shown.filter((s) => s.applies === "other-quantity").length).toBeLessThanOrEqual(6);
      expect(new Set(shown.map((s) => s.limit.id)).size).toBe(shown.length);
      const order = { applies: 0, "for-reference": 1, "other-quantity": 2 };
      expect(shown.map((s) => order[s.applies])).toEqual(shown.map((s) => order[s.applies]).sort());
    }
    expect(applicability(toy, "bulk-mass-fraction", "Pb", today)).toEqual(
      applicability({ ...toy }, "bulk-mass-fraction", "Pb", today),
    );
  });

  test("only limits laid upon objects, and only in their own quantity and element, are said to apply", () => {
    for (const limit of allLimits)
      for (const kind of Object.keys(quantityKinds) as QuantityKind[])
        for (const element of ["Pb", "Cd", "Cr", "Br"]) {
          const one = standingOf(limit, toy, kind, element, today);
          if (one?.applies !== "applies") continue;
          expect(limit.target).toBe("object");
          expect(limit.quantity).toBe(kind);
          expect(limit.substances).toContain(element);
        }
  });

  test("an element with no limit gives an empty list", () => {
    expect(applicability(toy, "bulk-mass-fraction", "Fe", today)).toEqual([]);
  });

  test("paint in housing is for reference beside an areal reading of a toy (40 CFR 745.103)", () => {
    expect(ids(painted, "coating-areal", "Pb", "for-reference")).toEqual(["LBP-AREAL-CFR", "LBP-AREAL-STATUTE"]);
  });
});
