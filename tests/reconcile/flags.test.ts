import { describe, expect, it } from "vitest";
import type { FlagCode, ReconcileInput, ShotInput } from "@/lib/reconcile/types.ts";
import { missed, resultOf, seen, written } from "./shots.ts";

const base = () => [seen(400, 5, { spot: "a" }), seen(405, 5, { spot: "b" }), seen(395, 5, { spot: "c" })];

type Case = [FlagCode, ShotInput[], Partial<ReconcileInput>?];

describe("flags", () => {
  it("is silent for three agreeing spots with errors", () => {
    expect(resultOf(base()).flags).toEqual([]);
  });
  it.each<Case>([
    ["one-spot", [seen(400, 5, { spot: "a" })]],
    ["few-readings", base().slice(0, 2)],
    [
      "scatter-beyond-counting",
      [seen(400, 5, { spot: "a" }), seen(440, 5, { spot: "b" }), seen(395, 5, { spot: "c" })],
    ],
    ["scatter-beyond-counting", [...base(), seen(450, 5, { spot: "a" })]],
    ["uneven", [seen(100, 5, { spot: "a" }), seen(200, 5, { spot: "b" }), seen(300, 5, { spot: "c" })]],
    ["uneven", [seen(100, null, { spot: "a" }), seen(200, null, { spot: "b" }), seen(300, null, { spot: "c" })]],
    ["outlier-candidate", [401, 399, 402, 398, 400, 60].map((value) => seen(value, 5))],
    ["short-count", [...base(), seen(400, 5, { secondsCounted: 4 })], { minimumSeconds: 10 }],
    ["screening-only", base(), { form: "coating" }],
    ["not-infinitely-thick", base(), { thicknessMm: 0.2, infiniteThicknessMm: 1.5 }],
    ["smaller-than-window", base(), { smallestDimensionMm: 3, windowMm: 8 }],
    ["lead-arsenic-overlap", [...base(), seen(400, 5, { arsenicValue: 12 })]],
    ["lead-arsenic-overlap", [missed(10, { leadValue: 4000 })], { element: "As" }],
    ["outside-calibrated-range", base(), { calibratedRange: [5, 399] }],
    ["error-unknown", [...base(), seen(400, null)]],
    ["mixed-detection", [...base(), missed(390)]],
    ["near-detection-limit", [seen(30, 3), seen(31, 3), seen(29, 3, { detectionLimit: written(12) })]],
    ["near-detection-limit", [seen(8, 3), seen(9, 3), seen(10, 3)]],
    ["excluded-readings", [...base(), seen(4, 5, { setAside: { reason: "missed the part" } })]],
    ["no-spots-named", [...base(), seen(400, 5)]],
  ])("%s", (flag, shots, overrides) => {
    expect(resultOf(shots, overrides).flags).toContain(flag);
  });
  it.each<Case>([
    ["short-count", [...base(), seen(400, 5, { secondsCounted: 40 })], { minimumSeconds: 10 }],
    ["screening-only", base(), { form: "bulk" }],
    ["not-infinitely-thick", base(), { thicknessMm: 2, infiniteThicknessMm: 1.5 }],
    ["not-infinitely-thick", base(), { thicknessMm: 0.2 }],
    ["smaller-than-window", base(), { smallestDimensionMm: 8, windowMm: 8 }],
    ["lead-arsenic-overlap", [...base(), seen(400, 5, { arsenicValue: 0 })]],
    ["lead-arsenic-overlap", [seen(400, 5, { leadValue: 50, arsenicValue: 50 })], { element: "Cd" }],
    ["outside-calibrated-range", base(), { calibratedRange: [5, 3000] }],
    ["mixed-detection", [missed(5), missed(6)]],
    ["near-detection-limit", [seen(400, 5), missed(12)]],
  ])("not %s", (flag, shots, overrides) => {
    expect(resultOf(shots, overrides).flags).not.toContain(flag);
  });
});
