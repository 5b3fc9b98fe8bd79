import { describe, expect, it } from "vitest";
import { guardBand } from "@/lib/limits/guard-band.ts";
import { probabilityAbove } from "@/lib/limits/probability-above.ts";
import { roundToUncertainty } from "@/lib/quantity/round-to-uncertainty.ts";
import { censoredNormal } from "@/lib/statistics/censored-normal.ts";
import { censoredLogLikelihood, censoredRandomEffects } from "@/lib/statistics/censored-random-effects.ts";
import { combine } from "@/lib/statistics/combine.ts";
import { coverageFactor } from "@/lib/statistics/coverage-factor.ts";
import { type MonteCarloInput, monteCarlo } from "@/lib/statistics/monte-carlo.ts";
import { randomEffects } from "@/lib/statistics/random-effects.ts";
import { upperBoundAllCensored } from "@/lib/statistics/upper-bound-all-censored.ts";
import { weightedMean } from "@/lib/statistics/weighted-mean.ts";
import { type Case, casesOfKind, kindsOf, near, nearPair, titleOf } from "./support.ts";

/** Draws of ours for a Monte Carlo case; their scatter is that of the reference's draws, scaled by the square root of their ratio. */
const draws = 400_000;

const sum = (values: Record<string, number>): number => Object.values(values).reduce((a, b) => a + b, 0);
const product = (values: Record<string, number>): number => Object.values(values).reduce((a, b) => a * b, 1);
const named = (inputs: MonteCarloInput[]): Record<string, MonteCarloInput> =>
  Object.fromEntries(inputs.map((input, i) => [`x${i}`, input]));

