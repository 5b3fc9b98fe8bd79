import { describe, expect, it } from "vitest";
import { probabilityAbove } from "@/lib/limits/probability-above.ts";
import { roundToUncertainty } from "@/lib/quantity/round-to-uncertainty.ts";
import { combine } from "@/lib/statistics/combine.ts";
import { coverageFactor } from "@/lib/statistics/coverage-factor.ts";
import { fUpperTail } from "@/lib/statistics/distributions.ts";
import { inversePrediction } from "@/lib/statistics/inverse-prediction.ts";
import { moments } from "@/lib/statistics/moments.ts";
import { oneWayAnova } from "@/lib/statistics/one-way-anova.ts";
import { weightedLine } from "@/lib/statistics/weighted-line.ts";
import { printed } from "./printed.ts";

const normal = (level: number) => coverageFactor(Number.POSITIVE_INFINITY, level);

describe("JCGM 100:2008 (GUM), readings and bounds", () => {
  it("4.4.3 Table 1: twenty repeated readings of a temperature (the mean 100.145 is printed 100.14)", () => {
    const t = [
      96.9, 98.18, 98.25, 98.61, 99.03, 99.49, 99.56, 99.74, 99.89, 100.07, 100.33, 100.42, 100.68, 100.95, 101.11,
      101.2, 101.57, 101.84, 102.36, 102.72,
    ];
    const { mean, sd, n } = moments(t);
    printed("mean", mean, "100.145");
    printed("mean as printed, half a unit off", mean, "100.14", 0.501);
    printed("s", sd, "1.489");
    printed("s of the mean", sd / Math.sqrt(n), "0.333");
    printed("s, recomputed", sd, "1.48884448306");
  });

  it("4.3.4: resistor, 129 µΩ at 99 % gives 50 µΩ [from memory]", () => {
    printed("u", 129 / normal(0.99), "50");
    printed("k", normal(0.99), "2.58");
  });

  it("4.3.5: length 10.07 to 10.15 mm with probability one half, u = 1.48 a = 0.06 mm [from memory]", () => {
    printed("1/k", 1 / normal(0.5), "1.48");
    printed("u", 0.04 / normal(0.5), "0.06");
  });

  it("5.1.5: mean of a voltage and its correction, uc = 15 µV [from memory]", () => {
    const { u, nuEff } = combine([{ u: 12 }, { u: 8.7 }]);
    printed("uc", u, "15");
    printed("uc²", u * u, "219", 1);
    expect(nuEff).toBe(Number.POSITIVE_INFINITY);
  });

  it("5.1.6: product of three, relative 0.25, 0.57, 0.82 % give 1.03 % [from memory]", () => {
    printed("uc/y", combine([{ u: 0.25 }, { u: 0.57 }, { u: 0.82 }]).u, "1.03");
  });

  it("5.2.2: ten resistors taken as independent would give 0.32 Ω, wrongly [from memory]", () => {
    printed("uc", combine(Array.from({ length: 10 }, () => ({ u: 0.1 }))).u, "0.32");
  });
});

describe("JCGM 100:2008 (GUM), stating a result", () => {
  it("7.2.6: 28.05 kHz is stated as 28 kHz", () => {
    expect(roundToUncertainty("28.05", "28.05").U).toBe("28");
  });
  it("7.2.6: 10.05762 Ω with 27 mΩ is stated as 10.058 Ω", () => {
    expect(roundToUncertainty("10.05762", "0.027")).toEqual({ value: "10.058", U: "0.027" });
  });
  it("7.2.6: 10.47 mΩ becomes 10 mΩ by our rule (the standard allows rounding up to 11 mΩ)", () => {
    expect(roundToUncertainty("10.47", "10.47").U).toBe("10");
  });
  it("7.2.4: mass standard, U = 2.26 × 0.35 mg = 0.79 mg [from memory]", () => {
    const { k, U } = combine([{ u: 0.35, nu: 9 }]);
    printed("k", k, "2.26");
    printed("U", U, "0.79");
  });
});

