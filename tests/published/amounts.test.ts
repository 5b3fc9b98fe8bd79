import { describe, expect, it } from "vitest";
import { alloyDensity } from "@/lib/amounts/alloy-density.ts";
import { leachedInto, overDailyIntake } from "@/lib/amounts/arithmetic-comparisons.ts";
import { contentOfCoat, loadingOfCoat } from "@/lib/amounts/coating.ts";
import { areaComparators, massComparators } from "@/lib/amounts/comparators.ts";
import { halvingLadder, halvingsTo } from "@/lib/amounts/halving.ts";
import { elementMass } from "@/lib/amounts/mass.ts";
import { findDensityMaterial, metalDensities } from "@/lib/amounts/materials-table.ts";
import { areaAtLoading, loadingOnArea, massOnArea } from "@/lib/amounts/spread.ts";
import type { DensitySource, GeometryShape, UncertainInput } from "@/lib/amounts/types.ts";
import { areaWeightedLoading, subsampleWeightedMean, wipedArea, wipeLoading } from "@/lib/amounts/wipe-loading.ts";
import { referenceLoadings } from "@/lib/limits/reference-loadings.ts";
import type { Outcome } from "@/lib/quantity/problem.ts";
import { convert } from "@/lib/quantity/units.ts";

/**
 * Figures are as printed, so each is held to half a unit of its last printed digit. "Our arithmetic" marks figures worked out for
 * the registry from the constants named; the constants carry the source.
 */
const run = { seed: 1 };
const exact = (value: number): UncertainInput => ({ value, u: 0 });
const get = <T>(outcome: Outcome<T>): T => {
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return outcome.value;
};
const printed = (value: number, text: string) => {
  const decimals = /\.(\d+)$/.exec(text)?.[1]?.length ?? 0;
  expect(Math.abs(value - Number(text)), `${value} against ${text}`).toBeLessThanOrEqual(0.5000001 * 10 ** -decimals);
};
const alloy: DensitySource = { from: "alloy", element: "Pb", rest: "Sn" };
const density = (value: number): DensitySource => ({ from: "entered", density: exact(value) });
const piece = (shape: GeometryShape, sizes: Record<string, number>, percent: number, source: DensitySource = alloy) =>
  get(
    elementMass(
      {
        by: "geometry",
        shape,
        dimensions: Object.fromEntries(Object.entries(sizes).map(([name, value]) => [name, exact(value)])),
        density: source,
        content: exact(percent * 10_000),
      },
      { ...run, draws: 1000 },
    ),
  );
const areaOf = (mg: number, loading: number) =>
  get(areaAtLoading({ mass: exact(mg), loading: exact(loading) }, run)).value;
const massFor = (ft2: number, loading: number) =>
  get(massOnArea({ area: exact(ft2), loading: exact(loading) }, run)).value;
const loadingFor = (mg: number, ft2: number) => get(loadingOnArea({ mass: exact(mg), area: exact(ft2) }, run)).value;

describe("exact factors of units (NIST SP 811 (2008) appendix B; international yard and pound 1959; from memory)", () => {
  it.each([
    [1, "in", "mm", 25.4],
    [1, "ft", "m", 0.3048],
    [1, "ft²", "m²", 0.09290304],
    [1, "ft²", "cm²", 929.0304],
    [1, "oz", "g", 28.349523125],
  ])("%d %s in %s is %d", (value, from, to, expected) => expect(convert(value, from, to)).toBe(expected));
  it("1 in² is 6.4516 cm²", () => expect(convert(1, "in", "cm") ** 2).toBeCloseTo(6.4516, 12));
  it("1 µg/ft² is 10.7639104167 µg/m²", () =>
    expect(1000 * convert(1, "µg/ft²", "mg/m²")).toBeCloseTo(10.7639104167, 10));
  it("1 mg/cm² is 929 030.4 µg/ft², so 929.0304 mg/ft²", () =>
    expect(convert(1, "mg/cm²", "µg/ft²")).toBeCloseTo(929_030.4, 6));
});