const runners: Record<string, (c: Case) => void> = {
  "a.weighted_mean": ({ inputs, expected, tolerance }) => {
    const r = weightedMean(inputs.x, inputs.u);
    near("mean", r.mean, expected.mean, tolerance);
    near("uInternal", r.uInternal, expected.u_internal, tolerance);
    near("q", r.q, expected.Q, tolerance);
    expect(r.df).toBe(expected.df);
    near("p", r.p, expected.p, tolerance);
    near("birge", r.birge, expected.birge, tolerance);
    near("uExternal", r.uExternal, expected.u_external, tolerance);
    near("i2", r.i2, expected.I2_percent === null ? null : expected.I2_percent / 100, tolerance);
  },
  "b.random_effects": ({ inputs, expected, tolerance }) => {
    const { x, u, level } = inputs;
    for (const [key, tau2] of [
      ["dl", "DL"],
      ["pm", "PM"],
      ["reml", "REML"],
    ] as const) {
      const wanted = expected[key];
      const hk = randomEffects(x, u, { tau2, interval: "HK", level });
      near(`${key} tau2`, hk.tau2, wanted.tau2, tolerance);
      near(`${key} mean`, hk.mean, wanted.mean, tolerance);
      near(`${key} se`, hk.se, wanted.se, tolerance);
      near(`${key} hkQ`, hk.hkQ, wanted.hk_q, tolerance);
      near(`${key} hk se`, hk.se * Math.sqrt(hk.hkQ), wanted.hk_se, tolerance);
      nearPair(`${key} HK`, hk.interval, wanted.hk_ci, tolerance);
      const adhoc = randomEffects(x, u, { tau2, interval: "HK-adhoc", level });
      nearPair(`${key} HK-adhoc`, adhoc.interval, wanted.hk_adhoc_ci, tolerance);
      const normal = randomEffects(x, u, { tau2, interval: "normal", level });
      nearPair(`${key} normal`, normal.interval, wanted.ci_z, tolerance);
      nearPair("tau2Interval", hk.tau2Interval, expected.qprofile_tau2_95, tolerance);
      if (expected.qprofile_empty) expect(hk.tau2Interval).toEqual([0, 0]);
    }
  },
  "e.censored": ({ inputs, expected, tolerance }) => {
    for (const log of [false, true]) {
      const wanted = log ? expected.lognormal : expected.normal;
      const r = censoredNormal(inputs.value_or_lod, inputs.censored, { log });
      expect(r.status).toBe("ok");
      near("mean", r.mean, wanted.mu, tolerance);
      near("sd", r.sd, wanted.sigma, tolerance);
      near("seMean", r.seMean, wanted.se_mu, tolerance);
      nearPair("profile", r.profile, wanted.profile95_mu, tolerance);
      near("logLikelihood", r.logLikelihood, wanted.loglik, tolerance);
    }
  },
  "e.degenerate": ({ inputs, expected, tolerance }) => {
    const r = censoredNormal(inputs.value_or_lod, inputs.censored);
    expect(r.status === "ok").toBe(expected.mle_exists);
    if (!expected.mle_exists) return expect(r).toMatchObject({ status: "all-censored", mean: null, sd: null });
    near("mean", r.mean, expected.mu, tolerance);
    near("sd", r.sd, expected.sigma, tolerance);
    near("logLikelihood", r.logLikelihood, expected.loglik, tolerance);
  },
  "e.likelihood_known_sd": ({ inputs, expected, tolerance }) => {
    const r = censoredRandomEffects(inputs.value_or_lod, inputs.u, inputs.censored, { level: 0.95, cut: "chi2" });
    expect(r.status).toBe("ok");
    near("mean", r.mean, expected.mu, tolerance);
    near("tau", r.tau, expected.tau, tolerance);
    expect(r.tauOnBoundary).toBe(expected.tau_on_boundary);
    nearPair("interval", r.interval, expected.profile95_mu, tolerance);
    near("logLikelihood", r.logLikelihood, expected.loglik, tolerance);
    const data = { x: inputs.value_or_lod, v: inputs.u.map((u: number) => u * u), censored: inputs.censored };
    for (const { mu, tau, loglik } of expected.loglik_at)
      near(`ℓ(${mu}, ${tau})`, censoredLogLikelihood(data, mu, tau * tau), loglik, tolerance);
  },
  "e.all_censored_bound": ({ inputs, expected, tolerance }) =>
    near("upper", upperBoundAllCensored(inputs.lod, inputs.u).upper, expected.upper95_lrt_one_sided, tolerance),
  "g.welch_satterthwaite": ({ inputs, expected, tolerance }) => {
    const contributions = inputs.contributions.map((u: number, i: number) => ({ u, nu: inputs.nu[i] }));
    for (const level of inputs.levels) {
      const r = combine(contributions, { level: Number(level) });
      near("u", r.u, expected.u_c, tolerance);
      near("nuEff", r.nuEff, expected.nu_eff, tolerance);
      near(`k ${level}`, r.k, expected[`k_${level}_exact_nu`], tolerance);
      near(`U ${level}`, r.U, expected[`U_${level}_exact_nu`], tolerance);
      if (expected.nu_eff_floor === null) continue;
      const k = coverageFactor(Math.floor(r.nuEff), Number(level));
      near(`k ${level} floor`, k, expected[`k_${level}_floor_nu`], tolerance);
      near(`U ${level} floor`, k * r.u, expected[`U_${level}_floor_nu`], tolerance);
    }
  },
  "g.t_factor": ({ inputs, expected, tolerance }) => {
    for (const [i, nu] of inputs.nu.entries())
      near(`k(${nu})`, coverageFactor(nu, inputs.level), expected.k[i], tolerance);
    near("k(∞)", coverageFactor(Number.POSITIVE_INFINITY, inputs.level), expected.k_inf, tolerance);
  },
  "g.product": ({ inputs, expected, tolerance }) => {
    const exact = { rel: tolerance.exact_parts_rel ?? 0 };
    const { means, relative_u } = inputs as { means: number[]; relative_u: number[] };
    const value = means.reduce((a, b) => a * b, 1);
    near("value", value, expected.value, exact);
    const linear = combine(relative_u.map((u) => ({ u: u * value })));
    near("u_linear", linear.u, expected.u_linear, exact);
    nearPair("linear95", [value - linear.U, value + linear.U], expected.linear95, exact);
    const sds = means.map((mean, i) => ({ mean, sd: mean * relative_u[i]! }));
    const se = tolerance.monte_carlo_se ?? 0;
    const wanted = expected.normal_inputs_monte_carlo;
    const ours = Math.sqrt(wanted.draws / draws);
    const within = (what: string, got: number, expectedValue: number, referenceSe: number, exactReference: boolean) =>
      near(what, got, expectedValue, { abs: se * referenceSe * (exactReference ? ours : Math.hypot(1, ours)) });
    const normal = monteCarlo(product, named(sds.map((s) => ({ shape: "normal", ...s }))), { draws, seed: 20261124 });
    within("mean", normal.mean, wanted.mean, wanted.mean_se, false);
    within("sd", normal.sd, wanted.sd, wanted.sd_se, false);
    for (const end of [0, 1] as const) {
      within(`symmetric ${end}`, normal.symmetric[end], wanted.symmetric95[end], wanted.symmetric95_se[end], false);
      within(`shortest ${end}`, normal.shortest[end], wanted.shortest95[end], wanted.shortest95_se[end], false);
    }
    // Lognormal inputs: the exact answer is known; the scatter of our draws is taken from the normal case's, which is close.
    const log = monteCarlo(product, named(sds.map((s) => ({ shape: "lognormal", ...s }))), { draws, seed: 20261124 });
    const exactly = expected.lognormal_inputs;
    within("lognormal mean", log.mean, exactly.mean, wanted.mean_se, true);
    within("lognormal sd", log.sd, exactly.sd, 1.6 * wanted.sd_se, true);
    for (const end of [0, 1] as const) {
      within(
        `lognormal symmetric ${end}`,
        log.symmetric[end],
        exactly.symmetric95[end],
        1.4 * wanted.symmetric95_se[end],
        true,
      );
      within(
        `lognormal shortest ${end}`,
        log.shortest[end],
        exactly.shortest95[end],
        1.4 * wanted.shortest95_se[end],
        true,
      );
    }
  },
  "g.jcgm101_rectangular_sum": ({ inputs, expected, tolerance }) => {
    const { standard_uncertainties: sds } = inputs as { standard_uncertainties: number[] };
    const linear = combine(sds.map((u) => ({ u })));
    near("u", linear.u, expected.u, tolerance);
    near("GUM half width", linear.U, expected.gum_half_width_95, tolerance);
    // The exact half widths by simulation, within four standard errors of a quantile (density near the ends bounded below by
    // a tenth of a normal one's).
    for (const [level, half] of [
      [0.95, expected.exact_half_width_95],
      [0.99, expected.p99_half_width],
    ] as const) {
      const r = monteCarlo(sum, named(sds.map((sd) => ({ shape: "rectangular", mean: 0, sd }))), {
        draws,
        seed: 7,
        level,
      });
      const tail = (1 - level) / 2;
      const density = tail / (expected.u * 0.8);
      const abs = (4 * Math.sqrt(tail / draws)) / density;
      near("sd", r.sd, expected.u, { rel: 4 / Math.sqrt(2 * draws) });
      nearPair(`symmetric ${level}`, r.symmetric, [-half, half], { abs });
      nearPair(`shortest ${level}`, r.shortest, [-half, half], { abs: 5 * abs });
    }
  },
  "h.conformity": ({ inputs, expected, tolerance }) => {
    const { y: value, u, limit, nu } = inputs;
    const p = probabilityAbove({ value, u, shape: "normal" }, limit);
    near("normal", p, expected.p_exceed_normal, tolerance);
    // P(below) is P(above) of the mirror image, with its own digits.
    near("below", probabilityAbove({ value: -value, u, shape: "normal" }, -limit), expected.p_below_normal, tolerance);
    if (expected.p_exceed_t !== undefined)
      near("t", probabilityAbove({ value, u, nu, shape: "t" }, limit), expected.p_exceed_t, tolerance);
    if (expected.p_exceed_lognormal_median_y !== undefined)
      near(
        "lognormal",
        probabilityAbove({ value, u, shape: "lognormal" }, limit),
        expected.p_exceed_lognormal_median_y,
        tolerance,
      );
    if (expected.p_exceed_lognormal_mean_y !== undefined) {
      // The mean at y: the median lies lower by √(1 + (u/y)²), with the same s and so the same u/median.
      const median = value / Math.sqrt(1 + (u / value) ** 2);
      const state = { value: median, u: (u / value) * median, shape: "lognormal" } as const;
      near("lognormal, mean", probabilityAbove(state, limit), expected.p_exceed_lognormal_mean_y, tolerance);
    }
  },
  "h.guard_band": ({ inputs, expected, tolerance }) => {
    const { risk, nu } = inputs;
    near("factor", guardBand({ risk, u: 1, nu }), expected.factor_one_sided, tolerance);
    near("multiple of U", guardBand({ risk, u: 0.5, nu }), expected.multiple_of_U_k2, tolerance);
  },
  "h.two_sided_conformity": ({ inputs, expected, tolerance }) => {
    const state = { value: inputs.y, u: inputs.u, shape: "normal" } as const;
    const conform = probabilityAbove(state, inputs.lower) - probabilityAbove(state, inputs.upper);
    near("conform", conform, expected.p_conform, tolerance);
  },
  "k.rounding": ({ inputs, expected }) => {
    for (const [ties, wanted] of [
      ["half-even", expected.half_even],
      ["half-up", expected.half_up],
    ] as const)
      expect(roundToUncertainty(inputs.value, inputs.u, { digits: inputs.significant, ties })).toEqual({
        value: wanted.value,
        U: wanted.u,
      });
  },
};

/** Kinds of these letters that no function of ours answers, or that another room answers. */
const elsewhere = ["e.likelihood_grouped", "g.geometry", "h.global_risk"];

it("every kind of a, b, e, g, h and k is run here, or named as answered elsewhere", () => {
  expect([...Object.keys(runners), ...elsewhere].sort()).toEqual(kindsOf("abeghk").sort());
});

for (const [kind, run] of Object.entries(runners))
  describe(kind, () => {
    const cases = casesOfKind(kind);
    it("has cases", () => expect(cases.length).toBeGreaterThan(0));
    it.each(cases.map((c) => [titleOf(c), c] as const))("%s", (_title, c) => run(c));
  });
