import { describe, expect, it } from "vitest";
import { shortfallsOf } from "@/lib/reconcile/honest-intervals.ts";

describe("the aims of honest intervals", () => {
  it("are met on their own side", () => {
    expect(shortfallsOf({ trials: 1000, stated: 1, covered: 0.94, unsafe: 0.035, wrongBelow: 0.05 })).toEqual([]);
  });
  it("names what falls short, by how much, and whether chance could explain it (2·√(0.94·0.06/1000) = 0.0150)", () => {
    const found = shortfallsOf({ trials: 1000, stated: 1, covered: 0.93, unsafe: 0.06, wrongBelow: 0.05 });
    expect(found.map(({ aim, explained }) => [aim, explained])).toEqual([
      ["covered", true],
      ["unsafe", false],
    ]);
    expect(found[0]?.by).toBeCloseTo(0.01, 12);
    expect(shortfallsOf({ trials: 1000, stated: 1, covered: 0.924, unsafe: 0, wrongBelow: 0 })[0]?.explained).toBe(
      false,
    );
  });
  it("counts only parts with an interval for the two aims about intervals", () => {
    expect(shortfallsOf({ trials: 1000, stated: 0.1, covered: 0.91, unsafe: 0, wrongBelow: 0 })[0]?.explained).toBe(
      true,
    );
    expect(shortfallsOf({ trials: 1000, stated: 0.1, covered: 1, unsafe: 0, wrongBelow: 0.07 })[0]?.explained).toBe(
      false,
    );
  });
});
