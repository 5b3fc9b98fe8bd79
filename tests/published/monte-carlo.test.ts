import { describe, expect, it } from "vitest";
import { type MonteCarloInput, monteCarlo } from "@/lib/statistics/monte-carlo.ts";

const draws = 1_000_000;
const normal = (mean: number, sd: number): MonteCarloInput => ({ shape: "normal", mean, sd });
const rectangular = (min: number, max: number): MonteCarloInput => ({ shape: "rectangular", min, max });

/**
 * Simulated figures carry the noise of their own draws. `wander` is four standard errors of the figure at a million draws,
 * worked out from the distribution (σ/√M for a mean, σ/√(2M) and more for flat or skewed shapes for a standard deviation,
 * √(p(1 − p)/M)/f(q) for an interval's end), not fitted to a result.
 */
const within = (what: string, got: number, exact: number, wander: number) =>
  expect(Math.abs(got - exact), `${what}: got ${got}, exact ${exact}`).toBeLessThanOrEqual(wander);

describe("JCGM 101:2008, additive models", () => {
  const sum = ({ a, b, c, d }: Record<"a" | "b" | "c" | "d", number>) => a + b + c + d;

  it("9.2.2 Table 2: four standard normals, u = 2.00, 95 % interval ±3.92", () => {
    const one = normal(0, 1);
    const r = monteCarlo(sum, { a: one, b: one, c: one, d: one }, { draws, seed: 922 });
    within("y", r.mean, 0, 0.008);
    within("u", r.sd, 2, 0.006);
    within("lower", r.symmetric[0], -3.919928, 0.022);
    within("upper", r.symmetric[1], 3.919928, 0.022);
  });

  it("9.2.3 Table 3, annex E: four rectangulars, u = 2.00, ±3.88 (exact 2√3(2 - (3/5)^¼) = 3.879407)", () => {
    const half = Math.sqrt(3);
    const exact = 2 * half * (2 - 0.6 ** 0.25);
    expect(exact).toBeCloseTo(3.879406741, 8);
    const one = rectangular(-half, half);
    const r = monteCarlo(sum, { a: one, b: one, c: one, d: one }, { draws, seed: 923 });
    within("u", r.sd, 2, 0.006);
    within("upper", r.symmetric[1], exact, 0.022);
    within("lower", r.symmetric[0], -exact, 0.022);
    expect(r.symmetric[1], "distinct from the normal ±3.92").toBeLessThan(3.91);
  });

  it("9.2.4 Table 4: one dominant rectangular, u = 10.1, ±17.0 where the framework says ±19.9", () => {
    const half = Math.sqrt(3);
    const one = rectangular(-half, half);
    const r = monteCarlo(sum, { a: one, b: one, c: one, d: rectangular(-10 * half, 10 * half) }, { draws, seed: 924 });
    within("u", r.sd, Math.sqrt(103), 0.03);
    within("upper", r.symmetric[1], 17.015814, 0.04);
    within("lower", r.symmetric[0], -17.015814, 0.04);
  });
});