describe("JCGM 100:2008 (GUM), degrees of freedom", () => {
  it("G.4.1: three inputs with 9, 4, 14 degrees of freedom, νeff = 19.0, U = 2.2 % (19.0 from the rounded 1.03 %)", () => {
    const budget = [
      { u: 0.25, nu: 9 },
      { u: 0.57, nu: 4 },
      { u: 0.82, nu: 14 },
    ];
    const { nuEff, U } = combine(budget);
    printed("νeff", nuEff, "19.0");
    printed("νeff, recomputed", nuEff, "18.9987");
    printed("U", U, "2.2");
    printed("t95(19)", coverageFactor(19, 0.95), "2.09");
  });

  it("Table G.2: Student's t for the degrees of freedom of the examples", () => {
    for (const [nu, level, text] of [
      [5, 0.95, "2.57"],
      [16, 0.95, "2.12"],
      [16, 0.99, "2.92"],
      [19, 0.95, "2.09"],
      [9, 0.95, "2.26"],
    ] as const)
      printed(`t(${nu}, ${level})`, coverageFactor(nu, level), text);
  });

  it("Table G.2: ν = 35, p = 90 % is a printing slip, 1.70 for 1.69", () => {
    printed("t", coverageFactor(35, 0.9), "1.6896");
  });

  it("Welch–Satterthwaite with one infinite term, 0.57 (ν 9) and 0.25, gives 12.8 (Sandia course ENGR224)", () => {
    const { nuEff } = combine([{ u: 0.57, nu: 9 }, { u: 0.25 }]);
    printed("νeff", nuEff, "12.8");
    printed("νeff, recomputed", nuEff, "12.79565");
  });
});

