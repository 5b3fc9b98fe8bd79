import { describe, expect, it } from "vitest";
import { blankLimits } from "@/lib/statistics/blank-limits.ts";
import { censoredRandomEffects } from "@/lib/statistics/censored-random-effects.ts";
import { scaleOf } from "@/lib/statistics/checks.ts";
import { detectionNoncentrality } from "@/lib/statistics/detection-noncentrality.ts";
import { normalHazardBelow, normalHazardSlope } from "@/lib/statistics/distributions.ts";
import { highestMaximum, logGrid } from "@/lib/statistics/highest-maximum.ts";
import { lognormalRandomEffects } from "@/lib/statistics/lognormal-random-effects.ts";
import { lognormalReading } from "@/lib/statistics/lognormal-reading.ts";
import { moments } from "@/lib/statistics/moments.ts";
import { multirule } from "@/lib/statistics/multirule.ts";
import { nestedAnova } from "@/lib/statistics/nested-anova.ts";
import { oneWayReml } from "@/lib/statistics/one-way-reml.ts";
import { profileEnd } from "@/lib/statistics/profile-interval.ts";
import { randomEffects } from "@/lib/statistics/random-effects.ts";
import { upperBoundAllCensored } from "@/lib/statistics/upper-bound-all-censored.ts";
import { leastDevianceRatio } from "@/lib/statistics/variance-ratio-search.ts";
import { refusalCode } from "../support/refusal-code.ts";

const relative = (got: number, expected: number) => Math.abs(got / expected - 1);

/**
 * The reading's likelihood and moments by brute force: the sum over 600,000 equal steps of e from −30 to 30, of contents exp(θ + σe) read
 * with a normal error u. Good while the reading's own peak, u/(σx) wide, spans many steps.
 */
function bySum(x: number, u: number, theta: number, sigma: number) {
  const step = 1e-4;
  const terms: [number, number][] = [];
  for (let n = -300_000; n < 300_000; n++) {
    const e = n * step;
    const r = (x - Math.exp(theta + sigma * e)) / u;
    terms.push([e, -0.5 * (r * r + e * e)]);
  }
  const top = terms.reduce((max, [, h]) => Math.max(max, h), Number.NEGATIVE_INFINITY);
  const sums = [0, 0, 0, 0, 0];
  for (const [e, h] of terms) for (let k = 0; k < 5; k++) sums[k]! += Math.exp(h - top) * e ** k;
  const [s0, ...rest] = sums as [number, number, number, number, number];
  const logf = top + Math.log(s0 * step) - Math.log(2 * Math.PI * u);
  return [logf, ...rest.map((s) => s / s0)];
}

describe("lognormalReading by brute force (composite trapezoidal sum in this test)", () => {
  it.each<[string, number, number, number, number]>([
    ["a reading near the middle", 90, 9, 4.4, 0.3],
    ["a sharp reading", 120, 1, 4.4, 0.5],
    ["a reading far above, where content and model each have a peak", 1000, 200, 0, 1],
    ["two peaks of like height", 1000, 208, 0, 1.5],
    ["two peaks, the model's the higher", 40, 9, 0, 0.9],
    ["a reading below zero", -5, 10, 1, 1],
    ["a reading of zero", 0, 3, 2, 0.6],
    ["an error far larger than the content", 2, 400, 0.5, 0.8],
    ["two peaks with nothing between them", 1279.2, 79.95, -3.0544, 0.63627],
    ["a reading twenty spreads above the model", 24186.97, 1823.193, 2.448175, 0.515975],
    ["a small reading far above a narrow model", 5.97698, 0.551516, -2.97204, 0.370341],
  ])("%s", (_name, x, u, theta, sigma) => {
    const got = lognormalReading(x, u, false, theta, sigma);
    const [logf, m1, m2, m3, m4] = bySum(x, u, theta, sigma) as [number, number, number, number, number];
    expect(got.logf).toBeCloseTo(logf, 8);
    expect(got.m1).toBeCloseTo(m1, 7);
    expect(got.m2).toBeCloseTo(m2, 7);
    expect(relative(1 + Math.abs(got.m3), 1 + Math.abs(m3))).toBeLessThan(1e-7);
    expect(relative(got.m4, m4)).toBeLessThan(1e-7);
  });
});

describe("where one form hands over to another", () => {
  it("the slope of the hazard joins its series at z = −100", () => {
    // −d² ln Φ = 1 − 1/z² + 6/z⁴ − 50/z⁶ + … as z → −∞, by inverting the asymptotic series of Mills' ratio.
    for (const z of [-99.99, -100.01, -150]) {
      const s = 1 / (z * z);
      expect(Math.abs(normalHazardSlope(z) - (1 - s + 6 * s * s - 50 * s ** 3))).toBeLessThan(2e-12);
    }
  });
  it("scales nothing where there is no size", () => {
    expect(scaleOf(0)).toBe(1);
    expect(scaleOf(3)).toBe(2);
    expect(scaleOf(4)).toBe(4);
    expect(scaleOf(5e-324)).toBe(2 ** -1022);
  });
});

