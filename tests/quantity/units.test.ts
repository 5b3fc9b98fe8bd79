import { describe, expect, it } from "vitest";
import { DomainError } from "@/lib/quantity/domain-error.ts";
import { canonicalUnit, type QuantityKind, quantityKinds } from "@/lib/quantity/kinds.ts";
import {
  convert,
  isUnit,
  kindsOfUnit,
  parseUnit,
  toCanonical,
  unitBelongs,
  units,
  unitsOfKind,
} from "@/lib/quantity/units.ts";
import { refusalCode } from "../support/refusal-code.ts";

describe("parseUnit", () => {
  it("reads no unit into capitals that are none", () => {
    expect(parseUnit("XRF")).toBeNull();
    expect(parseUnit("PPM/KG")).toBeNull();
  });

  it("knows every unit of the list by its own name", () => {
    for (const unit of units) expect(parseUnit(unit)).toBe(unit);
  });

  it.each([
    ["PPM", "ppm"],
    ["Ppm", "ppm"],
    [" ppm ", "ppm"],
    ["wt%", "%"],
    ["Wt %", "%"],
    ["WT%", "%"],
    ["% w/w", "%"],
    ["ug", "µg"],
    ["\u03bcg", "µg"],
    ["\u00b5g", "µg"],
    ["mcg", "µg"],
    ["UG", "µg"],
    ["MG", "mg"],
    ["ug/cm2", "µg/cm²"],
    ["UG/CM2", "µg/cm²"],
    ["ug/cm^2", "µg/cm²"],
    ["mg/cm2", "mg/cm²"],
    ["mg cm-2", "mg/cm²"],
    ["mg·cm⁻²", "mg/cm²"],
    ["mg kg-1", "mg/kg"],
    ["MG/KG", "mg/kg"],
    ["µg/sq ft", "µg/ft²"],
    ["µg/ml", "µg/mL"],
    ["inches", "in"],
    ["sec", "s"],
  ])("reads %j as %s", (text, unit) => expect(parseUnit(text)).toBe(unit));

  it.each(["", " ", "Mg", "M", "G", "S", "ppb", "m%", "counts", "cps", "constructor", "__proto__", "mg/", "1", "Kg"])(
    "does not guess at %j",
    (text) => expect(parseUnit(text)).toBeNull(),
  );
});

describe("convert", () => {
  it.each([
    [0.25, "%", "ppm", 2500],
    [0.07, "%", "ppm", 700],
    [1, "g/kg", "mg/kg", 1000],
    [90, "ppm", "%", 0.009],
    [1000, "µg/cm²", "mg/cm²", 1],
    [1, "mg/cm²", "mg/m²", 10000],
    [10, "µg/ft²", "µg/cm²", 10 / 929.0304],
    [1, "ft", "m", 0.3048],
    [1, "in", "mm", 25.4],
    [1, "ft²", "cm²", 929.0304],
    [1, "oz", "g", 28.349523125],
    [5, "µg/kg", "mg/kg", 0.005],
    [0.01, "mg/L", "µg/L", 10],
    [-3, "ppm", "mg/kg", -3],
  ])("%d %s is in %s %d (exact definitions, NIST SP 811)", (value, from, to, expected) =>
    expect(convert(value, from, to)).toBe(expected),
  );

  it("refuses across dimensions, unknown units and numbers that are not finite", () => {
    const code = (run: () => unknown) => {
      try {
        run();
      } catch (error) {
        return error instanceof DomainError ? error.code : "other";
      }
      return "none";
    };
    expect(code(() => convert(1, "ppm", "mg/cm²"))).toBe("dimension-mismatch");
    expect(code(() => convert(1, "mg", "mm"))).toBe("dimension-mismatch");
    expect(code(() => convert(1, "µg/mL", "mg/kg"))).toBe("dimension-mismatch");
    expect(code(() => convert(1, "ppb", "ppm"))).toBe("unknown-unit");
    for (const bad of [Number.NaN, Number.POSITIVE_INFINITY])
      expect(code(() => convert(bad, "%", "ppm"))).toBe("not-finite");
  });
});

describe("units of a kind", () => {
  it("holds the canonical unit of every kind", () => {
    for (const kind of Object.keys(quantityKinds) as QuantityKind[]) {
      expect(isUnit(canonicalUnit(kind))).toBe(true);
      expect(unitsOfKind(kind)).toContain(canonicalUnit(kind));
      expect(toCanonical(kind, 12.5, canonicalUnit(kind))).toBe(12.5);
    }
  });

  it("keeps areal loadings apart from mass fractions", () => {
    expect(unitBelongs("coating-areal", "ug/cm2")).toBe(true);
    expect(unitBelongs("coating-areal", "ppm")).toBe(false);
    expect(unitBelongs("bulk-mass-fraction", "mg/cm²")).toBe(false);
    expect(kindsOfUnit("ppm")).not.toContain("coating-areal");
    expect(() => toCanonical("coating-areal", 1, "ppm")).toThrow(DomainError);
    expect(toCanonical("coating-areal", 1000, "µg/cm²")).toBe(1);
    expect(refusalCode(() => toCanonical("hardness" as QuantityKind, 1, "ppm"))).toBe("unknown-kind");
  });
});
