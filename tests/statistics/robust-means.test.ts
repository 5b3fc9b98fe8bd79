import { describe, expect, it } from "vitest";
import { algorithmA } from "@/lib/statistics/algorithm-a.ts";
import { huberProposal2 } from "@/lib/statistics/huber-proposal-2.ts";
import { moments } from "@/lib/statistics/moments.ts";
import { refusalCode } from "../support/refusal-code.ts";

// Invented inputs; the expected answers follow from the definitions.
describe.each([
  ["algorithmA", algorithmA],
  ["huberProposal2", (x: readonly number[]) => huberProposal2(x)],
])("%s", (_name, robust) => {
  it("two readings: their mean, and their standard deviation times the factor", () => {
    const { mean, sd, degenerate } = robust([10, 12]);
    expect(mean).toBe(11);
    expect(sd / Math.SQRT2).toBeGreaterThan(1.133);
    expect(sd / Math.SQRT2).toBeLessThan(1.1341);
    expect(degenerate).toBe(false);
  });
  it("half the values equal: flagged, the median and no spread, never a division by zero", () => {
    for (const x of [
      [5, 5, 5, 9],
      [5, 5],
      [0, 0, 0, 1e9],
    ])
      expect(robust(x)).toMatchObject({ degenerate: true, sd: 0, mean: x[0] });
  });
  it("equal but for the rounding of a unit conversion: flagged as well", () => {
    expect(robust([0.3, 0.1 + 0.2, 0.3, 7]).degenerate).toBe(true);
  });
  it("ends on a fixed point, wherever it lies", () => {
    for (const x of [
      [10, 11, 40],
      [10, 11, 12, 1e6],
      [1e-9, 2e-9, 5e-9, 1],
      [1e9 + 1, 1e9 + 2, 1e9 + 3, 1e9 + 30],
    ]) {
      const { mean, sd } = robust(x);
      const moved = x.map((value) => Math.min(Math.max(value, mean - 1.5 * sd), mean + 1.5 * sd));
      const again = moments(moved);
      expect(Math.abs(again.mean - mean)).toBeLessThan(1e-9 * sd);
      expect(again.sd / sd).toBeGreaterThan(1 / 1.1341);
      expect(again.sd / sd).toBeLessThan(1 / 1.133);
    }
  });
  it("moves and grows with the readings", () => {
    const x = [3.1, 2.9, 3.3, 8, 3, 2.7];
    const plain = robust(x);
    const moved = robust(x.map((value) => 1000 - 20 * value));
    expect(moved.mean).toBeCloseTo(1000 - 20 * plain.mean, 9);
    expect(moved.sd).toBeCloseTo(20 * plain.sd, 9);
  });
  it("refuses one reading, none, and what is no number", () => {
    expect(refusalCode(() => robust([1]))).toBe("too-few");
    expect(refusalCode(() => robust([]))).toBe("empty");
    expect(refusalCode(() => robust([1, Number.NaN, 2]))).toBe("not-finite");
  });
});

describe("huberProposal2", () => {
  it("a very large k never moves a value: the mean and standard deviation", () => {
    const x = [1, 2, 3, 4, 10];
    const plain = moments(x);
    const r = huberProposal2(x, { k: 40 });
    expect(r.mean).toBeCloseTo(plain.mean, 12);
    expect(r.sd).toBeCloseTo(plain.sd, 12);
  });
  it("refuses k of zero or less", () => {
    for (const k of [0, -1]) expect(refusalCode(() => huberProposal2([1, 2, 3], { k }))).toBe("not-positive");
    expect(refusalCode(() => huberProposal2([1, 2, 3], { k: Number.NaN }))).toBe("not-finite");
  });
});
