import { describe, expect, it } from "vitest";
import { lognormalPart } from "@/lib/statistics/lognormal-nodes.ts";
import { lognormalReading } from "@/lib/statistics/lognormal-reading.ts";
import { randomStream } from "@/lib/statistics/random-stream.ts";

/** ln of a detected reading's likelihood by a plain sum of 28,000 nodes over the standardised log content. */
function bruteLog(x: number, u: number, theta: number, sigma: number): number {
  let sum = 0;
  for (let e = -14; e < 14; e += 0.001) {
    const r = (x - Math.exp(theta + sigma * e)) / u;
    sum += Math.exp(-0.5 * (r * r + e * e)) * 0.001;
  }
  return Math.log(sum) - Math.log(2 * Math.PI) - Math.log(u);
}

describe("one reading's part of the lognormal likelihood on kept nodes", () => {
  it.each([
    [100, 15, 4.5, 0.6],
    [100, 3, 4.2, 0.9],
    [60, 30, 4.6, 0.8],
    [60, 30, 4.1, 0.05],
    [-5, 20, 3, 1],
    [-0.0099, 0.1059, 1.5388, 0.7856],
  ])("is the integral itself: x %d, u %d, θ %d, σ %d", (x, u, theta, sigma) => {
    const exact = bruteLog(x, u, theta, sigma);
    expect(Math.abs(lognormalPart(x, u, false)(theta, sigma).logf - exact) / Math.max(1, Math.abs(exact))).toBeLessThan(
      1e-10,
    );
  });
  it("agrees with the reading's own quadrature over 6,000 readings, spreads and places, asked in any order", () => {
    const random = randomStream(5);
    for (let i = 0; i < 2000; i++) {
      const u = 10 ** (-2.3 * random.uniform());
      const censored = random.uniform() < 0.5;
      const x = censored ? Math.max(u * 1.01, 0.3 + 2 * random.uniform()) : 1 + 3 * u * random.normal();
      const [theta, sigma] = [1.2 * random.normal(), 10 ** (-2.5 + 3 * random.uniform())];
      const part = lognormalPart(x, u, censored);
      for (const factor of [1, 1.3, 0.6]) {
        const [nodes, own] = [
          part(theta * factor, sigma * factor),
          lognormalReading(x, u, censored, theta * factor, sigma * factor),
        ];
        // The reading's own quadrature errs by up to 1e-8 where u is as large as the content; see the brute sums above.
        expect(Math.abs(nodes.logf - own.logf) / Math.max(1, Math.abs(own.logf))).toBeLessThan(2e-8);
        for (const m of ["m1", "m2", "m3", "m4"] as const)
          expect(Math.abs(nodes[m] - own[m]) / (1 + Math.abs(own[m]))).toBeLessThan(2e-7);
      }
    }
  });
  it("hands readings that nodes do not suit to the reading's own quadrature", () => {
    for (const [x, u, censored] of [
      [1e6, 1, false],
      [-5000, 1, false],
      [0, 1, true],
      [1e5, 1, true],
    ] as const)
      expect(lognormalPart(x, u, censored)(3, 0.5)).toEqual(lognormalReading(x, u, censored, 3, 0.5));
    // Far from the model, in either direction; and a spread so wide that its nodes would be too many.
    expect(lognormalPart(100, 5, false)(0, 0.2)).toEqual(lognormalReading(100, 5, false, 0, 0.2));
    expect(lognormalPart(10, 3, true)(6, 0.3)).toEqual(lognormalReading(10, 3, true, 6, 0.3));
    expect(lognormalPart(100, 30, false)(-300, 20)).toEqual(lognormalReading(100, 30, false, -300, 20));
  });
});
