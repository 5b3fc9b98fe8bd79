import { afterAll, describe, expect, it } from "vitest";
import { type SolidShape, solidVolume } from "@/lib/amounts/solid-volume.ts";
import { algorithmA } from "@/lib/statistics/algorithm-a.ts";
import { cochran } from "@/lib/statistics/cochran.ts";
import { cusum } from "@/lib/statistics/cusum.ts";
import { dixon } from "@/lib/statistics/dixon.ts";
import { ewma } from "@/lib/statistics/ewma.ts";
import { generalizedEsd } from "@/lib/statistics/generalized-esd.ts";
import { grubbs } from "@/lib/statistics/grubbs.ts";
import { huberProposal2 } from "@/lib/statistics/huber-proposal-2.ts";
import { individualsChart } from "@/lib/statistics/individuals-chart.ts";
import { inversePrediction } from "@/lib/statistics/inverse-prediction.ts";
import { medianMad } from "@/lib/statistics/median-mad.ts";
import { multirule } from "@/lib/statistics/multirule.ts";
import { nestedAnova } from "@/lib/statistics/nested-anova.ts";
import { oneWayAnova } from "@/lib/statistics/one-way-anova.ts";
import { repeatability } from "@/lib/statistics/repeatability.ts";
import { scores } from "@/lib/statistics/scores.ts";
import { weightedLine } from "@/lib/statistics/weighted-line.ts";
import { xbarChart } from "@/lib/statistics/xbar-chart.ts";
import { york } from "@/lib/statistics/york.ts";
import { type Case, casesOfKind, kindsOf, near, nearPair, type Tolerance, titleOf } from "./support.ts";

/** A list of the same length as expected, each member near. */
const nearList = (what: string, got: readonly unknown[], expected: (number | null)[], tolerance: Tolerance): void => {
  expect(got.length, what).toBe(expected.length);
  nearPair(what, got, expected, tolerance);
};

