import { describe, expect, it } from "vitest";
import { scores } from "@/lib/statistics/scores.ts";
import { refusalCode } from "../support/refusal-code.ts";

// Invented inputs; the expected answers follow from the definitions.
describe("scores", () => {
  const one = { x: 412, ux: 9, assigned: 400, uAssigned: 6, sigma: 20 };

  it("en divides by the expanded uncertainties, so by k", () => {
    expect((scores({ ...one, k: 1 }).en as number) / (scores({ ...one, k: 3 }).en as number)).toBeCloseTo(3, 12);
    expect(scores({ ...one, k: 1 }).en).toBe(scores(one).zeta);
  });
  it("no uncertainty at all: z stands, zeta and en are undefined, not infinite", () => {
    expect(scores({ ...one, ux: 0, uAssigned: 0 })).toEqual({ z: 0.6, zPrime: 0.6, zeta: null, en: null });
  });
  it("the result on the assigned value scores zero", () => {
    expect(scores({ ...one, x: 400 })).toEqual({ z: 0, zPrime: 0, zeta: 0, en: 0 });
  });
  it("refuses sigma or k of zero, negative uncertainties, what is no number", () => {
    expect(refusalCode(() => scores({ ...one, sigma: 0 }))).toBe("not-positive");
    expect(refusalCode(() => scores({ ...one, k: 0 }))).toBe("not-positive");
    expect(refusalCode(() => scores({ ...one, ux: -1 }))).toBe("negative");
    expect(refusalCode(() => scores({ ...one, uAssigned: -1 }))).toBe("negative");
    expect(refusalCode(() => scores({ ...one, x: Number.NaN }))).toBe("not-finite");
  });
});
