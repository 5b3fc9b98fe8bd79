import { describe, expect, it } from "vitest";
import { missed, resultOf, seen } from "./shots.ts";

describe("step 8: cross-checks beside the result", () => {
  it("gives median, scaled MAD and Algorithm A from five spots on", () => {
    const check = resultOf([401, 399, 402, 398, 60].map((value) => seen(value, 5))).crossCheck;
    expect(check?.median).toBe(399);
    expect(check?.scaledMad).toBeCloseTo(2 * 1.4826, 3);
    expect(check?.algorithmA ?? 0).toBeGreaterThan(390);
    expect(resultOf([401, 399, 402, 398].map((value) => seen(value, 5))).crossCheck?.algorithmA).toBeNull();
  });
  it("names candidates by id and drops none of them", () => {
    const shots = [401, 399, 402, 398, 400, 60].map((value, i) => seen(value, 5, { id: `s${i}` }));
    const result = resultOf(shots);
    expect(result.crossCheck?.candidates).toEqual(["s5"]);
    expect(result.counts.used).toBe(6);
    expect(result.range).toEqual([60, 402]);
  });
  it("names a shot that sits far from the others of its own spot", () => {
    const shots = [400, 402, 399, 300].map((value, i) => seen(value, 5, { id: `s${i}`, spot: "rim" }));
    expect(resultOf(shots).crossCheck?.candidates).toContain("s3");
  });
  it("leaves one spot out at a time", () => {
    // means of the pairs: 101, 100.5, 99.5 with equal u and no scatter beyond counting
    const check = resultOf([seen(99, 4), seen(100, 4), seen(102, 4)]).crossCheck;
    expect(check?.leaveOneOut?.[0]).toBeCloseTo(99.5, 9);
    expect(check?.leaveOneOut?.[1]).toBeCloseTo(101, 9);
  });
  it("says nothing where some spots were not detected", () => {
    expect(resultOf([seen(50, 2), seen(51, 2), missed(52)]).crossCheck).toBeNull();
  });
  it("finds nothing unusual in equal readings", () => {
    expect(resultOf([5, 5, 5, 5, 5, 5].map((value) => seen(value, 1))).crossCheck).toMatchObject({
      median: 5,
      scaledMad: 0,
      leaveOneOut: [5, 5],
      candidates: [],
    });
  });
});
