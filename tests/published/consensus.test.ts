import { describe, expect, it } from "vitest";
import { medianMad } from "@/lib/statistics/median-mad.ts";
import { moments } from "@/lib/statistics/moments.ts";
import { randomEffects } from "@/lib/statistics/random-effects.ts";
import { weightedMean } from "@/lib/statistics/weighted-mean.ts";
import { printed, printedList } from "./printed.ts";

const estimates = (x: number[], u: number[], tau2: "PM" | "DL" | "REML") => {
  const { mean, se, tau2: between, hkQ, interval, i2, q } = randomEffects(x, u, { tau2, interval: "HK" });
  return { mean, se, tau2: between, hk: se * Math.sqrt(hkQ), interval, i2, q };
};
const roots = (variances: number[]) => variances.map(Math.sqrt);

describe("BCG vaccine, log risk ratios (Colditz et al. 1994)", () => {
  const counts = [
    [4, 119, 11, 128],
    [6, 300, 29, 274],
    [3, 228, 11, 209],
    [62, 13536, 248, 12619],
    [33, 5036, 47, 5761],
    [180, 1361, 372, 1079],
    [8, 2537, 10, 619],
    [505, 87886, 499, 87892],
    [29, 7470, 45, 7232],
    [17, 1699, 65, 1600],
    [186, 50448, 141, 27197],
    [5, 2493, 3, 2338],
    [27, 16886, 29, 17825],
  ] as [number, number, number, number][];
  const y = counts.map(([a, b, c, d]) => Math.log(a / (a + b) / (c / (c + d))));
  const u = counts.map(([a, b, c, d]) => Math.sqrt(1 / a - 1 / (a + b) + 1 / c - 1 / (c + d)));

  it("Viechtbauer, J. Stat. Softw. 2010, 36(3): REML tau² 0.3132, mean -0.7145, se 0.1798, -1.0669 to -0.3622", () => {
    const r = randomEffects(y, u, { tau2: "REML", interval: "normal" });
    printed("tau²", r.tau2, "0.3132");
    printed("mean", r.mean, "-0.7145");
    printed("se", r.se, "0.1798");
    printedList("interval", r.interval, "-1.0669 -0.3622");
    printed("tau², recomputed (0.31322 elsewhere is a looser convergence)", r.tau2, "0.313243258");
  });
  it("Viechtbauer 2010: Q = 152.2330 with 12 degrees of freedom; common-effect mean -0.430285164, se 0.040498752", () => {
    const r = weightedMean(y, u);
    printed("Q", r.q, "152.2330");
    expect(r.df).toBe(12);
    printed("mean", r.mean, "-0.430285164");
    printed("se", r.uInternal, "0.040498752");
  });
  it("Viechtbauer 2010: Hartung–Knapp with REML, se 0.1808, -1.1084 to -0.3206", () => {
    const r = estimates(y, u, "REML");
    printed("se", r.hk, "0.1808");
    printedList("interval", r.interval, "-1.1084 -0.3206");
    printedList("recomputed", [r.hk, ...r.interval], "0.180791744 -1.108443714 -0.320620971");
  });
  it("DerSimonian–Laird: tau² 0.3088, mean -0.714117 (public tests)", () => {
    const r = estimates(y, u, "DL");
    printed("tau²", r.tau2, "0.3088");
    printedList("recomputed", [r.tau2, r.mean, r.se], "0.308760263 -0.714117222 0.178742090");
    printedList("Hartung–Knapp, recomputed", [r.hk, ...r.interval], "0.180696628 -1.107821354 -0.320413090");
  });
  it("Paule–Mandel, recomputed: tau² 0.318068452, mean -0.714968153, Hartung–Knapp -1.109098381 to -0.320837926", () => {
    const r = estimates(y, u, "PM");
    printedList("recomputed", [r.tau2, r.mean, r.se], "0.318068452 -0.714968153 0.180892192");
    printedList("interval", r.interval, "-1.109098381 -0.320837926");
  });
});