describe("loadings in other units (our arithmetic from 1 ft² = 0.09290304 m² exactly)", () => {
  it.each([
    [5, "0.05382", "0.00538"],
    [10, "0.10764", "0.01076"],
    [38, "0.40903", "0.04090"],
    [40, "0.43056", "0.04306"],
    [100, "1.07639", "0.10764"],
    [250, "2.69098", "0.26910"],
    [400, "4.30556", "0.43056"],
  ])("%d µg/ft² is %s mg/m² and %s µg/cm²", (value, perSquareMetre, perSquareCentimetre) => {
    printed(convert(value, "µg/ft²", "mg/m²"), perSquareMetre);
    printed(convert(value, "µg/ft²", "µg/cm²"), perSquareCentimetre);
  });
  it.each([
    [40, "0.43"],
    [250, "2.7"],
    [400, "4.3"],
    [25, "0.27"],
  ])("24 CFR 35.1320 rounds %d µg/ft² to %s mg/m²", (value, rounded) =>
    printed(convert(value, "µg/ft²", "mg/m²"), rounded),
  );
  it("24 CFR 35.1320 gives 1.4 mg/m² for 125 µg/ft²: that is 1.345 rounded up, not to nearest", () => {
    expect(convert(125, "µg/ft²", "mg/m²")).toBeCloseTo(1.3455, 4);
    expect(Math.ceil(10 * convert(125, "µg/ft²", "mg/m²")) / 10).toBe(1.4);
  });
  it("1 µg/ft² is 0.0107639 mg/m², 1.07639 ng/cm²; 1 mg/cm² is 0.92903 g/ft²", () => {
    printed(convert(1, "µg/ft²", "mg/m²"), "0.0107639");
    printed(1000 * convert(1, "µg/ft²", "µg/cm²"), "1.07639");
    printed(convert(1, "mg/cm²", "µg/ft²") / 1e6, "0.92903");
  });
});

describe("mass on an area (court 78 × 36 ft, pitch 105 × 68 m: pages on court sizes, second-hand; our arithmetic)", () => {
  it.each([
    ["tennis-court", "2808"],
    ["football-pitch", "76854"],
  ])("%s is %s ft²", (id, ft2) => printed(areaComparators.find((one) => one.id === id)?.area ?? Number.NaN, ft2));
  it.each([
    [2808, 10, "28.08"],
    [2808, 5, "14.04"],
    [2808, 40, "112.32"],
    [2808, 100, "280.8"],
    [76_854, 5, "384.27"],
    [76_854, 10, "768.54"],
    [76_854, 40, "3074.16"],
  ])("%d ft² at %d µg/ft² is %s mg", (ft2, loading, mg) => printed(massFor(ft2, loading), mg));
  it.each([
    ["us-cent", "32.53"],
    ["dime", "29.51"],
    ["euro-cent", "29.93"],
  ])("the mass of the coin %s over a pitch is %s µg/ft² (US Mint; euro tables)", (id, loading) =>
    printed(loadingFor(massComparators.find((one) => one.id === id)?.mass ?? Number.NaN, 76_854), loading),
  );
});

describe("halving (our arithmetic)", () => {
  it("40 to 10 µg/ft² in 2 halvings, 40 to 5 in 3", () => {
    expect(halvingsTo(40, 10)).toBe(2);
    expect(halvingsTo(40, 5)).toBe(3);
  });
  it("3.07416 g over 76 854 ft²: 1.53708, 0.76854, 0.38427, 0.192135 g at 20, 10, 5, 2.5 µg/ft²", () => {
    const ladder = halvingLadder({ mass: 3074.16, loading: loadingFor(3074.16, 76_854) }, 2.5);
    expect(ladder.map((step) => step.mass)).toEqual([3074.16, 1537.08, 768.54, 384.27, 192.135]);
    for (const [i, loading] of [40, 20, 10, 5, 2.5].entries()) expect(ladder[i]?.loading).toBeCloseTo(loading, 10);
  });
});

