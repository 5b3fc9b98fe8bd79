import { describe, expect, it } from "vitest";
import { likelihood as censoredNormalLikelihood } from "@/lib/statistics/censored-normal.ts";
import { localAt } from "@/lib/statistics/censored-random-effects.ts";
import {
  likelihood,
  lognormalRandomEffects,
  partsOf,
  withoutSpread,
} from "@/lib/statistics/lognormal-random-effects.ts";
import { nestedAnova } from "@/lib/statistics/nested-anova.ts";
import { evaluate } from "@/lib/statistics/nested-reml.ts";

// The searches only take a step that gains and fall back on slower ones, so a wrong slope would show in their time alone. Here every slope is
// held against the difference of the likelihood it belongs to, which is held against SciPy 1.17 (norm.logpdf, norm.logcdf, quad).

/** Slope of f at x by Richardson's central difference of order h⁴. */
const slopeOf = (f: (x: number) => number, x: number, h = 1e-3): number =>
  (8 * (f(x + h) - f(x - h)) - (f(x + 2 * h) - f(x - 2 * h))) / (12 * h);

const readings = {
  x: [12, 15, 20, 11, 9],
  u: [2, 3, 5, 2, 2.5],
  censored: [false, false, false, true, true],
};
const closeTo = (got: number, expected: number, digits = 7): void =>
  expect(got / Math.max(1, Math.abs(expected))).toBeCloseTo(expected / Math.max(1, Math.abs(expected)), digits);

describe("readings about a normal mean, u known", () => {
  const data = { x: readings.x, v: readings.u.map((u) => u * u), censored: readings.censored, times: [1, 2, 1, 1, 3] };
  const v0 = 4;
  const at = (m: number, r: number) => localAt(data, v0, m, r);
  it("log-likelihood as SciPy has it", () => {
    closeTo(at(13, Math.log(v0 + 9)).l, -17.467415091431302, 12);
  });
  it.each([
    [13, 2.5],
    [9, 1.5],
    [18, 3.5],
  ])("slopes at mean %d, r %d", (m, r) => {
    const here = at(m, r);
    closeTo(
      here.gM,
      slopeOf((z) => at(z, r).l, m),
    );
    closeTo(
      here.gR,
      slopeOf((z) => at(m, z).l, r),
    );
    closeTo(
      here.hMM,
      slopeOf((z) => at(z, r).gM, m),
    );
    closeTo(
      here.hRR,
      slopeOf((z) => at(m, z).gR, r),
    );
    closeTo(
      here.hMR,
      slopeOf((z) => at(z, r).gR, m),
    );
  });
});

describe("readings of a normal sample, u unknown", () => {
  const data = { seen: [12, 15, 20], below: [11, 9] };
  const at = (a: number, b: number) => censoredNormalLikelihood(data, { a, b });
  it("log-likelihood as SciPy has it, without its 2π", () => {
    closeTo(at(13 / 4, 1 / 4).l - 1.5 * Math.log(2 * Math.PI), -11.620132089576572, 12);
  });
  it.each([
    [3, 0.25],
    [0.5, 0.05],
    [8, 0.6],
  ])("slopes at a %d, b %d", (a, b) => {
    const here = at(a, b);
    closeTo(
      here.ga,
      slopeOf((z) => at(z, b).l, a, 1e-4),
    );
    closeTo(
      here.gb,
      slopeOf((z) => at(a, z).l, b, 1e-4),
    );
    closeTo(
      here.haa,
      slopeOf((z) => at(z, b).ga, a, 1e-4),
    );
    closeTo(
      here.hab,
      slopeOf((z) => at(z, b).gb, a, 1e-4),
    );
    closeTo(
      here.hbb,
      slopeOf((z) => at(a, z).gb, b, 1e-4),
      6,
    );
  });
});

