import { describe, expect, it } from "vitest";
import { elementAttenuation } from "@/lib/attenuation/element-attenuation.ts";
import { massAttenuation, massAttenuationAt } from "@/lib/attenuation/mass-attenuation.ts";
import { hasTypicalRecipe, matterOf } from "@/lib/attenuation/matter.ts";
import { massAttenuationTable } from "@/lib/attenuation/tables/mass-attenuation.ts";
import { materials } from "@/lib/quantity/item-words.ts";
import made from "./xraylib-values.json" with { type: "json" };

const relative = (got: number, expected: number): number => Math.abs(got / expected - 1);
const source = `${made.madeWith}, values printed by commands/attenuation/make-tables.py`;

describe(`mass attenuation held to 1e-6 of ${source}`, () => {
  it("every element of the table, at energies drawn at random and 0.1 eV beside every edge", () => {
    expect(new Set(made.elements.map(([symbol]) => symbol))).toEqual(new Set(Object.keys(massAttenuationTable)));
    for (const [symbol, keV, expected] of made.elements as [string, number, number][])
      expect(relative(elementAttenuation(symbol, keV), expected), `${symbol} at ${keV} keV`).toBeLessThan(1e-6);
  });

  it.each(made.mixtures)("$name, by the mixture rule", ({ fractions, density, values }) => {
    for (const [keV, expected] of values as [number, number][])
      expect(
        relative(massAttenuationAt({ fractions: fractions as Record<string, number>, density }, keV), expected),
      ).toBeLessThan(1e-6);
  });

  it.each(made.materials)("$material, at every line", ({ material, fractions, lines }) => {
    if (!hasTypicalRecipe(material)) throw new Error(`${material} is not a listed material`);
    const ours = matterOf(material).fractions;
    expect(Object.keys(ours).sort()).toEqual(Object.keys(fractions).sort());
    for (const [symbol, fraction] of Object.entries(fractions)) expect(ours[symbol]).toBeCloseTo(fraction, 12);
    for (const [line, expected] of Object.entries(lines))
      expect(relative(massAttenuation(material, line as never), expected), line).toBeLessThan(1e-6);
  });

  it("covers every listed material but “other”", () => {
    expect(made.materials.map((m) => m.material).sort()).toEqual(materials.filter((m) => m !== "other").sort());
  });
});

describe("what is refused", () => {
  it.each([
    ["an element without a table", () => elementAttenuation("Xx", 10), "element-not-in-table"],
    ["a name that every object has", () => elementAttenuation("constructor", 10), "element-not-in-table"],
    ["an energy below the table", () => elementAttenuation("Pb", 3.99), "energy-outside-table"],
    ["an energy above the table", () => elementAttenuation("Pb", 60.01), "energy-outside-table"],
    ["no number at all", () => elementAttenuation("Pb", Number.NaN), "energy-outside-table"],
    ["a material of unknown recipe", () => massAttenuation("other", "Pb Lα"), "no-typical-material"],
    ["a line that is not listed", () => massAttenuation("glaze", "Pb Mα" as never), "unknown-line"],
    ["a density of zero", () => massAttenuation({ fractions: { Fe: 1 }, density: 0 }, "Pb Lα"), "density-not-positive"],
    [
      "half a recipe",
      () => massAttenuation({ fractions: { Fe: 0.5 }, density: 7 }, "Pb Lα"),
      "fractions-do-not-add-up",
    ],
    [
      "a share below zero",
      () => massAttenuation({ fractions: { Fe: 1.5, C: -0.5 }, density: 7 }, "Pb Lα"),
      "not-a-fraction",
    ],
  ])("%s", (_, call, code) => {
    expect(call).toThrow(expect.objectContaining({ code }));
  });
});

it("takes the value above an edge at the edge, and both ends of the table", () => {
  expect(elementAttenuation("Pb", 13.04)).toBeGreaterThan(2 * elementAttenuation("Pb", 13.03));
  for (const symbol of Object.keys(massAttenuationTable))
    for (const keV of [4, 60]) expect(elementAttenuation(symbol, keV)).toBeGreaterThan(0);
});