describe("an outdoor sports field with its end zones (common practice, no source)", () => {
  it("57 600 ft² × 38 µg/ft² = 2.1888 g", () => expect(massFor(57_600, 38)).toBeCloseTo(2188.8, 9));
  it("halves of it give 19, 9.5 and 4.75 µg/ft²", () => {
    const ladder = halvingLadder({ mass: 2188.8, loading: loadingFor(2188.8, 57_600) }, 5);
    expect(ladder.map((step) => step.loading)).toEqual([38, 19, 9.5, 4.75]);
  });
  it("40–60 % by mass is 400 000–600 000 ppm", () =>
    expect([convert(40, "%", "ppm"), convert(60, "%", "ppm")]).toEqual([400_000, 600_000]));
});

describe("density of tin-lead alloys by 1/ρ = Σ w/ρ", () => {
  const tinLead = (percentLead: number, lead = 11.34, tin = 7.29) =>
    alloyDensity([
      { w: percentLead / 100, density: lead },
      { w: 1 - percentLead / 100, density: tin },
    ]);
  it.each([
    [37, "8.400"],
    [40, "8.505"],
    [45, "8.686"],
    [50, "8.875"],
    [55, "9.072"],
    [60, "9.278"],
    [65, "9.494"],
    [10, "7.560"],
  ])("%d %% lead: %s g/cm³ (our arithmetic from 11.34 and 7.29)", (lead, expected) => printed(tinLead(lead), expected));
  it.each([
    [37, 8.4],
    [40, 8.5],
    [45, 8.68],
    [50, 8.87],
    [55, 9.07],
    [60, 9.28],
    [10, 7.55],
  ])("%d %% lead: within 0.03 of %d g/cm³ (published table of solder alloys)", (lead, table) =>
    expect(Math.abs(tinLead(lead) - table)).toBeLessThan(0.03),
  );
  it.each([
    [37, "8.4188"],
    [40, "8.5236"],
    [50, "8.8927"],
  ])("%d %% lead from 11.35 and 7.31 (NIST SRD 126 Table 1, from memory): %s g/cm³", (lead, expected) =>
    printed(tinLead(lead, 11.35, 7.31), expected),
  );
  it.each([
    [37, 8.4],
    [40, 8.5],
    [50, 8.9],
  ])("%d %% lead: within 0.03 of the handbooks' %d g/cm³ (from memory)", (lead, handbook) =>
    expect(Math.abs(tinLead(lead) - handbook)).toBeLessThan(0.03),
  );
  it("never the linear mean: 50/50 would be 9.315, 5 % too high (our arithmetic)", () =>
    printed((11.34 + 7.29) / 2 / tinLead(50) - 1, "0.05"));
  it("metals agree with NIST SRD 126 Table 1 (from memory) within 0.03 g/cm³", () => {
    const nist: Record<string, number> = { Al: 2.699, Fe: 7.874, Cu: 8.96, Zn: 7.133, Sn: 7.31, Pb: 11.35 };
    for (const [metal, value] of Object.entries(nist))
      expect(Math.abs((metalDensities[metal] ?? Number.NaN) - value)).toBeLessThan(0.03);
  });
  it("the materials list holds the published table", () => {
    expect(findDensityMaterial("solder-60-40")?.density).toEqual({ value: 8.5, u: 0.03 });
    expect(findDensityMaterial("solder-63-37")?.density).toEqual({ value: 8.4, u: 0.03 });
  });
});

