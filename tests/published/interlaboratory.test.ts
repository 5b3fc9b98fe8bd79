import { describe, expect, it } from "vitest";
import { cochran } from "@/lib/statistics/cochran.ts";
import { fUpperTail, tUpperTail } from "@/lib/statistics/distributions.ts";
import { moments } from "@/lib/statistics/moments.ts";
import { nestedAnova } from "@/lib/statistics/nested-anova.ts";
import { oneWayAnova } from "@/lib/statistics/one-way-anova.ts";
import { repeatability } from "@/lib/statistics/repeatability.ts";
import { scores } from "@/lib/statistics/scores.ts";
import { byLab, printed, printedList, worked } from "./printed.ts";

const level = (labs: readonly (readonly (readonly number[])[])[], index: number) =>
  labs.map((lab) => lab[index] as readonly number[]);

describe("ISO 5725-2:1994 Annex B.1, sulfur in coal, 8 laboratories, unequal numbers [from memory]", () => {
  it.each([
    [1, "0.690", "0.015", "0.026", "0.6904 0.0151 0.0216 0.0264"],
    [2, "1.252", "0.029", "0.061", "1.2523 0.0288 0.0533 0.0606"],
    [3, "1.667", "0.017", "0.035", "1.6674 0.0171 0.0303 0.0348"],
    [4, "3.250", "0.026", "0.058", "3.2496 0.0261 0.0521 0.0582"],
  ])("level %d: m = %s, s_r = %s, s_R = %s; recomputed m, s_r, s_L, s_R = %s", (n, m, sr, sR, recomputed) => {
    const r = repeatability(byLab(level(worked.coal, n - 1)));
    printed("m", r.generalMean, m);
    printed("s_r", r.sr, sr);
    printed("s_R", r.sR, sR);
    printedList("recomputed", [r.generalMean, r.sr, r.sL, r.sR], recomputed);
  });
});

describe("ISO 5725-2:1994 Annex B.3, creosote oil, 9 laboratories in duplicate, laboratory 1 left out [from memory]", () => {
  it.each([
    [1, "3.94", "0.092", "0.171", "3.9406 0.0922 0.1708"],
    [3, "14.18", "0.127", "0.400", "14.1781 0.1269 0.4004"],
    [4, "15.59", "0.337", "0.579", "15.5881 0.3368 0.5786"],
    [5, "20.41", "0.393", "0.637", "20.4121 0.3935 0.6370"],
  ])(
    "level %d: m = %s, s_r = %s, s_R = %s; recomputed %s (level 5 without laboratory 6)",
    (n, m, sr, sR, recomputed) => {
      const kept = level(worked.creosote, n - 1).filter((_, lab) => lab !== 0 && !(n === 5 && lab === 5));
      const r = repeatability(byLab(kept));
      printed("m", r.generalMean, m);
      printed("s_r", r.sr, sr, 1);
      printed("s_R", r.sR, sR, 1);
      printedList("recomputed", [r.generalMean, r.sr, r.sR], recomputed);
    },
  );

  it("level 2: recomputed 8.2894, 0.1716, 0.4921 (one datum recalled wrongly: the printed 8.28, 0.179, 0.498 are not reproduced)", () => {
    const r = repeatability(byLab(level(worked.creosote, 1).slice(1)));
    printedList("recomputed", [r.generalMean, r.sr, r.sR], "8.2894 0.1716 0.4921");
  });

  it("Cochran's C of the five levels, all laboratories, recomputed: 0.566 0.489 0.492 0.667 0.636", () => {
    const c = [0, 1, 2, 3, 4].map((n) => {
      const variances = level(worked.creosote, n).map((pair) => moments(pair).sd ** 2);
      return cochran(variances, 2).c;
    });
    printedList("C", c, "0.566 0.489 0.492 0.667 0.636");
  });
});

