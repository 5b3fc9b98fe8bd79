import { describe, expect, it } from "vitest";
import { adaptiveMonteCarlo } from "@/lib/statistics/adaptive-monte-carlo.ts";
import { comparePropagation } from "@/lib/statistics/compare-propagation.ts";
import { correlatedInputs } from "@/lib/statistics/correlated-inputs.ts";
import type { Correlation } from "@/lib/statistics/correlation-matrix.ts";
import { type MonteCarloInput, monteCarlo } from "@/lib/statistics/monte-carlo.ts";
import { numericalTolerance } from "@/lib/statistics/numerical-tolerance.ts";
import { propagate } from "@/lib/statistics/propagate.ts";
import { printed } from "./printed.ts";

const normal = (mean: number, sd: number): MonteCarloInput => ({ shape: "normal", mean, sd });
const rectangular = (min: number, max: number): MonteCarloInput => ({ shape: "rectangular", min, max });

describe("JCGM GUM-5:2026, linear propagation through the models themselves", () => {
  it("example 3: relative molecular mass of glucose, 180.1557, u 0.0038", () => {
    const r = propagate(({ h, c, o }) => 12 * h + 6 * c + 6 * o, {
      h: { value: 1.00798, u: 0.00008 },
      c: { value: 12.0106, u: 0.00058 },
      o: { value: 15.9994, u: 0.00021 },
    });
    // Printed 180.1557 and not 180.1558: cut, not rounded.
    printed("M", r.value, "180.1557", 1);
    printed("recomputed", r.value, "180.15576");
    printed("u", r.u, "0.0038");
    printed("u recomputed", r.u, "0.00382356");
  });
  it("example 14: decay correction, 10.810 kBq, u 0.054", () => {
    const r = propagate(({ a, t }) => a * Math.exp((-Math.LN2 * 2.73) / t), {
      a: { value: 11.45, u: 0.05 },
      t: { value: 32.9, u: 1.4 },
    });
    printed("A", r.value, "10.810");
    printed("u", r.u, "0.054");
    printed("u recomputed", r.u, "0.0541142");
  });
  it("example 7 (JCGM 101:2008 9.3): mass calibration, 1.2340, first order u 0.0539, [1.1285, 1.3395]", () => {
    const r = propagate(
      ({ m, d, air, weight, reference }) => (m + d) * (1 + (air - 1.2) * (1 / weight - 1 / reference)) - 100_000,
      {
        m: { value: 100_000, u: 0.05 },
        d: { value: 1.234, u: 0.02 },
        air: { value: 1.2, u: 0.1 / Math.sqrt(3) },
        weight: { value: 8000, u: 1000 / Math.sqrt(3) },
        reference: { value: 8000, u: 50 / Math.sqrt(3) },
      },
    );
    printed("m", r.value, "1.2340");
    printed("u", r.u, "0.0539");
    // The printed ends come from the rounded u; unrounded they are 1.1284 and 1.3396.
    printed("lo", r.interval[0], "1.1285", 1);
    printed("hi", r.interval[1], "1.3395", 1);
  });
  it("example 13: resistance thermometer, implicit model with correlated coefficients, 20.0232 °C, u 0.0045", () => {
    const temperature = ({ r0, a, b, rs, w }: Record<"r0" | "a" | "b" | "rs" | "w", number>) => {
      // R0(1 + A·t + B·t²) = W·Rs, the root near 20.
      const c = 1 - (w * rs) / r0;
      return (-a + Math.sqrt(a * a - 4 * b * c)) / (2 * b);
    };
    const correlations: Correlation<"r0" | "a" | "b">[] = [
      { between: ["r0", "a"], r: -0.155 },
      { between: ["r0", "b"], r: 0.092 },
      { between: ["a", "b"], r: -0.959 },
    ];
    const r = propagate(
      temperature,
      {
        r0: { value: 99.9961, u: 0.0005 },
        a: { value: 0.0039096, u: 0.0000027 },
        b: { value: -6e-7, u: 1.1e-7 },
        rs: { value: 99.99947, u: 0.0001 },
        w: { value: 1.0780057, u: 0.000005 },
      },
      { correlations },
    );
    printed("t", r.value, "20.0232");
    printed("u", r.u, "0.0045");
    printed("recomputed", r.value, "20.0231703");
    printed("u recomputed", r.u, "0.00448243");
  });
  it("example 1: pH by two-point interpolation, 7.0002, u 0.0041, all five uncertainties", () => {
    const r = propagate(({ ex, e1, e2, p1, p2 }) => p1 - ((e1 - ex) / (e1 - e2)) * (p1 - p2), {
      ex: { value: -1.875, u: 0.025 },
      e1: { value: 6.15, u: 0.0289 },
      e2: { value: -26.35, u: 0.0289 },
      p1: { value: 6.864, u: 0.0051 },
      p2: { value: 7.4157, u: 0.0051 },
    });
    printed("pH", r.value, "7.0002");
    printed("u", r.u, "0.0041");
    printed("recomputed", r.value, "7.00022746");
    printed("u recomputed", r.u, "0.00408265");
  });
});