describe("pieces of solder (densities by the rule; coin sizes: US Mint, and euro tables second-hand; our arithmetic)", () => {
  it("10 mm³ of 60Sn/40Pb: 0.08505 g of alloy, 34.02 mg of lead", () => {
    const { part, mass } = piece("box", { length: 10, width: 1, height: 1 }, 40);
    printed(part?.value ?? Number.NaN, "0.08505");
    printed(mass.value, "34.02");
  });
  it.each([
    [5, "6804"],
    [10, "3402"],
    [40, "850.5"],
  ])("34.02 mg comes to %d µg/ft² over %s ft²", (loading, ft2) => printed(areaOf(34.02, loading), ft2));
  it("half a ball 3 mm across: 0.0070686 cm³, 24.05 mg", () => {
    for (const half of [
      piece("half-ellipsoid", { length: 3, width: 3, height: 1.5 }, 40),
      piece("cap", { baseDiameter: 3, height: 1.5 }, 40),
    ]) {
      printed(half.volume?.value ?? Number.NaN, "0.0070686");
      printed(half.mass.value, "24.05");
    }
  });
  it("a ball 2 mm across: 0.0041888 cm³, 14.25 mg at 40 %, 23.32 mg at 60 %", () => {
    printed(piece("sphere", { diameter: 2 }, 40).volume?.value ?? Number.NaN, "0.0041888");
    printed(piece("sphere", { diameter: 2 }, 40).mass.value, "14.25");
    printed(piece("sphere", { diameter: 2 }, 60).mass.value, "23.32");
  });
  it.each([
    ["dime", "0.3401", "1.157", "1.509", "3.857"],
    ["us-cent", "0.4332", "1.474", "1.922", "4.913"],
    ["euro-cent", "0.3463", "1.178", "1.537", "3.928"],
  ])(
    "a disc of the size of %s: %s cm³, %s g at 40 %%, %s g at 50 %%, %s g of pure lead",
    (id, cm3, forty, fifty, pure) => {
      const coin = massComparators.find((one) => one.id === id)?.coin;
      if (coin === undefined) throw new Error("no such coin");
      printed(piece("disc", coin, 40).volume?.value ?? Number.NaN, cm3);
      printed(piece("disc", coin, 40).mass.value / 1000, forty);
      printed(piece("disc", coin, 50).mass.value / 1000, fifty);
      printed(piece("disc", coin, 100, density(11.34)).mass.value / 1000, pure);
    },
  );
});

describe("coats: ppm = 10⁷·L/(t·ρ) (our arithmetic)", () => {
  const coat = (thickness: number) => ({
    thickness: exact(thickness),
    density: { from: "entered" as const, density: exact(1.5) },
  });
  it.each([
    [1, 100, "66667"],
    [1, 50, "133333"],
    [0.00135, 100, "90"],
  ])("%d mg/cm² in %d µm at 1.5 g/cm³ is %s ppm", (loading, thickness, ppm) =>
    printed(get(contentOfCoat(exact(loading), coat(thickness), run)).value, ppm),
  );
  it.each([
    [90, 25, "0.3375"],
    [600, 25, "2.25"],
    [5000, 100, "75"],
  ])("%d ppm in %d µm is %s µg/cm²", (ppm, thickness, areal) =>
    printed(1000 * get(loadingOfCoat(exact(ppm), coat(thickness), run)).value, areal),
  );
  it("25 cm² × 1.0 mg/cm² = 25 mg", () =>
    expect(get(elementMass({ by: "coat", area: exact(25), loading: exact(1) }, run)).mass.value).toBe(25));
  it("the wall of a cylinder 8 cm across and 9.5 cm high, 238.76 cm², × 0.05 mg/cm² = 11.94 mg", () => {
    const area = Math.PI * 8 * 9.5;
    printed(area, "238.76");
    printed(get(elementMass({ by: "coat", area: exact(area), loading: exact(0.05) }, run)).mass.value, "11.94");
  });
});