describe("JCGM 101:2008, models that are not linear", () => {
  it("9.3 Table 6 (GUM-5:2026 example 7): mass calibration, 1.2341, u = 0.0754, shortest interval 0.2991 wide [interval from memory; its ends wander]", () => {
    const r = monteCarlo(
      ({ mass, extra, air, weight, reference }) =>
        (mass + extra) * (1 + (air - 1.2) * (1 / weight - 1 / reference)) - 100_000,
      {
        mass: normal(100_000, 0.05),
        extra: normal(1.234, 0.02),
        air: rectangular(1.1, 1.3),
        weight: rectangular(7000, 9000),
        reference: rectangular(7950, 8050),
      },
      { draws, seed: 93 },
    );
    within("mass", r.mean, 1.23405, 0.0004);
    within("u", r.sd, 0.07547, 0.0003);
    within("width", r.shortest[1] - r.shortest[0], 0.299, 0.0015);
    expect(r.sd, "first order alone says 0.0539").toBeGreaterThan(0.07);
  });

  // Unit 1e-6; X1 and X2 independent, u = 0.005 each. Exact: mean x1² + 2u², variance 4x1²u² + 4u⁴.
  it.each([
    [0, 50, 50, 0, 150],
    [0.01, 150, 112, 0, 367],
    [0.05, 2551, 502, 1590, 3543],
  ])(
    "9.4 Tables 7 and 8 (GUM-5:2026 example 16): comparison loss, x1 = %d: y = %d, u = %d, shortest [%d, %d] (a simulation's own digits)",
    (x1, y, u, lo, hi) => {
      const r = monteCarlo(
        ({ a, b }) => (a * a + b * b) * 1e6,
        { a: normal(x1, 0.005), b: normal(0, 0.005) },
        { draws, seed: 94 },
      );
      const variance = 4 * (x1 * 1e3) ** 2 * 25 + 4 * 25 ** 2;
      within("mean, exact", r.mean, x1 * x1 * 1e6 + 50, (4 * Math.sqrt(variance)) / 1000);
      within("sd, exact", r.sd, Math.sqrt(variance), (12 * Math.sqrt(variance)) / 1000);
      // Shortest intervals are flat at their best place: the printed ends agree to a few hundredths of u.
      within("mean, printed", r.mean, y, 0.02 * u);
      within("u, printed", r.sd, u, 0.02 * u);
      within("lower, printed", r.shortest[0], lo, 0.04 * u);
      within("upper, printed", r.shortest[1], hi, 0.04 * u);
    },
  );

  it("9.4: at x1 = 0 the upper end is exactly -2u² ln 0.05 = 149.787", () => {
    const r = monteCarlo(
      ({ a, b }) => (a * a + b * b) * 1e6,
      { a: normal(0, 0.005), b: normal(0, 0.005) },
      { draws, seed: 95 },
    );
    within("upper", r.shortest[1], 149.787, 1);
    within("lower", r.shortest[0], 0, 0.1);
  });

  it("9.5 (GUM-5:2026 example 8): gauge block, 838 nm, u = 36 nm, shortest 99 % interval [745, 932]", () => {
    const z = (names: string[]) => Object.fromEntries(names.map((name) => [name, normal(0, 1)]));
    const degrees = { s: 18, d: 24, e: 5, f: 8 };
    const squares = Object.entries(degrees).flatMap(([name, nu]) =>
      Array.from({ length: nu }, (_, i) => `${name}${i}`),
    );
    const unit = rectangular(0, 1);
    const inputs: Record<string, MonteCarloInput> = {
      ...z(["zs", "zd", "ze", "zf", ...squares]),
      alpha: rectangular(9.5e-6, 13.5e-6),
      theta0: normal(-0.1, 0.2),
      phase: unit,
      a1: unit,
      a2: unit,
      t1: unit,
      t2: unit,
    };
    const r = monteCarlo(
      (x) => {
        const value = (name: string) => x[name] as number;
        const student = (name: keyof typeof degrees) => {
          const nu = degrees[name];
          let sum = 0;
          for (let i = 0; i < nu; i++) sum += value(`${name}${i}`) ** 2;
          return value(`z${name}`) / Math.sqrt(sum / nu);
        };
        /** Rectangular about 0 whose half-width is itself known only within ±d. */
        const inexact = (half: number, d: number, first: number, second: number) => {
          const edge = half - d + 2 * d * first;
          return -edge + 2 * edge * second;
        };
        const length = 50_000_623 + 25 * student("s");
        const comparison = 215 + 6 * student("d") + 4 * student("e") + 7 * student("f");
        const temperature = value("theta0") + 0.5 * Math.sin(2 * Math.PI * value("phase"));
        const da = inexact(1e-6, 0.1e-6, value("a1"), value("a2"));
        const dt = inexact(0.05, 0.025, value("t1"), value("t2"));
        return length + comparison - length * (da * temperature + value("alpha") * dt) - 50_000_000;
      },
      inputs,
      { draws: 200_000, seed: 9, level: 0.99 },
    );
    within("dL", r.mean, 838, 0.5);
    within("u", r.sd, 36, 0.5);
    within("lower", r.shortest[0], 745, 2.5);
    within("upper", r.shortest[1], 932, 2.5);
  });
});

describe("NPL DEM-ES-011", () => {
  it("9.2, Table 9.2: y = ln x, x rectangular 0.1 to 1.1: -0.665, u = 0.606, shortest 95 % [-1.895, 0.095]", () => {
    const r = monteCarlo(({ x }) => Math.log(x), { x: rectangular(0.1, 1.1) }, { draws, seed: 92 });
    within("y", r.mean, -0.6649003, 0.0025);
    within("u", r.sd, 0.6062266, 0.003);
    // Exact shortest interval: ln 0.15 = -1.897 to ln 1.1 = 0.0953.
    within("lower", r.shortest[0], Math.log(0.15), 0.007);
    within("upper", r.shortest[1], Math.log(1.1), 0.001);
  });
});

describe("JCGM 102:2011 Tables 6 and 7", () => {
  it.each([[0.001, 0.01256, 0.00657, 1.7446]])(
    "magnitude and phase, x1 = %d, r = 0: printed 0.013, u 0.007, phase u 1.744; recomputed %d, %d, %d",
    (x1, magnitude, u, phaseU) => {
      const inputs = { a: normal(x1, 0.01), b: normal(0, 0.01) };
      const size = monteCarlo(({ a, b }) => Math.hypot(a, b), inputs, { draws, seed: 102 });
      within("magnitude", size.mean, magnitude, 0.00003);
      within("u", size.sd, u, 0.00003);
      const phase = monteCarlo(({ a, b }) => Math.atan2(b, a), inputs, { draws, seed: 103 });
      within("phase", phase.mean, 0, 0.007);
      within("u of phase", phase.sd, phaseU, 0.005);
    },
  );
});

describe("NIST TN 1900 (2015)", () => {
  it("E13: thermal expansion coefficient with normal inputs: 1.7266e-5, first order 1.755e-6 held by simulation", () => {
    const r = monteCarlo(
      ({ l0, l1, t0, t1 }) => (l1 - l0) / (l0 * (t1 - t0)),
      { l0: normal(1.4999, 0.0001), l1: normal(1.5021, 0.0002), t0: normal(288.15, 0.02), t1: normal(373.1, 0.05) },
      { draws, seed: 13 },
    );
    within("estimate", r.mean, 1.72662e-5, 1e-8);
    within("u", r.sd, 1.75548e-6, 1e-8);
  });
});
