import { describe, expect, it } from "vitest";
import { roundToUncertainty } from "@/lib/quantity/round-to-uncertainty.ts";
import { censoredNormal } from "@/lib/statistics/censored-normal.ts";
import { censoredLogLikelihood, censoredRandomEffects } from "@/lib/statistics/censored-random-effects.ts";
import { randomEffects } from "@/lib/statistics/random-effects.ts";
import { upperBoundAllCensored } from "@/lib/statistics/upper-bound-all-censored.ts";
import { weightedMean } from "@/lib/statistics/weighted-mean.ts";
import { type Case, casesOfKind, near, nearPair, titleOf } from "./support.ts";

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

for (const [kind, run] of Object.entries(runners))
  describe(kind, () => {
    const cases = casesOfKind(kind);
    it("has cases", () => expect(cases.length).toBeGreaterThan(0));
    it.each(cases.map((c) => [titleOf(c), c] as const))("%s", (_title, c) => run(c));
  });