describe("bulk by weight (our arithmetic)", () => {
  it.each([
    [100, 35],
    [20_000, 7000],
  ])("350 g at %d ppm holds %d mg", (ppm, mg) =>
    expect(get(elementMass({ by: "weighed", weight: exact(350), content: exact(ppm) }, run)).mass.value).toBeCloseTo(
      mg,
      9,
    ),
  );
});

describe("dust wipes", () => {
  const loading = (found: number, areaFt2: number) => get(wipeLoading({ found, areaFt2 })).loading;
  it("areas 0.979 and 0.478 ft² (an EPA sampling technician's training form)", () => {
    printed(wipedArea(11.625, 12.125), "0.979");
    printed(wipedArea(23.9375, 2.875), "0.478");
  });
  it("12 µg on 1 ft² is 12.0; 12 on 0.979 is 12.26; 3.0 on 0.478 is 6.28; 20 on 0.5 is 40.0 (our arithmetic)", () => {
    printed(loading(12, wipedArea(12, 12)), "12.0");
    printed(loading(12, wipedArea(11.625, 12.125)), "12.26");
    printed(loading(3, wipedArea(23.9375, 2.875)), "6.28");
    printed(loading(20, 0.5), "40.0");
  });
  it("a reporting limit of 5 µg is < 5 µg/ft² on 1 ft² and < 2.5 on 2 ft² (our arithmetic)", () => {
    expect(get(wipeLoading({ found: 5, below: true, areaFt2: 1 }))).toEqual({ loading: 5, below: true });
    expect(get(wipeLoading({ found: 5, below: true, areaFt2: 2 }))).toEqual({ loading: 2.5, below: true });
  });
  it("area-weighted mean of 10/1, 4/0.5 and 3/0.25 is 17/1.75 = 9.71; the plain mean is 10.0 (our arithmetic)", () => {
    const wipes = [
      { found: 10, areaFt2: 1 },
      { found: 4, areaFt2: 0.5 },
      { found: 3, areaFt2: 0.25 },
    ];
    printed(get(areaWeightedLoading(wipes)).loading, "9.71");
    printed(wipes.reduce((sum, one) => sum + loading(one.found, one.areaFt2), 0) / 3, "10.0");
  });
  it("single 60, composite of three 100, composite of four 110: weighted mean 100 (40 CFR 745.63)", () =>
    expect(
      get(
        subsampleWeightedMean([
          { loading: 60, subsamples: 1 },
          { loading: 100, subsamples: 3 },
          { loading: 110, subsamples: 4 },
        ]),
      ),
    ).toBe(100));
});

describe("leach results and daily benchmarks as arithmetic (benchmark 2.2 µg/day: FDA interim reference level for children, 2022)", () => {
  it("350 mL at 0.5 µg/mL is 175 µg, 79.5 times the benchmark", () => {
    const leached = get(leachedInto(0.5, 350));
    expect(leached).toEqual({ label: "leached-into-volume", value: 175, unit: "µg" });
    printed(get(overDailyIntake(leached.value / 1000, 2.2)).value, "79.5");
  });
  it("500 mL at 2.0 µg/mL is 1000 µg", () => expect(get(leachedInto(2, 500)).value).toBe(1000));
});

describe("reference loadings (66 FR 1206; 84 FR 32632; 86 FR 983; 89 FR 89416)", () => {
  it("are the limits' own numbers and dates", () => {
    const of = (surface: string) =>
      referenceLoadings()
        .filter((one) => one.surface === surface)
        .map((one) => [one.value, one.from]);
    expect(of("floor")).toEqual([
      [40, "2001-03-06"],
      [10, "2020-01-06"],
      [5, "2025-01-13"],
    ]);
    expect(of("sill")).toEqual([
      [250, "2001-03-06"],
      [100, "2020-01-06"],
      [40, "2025-01-13"],
    ]);
    expect(of("trough")).toEqual([
      [400, "2001-03-06"],
      [400, "2021-03-08"],
      [100, "2025-01-13"],
    ]);
  });
});
