import { describe, expect, it } from "vitest";
import { roundToUncertainty } from "@/lib/quantity/round-to-uncertainty.ts";
import { randomEffects } from "@/lib/statistics/random-effects.ts";
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
