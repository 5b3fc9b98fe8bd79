import { describe, expect, it } from "vitest";
import { elementFractions } from "@/lib/quantity/element-fractions.ts";
import { materials } from "@/lib/quantity/item-words.ts";
import { densityRangeOf, materialDensities } from "@/lib/quantity/material-densities.ts";
import { typicalMaterial, typicalMaterials } from "@/lib/quantity/typical-materials.ts";

describe("elementFractions", () => {
  it.each([
    ["PVC", "C2H3Cl", { H: 0.04838, C: 0.38436, Cl: 0.56726 }],
    ["polyethylene", "C2H4", { H: 0.143711, C: 0.856289 }],
  ])("%s (NISTIR 5632, Table 2, from memory)", (_, formula, fractions) => {
    const ours = elementFractions({ [formula]: 1 });
    for (const [symbol, fraction] of Object.entries(fractions)) expect(ours[symbol]).toBeCloseTo(fraction, 4);
  });

  it("24 % PbO is 22.28 % lead, 30 % is 27.85 % (crystal glass directive's grades in lead, by atomic weights)", () => {
    expect(elementFractions({ PbO: 0.24, SiO2: 0.76 })["Pb"]).toBeCloseTo(0.2228, 4);
    expect(elementFractions({ PbO: 0.3, SiO2: 0.7 })["Pb"]).toBeCloseTo(0.2785, 4);
  });

  it("adds an element that several ingredients hold, also twice in one formula", () => {
    const mixed = elementFractions({ SiO2: 0.5, CaCO3: 0.5 });
    expect(mixed["O"]).toBeCloseTo(0.5 * (31.998 / 60.083) + 0.5 * (47.997 / 100.086), 12);
    expect(elementFractions({ CH3COOH: 1 })).toEqual(elementFractions({ C2H4O2: 1 }));
  });

  it.each([
    [{ "SiO₂": 1 }, "not-a-formula"],
    [{ "": 1 }, "not-a-formula"],
    [{ Xx: 1 }, "unknown-element"],
    [{ SiO2: 0.5 }, "shares-do-not-add-up"],
    [{ SiO2: 1.5, CaO: -0.5 }, "not-a-fraction"],
    [{ SiO2: Number.NaN }, "not-a-fraction"],
    [{}, "shares-do-not-add-up"],
  ])("refuses %j", (ingredients, code) => {
    expect(() => elementFractions(ingredients as Record<string, number>)).toThrow(expect.objectContaining({ code }));
  });
});

describe("typical materials", () => {
  it("has an entry for every listed material but “other”", () => {
    expect(Object.keys(typicalMaterials).sort()).toEqual(materials.filter((m) => m !== "other").sort());
    expect(typicalMaterial("other")).toBeNull();
    expect(typicalMaterial("toString")).toBeNull();
  });

  it.each(Object.entries(typicalMaterials))(
    "%s: a whole recipe, a density within its material's range, and a source",
    (material, entry) => {
      const sum = Object.values(elementFractions(entry.ingredients)).reduce((a, b) => a + b, 0);
      expect(sum).toBeCloseTo(1, 12);
      const range = densityRangeOf(material);
      expect(entry.density).toBeGreaterThanOrEqual(range?.min ?? Number.NaN);
      expect(entry.density).toBeLessThanOrEqual(range?.max ?? Number.NaN);
      expect(entry.compositionSource.length).toBeGreaterThan(5);
    },
  );
});

describe("the list of densities", () => {
  it("has an id once, a density above zero, and a source", () => {
    expect(new Set(materialDensities.map((one) => one.id)).size).toBe(materialDensities.length);
    for (const { id, density, source } of materialDensities) {
      const [low, high] = "min" in density ? [density.min, density.max] : [density.value, density.value];
      expect(low, id).toBeGreaterThan(0);
      expect(high, id).toBeGreaterThanOrEqual(low);
      expect(source.length, id).toBeGreaterThan(10);
    }
  });

  it("covers every listed material but “other”", () => {
    for (const material of materials) expect(densityRangeOf(material) === null, material).toBe(material === "other");
    expect(densityRangeOf("cheese")).toBeNull();
  });

  it("a material's range is that of all its kinds, and no surer than the least sure of them", () => {
    expect(densityRangeOf("paint")).toEqual({ min: 1.2, max: 4, checked: "from memory" });
    expect(densityRangeOf("solder")).toEqual({ min: 7.265, max: 9.28, checked: "second-hand" });
    // The European rule on crystal names asks for 2.90 at least (69/493/EEC).
    expect(densityRangeOf("crystal")?.min).toBe(2.9);
  });
});