describe("searches that reach far enough", () => {
  it("REML of readings a thousand u apart: τ² = s² − u² where all u are equal (closed form)", () => {
    for (const gap of [50, 1000, 1e5]) {
      const { tau2 } = randomEffects([0, gap, gap / 3], [1, 1, 1], { tau2: "REML" });
      const { sd } = moments([0, gap, gap / 3]);
      expect(relative(tau2, sd * sd - 1)).toBeLessThan(1e-9);
    }
  });
});

describe("searches that meet a strange function", () => {
  it("a likelihood level and then steep: the end of the profile lies where the deviance is the cut", () => {
    const deviance = (m: number) => Math.max(0, 40 * (m - 0.5)) ** 2;
    expect(profileEnd(deviance, 0, 1, 1, 1e6, Number.POSITIVE_INFINITY)).toBeCloseTo(0.525, 9);
  });
  it("two hollows of a restricted likelihood: the deeper one, on whichever side it lies", () => {
    // f = (x² − 1)²·2 ± x in x = log₁₀ ratio: hollows near −1 and 1, the deeper one where ±x is negative.
    const hollows = (tilt: number) => ({
      deviance: (ratio: number) =>
        ratio === 0 ? 100 : 2 * (Math.log10(ratio) ** 2 - 1) ** 2 + tilt * Math.log10(ratio),
      slope: (ratio: number) => {
        if (ratio === 0) return -1;
        const x = Math.log10(ratio);
        return (8 * x * (x * x - 1) + tilt) / (ratio * Math.LN10);
      },
    });
    expect(Math.log10(leastDevianceRatio(hollows(1), 1e-3, 1e3))).toBeCloseTo(-1.0575, 3);
    expect(Math.log10(leastDevianceRatio(hollows(-1), 1e-3, 1e3))).toBeCloseTo(1.0575, 3);
  });

  it("finds a least deviance in the last step of its grid", () => {
    const hollow = { deviance: (r: number) => (r - 9.9) ** 2, slope: (r: number) => 2 * (r - 9.9) };
    expect(leastDevianceRatio(hollow, 0.1, 10)).toBeCloseTo(9.9, 9);
  });

  it("one-way REML takes no spread where the likelihood's other maximum, at a ratio of 1, is lower (summed in this test)", () => {
    const groups = [
      { n: 1, mean: 9.6 },
      { n: 60, mean: 5.5 },
      { n: 2, mean: 4.4 },
      { n: 30, mean: 5.3 },
    ];
    const within = 187.2;
    const deviance = (ratio: number) => {
      const sum = (term: (group: { n: number; mean: number }) => number) =>
        groups.reduce((so, group) => so + term(group), 0);
      const weight = ({ n }: { n: number }) => n / (1 + n * ratio);
      const centre = sum((group) => weight(group) * group.mean) / sum(weight);
      const squares = within + sum((group) => weight(group) * (group.mean - centre) ** 2);
      return (
        (sum(({ n }) => n) - 1) * Math.log(squares) + sum(({ n }) => Math.log(1 + n * ratio)) + Math.log(sum(weight))
      );
    };
    expect(deviance(1)).toBeLessThan(Math.min(deviance(0.5), deviance(2)));
    expect(deviance(0)).toBeLessThan(deviance(1) - 0.5);
    expect(oneWayReml(groups, within).between).toBe(0);
  });

  it("a grid of three steps to the decade rises by the cube root of ten", () => {
    const grid = logGrid(2, 20, 3);
    expect(grid).toHaveLength(4);
    expect(grid[1]).toBeCloseTo(2 * Math.cbrt(10), 9);
  });

  it("blanks are judged at 5 % both ways where nothing else is asked (ISO 11843-1:1997, recommended values)", () => {
    const blanks = [1.2, -0.4, 0.5, 0.9, -0.2];
    expect(blankLimits(blanks)).toEqual(blankLimits(blanks, { repeats: 1, alpha: 0.05, beta: 0.05 }));
  });
  it("the higher of two maxima counts, whichever comes first", () => {
    // −(x² − 4x + 3)² has its maxima at 1 and 3; the tilt makes one of them the higher.
    const tilted = (tilt: number) => (x: number) => -((x * x - 4 * x + 3) ** 2) + tilt * x;
    const slope = (tilt: number) => (x: number) => -2 * (x * x - 4 * x + 3) * (2 * x - 4) + tilt;
    const grid = [0.5, 1.5, 2.5, 3.5];
    expect(highestMaximum(tilted(0.1), slope(0.1), grid).at).toBeCloseTo(3.0125, 2);
    expect(highestMaximum(tilted(-0.1), slope(-0.1), grid).at).toBeCloseTo(0.9875, 2);
  });
  it("a slope that is no number any more: the place before it is not overstepped", () =>
    expect(
      highestMaximum(
        (t) => t,
        (t) => (t < 3 ? 1 : Number.NaN),
        [1, 3],
      ),
    ).toEqual({ at: 3, value: 3 }));
  it("readings that do not rule out nothing at all put no bound on the mean", () => {
    // Three readings of 1.5 u: 2Δℓ against nothing is 6.75, within the small-sample cut 3·ln(1 + 4.303²/2) = 6.98.
    const r = lognormalRandomEffects([1.5, 1.5, 1.5], [1, 1, 1], [false, false, false]);
    expect(r).toMatchObject({ status: "ok", mean: expect.closeTo(1.5, 6), interval: [0, Number.POSITIVE_INFINITY] });
  });
  it("readings 20 decades apart, one of them 47 u below nothing, are answered", () => {
    const r = lognormalRandomEffects(
      [998791.85, 92161.148, 1.74897e25, -13842.577, -1056958.93],
      [9216.1148, 0.10674, 59871.424, 9216.1148, 22461.722],
      [true, false, false, false, true],
    );
    expect(r.status).toBe("ok");
    expect(r.interval![0]).toBeLessThan(r.mean!);
    expect(r.interval![1]).toBeGreaterThan(r.mean!);
  });
});

