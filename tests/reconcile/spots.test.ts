import { describe, expect, it } from "vitest";
import { censoredSpotMean } from "@/lib/reconcile/censored-spot-mean.ts";
import { plainMean } from "@/lib/reconcile/spots.ts";
import { missed, resultOf, seen } from "./shots.ts";

const spotOf = (...shots: Parameters<typeof resultOf>[0]) =>
  resultOf(shots.map((s) => ({ ...s, spot: "rim" }))).spots[0];

describe("step 2: one spot", () => {
  it("is the inverse-variance mean, and the Birge ratio does not shrink u", () => {
    // R: w <- 1/c(9,8)^2; sum(w*c(412,405))/sum(w); 1/sqrt(sum(w)) -> 408.08965517241, 5.97927454947
    const spot = spotOf(seen(412, 9), seen(405, 8));
    expect(spot?.value).toBeCloseTo(408.08965517241, 9);
    expect(spot?.u).toBeCloseTo(5.97927454947, 9);
    expect(spot?.birge).toBeLessThan(1);
  });
  it("takes the Birge ratio where it is over 1", () => {
    // mean 103.6, internal 2.4, Q = 4, Birge 2 (worked by hand)
    const spot = spotOf(seen(100, 3), seen(110, 4));
    expect(spot?.value).toBeCloseTo(103.6, 10);
    expect(spot?.u).toBeCloseTo(4.8, 10);
    expect(spot?.birge).toBeCloseTo(2, 10);
  });
  it("is the plain mean with s/√n where an error is unknown", () => {
    const spot = spotOf(seen(10, null), seen(12, 0.5), seen(14, 0.5));
    expect(spot?.value).toBe(12);
    expect(spot?.u).toBeCloseTo(2 / Math.sqrt(3), 12);
  });
  it("leaves u unknown for one shot without an error", () => {
    expect(spotOf(seen(10, null))).toMatchObject({ value: 10, u: null, detected: true });
  });
  it("does not read perfect agreement into a coarse display", () => {
    expect(plainMean([5, 5, 5], 1).u).toBeCloseTo(1 / Math.sqrt(12), 12);
    expect(plainMean([5, 5, 5], 0.1).u).toBeCloseTo(0.1 / Math.sqrt(12), 12);
  });
  it("reports the lowest limit reached where nothing was detected", () => {
    expect(spotOf(missed(12), missed(8), missed(15))).toMatchObject({
      detected: false,
      value: null,
      u: null,
      below: 8,
    });
    expect(spotOf(missed(null), missed(8))).toMatchObject({ below: 8 });
    expect(spotOf(missed(null))).toMatchObject({ detected: false, below: null });
  });
  it("weighs detected and undetected shots of one spot together", () => {
    // R: optimize(function(m) dnorm(12,m,4,log=TRUE)+pnorm((10-m)/(10/3),log.p=TRUE), c(-20,30), maximum=TRUE, tol=1e-12)
    const spot = spotOf(seen(12, 4), missed(10));
    expect(spot?.value).toBeCloseTo(9.02055777429, 6);
    expect(spot?.detected).toBe(true);
    expect(spot?.u ?? 0).toBeGreaterThan(2);
    expect(spot?.u ?? 9).toBeLessThan(4);
  });
  it("stays finite when a bright shot stands beside a non-detect", () => {
    const { value, u } = censoredSpotMean([5000], [20], [10]);
    expect(Number.isFinite(value) && u > 0).toBe(true);
    expect(value).toBeLessThan(5000);
  });
  it("counts a shot without a spot as a spot of its own, and says so", () => {
    const result = resultOf([seen(100, 3), seen(101, 3), seen(99, 3, { spot: "handle" })]);
    expect(result.spots).toHaveLength(3);
    expect(result.flags).toContain("no-spots-named");
  });
  it("puts spots in the order of their names, and those without a name after them by the shot's id", () => {
    const shots = [
      ...[
        seen(1, 1, { id: "d", spot: null }),
        seen(2, 1, { id: "c", spot: "10" }),
        seen(3, 1, { id: "a", spot: "rim" }),
      ],
      ...[
        seen(4, 1, { id: "b", spot: "2" }),
        seen(5, 1, { id: "e", spot: "10" }),
        seen(6, 1, { id: "aa", spot: null }),
      ],
    ];
    const order = resultOf(shots).spots.map(({ spot, shots }) => [spot, ...shots]);
    expect(order).toEqual([
      ["2", "b"],
      ["10", "c", "e"],
      ["rim", "a"],
      [null, "aa"],
      [null, "d"],
    ]);
  });
});
