import { describe, expect, it } from "vitest";
import { windowShare } from "@/lib/publication/photo-scale.ts";

describe("windowShare", () => {
  it("follows from the marked length in pixels, whatever way it lies", () => {
    const photo = { width: 1000, height: 800 };
    // 500 px for 100 mm: 5 px a mm; 8 mm are 40 px of 1000.
    expect(windowShare({ x1: 0.1, y1: 0.9, x2: 0.6, y2: 0.9, lengthMm: 100 }, photo, 8)).toBeCloseTo(0.04, 12);
    // Slanting 300 px by 400 px: 500 px again (3-4-5).
    expect(windowShare({ x1: 0.1, y1: 0.2, x2: 0.4, y2: 0.7, lengthMm: 100 }, photo, 8)).toBeCloseTo(0.04, 12);
  });
  it("is nothing where both ends are one point", () => {
    expect(windowShare({ x1: 0.1, y1: 0.1, x2: 0.1, y2: 0.1, lengthMm: 10 }, { width: 10, height: 10 }, 8)).toBeNull();
  });
});
