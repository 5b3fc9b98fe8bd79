import { describe, expect, it } from "vitest";
import { DomainError } from "@/lib/quantity/domain-error.ts";
import { combine } from "@/lib/statistics/combine.ts";
import { coverageFactor } from "@/lib/statistics/coverage-factor.ts";
import { type MonteCarloInput, monteCarlo } from "@/lib/statistics/monte-carlo.ts";
import { randomStream } from "@/lib/statistics/random-stream.ts";

describe("combine", () => {
  it("takes one degree of freedom, and less than one (R: qt(.975, 1), qt(.975, .5))", () => {
    expect(combine([{ u: 1, nu: 1 }]).U).toBeCloseTo(12.706204736175, 9);
    expect(combine([{ u: 1, nu: 0.5 }]).U).toBeCloseTo(164.55767348049, 6);
  });
  it("takes ν absent, null or infinite as infinite", () => {
    for (const nu of [undefined, null, Number.POSITIVE_INFINITY]) {
      const r = combine([{ u: 3, ...(nu === undefined ? {} : { nu }) }, { u: 4 }]);
      expect(r).toMatchObject({ u: 5, nuEff: Number.POSITIVE_INFINITY });
    }
  });
  it("gives one contribution its own degrees of freedom", () => {
    expect(combine([{ u: 2, nu: 4 }])).toMatchObject({ u: 2, nuEff: 4 });
    expect(
      combine([
        { u: 2, nu: 4 },
        { u: 0, nu: 1 },
      ]),
    ).toMatchObject({ u: 2, nuEff: 4 });
  });
  it("combines nothing to nothing", () => {
    expect(combine([{ u: 0 }, { u: 0, nu: 3 }])).toMatchObject({ u: 0, nuEff: Number.POSITIVE_INFINITY, U: 0 });
  });
  it("holds at the ends of the number range", () => {
    expect(
      combine([
        { u: 3e200, nu: 5 },
        { u: 4e200, nu: 5 },
      ]).u / 5e200,
    ).toBeCloseTo(1, 12);
    expect(
      combine([
        { u: 3e-200, nu: 5 },
        { u: 4e-200, nu: 5 },
      ]).nuEff,
    ).toBeCloseTo(625 / ((81 + 256) / 5), 9);
  });
  it("refuses what is no contribution", () => {
    for (const list of [
      [],
      [{ u: -1 }],
      [{ u: Number.NaN }],
      [{ u: Number.POSITIVE_INFINITY }],
      [{ u: 1, nu: 0 }],
      [{ u: 1, nu: Number.NaN }],
    ])
      expect(() => combine(list)).toThrow(DomainError);
    expect(() => combine([{ u: 1 }], { level: 95 })).toThrow(DomainError);
  });
});

describe("coverageFactor", () => {
  it("refuses degrees of freedom that are none, and levels outside (0, 1)", () => {
    for (const nu of [0, -1, Number.NaN]) expect(() => coverageFactor(nu, 0.95)).toThrow(DomainError);
    for (const level of [0, 1, 95, Number.NaN]) expect(() => coverageFactor(4, level)).toThrow(DomainError);
  });
  it("falls towards the normal one", () => {
    expect(coverageFactor(1e17, 0.95)).toBe(coverageFactor(Number.POSITIVE_INFINITY, 0.95));
    expect(coverageFactor(9, 0.95)).toBeGreaterThan(coverageFactor(10, 0.95));
  });
});

const draws = 100_000;
const identity = ({ x }: { x: number }) => x;
const one = (input: MonteCarloInput, options: { seed?: number; level?: number } = {}) =>
  monteCarlo(identity, { x: input }, { draws, seed: 1, ...options });