describe("Key comparisons", () => {
  const pcb28 = [34.3, 32.9, 34.53, 32.42, 31.9, 35.8];
  const u28 = [1.03, 0.69, 0.83, 0.29, 0.4, 0.38];
  it("CCQM-K25, PCB 28 in sediment (Schantz and Wise, Metrologia 2004, 41, 08001): DerSimonian–Laird near the Bayes 33.6 and tau 1.69", () => {
    const r = estimates(pcb28, u28, "DL");
    printed("mean", r.mean, "33.6");
    printed("tau (Bayes 1.69)", Math.sqrt(r.tau2), "1.69", 3);
    printedList("recomputed", [r.tau2, r.mean, r.se, r.hk], "2.928943 33.600433 0.744998 0.621378");
    printed("degree of equivalence, first participant (Bayes 0.685)", 34.3 - r.mean, "0.685", 20);
  });
  it("CCQM-K25, PCB 28: weighted mean 33.299566, u 0.183927, Q 68.215398, recomputed", () => {
    const r = weightedMean(pcb28, u28);
    printedList("recomputed", [r.mean, r.uInternal, r.q], "33.299566 0.183927 68.215398");
  });
  it("CCQM-K25, PCB 28: REML 33.588978 and Paule–Mandel 33.585341, recomputed", () => {
    const reml = estimates(pcb28, u28, "REML");
    printedList("REML", [reml.tau2, reml.mean, reml.se, reml.hk], "2.154132 33.588978 0.651367 0.626077");
    const pm = estimates(pcb28, u28, "PM");
    printedList("PM", [pm.tau2, pm.mean, pm.se], "1.974545 33.585341 0.627564");
  });

  const pcb105 = [10.21, 10.9, 10.94, 10.58, 10.81, 9.62, 10.8];
  const u105 = [0.381, 0.25, 0.13, 0.41, 0.445, 0.196, 0.093];
  it.each([
    ["DL", "0.197837 10.557083 0.197073 0.191263"],
    ["REML", "0.213857 10.556452 0.203104 0.190874"],
    ["PM", "0.183857 10.557736 0.191625 0.191625"],
  ] as const)(
    "CCQM-K25, PCB 105 in sediment (data of the metRology manual), %s: tau², mean, se, Hartung–Knapp se = %s, recomputed",
    (tau2, texts) => {
      const r = estimates(pcb105, u105, tau2);
      printedList(tau2, [r.tau2, r.mean, r.se, r.hk], texts);
    },
  );

  it("CCM.V-K1.B1, kinematic viscosity (BIPM key comparison database): x_R = 1285.57, u_R = 0.58 is the plain mean", () => {
    const x = [1281.5, 1286.1, 1285.98, 1284.24, 1286.49, 1285, 1285.8, 1285.99, 1284.1, 1289.16, 1286.9];
    const relative = [2, 1.77, 0.92, 0.84, 0.42, 2, 0.68, 0.78, 1.22, 1.4, 0.63];
    const { mean, sd, n } = moments(x);
    printed("x_R", mean, "1285.57");
    printed("u_R", sd / Math.sqrt(n), "0.58");
    const weighted = weightedMean(
      x,
      x.map((value, i) => value * (relative[i] as number) * 1e-3),
    );
    printed("weighted mean, recomputed", weighted.mean, "1286.062605");
    printed("u, recomputed", weighted.uInternal, "0.315702");
    printed("chi², recomputed", weighted.q, "12.502320");
    printed("median", medianMad(x).median, "1285.98");
  });
});

describe("Paule and Mandel, J. Res. NBS 1982, 87, 377 (data of the metRology manual; the paper's own answers not read)", () => {
  const cadmium = [27.044, 26.022, 26.34, 26.787, 26.796];
  const uCadmium = roots([0.003, 0.076, 0.464, 0.003, 0.014]);
  it("heat of vaporisation of cadmium: tau² 0.105219388, mean 26.712128748, u 0.171136964; Q at tau² is k - 1", () => {
    const r = estimates(cadmium, uCadmium, "PM");
    printedList("recomputed", [r.tau2, r.mean, r.se], "0.105219388 26.712128748 0.171136964");
    const q = cadmium.reduce((sum, y, i) => sum + (y - r.mean) ** 2 / ((uCadmium[i] as number) ** 2 + r.tau2), 0);
    expect(q).toBeCloseTo(4, 10);
  });
  it("heat of vaporisation of cadmium: DerSimonian–Laird 26.767482329, REML 26.715274748, recomputed", () => {
    const dl = estimates(cadmium, uCadmium, "DL");
    printedList("DL", [dl.tau2, dl.mean, dl.se], "0.041269911 26.767482329 0.116423260");
    const reml = estimates(cadmium, uCadmium, "REML");
    printedList("REML", [reml.tau2, reml.mean, reml.se], "0.099587841 26.715274748 0.167204564");
  });
  it("second example, two groups: tau² 112.7375432, mean 209.0405911, u 7.5084999, recomputed", () => {
    const r = estimates([201.533, 216.55], [0.154 / Math.sqrt(6), 0.25 / Math.sqrt(2)], "PM");
    printedList("recomputed", [r.tau2, r.mean, r.se], "112.7375432 209.0405911 7.5084999");
  });
});

