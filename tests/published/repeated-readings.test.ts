import { describe, expect, it } from "vitest";
import { coverageFactor } from "@/lib/statistics/coverage-factor.ts";
import { weightedMean } from "@/lib/statistics/weighted-mean.ts";

describe("readings 120, 131, 125 ppm (our arithmetic; t from JCGM 100:2008 Table G.2)", () => {
  const x = [120, 131, 125];
  const mean = x.reduce((a, b) => a + b, 0) / 3;
  const s = Math.sqrt(x.reduce((sum, one) => sum + (one - mean) ** 2, 0) / 2);
  it("mean 125.333, s 5.5076, relative 4.394 %, s/√3 3.1798, half-width 13.68", () => {
    expect(mean).toBeCloseTo(125.333, 3);
    expect(s).toBeCloseTo(5.5076, 4);
    expect((100 * s) / mean).toBeCloseTo(4.394, 3);
    expect(s / Math.sqrt(3)).toBeCloseTo(3.1798, 4);
    expect(coverageFactor(2, 0.95)).toBeCloseTo(4.3027, 4);
    expect((coverageFactor(2, 0.95) * s) / Math.sqrt(3)).toBeCloseTo(13.68, 2);
  });
  it("errors 10, 12, 8 at 2σ: weighted mean 124.744, u 2.7705, χ² 1.991 on 2 df, Birge ratio 0.998", () => {
    const result = weightedMean(x, [5, 6, 4]);
    expect(result.mean).toBeCloseTo(124.744, 3);
    expect(result.uInternal).toBeCloseTo(2.7705, 4);
    expect(result.q).toBeCloseTo(1.991, 3);
    expect(result.df).toBe(2);
    expect(result.birge).toBeCloseTo(0.998, 3);
  });
  it("the same errors at 1σ: same mean, u 5.541, χ² 0.498", () => {
    const result = weightedMean(x, [10, 12, 8]);
    expect(result.mean).toBeCloseTo(124.744, 3);
    expect(result.uInternal).toBeCloseTo(5.541, 3);
    expect(result.q).toBeCloseTo(0.498, 3);
  });
});
