import { describe, expect, it } from "vitest";
import {
  chiSquareQuantile,
  chiSquareUpperTail,
  fQuantile,
  fUpperTail,
  normalHazardBelow,
  normalHazardSlope,
  normalLogCdf,
  normalQuantile,
  normalUpperTail,
  tUpperQuantile,
  tUpperTail,
} from "@/lib/statistics/distributions.ts";

const relative = (got: number, expected: number) => Math.abs(got / expected - 1);

describe("upper tails keep their digits", () => {
  it("chi-squared (R 4.2.2 pchisq, lower.tail=FALSE)", () => {
    expect(relative(chiSquareUpperTail(863.067804535546, 4), 1.67196678021324e-185)).toBeLessThan(1e-12);
    expect(relative(chiSquareUpperTail(912.474034329197, 10), 1.31567249480651e-189)).toBeLessThan(1e-12);
    expect(chiSquareUpperTail(0, 3)).toBe(1);
  });
  it("normal (tables: P(Z > 10) = 7.61985e-24, ln P(Z < −40) = −804.608)", () => {
    expect(relative(normalUpperTail(10), 7.61985302416053e-24)).toBeLessThan(1e-12);
    expect(normalLogCdf(-40)).toBeCloseTo(-804.6084420137538, 10);
    expect(normalLogCdf(-1e10)).toBe(-5e19);
    expect(relative(normalLogCdf(10), -7.61985302416053e-24)).toBeLessThan(1e-12);
  });
  it("the normal quantile reaches its ends, is nought in the middle and nothing beyond", () => {
    expect([0, 0.5, 1].map(normalQuantile)).toEqual([Number.NEGATIVE_INFINITY, 0, Number.POSITIVE_INFINITY]);
    expect([-0.1, 1.1].map(normalQuantile)).toEqual([Number.NaN, Number.NaN]);
  });
  it("t with one degree of freedom is Cauchy's: P = ½ − arctan(t)/π", () => {
    for (const t of [-50, -1, -1e-8, 0, 1e-8, 1e-3, 0.5, 1, 2])
      expect(relative(tUpperTail(t, 1), 0.5 - Math.atan(t) / Math.PI)).toBeLessThan(1e-13);
    for (const t of [10, 1e3, 1e8]) expect(relative(tUpperTail(t, 1), Math.atan(1 / t) / Math.PI)).toBeLessThan(1e-13);
  });
  it("t with two degrees of freedom: P = 1 / (r(r + t)), r = √(2 + t²)", () => {
    for (const t of [0.1, 1, 3, 100, 1e6]) {
      const r = Math.sqrt(2 + t * t);
      expect(relative(tUpperTail(t, 2), 1 / (r * (r + t)))).toBeLessThan(1e-12);
    }
  });
  it("t joins the normal distribution", () => {
    for (const t of [0.3, 2, 5]) {
      expect(relative(tUpperTail(t, 1e14), normalUpperTail(t))).toBeLessThan(1e-11);
      expect(tUpperTail(t, Number.POSITIVE_INFINITY)).toBe(normalUpperTail(t));
    }
  });
  it("F with one and n degrees of freedom is t squared", () => {
    for (const t of [0.2, 1.5, 8]) expect(relative(fUpperTail(t * t, 1, 7), 2 * tUpperTail(t, 7))).toBeLessThan(1e-12);
    expect(fUpperTail(0, 2, 3)).toBe(1);
  });
});

describe("quantiles undo their tails", () => {
  it("normal, from 1e-300 to one half", () => {
    for (const p of [1e-300, 1e-100, 1e-20, 1e-12, 1e-6, 9.9e-4, 1.1e-3, 0.025, 0.3, 0.5])
      expect(relative(normalUpperTail(-normalQuantile(p)), p)).toBeLessThan(1e-11);
  });
  it("t, chi-squared and F", () => {
    for (const nu of [0.5, 1, 4, 17.3, 1e3, 1e6])
      for (const p of [1e-9, 0.005, 0.025, 0.4])
        expect(relative(tUpperTail(tUpperQuantile(p, nu), nu), p)).toBeLessThan(1e-10);
    for (const df of [1, 4, 60])
      for (const p of [0.025, 0.5, 0.975])
        expect(relative(chiSquareUpperTail(chiSquareQuantile(p, df), df), 1 - p)).toBeLessThan(1e-11);
    expect(relative(fUpperTail(fQuantile(0.95, 3, 4), 3, 4), 0.05)).toBeLessThan(1e-11);
  });
  it("gives the same answer when asked again and again for many degrees of freedom", () => {
    const first = tUpperQuantile(0.025, 4);
    for (let nu = 1; nu < 2000; nu++) tUpperQuantile(0.025, nu);
    for (let p = 0.001; p < 0.4; p += 0.001) tUpperQuantile(p, 4);
    expect(tUpperQuantile(0.025, 4)).toBe(first);
  });
});

describe("derivatives of ln Φ", () => {
  it("agree with differences", () => {
    for (const z of [-150, -99, -20, -2, 0, 1.5, 4]) {
      const h = 1e-4 * (1 + Math.abs(z));
      const slope = (normalLogCdf(z + h) - normalLogCdf(z - h)) / (2 * h);
      expect(Math.abs(normalHazardBelow(z) - slope)).toBeLessThan(1e-6 * (1 + slope));
      const second = -(normalHazardBelow(z + h) - normalHazardBelow(z - h)) / (2 * h);
      expect(Math.abs(normalHazardSlope(z) - second)).toBeLessThan(1e-6);
    }
  });
});
