import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { normalUpperTail } from "@/lib/statistics/distributions.ts";
import { type MonteCarloInput, monteCarlo } from "@/lib/statistics/monte-carlo.ts";
import { randomStream } from "@/lib/statistics/random-stream.ts";
import { splitAt } from "@/lib/statistics/split-at.ts";
import { fillNormals } from "@/lib/statistics/ziggurat.ts";
import { refusalCode } from "../support/refusal-code.ts";

const filled = (fill: (into: Float64Array) => void, count: number): Float64Array => {
  const list = new Float64Array(count);
  fill(list);
  return list;
};

/** Kolmogorov's distance between a sample and a distribution, times √n: above 1.95 in one sample of a thousand. */
function distance(sample: Float64Array, cdf: (x: number) => number): number {
  const sorted = sample.toSorted();
  let far = 0;
  for (const [i, x] of sorted.entries()) {
    const p = cdf(x);
    far = Math.max(far, Math.abs(p - i / sorted.length), Math.abs(p - (i + 1) / sorted.length));
  }
  return far * Math.sqrt(sorted.length);
}

describe("the random stream", () => {
  it("follows xoshiro128** and splitmix32 word by word (an independent writing of both, with BigInt)", () => {
    const mask = 0xffffffffn;
    const rotated = (x: bigint, by: bigint) => ((x << by) | (x >> (32n - by))) & mask;
    const seed = 5 * 2 ** 32 + 20261124;
    let mix = BigInt(20261124) ^ ((5n * 0x9e3779b1n) & mask);
    const state = Array.from({ length: 4 }, () => {
      mix = (mix + 0x9e3779b9n) & mask;
      let z = mix ^ (mix >> 16n);
      z = (z * 0x21f0aaadn) & mask;
      z ^= z >> 15n;
      z = (z * 0x735a2d97n) & mask;
      return z ^ (z >> 15n);
    }) as [bigint, bigint, bigint, bigint];
    const word = () => {
      const result = (rotated((state[1] * 5n) & mask, 7n) * 9n) & mask;
      const t = (state[1] << 9n) & mask;
      state[2] ^= state[0];
      state[3] ^= state[1];
      state[1] ^= state[2];
      state[0] ^= state[3];
      state[2] ^= t;
      state[3] = rotated(state[3], 11n);
      return result;
    };
    const stream = randomStream(seed);
    // Past the end of one pool of words and into the next.
    for (let i = 0; i < 5000; i++) {
      const expected = (Number(word() >> 6n) * 2 ** 26 + Number(word() >> 6n) + 0.5) * 2 ** -52;
      expect(stream.uniform()).toBe(expected);
    }
  });

  it("is the same for the same seed, and another for another", () => {
    const first = (seed: number) => filled(randomStream(seed).normals, 5);
    expect(first(1)).toEqual(first(1));
    expect(first(1)).not.toEqual(first(2));
    expect(first(1)).not.toEqual(first(1 + 2 ** 32));
    const one = randomStream(9);
    const many = randomStream(9);
    expect(Float64Array.from({ length: 100 }, () => one.normal())).toEqual(filled(many.normals, 100));
  });

  it.each([-1, 0.5, Number.NaN, 2 ** 53])("refuses the seed %s", (seed) =>
    expect(refusalCode(() => randomStream(seed))).toBe("bad-seed"),
  );

  it("gives uniform numbers strictly inside (0, 1), 200,000 of them flat", () => {
    const list = filled(randomStream(3).uniforms, 200_000);
    expect(list.every((x) => x > 0 && x < 1)).toBe(true);
    expect(distance(list, (x) => x)).toBeLessThan(1.95);
  });

  it("gives normal numbers: 400,000 of them by the whole distribution, its tails and its moments", () => {
    const n = 400_000;
    const list = filled(randomStream(4).normals, n);
    expect(distance(list, (x) => 1 - normalUpperTail(x))).toBeLessThan(1.95);
    for (const power of [1, 2, 3, 4]) {
      const mean = list.reduce((sum, x) => sum + x ** power, 0) / n;
      const exact = [0, 1, 0, 3][power - 1]!;
      const variance = [1, 2, 15, 96][power - 1]!;
      expect(Math.abs(mean - exact), `moment ${power}`).toBeLessThan(4 * Math.sqrt(variance / n));
    }
    // The widest layer hands over to the tail at 3.654: no gap and no heap on either side of it.
    for (const from of [1, 2, 3, 3.5, 3.6541528853610088, 4]) {
      const expected = 2 * normalUpperTail(from) * n;
      const found = list.filter((x) => Math.abs(x) > from).length;
      expect(Math.abs(found - expected), `beyond ${from}`).toBeLessThan(4 * Math.sqrt(expected));
    }
    const among = (lo: number, hi: number) => list.filter((x) => Math.abs(x) > lo && Math.abs(x) < hi).length;
    for (let lo = 0; lo < 4; lo += 0.25) {
      const expected = 2 * (normalUpperTail(lo) - normalUpperTail(lo + 0.25)) * n;
      expect(Math.abs(among(lo, lo + 0.25) - expected), `from ${lo}`).toBeLessThan(4 * Math.sqrt(expected));
    }
  });

  it("draws the tail beyond the last layer as the normal distribution has it", () => {
    const stream = randomStream(6);
    // A word that asks for layer 0 and the far end of it, every time.
    const tail = filled((into) => fillNormals(into, () => 0xfffffe00, stream.uniform), 100_000);
    const whole = normalUpperTail(3.6541528853610088);
    expect(tail.every((x) => x >= 3.6541528853610088)).toBe(true);
    expect(distance(tail, (x) => 1 - normalUpperTail(x) / whole)).toBeLessThan(1.95);
  });

  it("does not carry one normal number over into the next", () => {
    const list = filled(randomStream(5).normals, 200_000);
    for (const lag of [1, 2, 3]) {
      let sum = 0;
      for (let i = lag; i < list.length; i++) sum += list[i]! * list[i - lag]!;
      expect(Math.abs(sum) / Math.sqrt(list.length)).toBeLessThan(4);
    }
  });
});