describe("an answer is the maximum itself, not a place near it", () => {
  it("the slope of the censored likelihood is zero in the mean, to the last digits", () => {
    const x = [412, 405, 380, 398, 350, 371];
    const u = [9, 8, 12, 7, 15, 10];
    const below = [false, false, true, false, true, false];
    const { status, mean, tau } = censoredRandomEffects(x, u, below);
    expect(status).toBe("ok");
    let slope = 0;
    let curvature = 0;
    for (const [i, value] of x.entries()) {
      const s = Math.hypot(u[i]!, tau!);
      const z = (value - mean!) / s;
      slope += below[i] ? -normalHazardBelow(z) / s : z / s;
      curvature += 1 / (s * s);
    }
    // In units of the mean's own standard error.
    expect(Math.abs(slope) / Math.sqrt(curvature)).toBeLessThan(1e-9);
  });
  it("components of scatter a million times apart scale with their values, however small those are", () => {
    const y = [0, 0.1, 30, 30.2, 9000, 9000.1, 9040, 9040.3, -7000, -7000.2, -6970, -6970.1];
    const at = (size: number) => nestedAnova(y.map((one, i) => ({ a: i >> 2, b: i >> 1, y: one * size }))).reml;
    const [one, small] = [at(1), at(1e-4)];
    expect(one.a / one.error).toBeGreaterThan(1e6);
    for (const part of ["a", "b", "error"] as const) expect(small[part] / one[part] / 1e-8).toBeCloseTo(1, 6);
  });
  it("and do not change when every value is 2³⁰ higher", () => {
    const y = [3, 5, 9, 4, 12, 15, 11, 17, 2, 8, 6, 1];
    const at = (offset: number) => nestedAnova(y.map((one, i) => ({ a: i >> 2, b: i >> 1, y: one + offset }))).reml;
    const [low, high] = [at(0), at(2 ** 30)];
    for (const part of ["a", "b", "error", "seMean"] as const) expect(high[part]).toBeCloseTo(low[part], 9);
    expect(high.mean - 2 ** 30).toBeCloseTo(low.mean, 5);
  });
});

describe("limits of the domain", () => {
  it("takes risks up to one half, not one half itself", () => {
    for (const risk of [0.34, 0.45, 0.4999])
      expect(detectionNoncentrality({ nu: 10, alpha: 0.05, beta: risk })).toBeGreaterThan(0);
    expect(refusalCode(() => detectionNoncentrality({ nu: 10, beta: 0.5 }))).toBe("bad-level");
    expect(refusalCode(() => detectionNoncentrality({ nu: 10, alpha: 0.5 }))).toBe("bad-level");
  });
  it("finds the bound of all-censored readings in whatever order they come", () => {
    const { upper } = upperBoundAllCensored([10, 12, 15], [3, 3, 4]);
    for (const [limits, u] of [
      [
        [15, 12, 10],
        [4, 3, 3],
      ],
      [
        [12, 10, 15],
        [3, 3, 4],
      ],
    ] as const)
      expect(relative(upperBoundAllCensored(limits, u).upper, upper)).toBeLessThan(1e-13);
  });
  it("counts a point on a control limit as inside (Westgard's rules say 'exceeds')", () => {
    const none = { "1-3s": [], "2-2s": [], "R-4s": [], "4-1s": [], "10-x": [] };
    expect(multirule([3, -3, 0])).toMatchObject({ "1-3s": [], "R-4s": [1] });
    expect(multirule([2, 2, 0])).toEqual(none);
    expect(multirule([2.1, -2, 0])).toEqual(none);
    expect(multirule([2, -2.1, 0])).toEqual(none);
    expect(multirule([-2.1, 2, 0])).toEqual(none);
    expect(multirule([-2, 2.1, 0])).toEqual(none);
    expect(multirule([1, 1, 1, 1])).toEqual(none);
    expect(multirule([-1, -1, -1, -1])).toEqual(none);
    expect(multirule([2.1, -2.1])["R-4s"]).toEqual([1]);
    expect(multirule([-2.1, 2.1])["R-4s"]).toEqual([1]);
  });
});
