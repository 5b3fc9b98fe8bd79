import { expect, it } from "vitest";
import { lognormalReading } from "@/lib/statistics/lognormal-reading.ts";

/** The same integral by brute force: a fine grid over e, no peak looked for. */
function byGrid(x: number, u: number, theta: number, sigma: number): number {
  const step = 1e-4;
  let sum = 0;
  for (let e = -12; e < 12; e += step) {
    const r = (x - Math.exp(theta + sigma * e)) / u;
    sum += Math.exp(-0.5 * (r * r + e * e));
  }
  return Math.log((sum * step) / (2 * Math.PI * u));
}

// Found by the coverage simulation: the search for the peak called itself without end.
it("a reading below zero under a very wide spread far above it", () => {
  const [x, u, theta, sigma] = [
    -0.025788992545669024, 0.138160655697043, 43.24113914480026, 12.89775480322562,
  ] as const;
  expect(lognormalReading(x, u, false, theta, sigma).logf).toBeCloseTo(byGrid(x, u, theta, sigma), 6);
});

it.each([
  [412, 9, 6, 0.1],
  [12, 5, 3, 1.2],
  [-3, 2, 1, 0.8],
  [0.5, 0.4, -1, 2],
])("reading %d with u %d under θ %d, σ %d agrees with a plain grid", (x, u, theta, sigma) => {
  expect(lognormalReading(x, u, false, theta, sigma).logf).toBeCloseTo(byGrid(x, u, theta, sigma), 6);
});