describe("splitAt", () => {
  it("puts the smallest first, whatever the list (1,000 runs, ties among them)", () => {
    const lists = fc.array(
      fc.oneof(fc.integer({ min: -3, max: 3 }), fc.double({ noNaN: true, noDefaultInfinity: true })),
      {
        minLength: 1,
        maxLength: 60,
      },
    );
    fc.assert(
      fc.property(lists, fc.nat(), (list, cut) => {
        const count = cut % (list.length + 1);
        const values = Float64Array.from(list, (x) => x + 0);
        const sorted = values.toSorted();
        splitAt(values, count);
        expect(values.slice(0, count).sort()).toEqual(sorted.slice(0, count));
        expect(values.slice(count).sort()).toEqual(sorted.slice(count));
      }),
      { numRuns: 1000 },
    );
  });
  it("is quick on lists already in order, or all equal", () => {
    for (const values of [Float64Array.from({ length: 200_000 }, (_, i) => i), new Float64Array(200_000).fill(7)]) {
      const start = performance.now();
      splitAt(values, 10_000);
      expect(performance.now() - start).toBeLessThan(5000);
    }
  });
});

describe("monteCarlo", () => {
  const uniform: MonteCarloInput = { shape: "rectangular", min: 0, max: 1 };
  const seed = 11;
  const draws = 100_000;
  const identity = ({ x }: Record<"x", number>) => x;

  it("gives the intervals that a full sort gives, at levels high and low", () => {
    for (const level of [0.02, 0.4, 0.6, 0.95, 0.9999]) {
      const drawn: number[] = [];
      const r = monteCarlo(
        ({ x }) => drawn[drawn.push(Math.exp(x)) - 1]!,
        { x: uniform },
        { draws: 1001, seed, level },
      );
      const sorted = drawn.sort((a, b) => a - b);
      const q = Math.min(1000, Math.max(1, Math.round(level * 1001)));
      const rank = Math.max(1, Math.floor((1001 - q + 1) / 2));
      expect(r.symmetric).toEqual([sorted[rank - 1], sorted[rank + q - 1]]);
      const widths = sorted.slice(0, 1001 - q).map((low, i) => sorted[i + q]! - low);
      expect(r.shortest[1] - r.shortest[0]).toBe(Math.min(...widths));
      const mean = drawn.reduce((sum, x) => sum + x, 0) / 1001;
      expect(r.mean).toBeCloseTo(mean, 12);
      expect(r.sd).toBeCloseTo(Math.sqrt(drawn.reduce((sum, x) => sum + (x - mean) ** 2, 0) / 1000), 12);
    }
  });

  it.each<[string, MonteCarloInput, number, number]>([
    ["normal", { shape: "normal", mean: 3, sd: 2 }, 3, 2],
    ["lognormal by mean and sd", { shape: "lognormal", mean: 3, sd: 1 }, 3, 1],
    [
      "lognormal by median and gsd",
      { shape: "lognormal", median: 2, gsd: 1.5 },
      2 * Math.exp(Math.log(1.5) ** 2 / 2),
      2 * Math.exp(Math.log(1.5) ** 2 / 2) * Math.sqrt(Math.expm1(Math.log(1.5) ** 2)),
    ],
    ["rectangular by its ends", { shape: "rectangular", min: 1, max: 4 }, 2.5, 3 / Math.sqrt(12)],
    ["rectangular by mean and sd", { shape: "rectangular", mean: 2, sd: 0.5 }, 2, 0.5],
    ["triangular by its ends", { shape: "triangular", min: 0, max: 6 }, 3, 6 / Math.sqrt(24)],
    ["triangular with a mode", { shape: "triangular", min: 0, max: 6, mode: 1 }, 7 / 3, Math.sqrt((36 + 1 - 6) / 18)],
    ["triangular by mean and sd", { shape: "triangular", mean: 5, sd: 0.7 }, 5, 0.7],
    ["a constant", { shape: "triangular", min: 4, max: 4 }, 4, 0],
  ])("draws a %s input with its mean and spread (closed forms)", (_name, input, mean, sd) => {
    const r = monteCarlo(identity, { x: input }, { draws, seed });
    expect(Math.abs(r.mean - mean)).toBeLessThanOrEqual((4 * sd) / Math.sqrt(draws));
    // The scatter of a standard deviation: at most sd·√(kurtosis/4n), the lognormal's heavy tail included.
    expect(Math.abs(r.sd - sd)).toBeLessThanOrEqual(sd * 4 * Math.sqrt(12 / draws));
  });

  it("draws a triangle whose mode is an end", () => {
    for (const mode of [0, 1]) {
      const { symmetric } = monteCarlo(identity, { x: { shape: "triangular", min: 0, max: 1, mode } }, { draws, seed });
      const exact = mode === 1 ? [Math.sqrt(0.025), Math.sqrt(0.975)] : [1 - Math.sqrt(0.975), 1 - Math.sqrt(0.025)];
      expect(Math.abs(symmetric[0] - exact[0]!)).toBeLessThan(0.01);
      expect(Math.abs(symmetric[1] - exact[1]!)).toBeLessThan(0.01);
    }
  });

  it("is the same whatever the order in which the inputs are listed", () => {
    const [a, b]: MonteCarloInput[] = [{ shape: "normal", mean: 1, sd: 1 }, uniform];
    const model = (x: Record<string, number>) => x["a"]! - 2 * x["b"]!;
    const options = { draws: 5000, seed };
    expect(monteCarlo(model, { a: a!, b: b! }, options)).toEqual(monteCarlo(model, { b: b!, a: a! }, options));
  });

  it.each<[string, MonteCarloInput]>([
    ["out-of-range", { shape: "normal", mean: 1, sd: -1 }],
    ["not-finite", { shape: "normal", mean: Number.NaN, sd: 1 }],
    ["not-positive", { shape: "lognormal", mean: 0, sd: 1 }],
    ["not-positive", { shape: "lognormal", median: -1, gsd: 2 }],
    ["out-of-range", { shape: "lognormal", median: 1, gsd: 0.9 }],
    ["out-of-range", { shape: "rectangular", min: 1, max: 0 }],
    ["not-finite", { shape: "rectangular", min: Number.NEGATIVE_INFINITY, max: 0 }],
    ["out-of-range", { shape: "triangular", min: 0, max: 1, mode: 2 }],
    ["out-of-range", { shape: "triangular", min: 0, max: 1, mode: -0.1 }],
    ["bad-shape", { shape: "cauchy", mean: 0, sd: 1 } as unknown as MonteCarloInput],
  ])("refuses (%s) %j", (code, input) =>
    expect(refusalCode(() => monteCarlo(identity, { x: input }, { draws: 100, seed }))).toBe(code),
  );

  it("refuses too few or too many draws, no inputs, a bad level, and a model that gives no number", () => {
    const refused = (
      options: object,
      model: (x: { x: number }) => number = identity,
      inputs: object = { x: uniform },
    ) => refusalCode(() => monteCarlo(model, inputs as { x: MonteCarloInput }, { draws: 100, seed, ...options }));
    expect(refused({ draws: 99 })).toBe("bad-draws");
    expect(refused({ draws: 100.5 })).toBe("bad-draws");
    expect(refused({ draws: 20_000_001 })).toBe("bad-draws");
    expect(refused({ level: 1 })).toBe("bad-level");
    expect(refused({ level: 0 })).toBe("bad-level");
    expect(refused({}, identity, {})).toBe("empty");
    expect(refused({}, () => Number.NaN)).toBe("not-finite");
    expect(refused({}, () => "1" as unknown as number)).toBe("not-finite");
  });
});
