import { describe, expect, it } from "vitest";
import { bracketedRoot } from "@/lib/statistics/bracketed-root.ts";
import { gaussLegendre } from "@/lib/statistics/gauss-legendre.ts";
import { moments } from "@/lib/statistics/moments.ts";
import { refusalCode } from "../support/refusal-code.ts";

describe("bracketedRoot", () => {
  it("finds the root to the last digit, steep, flat or at an end", () => {
    expect(bracketedRoot((x) => x * x - 2, 0, 2)).toBeCloseTo(Math.SQRT2, 15);
    expect(bracketedRoot((x) => 2 - x * x, 2, 0)).toBeCloseTo(Math.SQRT2, 15);
    expect(bracketedRoot((x) => Math.expm1(50 * (x - 0.3)), 0, 1)).toBeCloseTo(0.3, 15);
    expect(Math.abs(bracketedRoot((x) => x ** 9, -1, 2))).toBeLessThan(1e-3);
    expect(bracketedRoot((x) => x - 1, 1, 3)).toBe(1);
    expect(bracketedRoot((x) => x - 3, 1, 3)).toBe(3);
    expect(bracketedRoot((x) => Math.log(x) + 600, 1e-300, 1) / Math.exp(-600)).toBeCloseTo(1, 12);
  });
  it("needs few evaluations", () => {
    let calls = 0;
    bracketedRoot(
      (x) => {
        calls++;
        return Math.cos(x) - x;
      },
      0,
      1,
    );
    expect(calls).toBeLessThan(12);
  });
  it("finds the jump of a function that has one", () => {
    expect(bracketedRoot((x) => (x < 0.7 ? -1 : 1), 0, 1)).toBeCloseTo(0.7, 14);
  });
  it("refuses ends of one sign", () => {
    expect(refusalCode(() => bracketedRoot((x) => x * x + 1, -1, 1))).toBe("no-sign-change");
    expect(refusalCode(() => bracketedRoot(() => Number.NaN, -1, 1))).toBe("no-sign-change");
  });
});

describe("gaussLegendre", () => {
  it("integrates polynomials up to degree 2n - 1 exactly", () => {
    const { nodes, weights } = gaussLegendre(5);
    const integral = (power: number) => nodes.reduce((sum, node, i) => sum + (weights[i] as number) * node ** power, 0);
    for (let power = 0; power <= 9; power++)
      expect(integral(power)).toBeCloseTo(power % 2 === 0 ? 2 / (power + 1) : 0, 14);
  });
});

describe("moments", () => {
  it("keeps the digits of a small spread on a large offset", () => {
    const { mean, sd } = moments([1e9 + 1, 1e9 + 2, 1e9 + 3]);
    expect(mean).toBe(1e9 + 2);
    expect(sd).toBe(1);
  });
  it("equal values have no spread at all, whatever their digits", () => {
    expect(moments([0.1, 0.1, 0.1, 0.1, 0.1, 0.1, 0.1])).toMatchObject({ mean: 0.1, sd: 0 });
  });
});
