import { describe, expect, it } from "vitest";
import { isUnit, kindsOfUnit } from "@/lib/quantity/units.ts";
import { readChemicalName } from "@/lib/readings/chemical-symbol.ts";
import { readHeaderCell } from "@/lib/readings/read-header-cell.ts";
import { unitWords } from "@/lib/readings/unit-words.ts";

/** "value Pb ppm", "error Pb k2", "role number", "unknown". */
const inShort = (header: string): string => {
  const meaning = readHeaderCell(header);
  if (meaning.is === "unknown") return "unknown";
  if (meaning.is === "role") return `role ${meaning.role}`;
  const { is, chemical, unit, k, relative } = meaning;
  const parts = [is, chemical?.oxide ?? chemical?.symbol, unit?.unit, k ? `k${k}` : null, relative ? "relative" : null];
  return parts.filter(Boolean).join(" ");
};

describe("header grammar", () => {
  it.each([
    ["Pb (ppm)", "value Pb ppm"],
    ["Pb_ppm", "value Pb ppm"],
    ["Pb [mg/kg]", "value Pb mg/kg"],
    ["Lead (Pb) mg kg-1", "value Pb mg/kg"],
    ["PB conc. wt.%", "value Pb %"],
    ["Cadmium µg/cm2", "value Cd µg/cm²"],
    ["Cd μg/cm^2", "value Cd µg/cm²"], // Greek mu
    ["Blei", "value Pb"],
    ["Plomb (mg/kg)", "value Pb mg/kg"],
    ["plomo %", "value Pb %"],
    ["Molybdän-Gehalt ppm", "value Mo ppm"],
    ["étain", "value Sn"],
    ["Estaño (ppm)", "value Sn ppm"],
    ["PbO wt%", "value PbO %"],
    ["Fe2O3 (%)", "value Fe2O3 %"],
    ["Result (ppm)", "value ppm"],
    ["Pb ±", "error Pb"],
    ["Pb +/-", "error Pb"],
    ["PbErr", "error Pb"],
    ["Pb Error (1σ)", "error Pb k1"],
    ["Pb_2s", "error Pb k2"],
    ["Pb 3 sigma error ppm", "error Pb ppm k3"],
    ["Pb uncertainty (k=2)", "error Pb k2"],
    ["Blei Messunsicherheit 2-sigma", "error Pb k2"],
    ["erreur Plomb", "error Pb"],
    ["u(Pb)", "error Pb k1"],
    ["U(Pb)", "error Pb"],
    ["Pb SD", "error Pb k1"],
    ["Pb RSD %", "error Pb % relative"],
    ["±", "error"],
    ["Pb LOD", "limit Pb"],
    ["PbLOD", "limit Pb"],
    ["detection limit Pb (ppm)", "limit Pb ppm"],
    ["Nachweisgrenze Cd", "limit Cd"],
    ["MDL", "limit"],
    ["Pb <", "flag Pb"],
    ["Reading No.", "role number"],
    ["Mess-Nr.", "role number"],
    ["Datum/Uhrzeit", "role dateTime"],
    ["Time (s)", "role seconds"],
    ["Live Time [sec]", "role seconds"],
    ["Échantillon", "role sample"],
    ["Messstelle", "role spot"],
    ["Element", "role element"],
    ["Unit", "role unit"],
  ])("reads %s as %s", (header, meaning) => {
    expect(inShort(header)).toBe(meaning);
  });

  it.each(["Lead tester", "Tin can", "Gold rim", "Pb Cd", "x", "y", "dist.m", "Pb 95%", "limit", "", "Iron Pb", "12"])(
    "leaves %s alone: one word outside the grammar and the whole is unknown",
    (header) => {
      expect(inShort(header)).toBe("unknown");
    },
  );

  it("does not take long text for a header, however it repeats", () => {
    expect(inShort("Pb ".repeat(5000))).toBe("unknown");
  });
});

describe("chemical names", () => {
  it("read an oxide with the mass it holds: 207.2 / (207.2 + 15.999), by the atomic weights", () => {
    expect(readChemicalName("PbO")).toMatchObject({ symbol: "Pb", oxide: "PbO" });
    expect(readChemicalName("PbO")!.factor).toBeCloseTo(207.2 / 223.199, 12);
  });
  it.each(["Y", "K", "S", "as", "IN", "Co".toUpperCase()])("want company for %s", (word) => {
    expect(readChemicalName(word)?.needsCompany).toBe(true);
  });
  it.each(["No", "X", "Xx", "Tinker", "NO", "SO2", ""])("know no %s", (word) => {
    expect(readChemicalName(word)).toBeNull();
  });
});

it("every unit a file may write is one that lib/quantity converts, in a kind it belongs to", () => {
  for (const { unit, kinds } of unitWords) {
    expect(isUnit(unit)).toBe(true);
    for (const kind of kinds) expect(kindsOfUnit(unit)).toContain(kind);
  }
});
