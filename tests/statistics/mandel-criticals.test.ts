import { describe, expect, it } from "vitest";
import { mandelHCritical } from "@/lib/statistics/mandel-h-critical.ts";
import { mandelKCritical } from "@/lib/statistics/mandel-k-critical.ts";
import { refusalCode } from "../support/refusal-code.ts";

describe("critical values of Mandel's h and k", () => {
  it("h never reaches its largest possible value (p − 1)/√p, and rises with the confidence", () => {
    for (const labs of [3, 5, 8, 30]) {
      const usual = mandelHCritical(labs);
      const strict = mandelHCritical(labs, { alpha: 0.001 });
      expect(usual).toBeLessThan(strict);
      expect(strict).toBeLessThan((labs - 1) / Math.sqrt(labs));
    }
  });
  it("k lies above 1 and below √p, and rises with the confidence", () => {
    const [usual, strict] = [mandelKCritical(2, 14), mandelKCritical(2, 14, { alpha: 0.001 })];
    expect(usual).toBeGreaterThan(1);
    expect(usual).toBeLessThan(strict);
    expect(strict).toBeLessThan(Math.sqrt(8));
  });
  it("refuse counts that are none", () => {
    for (const labs of [2, 3.5, Number.NaN]) expect(refusalCode(() => mandelHCritical(labs))).toBeTruthy();
    for (const df of [0, 1.5, Number.NaN]) {
      expect(refusalCode(() => mandelKCritical(df, 4))).toBeTruthy();
      expect(refusalCode(() => mandelKCritical(4, df))).toBeTruthy();
    }
  });
});