describe("JCGM 100:2008 (GUM), annex H", () => {
  const comparison = [
    { u: 5.8, nu: 24 },
    { u: 3.9, nu: 5 },
    { u: 6.7, nu: 8 },
  ];

  it("H.1: end gauge, comparison: u = 9.7 nm, νeff = 25.6 (from the rounded 9.7; 25.45 unrounded)", () => {
    const { u, nuEff } = combine(comparison);
    printed("u", u, "9.7");
    printed("νeff", nuEff, "25.45");
    printed("νeff with u printed", 9.7 ** 4 / (5.8 ** 4 / 24 + 3.9 ** 4 / 5 + 6.7 ** 4 / 8), "25.6");
  });

  it("H.1: end gauge, whole budget: uc = 32 nm, νeff = 16.7, k99(16) = 2.92, U99 = 93 nm (2.92 × the rounded 32)", () => {
    const { nuEff: nuComparison, u: uComparison } = combine(comparison);
    const expansion = { u: 50_000_623 * 0.1 * (1e-6 / Math.sqrt(3)), nu: 50 };
    const temperature = { u: 50_000_623 * 11.5e-6 * (0.05 / Math.sqrt(3)), nu: 2 };
    printed("expansion", expansion.u, "2.9");
    printed("temperature", temperature.u, "16.6");
    const { u, nuEff } = combine([{ u: 25, nu: 18 }, { u: uComparison, nu: nuComparison }, expansion, temperature]);
    printed("uc", u, "32");
    printed("uc²", u * u, "1002", 1);
    printed("νeff", nuEff, "16.7", 1);
    printed("k", coverageFactor(16, 0.99), "2.92");
    printed("U, full precision", coverageFactor(16, 0.99) * u, "92.5");
  });

  it("H.1: end gauge with second-order terms 11.7 and 1.7 nm: uc = 34 nm", () => {
    printed("uc", combine([{ u: 31.664 }, { u: 11.73 }, { u: 1.67 }]).u, "34");
  });

  it("H.2: means and standard deviations of voltage, current and phase, Table H.2", () => {
    const table = [
      [[5.007, 4.994, 5.005, 4.99, 4.999], "4.9990", "0.0032"],
      [[19.663, 19.639, 19.64, 19.685, 19.678], "19.6610", "0.0095"],
      [[1.0456, 1.0438, 1.0468, 1.0428, 1.0433], "1.04446", "0.00075"],
    ] as const;
    for (const [values, mean, sd] of table) {
      const m = moments(values);
      printed("mean", m.mean, mean);
      printed("s of the mean", m.sd / Math.sqrt(5), sd);
    }
  });

  const t = [21.521, 22.012, 22.512, 23.003, 23.507, 23.999, 24.513, 25.002, 25.503, 26.01, 26.511];
  const b = [-0.171, -0.169, -0.166, -0.159, -0.164, -0.165, -0.156, -0.157, -0.159, -0.161, -0.16];
  const thermometer = () => {
    const above20 = t.map((value) => value - 20);
    const unit = weightedLine(
      above20,
      b,
      b.map(() => 1),
    );
    const s = Math.sqrt(unit.chi2 / unit.df);
    return {
      s,
      line: weightedLine(
        above20,
        b,
        b.map(() => s),
      ),
    };
  };

  it("H.3: thermometer, y1 = -0.1712 (0.0029), y2 = 0.00218 (0.00067), r = -0.930, s = 0.0035 [results from memory]", () => {
    const { line, s } = thermometer();
    printed("y1", line.intercept, "-0.1712");
    printed("s(y1)", line.seIntercept, "0.0029");
    printed("y2", line.slope, "0.00218");
    printed("s(y2)", line.seSlope, "0.00067");
    printed("r", line.cov / line.seIntercept / line.seSlope, "-0.930");
    printed("s", s, "0.0035");
    printed("y1, recomputed", line.intercept, "-0.17120379");
    printed("s(y2), recomputed", line.seSlope, "0.00066794");
  });

  it("H.3: thermometer, predicted correction at 30 °C: -0.1494 °C, u = 0.0041 °C [results from memory]", () => {
    const { line } = thermometer();
    const variance = line.seIntercept ** 2 + (10 * line.seSlope) ** 2 + 20 * line.cov;
    printed("b(30)", line.intercept + 10 * line.slope, "-0.1494");
    printed("u", Math.sqrt(variance), "0.0041");
    printed("u, recomputed", Math.sqrt(variance), "0.00413860");
    // Read backwards, the same line and uncertainty must give the temperature again.
    const back = inversePrediction(line, { y0: line.intercept + 10 * line.slope, uY0: 0 });
    printed("temperature above 20 °C", back.x, "10.00000");
    printed("its u times the slope", back.u * line.slope, "0.00413860");
  });

  it("H.5: Zener voltage, 10 days of 5: F = 2.25 (2.26 from unrounded), between-day 43 µV, u = 18 µV [43 and 18 from memory]", () => {
    const means = [172, 116, 13, 144, 106, 31, 60, 125, 163, 41];
    const sds = [60, 77, 111, 101, 67, 93, 80, 73, 88, 86];
    // Five readings with exactly the tabulated mean and standard deviation.
    const groups = means.map((mean, day) =>
      [-2, -1, 0, 1, 2].map((z) => mean + (z * (sds[day] as number)) / Math.sqrt(2.5)),
    );
    const r = oneWayAnova(groups);
    printed("mean", r.grandMean, "97.1");
    printed("s of the daily means", moments(means).sd, "57");
    printed("s_b", Math.sqrt(r.within), "85");
    printed("s_a", Math.sqrt(r.betweenRaw * 5 + r.within), "128");
    printed("F", r.f, "2.25", 2);
    printed("F, recomputed", r.f, "2.26152");
    printed("between days", Math.sqrt(r.between), "43");
    printed("u of the mean", moments(means).sd / Math.sqrt(10), "18");
    printed("REML between, balanced", Math.sqrt(r.reml.between), "42.64");
    printed("REML u of the mean", r.reml.seMean, "18.053");
  });

  it("H.5: F tables, F0.95(9, 40) = 2.12 and F0.975 = 2.45", () => {
    expect(fUpperTail(2.12403, 9, 40)).toBeCloseTo(0.05, 6);
    expect(fUpperTail(2.45194, 9, 40)).toBeCloseTo(0.025, 6);
  });
});

describe("EA-4/02 M:2022", () => {
  it("S2: 10 kg weight, printed u = 29.2 mg, U = 58 mg; its own table gives 29.26 and 58.5", () => {
    const { u } = combine([{ u: 22.5 }, { u: 8.66 }, { u: 14.43 }, { u: 5.77 }, { u: 5.77 }]);
    printed("u, rounded down in print", u, "29.2", 1);
    printed("U, rounded down in print", 2 * u, "58", 1);
    printed("u of the table", u, "29.26");
  });
});

describe("NIST TN 1297", () => {
  it("Table B.1 (the same as GUM G.2): k for p = 95.45 % and ν = ∞ is 2, seen as a probability [from memory]", () => {
    printed("k", normal(0.9545), "2.000");
    printed("p above 2u", probabilityAbove({ value: 0, u: 1, shape: "normal" }, 2), "0.02275");
  });
});
