import { expect, it } from "vitest";
import { censoredSpotMean } from "@/lib/reconcile/censored-spot-mean.ts";

// Found by the property tests: so far below the limit the non-detect pulls by less than rounding, and no zero was bracketed.
it.each([0.25, 1, 4, 1 / 3])(
  "a non-detect with its limit far above the shots leaves their mean as it is (scale %d)",
  (scale) => {
    const of = (values: number[]) => values.map((value) => value * scale);
    const { value, u } = censoredSpotMean(of([0.875, 0.125]), of([0.125, 0.25]), of([2.875]));
    expect(value / scale).toBeCloseTo(0.725, 12);
    expect(u / scale).toBeCloseTo(1 / Math.sqrt(64 + 16), 12);
  },
);