describe("JCGM 100:2008 (GUM)", () => {
  it("5.2.2: ten resistors calibrated against one standard, fully correlated, u = 1 Ω [from memory]", () => {
    const names = Array.from({ length: 10 }, (_, i) => `r${i}`);
    const correlations = names.flatMap((a, i) =>
      names.slice(i + 1).map((b): Correlation => ({ between: [a, b], r: 1 })),
    );
    const inputs = Object.fromEntries(names.map((name) => [name, { value: 1000, u: 0.1 }]));
    const sum = (at: Record<string, number>) => names.reduce((total, name) => total + (at[name] as number), 0);
    const r = propagate(sum, inputs, { correlations });
    expect(r.value).toBe(10_000);
    expect(r.u).toBeCloseTo(1, 9);
  });
});

describe("NIST TN 1900 (2015)", () => {
  it("E13: thermal expansion coefficient, 1.7266e-5, first order u 1.755e-6 (printed 1.76e-6)", () => {
    const r = propagate(({ l0, t0, l1, t1 }) => (l1 - l0) / (l0 * (t1 - t0)), {
      l0: { value: 1.4999, u: 0.0001 },
      t0: { value: 288.15, u: 0.02 },
      l1: { value: 1.5021, u: 0.0002 },
      t1: { value: 373.1, u: 0.05 },
    });
    printed("alpha", r.value * 1e5, "1.7266");
    printed("u", r.u * 1e6, "1.76");
  });
});

describe("JCGM 101:2008 7.9 and 8: tolerance, adaptive draws, validation", () => {
  it("7.9.2, 8.1.3: u(y) = 2.00 stated to 1, 2, 3 digits, δ = 0.5, 0.05, 0.005", () => {
    expect([1, 2, 3].map((digits) => numericalTolerance(2, digits))).toEqual([0.5, 0.05, 0.005]);
  });
  it("9.2.3 (8.1): four rectangulars, ends 0.0405 apart: the framework is validated at one and two digits, not at three", () => {
    const half = Math.sqrt(3);
    const exact = 2 * half * (2 - 0.6 ** 0.25);
    const one = { value: 0, u: 1 };
    const linear = propagate(({ a, b, c, d }) => a + b + c + d, { a: one, b: one, c: one, d: one });
    const held = (digits: number) => comparePropagation(linear, { sd: 2, interval: [-exact, exact] }, { digits });
    printed("dHigh", held(2).dHigh, "0.040521");
    expect([1, 2, 3].map((digits) => held(digits).agrees)).toEqual([true, true, false]);
  });
  it("9.2.4 (8.1): one dominant rectangular, ±17.0 against ±19.9: the framework is not validated", () => {
    const half = Math.sqrt(3);
    const one = rectangular(-half, half);
    const sum = ({ a, b, c, d }: Record<"a" | "b" | "c" | "d", number>) => a + b + c + d;
    const simulated = adaptiveMonteCarlo(
      sum,
      { a: one, b: one, c: one, d: rectangular(-10 * half, 10 * half) },
      { seed: 924 },
    );
    expect(simulated.status).toBe("settled");
    printed("u", simulated.sd, "10.1", 1);
    expect(Math.abs(simulated.interval[1] - 17.015814)).toBeLessThanOrEqual(2 * simulated.tolerance);
    const standard = { value: 0, u: 1 };
    const linear = propagate(sum, { a: standard, b: standard, c: standard, d: { value: 0, u: 10 } });
    printed("±19.9", linear.U, "19.9");
    expect(comparePropagation(linear, simulated).agrees).toBe(false);
  });
});