describe("lognormal contents, u known", () => {
  it("without spread and with a reading below its limit the mean is where the slope is nought (SciPy: brentq)", () => {
    const r = lognormalRandomEffects([10, 10.5, 9.5], [2, 2, 2], [false, false, true]);
    expect(r).toMatchObject({ status: "ok", sigma: 0 });
    expect(r.mean).toBeCloseTo(9.463649909181093, 9);
    expect(r.logLikelihood).toBeCloseTo(-4.073133565653294, 9);
  });
  it("log-likelihood without spread as SciPy has it", () => {
    closeTo(withoutSpread(readings, Math.log(13)).l, -12.230334858809906, 12);
  });
  it.each([1.5, 2.5, 3])("slopes without spread at λ %d", (lambda) => {
    const here = withoutSpread(readings, lambda);
    closeTo(
      here.gLambda,
      slopeOf((z) => withoutSpread(readings, z).l, lambda),
    );
    closeTo(
      here.hLambda,
      slopeOf((z) => withoutSpread(readings, z).gLambda, lambda),
    );
  });
  const parts = partsOf(readings);
  const at = (lambda: number, rho: number) => likelihood(parts, lambda, rho);
  it("log-likelihood with spread as SciPy's quad has it", () => {
    closeTo(at(Math.log(13), Math.log(0.4)).l, -11.194543878976603, 9);
  });
  it("the slope in σ² at no spread is the limit of the slope with spread", () => {
    const small = 1e-3;
    const lambda = Math.log(13);
    const rise = (at(lambda, Math.log(small)).l - withoutSpread(readings, lambda).l) / small ** 2;
    closeTo(withoutSpread(readings, lambda).gSigma2, rise, 4);
  });
  it.each([
    [2.5, -1],
    [2, 0],
    [3, -2],
  ])("slopes at λ %d, ρ %d", (lambda, rho) => {
    const here = at(lambda, rho);
    closeTo(
      here.gM,
      slopeOf((z) => at(z, rho).l, lambda),
    );
    closeTo(
      here.gR,
      slopeOf((z) => at(lambda, z).l, rho),
    );
    closeTo(
      here.hMM,
      slopeOf((z) => at(z, rho).gM, lambda),
    );
    closeTo(
      here.hRR,
      slopeOf((z) => at(lambda, z).gR, rho),
    );
    closeTo(
      here.hMR,
      slopeOf((z) => at(z, rho).gR, lambda),
    );
  });
});

describe("nested components of scatter", () => {
  const cell = (n: number, mean: number) => ({ n, mean });
  const cells = [[cell(2, 1), cell(3, 4)], [cell(1, -2), cell(2, 0.5), cell(4, 2)], [cell(3, 6)]];
  const at = (beta: number, alpha: number) => evaluate(cells, 7.5, 15, beta, alpha);
  it("deviance is −2 times the restricted log-likelihood, error profiled out (NumPy: determinants of the whole covariance)", () => {
    // Differences between two points, since constants are left out.
    closeTo(at(0.5, 2).deviance - at(0.1, 0.3).deviance, -4.874161768781292, 10);
  });
  it.each([
    [0.5, 2],
    [0.1, 0.3],
    [3, 0.05],
  ])("slopes at β %d, α %d", (beta, alpha) => {
    closeTo(
      at(beta, alpha).slopeBeta,
      slopeOf((b) => at(b, alpha).deviance, beta),
    );
    closeTo(
      at(beta, alpha).slopeAlpha,
      slopeOf((a) => at(beta, a).deviance, alpha),
    );
  });
  it("finds a ratio of a million between components: balanced, REML is the analysis of variance", () => {
    // Corbeil and Searle, Biometrics 32 (1976) 779 (from memory): the same where every estimate is positive.
    const data = [10, 20, 35].flatMap((top, a) =>
      [0, 1.5].flatMap((up, b) => [1e-3, -1e-3].map((e) => ({ a: `${a}`, b: `${a}${b}`, y: top + up + e }))),
    );
    const { a, b, error, reml } = nestedAnova(data);
    for (const [one, other] of [
      [reml.a, a],
      [reml.b, b],
      [reml.error, error],
    ] as const)
      expect(one / other).toBeCloseTo(1, 6);
  });
});