describe("ASTM E691-99, glucose in serum, 8 laboratories in triplicate", () => {
  const withoutSlip = worked.glucose.C.map((lab) => lab.map((value) => (value === 148.3 ? 138.3 : value)));

  it.each([
    ["A", worked.glucose.A, "41.5183 0.6061 1.0632 1.0632"],
    ["B", worked.glucose.B, "79.6796 1.0027 1.4949 1.5796"],
    ["C, clerical error 148.30 put right to 138.30", withoutSlip, "134.7264 1.7397 1.5434 2.1482"],
    ["D", worked.glucose.D, "194.7170 2.5950 2.6251 3.3657"],
    ["E", worked.glucose.E, "294.4920 2.6931 3.9350 4.1923"],
  ])(
    "material %s: mean, s of means, s_r, s_R [precision table from memory; last digits of two means differ]",
    (_name, labs, table) => {
      const r = repeatability(byLab(labs));
      const ofMeans = moments(labs.map((lab) => moments(lab).mean)).sd;
      printedList("table", [r.generalMean, ofMeans, r.sr, r.sR], table, 3);
      printedList("table", [ofMeans, r.sr, r.sR], table.split(" ").slice(1).join(" "), 1);
    },
  );

  it("material C as listed (148.30): mean 135.1429, s of means 2.6559, s_r 2.7483, s_R 3.4770, recomputed", () => {
    const r = repeatability(byLab(worked.glucose.C));
    printedList("recomputed", [r.generalMean, r.sr, r.sR], "135.1429 2.7483 3.4770");
    printed("s of means", moments(worked.glucose.C.map((lab) => moments(lab).mean)).sd, "2.6559");
    printed("repeatability limit 2.8 s_r", 2.8 * r.sr, "7.70");
    printed("reproducibility limit 2.8 s_R", 2.8 * r.sR, "9.74");
  });

  it.each(["A", "B", "C", "D", "E"] as const)(
    "material %s: Mandel's h and k of all laboratories, recomputed table",
    (material) => {
      const r = repeatability(byLab(worked.glucose[material]));
      const table = worked.glucoseHK[material];
      for (const [lab, h] of table.h.entries()) printed(`h${lab + 1}`, r.h[lab], h.toFixed(4));
      for (const [lab, k] of table.k.entries()) printed(`k${lab + 1}`, r.k[lab], k.toFixed(4));
    },
  );

  it("critical h = 2.15 and k = 2.06 (0.5 %, 8 laboratories, 3 results) point at laboratory 4 for material C", () => {
    const p = 8;
    const h = 2.152492;
    const t = Math.sqrt((h * h * p * (p - 2)) / ((p - 1) ** 2 - p * h * h));
    expect(tUpperTail(t, p - 2)).toBeCloseTo(0.0025, 6);
    const k = 2.06084;
    const f = ((p - 1) * k * k) / (p - k * k);
    expect(fUpperTail(f, 2, 2 * (p - 1))).toBeCloseTo(0.005, 6);
    const r = repeatability(byLab(worked.glucose.C));
    expect(r.k.map((value, lab) => [value as number, lab]).filter(([value]) => (value as number) > 2.06)).toHaveLength(
      1,
    );
    expect(r.k[3] as number).toBeGreaterThan(2.06);
  });
});

describe("ISO 5725-2:1994 Table 4, Cochran's critical values", () => {
  const { columns, rows } = worked.criticalValues;
  it.each(rows.map((row) => [row[0] as number, row] as const))(
    "%d laboratories, 2 to 4 results, 1 and 5 percent",
    (p, row) => {
      for (const [column, text] of [
        ["C1n2", 0.01],
        ["C1n3", 0.01],
        ["C1n4", 0.01],
        ["C5n2", 0.05],
        ["C5n3", 0.05],
        ["C5n4", 0.05],
      ] as const) {
        const n = Number(column.at(-1));
        const variances = Array.from({ length: p }, () => 1);
        printed(
          column,
          cochran(variances, n, { alpha: text }).critical,
          (row[columns.indexOf(column)] as number).toFixed(3),
        );
      }
    },
  );
  it("Table 4 spot checks: 8 laboratories, 3 results, 0.615 (1 %) and 0.516 (5 %) [from memory]", () => {
    const equal = Array.from({ length: 8 }, () => 1);
    printed("1 %", cochran(equal, 3, { alpha: 0.01 }).critical, "0.615");
    printed("5 %", cochran(equal, 3).critical, "0.516");
  });
});