describe("JCGM 101:2008 9.4 (GUM-5:2026 example 16), comparison loss with r = 0.9 [figures from memory]", () => {
  const loss = ({ x1, x2 }: Record<"x1" | "x2", number>) => (x1 * x1 + x2 * x2) * 1e6;
  const draws = 1_000_000;
  for (const [x1, mean, sd, lo, hi] of [
    [0, 50, 67.268, 0, 184.9],
    [0.01, 150, 120.52, 12.8, 397.5],
    [0.05, 2550, 504.505, 1620.8, 3550.7],
  ] as const)
    it(`x1 = ${x1}: exact moments ${mean}, ${sd}; shortest 95 % interval about [${lo}, ${hi}]`, () => {
      const inputs = { x1: normal(x1, 0.005), x2: normal(0, 0.005) };
      const run = correlatedInputs(loss, inputs, [{ between: ["x1", "x2"], r: 0.9 }]);
      const r = monteCarlo(...run, { draws, seed: 94 });
      expect(Math.abs(r.mean - mean)).toBeLessThan((4 * sd) / 1000);
      // The fourth moment of a square of normals is up to 15/4 that of a normal one's three: twice the normal wander.
      expect(Math.abs(r.sd - sd)).toBeLessThan((8 * sd) / Math.sqrt(2 * draws) + 0.003 * sd);
      // Ends of shortest intervals wander most; the sources' own runs differ by one part in two hundred of the width.
      expect(Math.abs(r.shortest[0] - lo)).toBeLessThan(0.02 * (hi - lo));
      expect(Math.abs(r.shortest[1] - hi)).toBeLessThan(0.02 * (hi - lo));
      const linear = propagate(
        loss,
        { x1: { value: x1, u: 0.005 }, x2: { value: 0, u: 0.005 } },
        { correlations: [{ between: ["x1", "x2"], r: 0.9 }] },
      );
      expect(comparePropagation(linear, { sd: r.sd, interval: r.shortest }).agrees).toBe(false);
    });
  it("x1 = 0, 0.010, 0.050: the framework gives u = 0, 100, 500 and [-96, 296], [1520, 3480]", () => {
    const at = (x1: number) => propagate(loss, { x1: { value: x1, u: 0.005 }, x2: { value: 0, u: 0.005 } });
    expect(at(0).u).toBe(0);
    printed("u", at(0.01).u, "100");
    printed("lo", at(0.01).interval[0], "-96");
    printed("hi", at(0.01).interval[1], "296");
    printed("u", at(0.05).u, "500");
    printed("lo", at(0.05).interval[0], "1520");
    printed("hi", at(0.05).interval[1], "3480");
  });
});

describe("JCGM 102:2011 Tables 6 and 7, correlated [recomputed with 4e6 draws]", () => {
  it("x1 = 0.001 and 0.010, u 0.010, r = 0.9: magnitude 0.012, u 0.008 and 0.015, u 0.008; phase -0.556, u 1.599 and -0.343, u 0.903", () => {
    const draws = 400_000;
    for (const [x1, magnitude, uMagnitude, phase, uPhase] of [
      [0.001, 0.01173, 0.00796, -0.5562, 1.5993],
      [0.01, 0.01529, 0.00814, -0.3424, 0.903],
    ] as const) {
      const run = (model: (at: Record<"x1" | "x2", number>) => number) =>
        monteCarlo(
          ...correlatedInputs(model, { x1: normal(x1, 0.01), x2: normal(0, 0.01) }, [
            { between: ["x1", "x2"], r: 0.9 },
          ]),
          { draws, seed: 102 },
        );
      const m = run((at) => Math.hypot(at.x1, at.x2));
      const p = run((at) => Math.atan2(at.x2, at.x1));
      const wander = 4 / Math.sqrt(draws);
      expect(Math.abs(m.mean - magnitude)).toBeLessThan(wander * uMagnitude + 5e-6);
      expect(Math.abs(m.sd - uMagnitude)).toBeLessThan(wander * uMagnitude + 5e-6);
      expect(Math.abs(p.mean - phase)).toBeLessThan(wander * uPhase + 5e-5);
      expect(Math.abs(p.sd - uPhase)).toBeLessThan(wander * uPhase + 5e-5);
    }
  });
});
