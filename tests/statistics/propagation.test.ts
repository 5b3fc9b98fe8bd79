import { describe, expect, it } from "vitest";
import { adaptiveMonteCarlo } from "@/lib/statistics/adaptive-monte-carlo.ts";
import { cholesky } from "@/lib/statistics/cholesky.ts";
import { comparePropagation } from "@/lib/statistics/compare-propagation.ts";
import { correlatedInputs } from "@/lib/statistics/correlated-inputs.ts";
import { correlationMatrix } from "@/lib/statistics/correlation-matrix.ts";
import { type MonteCarloInput, monteCarlo } from "@/lib/statistics/monte-carlo.ts";
import { numericalTolerance } from "@/lib/statistics/numerical-tolerance.ts";
import { positiveInputs } from "@/lib/statistics/positive-inputs.ts";
import { propagate } from "@/lib/statistics/propagate.ts";
import { refusalCode } from "../support/refusal-code.ts";

// Models and numbers below are invented for the tests.
const normal = (mean: number, sd: number): MonteCarloInput => ({ shape: "normal", mean, sd });

describe("cholesky", () => {
  it("lets a quantity that does not vary stand beside one that does, if nothing joins them", () => {
    expect(
      cholesky([
        [4, 0, 0],
        [0, 0, 0],
        [0, 0, 9],
      ]),
    ).toEqual([
      [2, 0, 0],
      [0, 0, 0],
      [0, 0, 3],
    ]);
    expect(
      refusalCode(() =>
        cholesky([
          [4, 1],
          [1, 0],
        ]),
      ),
    ).toBe("not-positive-semidefinite");
  });
  const product = (lower: number[][]) =>
    lower.map((a) => lower.map((b) => a.reduce((sum, each, k) => sum + each * (b[k] as number), 0)));
  it("its factor times its mirror image is the matrix, singular ones too", () => {
    for (const matrix of [
      [[4]],
      [
        [4, 2, -2],
        [2, 10, 5],
        [-2, 5, 9],
      ],
      [
        [1, 1, 0.5],
        [1, 1, 0.5],
        [0.5, 0.5, 1],
      ],
      [
        [0, 0],
        [0, 1],
      ],
    ])
      for (const [i, row] of product(cholesky(matrix)).entries())
        for (const [j, each] of row.entries()) expect(each).toBeCloseTo(matrix[i]?.[j] as number, 12);
  });
  it("keeps the digits of quantities of very different size", () => {
    const matrix = [
      [1e-30, 0.6e-15 * 1e6],
      [0.6e-15 * 1e6, 1e12],
    ];
    expect(cholesky(matrix)).toEqual([
      [expect.closeTo(1e-15, 25), 0],
      [expect.closeTo(0.6e6, 5), expect.closeTo(0.8e6, 5)],
    ]);
  });
  it("refuses what is no covariance", () => {
    expect(refusalCode(() => cholesky([[-1]]))).toBe("not-positive-semidefinite");
    expect(refusalCode(() => cholesky([]))).toBe("empty");
    expect(refusalCode(() => cholesky([[1, 2]]))).toBe("not-square");
    expect(refusalCode(() => cholesky([[Number.NaN]]))).toBe("not-finite");
    expect(
      refusalCode(() =>
        cholesky([
          [1, 0.5],
          [0.4, 1],
        ]),
      ),
    ).toBe("not-symmetric");
    expect(
      refusalCode(() =>
        cholesky([
          [1, 2],
          [2, 1],
        ]),
      ),
    ).toBe("not-positive-semidefinite");
    expect(
      refusalCode(() =>
        cholesky([
          [0, 1],
          [1, 4],
        ]),
      ),
    ).toBe("not-positive-semidefinite");
  });
});

describe("correlationMatrix", () => {
  it("refuses pairs that are none and coefficients that contradict each other", () => {
    const names = ["a", "b", "c"];
    expect(refusalCode(() => correlationMatrix(names, [{ between: ["a", "x"], r: 0.1 }]))).toBe("unknown-input");
    expect(refusalCode(() => correlationMatrix(names, [{ between: ["a", "a"], r: 1 }]))).toBe("same-input");
    expect(refusalCode(() => correlationMatrix(names, [{ between: ["a", "b"], r: 1.1 }]))).toBe("out-of-range");
    const twice = [
      { between: ["a", "b"], r: 0.1 },
      { between: ["b", "a"], r: 0.1 },
    ] as const;
    expect(refusalCode(() => correlationMatrix(names, twice))).toBe("repeated-pair");
    const impossible = [
      { between: ["a", "b"], r: 0.9 },
      { between: ["b", "c"], r: 0.9 },
      { between: ["a", "c"], r: -0.9 },
    ] as const;
    expect(refusalCode(() => correlationMatrix(names, impossible))).toBe("not-positive-semidefinite");
  });
});