/** What each runner checks: the fields of a case that our results carry. The rest of a case's fields are other figures. */
const runners: Record<string, (c: Case) => void> = {
  "c.robust": ({ inputs, expected, tolerance }) => {
    const plain = medianMad(inputs.x);
    near("median", plain.median, expected.median, tolerance);
    near("mad", plain.mad, expected.mad_raw, tolerance);
    near("scaled", plain.scaled, expected["mad_1.4826"], tolerance);
    const a = algorithmA(inputs.x);
    near("algorithm A mean", a.mean, expected.algorithm_a.x_star, tolerance);
    near("algorithm A sd", a.sd, expected.algorithm_a.s_star, tolerance);
    expect(a.degenerate).toBe(expected.algorithm_a.mad_zero);
    const h = huberProposal2(inputs.x, { k: expected.huber_prop2?.k ?? 1.5 });
    expect(h.degenerate, "proposal 2 is undefined where the case gives none").toBe(expected.huber_prop2 === undefined);
    if (expected.huber_prop2) {
      near("proposal 2 mean", h.mean, expected.huber_prop2.mu, tolerance);
      near("proposal 2 sd", h.sd, expected.huber_prop2.s, tolerance);
    }
  },
  "d.grubbs": ({ inputs, expected, tolerance }) => {
    for (const [alpha, name] of [
      [0.05, "05"],
      [0.01, "01"],
    ] as const) {
      const one = grubbs(inputs.x, { sides: 1, alpha });
      const two = grubbs(inputs.x, { sides: 2, alpha });
      near(`one-sided critical ${name}`, one.critical, expected[`crit_one_sided_${name}`], tolerance);
      near(`two-sided critical ${name}`, two.critical, expected[`crit_two_sided_${name}`], tolerance);
      near("g, largest", one.g, expected.G_max, tolerance);
      near("g, either end", two.g, expected.G_two_sided, tolerance);
      near("p, largest", one.p, expected.p_max_one_sided, tolerance);
      near("p, either end", two.p, expected.p_two_sided, tolerance);
      expect(two.index).toBe(expected.index_two_sided_0based);
      if (alpha === 0.05) expect((two.g as number) > two.critical).toBe(expected.reject_two_sided_05);
    }
    const mirrored = grubbs(
      inputs.x.map((value: number) => -value),
      { sides: 1 },
    );
    near("g, smallest", mirrored.g, expected.G_min, tolerance);
    near("p, smallest", mirrored.p, expected.p_min_one_sided, tolerance);
  },
  "d.dixon_r10": ({ inputs, expected, tolerance }) => {
    for (const [alpha, name] of [
      [0.05, "05"],
      [0.01, "01"],
    ] as const)
      for (const [sides, side] of [
        [1, "one"],
        [2, "two"],
      ] as const) {
        const r = dixon(inputs.x, { alpha, sides });
        near("low", r.low, expected.r10_low, tolerance);
        near("high", r.high, expected.r10_high, tolerance);
        near(`critical ${side}-sided ${name}`, r.critical, expected[`crit_${side}_sided_${name}`], tolerance);
      }
    expect(dixon(inputs.x).critical, "two-sided is the default").toBe(dixon(inputs.x, { sides: 2 }).critical);
    // The critical value at the level of the case's own p is the case's own ratio: the distribution itself is checked.
    for (const end of ["low", "high"])
      near(
        `ratio at p, ${end}`,
        dixon(inputs.x, { alpha: expected[`p_${end}_one_sided`], sides: 1 }).critical,
        expected[`r10_${end}`],
        tolerance,
      );
  },
  "d.gesd": ({ inputs, expected, tolerance }) => {
    const r = generalizedEsd(inputs.x, { maxOutliers: inputs.max_outliers, alpha: inputs.alpha });
    expect(r.steps.map((step) => step.index)).toEqual(expected.removed_index_0based);
    for (const [i, step] of r.steps.entries()) {
      near(`R${i + 1}`, step.r, expected.R[i], tolerance);
      near(`lambda${i + 1}`, step.lambda, expected.lambda[i], tolerance);
    }
    expect(r.outliers).toEqual(expected.removed_index_0based.slice(0, expected.n_outliers));
  },
  "d.cochran": ({ inputs, expected, tolerance }) => {
    for (const [alpha, name] of [
      [0.05, "05"],
      [0.01, "01"],
    ] as const) {
      const r = cochran(inputs.variances, inputs.n_each, { alpha });
      near(`critical ${name}`, r.critical, expected[`crit_${name}`], tolerance);
      near("c", r.c, expected.C, tolerance);
      near("p", r.p, expected.p, tolerance);
      expect(r.index).toBe(expected.argmax_0based);
    }
  },
  "f.oneway": ({ inputs, expected, tolerance }) => {
    const groups: number[][] = [];
    for (const [i, g] of inputs.group.entries()) {
      groups[g] ??= [];
      (groups[g] as number[]).push(inputs.y[i]);
    }
    const r = oneWayAnova(groups);
    near("within", r.within, expected.anova_var_within, tolerance);
    near("between", r.between, expected.anova_var_between, tolerance);
    near("betweenRaw", r.betweenRaw, expected.anova_var_between_raw, tolerance);
    near("grandMean", r.grandMean, expected.grand_mean, tolerance);
    near("f", r.f, expected.F, tolerance);
    near("p", r.p, expected.p, tolerance);
    near("reml within", r.reml.within, expected.reml_var_within, tolerance);
    near("reml between", r.reml.between, expected.reml_var_between, tolerance);
    near("reml mean", r.reml.mean, expected.reml_mean, tolerance);
    near("reml seMean", r.reml.seMean, expected.reml_se_mean, tolerance);
  },
  "f.nested": ({ inputs, expected, tolerance }) => {
    const r = nestedAnova(inputs.y.map((y: number, i: number) => ({ a: inputs.A[i], b: inputs.B[i], y })));
    near("error", r.error, expected.anova_var_E, tolerance);
    near("aRaw", r.aRaw, expected.anova_var_A_raw, tolerance);
    near("bRaw", r.bRaw, expected.anova_var_B_raw, tolerance);
    near("a", r.a, Math.max(0, expected.anova_var_A_raw), tolerance);
    near("b", r.b, Math.max(0, expected.anova_var_B_raw), tolerance);
    near("reml a", r.reml.a, expected.reml_var_A, tolerance);
    near("reml b", r.reml.b, expected.reml_var_B, tolerance);
    near("reml error", r.reml.error, expected.reml_var_E, tolerance);
    near("reml mean", r.reml.mean, expected.reml_mean, tolerance);
    near("reml seMean", r.reml.seMean, expected.reml_se_mean, tolerance);
  },
  "f.iso5725": ({ inputs, expected, tolerance }) => {
    const r = repeatability(inputs.y.map((y: number, i: number) => ({ lab: inputs.lab[i], y })));
    near("sr", r.sr, expected.s_r, tolerance);
    near("sL", r.sL, expected.s_L, tolerance);
    near("sR", r.sR, expected.s_R, tolerance);
    near("generalMean", r.generalMean, expected.general_mean, tolerance);
    nearList("h", r.h, expected.h, tolerance);
    nearList("k", r.k, expected.k, tolerance);
  },
  "f.scores": ({ inputs, expected, tolerance }) => {
    const r = scores({
      x: inputs.x,
      ux: inputs.u_x,
      assigned: inputs.X,
      uAssigned: inputs.u_X,
      sigma: inputs.sigma_pt,
      k: inputs.k,
    });
    near("z", r.z, expected.z, tolerance);
    near("zPrime", r.zPrime, expected.z_prime, tolerance);
    near("zeta", r.zeta, expected.zeta, tolerance);
    near("en", r.en, expected.E_n, tolerance);
  },
  "i.individuals": ({ inputs, expected, tolerance }) => {
    const r = individualsChart(inputs.x);
    near("center", r.center, expected.center, tolerance);
    near("sigma", r.sigma, expected["sigma_d2_1.128"], tolerance);
    nearList("limits", r.limits, expected["limits_1.128"], tolerance);
    expect(r.signals).toEqual(expected["out_of_limits_0based_1.128"]);
  },
  "i.xbar_known": ({ inputs, expected, tolerance }) => {
    const r = xbarChart(inputs.subgroups, { mu: inputs.mu, sigma: inputs.sigma });
    nearList("means", r.means, expected.means, tolerance);
    nearList("limits", r.limits, expected.limits, tolerance);
    expect(r.signals).toEqual(expected.signals_0based);
  },
  "i.ewma": ({ inputs: { x, ...settings }, expected, tolerance }) => {
    const r = ewma(x, settings);
    nearList("z", r.z, expected.z, tolerance);
    const ends = (end: 0 | 1) => r.limits.map((pair) => pair[end]);
    nearList("lower limits", ends(0), expected.lcl, tolerance);
    nearList("upper limits", ends(1), expected.ucl, tolerance);
    expect(r.signals).toEqual(expected.signals_0based);
  },
  "i.cusum": ({ inputs: { x, ...settings }, expected, tolerance }) => {
    const r = cusum(x, settings);
    nearList("cPlus", r.cPlus, expected.c_plus, tolerance);
    nearList("cMinus", r.cMinus, expected.c_minus, tolerance);
    const either = new Set<number>([...expected.signals_plus_0based, ...expected.signals_minus_0based]);
    expect(r.signals).toEqual([...either].sort((a, b) => a - b));
  },
  "i.multirule": ({ inputs, expected }) => {
    expect(multirule(inputs.z)).toEqual({
      "1-3s": expected["1_3s"],
      "2-2s": expected["2_2s"],
      "R-4s": expected["R_4s_consecutive"],
      "4-1s": expected["4_1s"],
      "10-x": expected["10_x"],
    });
  },
  "j.york": ({ inputs, expected, tolerance }) => {
    const fromWeights = (weights?: number[]) => weights?.map((weight) => 1 / Math.sqrt(weight));
    const r = york(inputs.x, inputs.y, inputs.sx ?? fromWeights(inputs.wx), inputs.sy ?? fromWeights(inputs.wy));
    near("intercept", r.intercept, expected.intercept, tolerance);
    near("slope", r.slope, expected.slope, tolerance);
    near("seIntercept", r.seIntercept, expected.se_intercept, tolerance);
    near("seSlope", r.seSlope, expected.se_slope, tolerance);
    near("cov", r.cov, expected.cov_ab, tolerance);
    near("s", r.s, expected.S, tolerance);
    near("reduced", r.s / (inputs.x.length - 2), expected.reduced_chi2, tolerance);
  },
  "j.weighted_ls": ({ inputs, expected, tolerance }) => {
    const r = weightedLine(inputs.x, inputs.y, inputs.sigma_y);
    near("intercept", r.intercept, expected.intercept, tolerance);
    near("slope", r.slope, expected.slope, tolerance);
    near("seIntercept", r.seIntercept, expected.se_intercept, tolerance);
    near("seSlope", r.seSlope, expected.se_slope, tolerance);
    near("cov", r.cov, expected.cov_ab, tolerance);
    near("chi2", r.chi2, expected.chi2, tolerance);
    expect(r.df).toBe(expected.df);
    const back = inversePrediction(r, { y0: inputs.y0, uY0: inputs.u_y0 });
    near("x", back.x, expected.inverse_x, tolerance);
    near("u", back.u, expected.inverse_u_linear, tolerance);
  },
  "g.geometry": ({ inputs, expected, tolerance }) => {
    const r = solidVolume({ shape: inputs.shape as SolidShape, dimensions: inputs.dimensions, u: inputs.u });
    near("volume", r.volume, expected.volume, tolerance);
    near("u", r.u, expected.u_volume, tolerance);
    expect(Object.keys(r.sensitivity).sort()).toEqual(Object.keys(expected.sensitivity).sort());
    for (const [name, value] of Object.entries<number>(expected.sensitivity))
      near(`sensitivity ${name}`, r.sensitivity[name], value, tolerance);
  },
};

const counted = new Map<string, number>();

it("leaves no kind of c, d, f, i, j out", () => {
  expect(kindsOf("cdfij").filter((kind) => !(kind in runners))).toEqual([]);
});

for (const [kind, run] of Object.entries(runners))
  describe(kind, () => {
    const cases = casesOfKind(kind);
    it("has cases", () => expect(cases.length).toBeGreaterThan(0));
    it.each(cases.map((c) => [titleOf(c), c] as const))("%s", (_title, c) => {
      run(c);
      counted.set(kind, (counted.get(kind) ?? 0) + 1);
    });
  });

afterAll(() => console.table(Object.fromEntries([...counted].map(([kind, cases]) => [kind, { "cases held": cases }]))));