describe("Other consensus values", () => {
  it("CODATA 2010 (Mohr, Taylor, Newell 2012), Newtonian constant: Birge ratio 4.58 [from memory; chi² 209.6 includes two correlations, 209.8 without]", () => {
    const g = [6.67248, 6.6729, 6.67398, 6.674255, 6.67559, 6.67422, 6.67387, 6.67222, 6.67425, 6.67349, 6.67234];
    const u = [43, 50, 70, 9.2, 27, 98, 27, 87, 12, 18, 14].map((last) => last * 1e-5);
    const r = weightedMean(g, u);
    expect(r.df).toBe(10);
    printed("Birge ratio", r.birge, "4.58");
    printed("chi², correlations left out", r.q, "209.8");
    printedList(
      "recomputed",
      [r.mean, r.uInternal, r.q, r.birge, r.uExternal],
      "6.6738465 0.0000567 209.8025 4.580421 0.00025985",
    );
    const pm = estimates(g, u, "PM");
    printedList("Paule–Mandel", [pm.tau2, pm.mean, pm.se], "8.83897e-7 6.6736403 0.0003128");
  });

  const teachers = [
    0.03, 0.12, -0.14, 1.18, 0.26, -0.06, -0.02, -0.32, 0.27, 0.8, 0.54, 0.18, -0.02, 0.23, -0.18, -0.06, 0.3, 0.07,
    -0.07,
  ];
  const vTeachers = [
    0.0156, 0.0216, 0.0279, 0.1391, 0.1362, 0.0106, 0.0106, 0.0484, 0.0269, 0.063, 0.0912, 0.0497, 0.0835, 0.0841,
    0.0253, 0.0279, 0.0193, 0.0088, 0.0303,
  ];
  it("Raudenbush 1985, teacher expectancy: REML tau² 0.0188, mean 0.0837, se 0.0516, Q 35.83 [results from memory]", () => {
    const r = estimates(teachers, roots(vTeachers), "REML");
    printedList("printed", [r.tau2, r.mean, r.se], "0.0188 0.0837 0.0516");
    printed("Q", r.q, "35.83");
    printedList("recomputed", [r.tau2, r.mean, r.se, r.hk], "0.018818288 0.083701242 0.051640671 0.061579319");
  });
  it("Raudenbush 1985: DerSimonian–Laird 0.089322084 and Paule–Mandel 0.103956970, recomputed", () => {
    const dl = estimates(teachers, roots(vTeachers), "DL");
    printedList("DL", [dl.tau2, dl.mean, dl.se], "0.025903672 0.089322084 0.055793925");
    const pm = estimates(teachers, roots(vTeachers), "PM");
    printedList("PM", [pm.tau2, pm.mean, pm.se], "0.051773310 0.103956970 0.068208387");
  });

  it("Rubin 1981, eight schools: pooled 7.7, se 4.1, tau² 0 by every estimator [from memory]", () => {
    const y = [28, 8, -3, 7, -1, 1, 18, 12];
    const u = [15, 10, 16, 11, 9, 11, 10, 18];
    for (const tau2 of ["DL", "PM", "REML"] as const) {
      const r = estimates(y, u, tau2);
      expect(r.tau2).toBe(0);
      printed("mean", r.mean, "7.7");
      printed("se", r.se, "4.1");
      printedList("recomputed", [r.mean, r.se, r.q, r.hk], "7.68561672 4.07191916 4.70707886 3.33907262");
    }
  });
});