describe("correlatedInputs", () => {
  const both = { a: normal(10, 2), b: normal(20, 3), c: normal(1, 0.5) };
  it("a sum and a difference have the variances of their covariance", () => {
    for (const r of [-1, -0.4, 0, 0.8, 1]) {
      const draws = 200_000;
      const run = (model: (x: Record<"a" | "b" | "c", number>) => number) =>
        monteCarlo(...correlatedInputs(model, both, [{ between: ["a", "b"], r }]), { draws, seed: 5 });
      const sum = run(({ a, b, c }) => a + b + c);
      const exact = Math.sqrt(13 + 12 * r + 0.25);
      expect(Math.abs(sum.mean - 31)).toBeLessThan((4 * exact) / Math.sqrt(draws));
      expect(Math.abs(sum.sd - exact)).toBeLessThan((4 * exact) / Math.sqrt(2 * draws));
      const difference = run(({ a, b }) => a - b);
      const apart = Math.sqrt(13 - 12 * r);
      expect(Math.abs(difference.sd - apart)).toBeLessThan((4 * apart) / Math.sqrt(2 * draws));
    }
  });
  it("lognormal inputs keep their mean and spread, and fully correlated ones of equal spread keep their ratio", () => {
    const inputs: Record<"a" | "b", MonteCarloInput> = {
      a: { shape: "lognormal", mean: 100, sd: 30 },
      b: { shape: "lognormal", median: 5, gsd: Math.exp(Math.sqrt(Math.log1p(0.09))) },
    };
    const pair = [{ between: ["a", "b"], r: 1 }] as const;
    const ratio = monteCarlo(...correlatedInputs(({ a, b }) => a / b, inputs, pair), { draws: 1000, seed: 2 });
    expect(ratio.symmetric[1] / ratio.symmetric[0]).toBeCloseTo(1, 12);
    const draws = 200_000;
    const alone = monteCarlo(...correlatedInputs(({ a }) => a, inputs, pair), { draws, seed: 2 });
    expect(Math.abs(alone.mean - 100)).toBeLessThan((4 * 30) / Math.sqrt(draws));
  });
  it("leaves all as it is where nothing is correlated, and refuses other shapes", () => {
    const model = ({ a }: { a: number }) => a;
    const inputs = { a: normal(1, 1) };
    expect(correlatedInputs(model, inputs, [])).toEqual([model, inputs]);
    const flat: Record<"a" | "b", MonteCarloInput> = { a: normal(1, 1), b: { shape: "rectangular", min: 0, max: 1 } };
    const pair = [{ between: ["a", "b"], r: 0.5 }] as const;
    const refused = (input: MonteCarloInput) =>
      refusalCode(() => correlatedInputs(({ a, b }) => a + b, { ...flat, b: input }, pair));
    expect(refused({ shape: "rectangular", min: 0, max: 1 })).toBe("correlation-needs-normal");
    expect(refused({ shape: "normal", mean: 0, sd: -1 })).toBe("negative");
    expect(refused({ shape: "normal", mean: Number.NaN, sd: 1 })).toBe("not-finite");
    expect(refused({ shape: "lognormal", mean: 0, sd: 1 })).toBe("not-positive");
    expect(refused({ shape: "lognormal", median: 1, gsd: 0.5 })).toBe("out-of-range");
    expect(refusalCode(() => correlatedInputs(model, inputs, [{ between: ["a", "x" as "a"], r: 0.5 }]))).toBe(
      "unknown-input",
    );
  });
});

describe("positiveInputs", () => {
  it("has the mean and variance of the cut normal distribution: μ + σλ, σ²(1 − λ(λ + μ/σ)), λ = φ/Φ at μ/σ", () => {
    const draws = 400_000;
    for (const [mean, sd, lambda] of [
      [0, 1, 0.7978845608],
      [1, 2, 0.509160434],
      [-3, 1, 3.2830986],
      [5, 1, 1.4867199e-6],
    ] as const) {
      const r = monteCarlo(
        ...positiveInputs(({ a, b }) => a + 0 * b, { a: normal(mean, sd), b: normal(0, 1) }, ["a"]),
        {
          draws,
          seed: 8,
        },
      );
      const exact = sd * Math.sqrt(1 - lambda * (lambda + mean / sd));
      expect(Math.abs(r.mean - (mean + sd * lambda))).toBeLessThan((4 * exact) / Math.sqrt(draws));
      expect(Math.abs(r.sd / exact - 1)).toBeLessThan(0.02);
      expect(r.symmetric[0]).toBeGreaterThan(0);
    }
  });
  it("never gives zero or less, even thirty standard deviations out", () => {
    const run = positiveInputs(({ a }) => (a > 0 ? Math.log(a) : Number.NaN), { a: normal(-30, 1) }, ["a"]);
    expect(monteCarlo(...run, { draws: 10_000, seed: 3 }).mean).toBeLessThan(Math.log(0.1));
  });
  it("refuses what cannot be cut", () => {
    const inputs: Record<"a", MonteCarloInput> = { a: { shape: "rectangular", min: -1, max: 1 } };
    expect(refusalCode(() => positiveInputs(({ a }) => a, inputs, ["a"]))).toBe("not-normal");
    expect(refusalCode(() => positiveInputs(({ a }) => a, inputs, ["x" as "a"]))).toBe("unknown-input");
    expect(refusalCode(() => positiveInputs(({ a }) => a, { a: normal(-31, 1) }, ["a"]))).toBe("out-of-range");
    expect(refusalCode(() => positiveInputs(({ a }) => a, { a: normal(1, 0) }, ["a"]))).toBe("not-positive");
    expect(refusalCode(() => positiveInputs(({ a }) => a, { a: normal(Infinity, 1) }, ["a"]))).toBe("not-finite");
  });
});