describe("Variance components", () => {
  it("NIST/SEMATECH e-Handbook 3.2.3.3: five machines, two operators each, five samples; operator component negative [from memory]", () => {
    const readings = worked.operators.flatMap((machine, a) =>
      machine.flatMap((samples, b) => samples.map((thousandths) => ({ a, b, y: thousandths / 1000 }))),
    );
    const r = nestedAnova(readings);
    const meanSquareOperators = 5 * r.bRaw + r.error;
    const meanSquareMachines = 10 * r.aRaw + meanSquareOperators;
    printed("mean square, error", r.error, "0.0000087", 0.6);
    printed("mean square, operators", meanSquareOperators, "0.00000372");
    printed("mean square, machines", meanSquareMachines, "0.0000758");
    printed("F, machines on operators", meanSquareMachines / meanSquareOperators, "20.38");
    printed("F, operators (0.428 in print, from rounded mean squares)", meanSquareOperators / r.error, "0.430058");
    expect(r.bRaw).toBeLessThan(0);
    expect(r.b).toBe(0);
    expect(r.reml.b).toBe(0);
  });

  it("NIST/SEMATECH e-Handbook 1.3.5.10, gear data: ten batches, Brown–Forsythe W = 1.7059, F0.95(9, 90) = 1.9855, p = 0.0991", () => {
    const distances = worked.gear.map((batch) => {
      const ordered = [...batch].sort((a, b) => a - b);
      const median = ((ordered[4] as number) + (ordered[5] as number)) / 2;
      return batch.map((value) => Math.abs(value - median));
    });
    const { f, p } = oneWayAnova(distances);
    printed("W (the handbook's 1.705910 agrees to five digits)", f, "1.7059");
    printed("W, recomputed", f, "1.7059177");
    printed("p", p, "0.0991");
    expect(fUpperTail(1.985595, 9, 90)).toBeCloseTo(0.05, 6);
  });

  it("Dyestuff (Davies; lme4): six batches of five, within 2451.25, between 1764.05 [data from memory]", () => {
    const batches = [
      [1545, 1440, 1440, 1520, 1580],
      [1540, 1555, 1490, 1560, 1495],
      [1595, 1550, 1605, 1510, 1560],
      [1445, 1440, 1595, 1465, 1545],
      [1595, 1630, 1515, 1635, 1625],
      [1520, 1455, 1450, 1480, 1445],
    ];
    const r = oneWayAnova(batches);
    printed("within", r.within, "2451.25");
    printed("between", r.between, "1764.05");
    printed("REML between, equal for balanced data", r.reml.between, "1764.05");
  });
});

describe("ISO 13528:2015 clause 9", () => {
  it("definitions of z, z', zeta and E_n [from memory]: x = 412 ± 9, X = 400 ± 6, sigma 20", () => {
    const r = scores({ x: 412, ux: 9, assigned: 400, uAssigned: 6, sigma: 20 });
    expect(r.z).toBeCloseTo(12 / 20, 14);
    expect(r.zPrime).toBeCloseTo(12 / Math.sqrt(436), 14);
    expect(r.zeta).toBeCloseTo(12 / Math.sqrt(117), 14);
    expect(r.en).toBeCloseTo(12 / Math.sqrt(18 ** 2 + 12 ** 2), 14);
  });
  it("u(X) = 1.25 s*/√p of the creosote means, 0.445767, makes z' smaller than z [from memory]", () => {
    const uAssigned = (1.25 * 1.0698397) / 3;
    printed("u(X)", uAssigned, "0.445767");
    const r = scores({ x: 24.14, ux: 0.2, assigned: 20.4121, uAssigned, sigma: 1.07 });
    expect(Math.abs(r.zPrime)).toBeLessThan(Math.abs(r.z));
    expect(r.z).toBeGreaterThan(3);
  });
});