describe("monteCarlo", () => {
  it.each<[string, MonteCarloInput, number, number]>([
    ["normal", { shape: "normal", mean: 5, sd: 2 }, 5, 2],
    ["lognormal by mean and sd", { shape: "lognormal", mean: 5, sd: 2 }, 5, 2],
    [
      "lognormal by median and gsd",
      { shape: "lognormal", median: 5, gsd: 1.5 },
      5 * Math.exp(Math.log(1.5) ** 2 / 2),
      5 * Math.exp(Math.log(1.5) ** 2 / 2) * Math.sqrt(Math.expm1(Math.log(1.5) ** 2)),
    ],
    ["rectangular by its ends", { shape: "rectangular", min: 2, max: 8 }, 5, 6 / Math.sqrt(12)],
    ["rectangular by mean and sd", { shape: "rectangular", mean: 5, sd: 2 }, 5, 2],
    ["triangular", { shape: "triangular", min: 2, max: 8 }, 5, 6 / Math.sqrt(24)],
    ["triangular by mean and sd", { shape: "triangular", mean: 5, sd: 2 }, 5, 2],
    [
      "triangular with its mode at an end",
      { shape: "triangular", min: 0, max: 6, mode: 6 },
      4,
      Math.sqrt((36 + 36 - 36) / 18),
    ],
  ])("%s: mean and standard deviation of the shape", (_name, input, mean, sd) => {
    const r = one(input);
    expect(Math.abs(r.mean - mean)).toBeLessThan((5 * sd) / Math.sqrt(draws));
    expect(Math.abs(r.sd / sd - 1)).toBeLessThan(0.02);
  });

  it("draws each of six inputs anew: the variance of a weighted sum is the sum of the variances", () => {
    const normal = { shape: "normal", mean: 1, sd: 1 } as const;
    const inputs = { a: normal, b: normal, c: normal, d: normal, e: normal, f: normal };
    const sum = ({ a, b, c, d, e, f }: Record<keyof typeof inputs, number>) => a + b + c + d + 3 * e + 5 * f;
    const r = monteCarlo(sum, inputs, { draws: 40_000, seed: 5 });
    // Mean 12, variance 4 + 9 + 25; five standard errors of a simulated mean and of a simulated standard deviation.
    expect(Math.abs(r.mean - 12)).toBeLessThan((5 * Math.sqrt(38)) / Math.sqrt(40_000));
    expect(Math.abs(r.sd / Math.sqrt(38) - 1)).toBeLessThan(5 / Math.sqrt(2 * 40_000));
  });
  it("gives the intervals of a shape that is not symmetric", () => {
    // Exponential by −ln of a rectangular on (0, 1): symmetric 95 % [0.0253, 3.6889], shortest [0, 2.9957].
    const r = monteCarlo(({ x }) => -Math.log(x), { x: { shape: "rectangular", min: 0, max: 1 } }, { draws, seed: 3 });
    expect(r.symmetric[0]).toBeCloseTo(-Math.log(0.975), 2);
    expect(Math.abs(r.symmetric[1] + Math.log(0.025))).toBeLessThan(0.1);
    expect(r.shortest[0]).toBeLessThan(0.01);
    expect(Math.abs(r.shortest[1] + Math.log(0.05))).toBeLessThan(0.1);
    expect(r.shortest[1] - r.shortest[0]).toBeLessThan(r.symmetric[1] - r.symmetric[0]);
  });

  it("keeps a lognormal above zero at any spread", () => {
    expect(one({ shape: "lognormal", mean: 1, sd: 3 }, { level: 0.9999 }).shortest[0]).toBeGreaterThan(0);
  });

  it("is the same for the same seed, in whatever order inputs stand, and another for another seed", () => {
    const a: MonteCarloInput = { shape: "normal", mean: 0, sd: 1 };
    const b: MonteCarloInput = { shape: "rectangular", min: 0, max: 1 };
    const model = (v: { a: number; b: number }) => v.a + v.b;
    const first = monteCarlo(model, { a, b }, { draws: 1000, seed: 9 });
    expect(monteCarlo(model, { b, a }, { draws: 1000, seed: 9 })).toEqual(first);
    expect(monteCarlo(model, { a, b }, { draws: 1000, seed: 10 })).not.toEqual(first);
  });

  it("takes constants", () => {
    expect(one({ shape: "normal", mean: 3, sd: 0 })).toEqual({ mean: 3, sd: 0, symmetric: [3, 3], shortest: [3, 3] });
    expect(one({ shape: "triangular", min: 3, max: 3 }).sd).toBe(0);
  });

  it("refuses what it cannot draw from", () => {
    const refused: MonteCarloInput[] = [
      { shape: "normal", mean: 0, sd: -1 },
      { shape: "normal", mean: Number.NaN, sd: 1 },
      { shape: "normal", mean: 0 } as unknown as MonteCarloInput,
      { shape: "lognormal", mean: 0, sd: 1 },
      { shape: "lognormal", median: 1, gsd: 0.9 },
      { shape: "rectangular", min: 2, max: 1 },
      { shape: "rectangular", min: 0, max: Number.POSITIVE_INFINITY },
      { shape: "triangular", min: 0, max: 1, mode: 2 },
      { shape: "beta", mean: 1, sd: 1 } as unknown as MonteCarloInput,
    ];
    for (const input of refused) expect(() => one(input)).toThrow(DomainError);
    const x: MonteCarloInput = { shape: "normal", mean: 0, sd: 1 };
    expect(() => monteCarlo(({ x }) => Math.log(x), { x }, { draws: 1000, seed: 1 })).toThrow(DomainError);
    expect(() => monteCarlo(() => 1, {}, { draws: 1000, seed: 1 })).toThrow(DomainError);
    for (const count of [0, 99, 1000.5, 1e9, Number.NaN])
      expect(() => monteCarlo(identity, { x }, { draws: count, seed: 1 })).toThrow(DomainError);
    for (const seed of [-1, 1.5, Number.NaN]) expect(() => one(x, { seed })).toThrow(DomainError);
    expect(() => one(x, { level: 95 })).toThrow(DomainError);
  });
});

describe("randomStream", () => {
  it("fills the unit interval evenly and without lag", () => {
    const { uniform } = randomStream(20_261_124);
    const bins = Array<number>(20).fill(0);
    let lag = 0;
    let before = 0.5;
    const n = 200_000;
    for (let i = 0; i < n; i++) {
      const v = uniform();
      expect(v > 0 && v < 1).toBe(true);
      bins[Math.floor(v * 20)]! += 1;
      lag += (v - 0.5) * (before - 0.5);
      before = v;
    }
    const chi2 = bins.reduce((sum, count) => sum + (count - n / 20) ** 2 / (n / 20), 0);
    expect(chi2).toBeLessThan(43.8); // 0.999 quantile of χ² with 19 degrees of freedom
    expect(Math.abs((12 * lag) / n)).toBeLessThan(4 / Math.sqrt(n));
  });
  it("tells neighbouring and large seeds apart", () => {
    const firsts = [0, 1, 2, 2 ** 32, 2 ** 32 + 1, 2 ** 53 - 1].map((seed) => randomStream(seed).uniform());
    expect(new Set(firsts).size).toBe(firsts.length);
  });
});
