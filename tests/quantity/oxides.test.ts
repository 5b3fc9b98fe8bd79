import { describe, expect, it } from "vitest";
import { atomicWeights } from "@/lib/quantity/atomic-weights.ts";
import { DomainError } from "@/lib/quantity/domain-error.ts";
import { elementInOxide, oxides } from "@/lib/quantity/oxides.ts";

describe("elementInOxide", () => {
  it.each([
    ["PbO", "Pb", 0.9283],
    ["SiO2", "Si", 0.4674],
    ["Al2O3", "Al", 0.5293],
    ["Fe2O3", "Fe", 0.6994],
    ["TiO2", "Ti", 0.5993],
    ["CaO", "Ca", 0.7147],
    ["P2O5", "P", 0.4364],
    ["As2O3", "As", 0.7574],
  ])("%s (conversion factors of rock analysis tables, from memory)", (oxide, element, factor) => {
    const r = elementInOxide(oxide);
    expect(r.element).toBe(element);
    expect(r.factor).toBeCloseTo(factor, 4);
  });

  it("reads every oxide of the list as its formula says", () => {
    for (const oxide of oxides) {
      const [, element, atoms, oxygens] = /^([A-Z][a-z]?)(\d*)O(\d*)$/.exec(oxide) ?? [];
      const mass = Number(atoms || 1) * (atomicWeights[element ?? ""] ?? Number.NaN);
      expect(elementInOxide(oxide).factor).toBeCloseTo(mass / (mass + Number(oxygens || 1) * 15.999), 12);
    }
  });

  it.each(["pbo", "PBO", "Pb", "", "XO", "constructor"])("refuses %j", (text) =>
    expect(() => elementInOxide(text)).toThrow(DomainError),
  );
});