describe("numericalTolerance", () => {
  it("is half a unit of the last digit, after rounding", () => {
    expect(numericalTolerance(9.96, 2)).toBe(0.5);
    expect(numericalTolerance(9.94, 2)).toBe(0.05);
    expect(numericalTolerance(1e-9, 1)).toBe(5e-10);
    expect(numericalTolerance(123456, 2)).toBe(5000);
  });
  it("refuses a u of zero and no digits", () => {
    expect(refusalCode(() => numericalTolerance(0, 2))).toBe("not-positive");
    expect(refusalCode(() => numericalTolerance(1, 0))).toBe("bad-digits");
    expect(refusalCode(() => numericalTolerance(1, 7))).toBe("bad-digits");
  });
});

describe("adaptiveMonteCarlo", () => {
  it("goes on until the figures are within the tolerance, and they are", () => {
    const r = adaptiveMonteCarlo(({ a, b }) => a + b, { a: normal(100, 3), b: normal(0, 4) }, { seed: 7 });
    expect(r.status).toBe("settled");
    expect(r.tolerance).toBe(0.05);
    expect(Math.max(...Object.values(r.wander))).toBeLessThanOrEqual(0.05);
    // Twice the wander once more: the wander is itself 2 s.
    expect(Math.abs(r.mean - 100)).toBeLessThan(0.1);
    expect(Math.abs(r.sd - 5)).toBeLessThan(0.1);
    expect(Math.abs(r.interval[1] - 109.79982)).toBeLessThan(0.1);
  });
  it("more digits take more draws; the same seed gives the same answer", () => {
    const run = (digits: number) => adaptiveMonteCarlo(({ a }) => a, { a: normal(0, 1) }, { seed: 1, digits });
    expect(run(2).draws).toBeGreaterThanOrEqual(100_000);
    expect(run(2)).toEqual(run(2));
    const loose = run(1);
    expect(loose.draws).toBe(100_000);
    const tight = adaptiveMonteCarlo(({ a }) => a, { a: normal(0, 9) }, { seed: 1, digits: 3, mostDraws: 300_000 });
    expect(tight.status).toBe("not-settled");
    expect(tight.draws).toBe(300_000);
  });
  it("a model that does not vary is settled at once", () => {
    const r = adaptiveMonteCarlo(() => 3, { a: normal(0, 1) }, { seed: 1, interval: "shortest" });
    expect(r).toMatchObject({ status: "settled", mean: 3, sd: 0, interval: [3, 3], tolerance: 0, draws: 100_000 });
  });
  it("draws 100/(1 − level) at a time for a high level", () => {
    const r = adaptiveMonteCarlo(({ a }) => a, { a: normal(0, 1) }, { seed: 1, level: 0.999, digits: 1 });
    expect(r.draws % 100_000).toBe(0);
  });
  it("refuses too few draws, other intervals and levels", () => {
    const run = (options: object) =>
      refusalCode(() => adaptiveMonteCarlo(({ a }) => a, { a: normal(0, 1) }, { seed: 1, ...options }));
    expect(run({ mostDraws: 99_999 })).toBe("bad-draws");
    expect(run({ interval: "longest" })).toBe("unknown-interval");
    expect(run({ digits: 0 })).toBe("bad-digits");
    expect(run({ level: 1 })).toBe("bad-level");
    expect(run({ level: Number.NaN })).toBe("bad-level");
    expect(run({ seed: -1 })).toBe("bad-seed");
  });
});

describe("propagate", () => {
  it("finds sensitivities to ten digits", () => {
    const r = propagate(({ a, b, c }) => a * Math.exp(-b) + Math.sin(c), {
      a: { value: 40, u: 1 },
      b: { value: 0.7, u: 0.01 },
      c: { value: 0, u: 0.1 },
    });
    expect(r.sensitivities.a).toBeCloseTo(Math.exp(-0.7), 11);
    expect(r.sensitivities.b / (-40 * Math.exp(-0.7))).toBeCloseTo(1, 10);
    expect(r.sensitivities.c).toBeCloseTo(1, 10);
    expect(r.u).toBeCloseTo(Math.hypot(Math.exp(-0.7), 0.4 * Math.exp(-0.7), 0.1), 9);
  });
  it("counts degrees of freedom as combine does, and constants not at all", () => {
    const r = propagate(({ a, b, c }) => a + b + c, {
      a: { value: 1, u: 3, nu: 5 },
      b: { value: 2, u: 4, nu: null },
      c: { value: 0, u: 0 },
    });
    expect(r.u).toBeCloseTo(5, 10);
    expect(r.nuEff).toBeCloseTo((625 / 81) * 5, 6);
    expect(r.contributions.c).toBe(0);
    expect(r.sensitivities.c).toBeCloseTo(1, 10);
    expect(r.interval[1] - r.value).toBeCloseTo(r.U, 12);
  });
  it("full correlation adds contributions plainly, and takes them from each other", () => {
    const inputs = { a: { value: 10, u: 2 }, b: { value: 7, u: 2 } };
    const correlations = [{ between: ["a", "b"], r: 1 }] as const;
    expect(propagate(({ a, b }) => a + b, inputs, { correlations }).u).toBeCloseTo(4, 10);
    expect(propagate(({ a, b }) => a - b, inputs, { correlations }).u).toBeCloseTo(0, 10);
    expect(propagate(({ a, b }) => a + b, inputs, { correlations: [{ between: ["a", "b"], r: 0.5 }] }).u).toBeCloseTo(
      Math.sqrt(12),
      9,
    );
  });
  it("refuses what it cannot propagate", () => {
    const a = { value: 1, u: 1 };
    expect(refusalCode(() => propagate(() => 1, {}))).toBe("empty");
    expect(refusalCode(() => propagate(({ a }) => Math.log(a), { a: { value: 0, u: 1 } }))).toBe("not-finite");
    expect(refusalCode(() => propagate(({ a }) => a, { a: { value: 1, u: -1 } }))).toBe("negative");
    expect(refusalCode(() => propagate(({ a }) => a, { a: { value: Number.NaN, u: 1 } }))).toBe("not-finite");
    expect(refusalCode(() => propagate(({ a }) => a, { a: { ...a, nu: 0 } }))).toBe("not-positive");
    expect(refusalCode(() => propagate(({ a }) => a, { a }, { level: 0 }))).toBe("bad-level");
    const correlations = [{ between: ["a", "b"], r: 0.5 }] as const;
    expect(refusalCode(() => propagate(({ a, b }) => a + b, { a, b: { ...a, nu: 3 } }, { correlations }))).toBe(
      "correlated-with-nu",
    );
  });
});

describe("comparePropagation", () => {
  const model = ({ a, b }: Record<"a" | "b", number>) => a * b;
  const held = (sd: number) =>
    comparePropagation(
      propagate(model, { a: { value: 10, u: sd }, b: { value: 10, u: sd } }),
      adaptiveMonteCarlo(model, { a: normal(10, sd), b: normal(10, sd) }, { seed: 4, digits: 3, mostDraws: 2_000_000 }),
    );
  it("a product of narrow inputs agrees, of wide ones it does not", () => {
    expect(held(0.1).agrees).toBe(true);
    expect(held(4).agrees).toBe(false);
  });
  it("at a summit the simulated spread stands for the linear u of zero", () => {
    const square = ({ a }: { a: number }) => a * a;
    const linear = propagate(square, { a: { value: 0, u: 1 } });
    expect(linear.u).toBe(0);
    const r = comparePropagation(linear, adaptiveMonteCarlo(square, { a: normal(0, 1) }, { seed: 4 }));
    expect(r.delta).toBe(0.05);
    expect(r.agrees).toBe(false);
  });
  it("two constants agree; intervals upside down are refused", () => {
    const exact = { u: 0, sd: 0, interval: [3, 3] as const };
    expect(comparePropagation(exact, exact)).toEqual({ delta: 0, dLow: 0, dHigh: 0, agrees: true });
    expect(refusalCode(() => comparePropagation({ u: 1, interval: [2, 1] }, exact))).toBe("bad-interval");
    expect(refusalCode(() => comparePropagation({ u: 1, interval: [Number.NaN, 1] }, exact))).toBe("not-finite");
    expect(refusalCode(() => comparePropagation({ u: -1, interval: [1, 2] }, exact))).toBe("negative");
    expect(refusalCode(() => comparePropagation(exact, exact, { digits: 0 }))).toBe("bad-digits");
  });
});
