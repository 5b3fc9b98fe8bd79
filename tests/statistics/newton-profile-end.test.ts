import { describe, expect, it } from "vitest";
import { censoredRandomEffects } from "@/lib/statistics/censored-random-effects.ts";
import { lognormalRandomEffects } from "@/lib/statistics/lognormal-random-effects.ts";
import { lognormalReading } from "@/lib/statistics/lognormal-reading.ts";
import { type Local, newtonProfileEnd } from "@/lib/statistics/newton-profile-end.ts";
import { devianceCut } from "@/lib/statistics/profile-interval.ts";
import { randomStream } from "@/lib/statistics/random-stream.ts";

const bounds = { least: -50, most: 50, bounded: false, reach: Number.POSITIVE_INFINITY };
/** A bowl tilted in its two parameters: the profile over r is −½(1 − c²)m². */
const bowl =
  (c: number) =>
  (m: number, r: number): Local => ({
    ...{ l: -0.5 * (m * m - 2 * c * m * r + r * r), gM: c * r - m, gR: c * m - r },
    ...{ hMM: -1, hRR: -1, hMR: c },
  });

describe("an end of a profile interval by Newton", () => {
  it.each([0, 0.5, -0.9])("finds the end of a bowl tilted by %d", (c) => {
    const end = newtonProfileEnd(bowl(c), { l: 0, m: 0, r: 0, drift: 0 }, 0.3, 3.84, bounds);
    expect(end?.m).toBeCloseTo(Math.sqrt(3.84 / (1 - c * c)), 9);
    expect(end?.r).toBeCloseTo(c * Math.sqrt(3.84 / (1 - c * c)), 4);
  });
  it("gives up where the likelihood is not curved in r, goes on rising, or the end lies beyond reach", () => {
    const flat = (): Local => ({ l: 0, gM: 0, gR: 0, hMM: 0, hRR: 0, hMR: 0 });
    expect(newtonProfileEnd(flat, { l: 0, m: 0, r: 0, drift: 0 }, 1, 3.84, bounds)).toBeNull();
    const level = (_m: number, r: number): Local => ({ l: -0.5 * r * r, gM: 0, gR: -r, hMM: 0, hRR: -1, hMR: 0 });
    expect(newtonProfileEnd(level, { l: 0, m: 0, r: 0, drift: 0 }, 1, 3.84, { ...bounds, reach: 1e6 })).toBeNull();
    const near = { ...bounds, reach: 1 };
    expect(newtonProfileEnd(bowl(0), { l: 0, m: 0, r: 0, drift: 0 }, 0.3, 3.84, near)).toBeNull();
  });
});

/** Random sets of readings, some of several u, some with limits. */
function* sets(seed: number, many: number, spread: (random: ReturnType<typeof randomStream>) => number) {
  const random = randomStream(seed);
  for (let i = 0; i < many; i++) {
    const u = [1, 3, 15, 30][i % 4]!;
    const limit = i % 3 === 0 ? Number.NEGATIVE_INFINITY : 60 + 30 * random.uniform();
    const x: number[] = [];
    const us: number[] = [];
    const censored: boolean[] = [];
    for (let spot = 0; spot < 3 + (i % 6); spot++) {
      const reading = 100 * spread(random) + u * random.normal();
      censored.push(reading < limit);
      x.push(Math.max(reading, limit));
      us.push(i % 5 === 0 ? u * (1 + random.uniform()) : u);
    }
    if (censored.some((flag) => !flag)) yield { x, u: us, censored };
  }
}

describe("the ends it finds", () => {
  it("are where no spread τ brings the censored normal likelihood above the cut", () => {
    for (const { x, u, censored } of sets(3, 40, (random) => 1 + 0.2 * random.normal())) {
      const fit = censoredRandomEffects(x, u, censored, { cut: "small-sample" });
      const cut = devianceCut("small-sample", x.length, 0.95);
      const highestAt = (m: number): number => {
        let best = Number.NEGATIVE_INFINITY;
        for (let step = 0; step <= 2000; step++) {
          const tau = step === 0 ? 0 : 10 ** (-2 + step / 400);
          let l = 0;
          for (let i = 0; i < x.length; i++) {
            const s = Math.hypot(u[i]!, tau);
            const z = (x[i]! - m) / s;
            l += censored[i] ? logPhi(z) : -0.5 * z * z - Math.log(s) - 0.5 * Math.log(2 * Math.PI);
          }
          best = Math.max(best, l);
        }
        return best;
      };
      for (const end of fit.interval!)
        if (Math.abs(end) < 600) expect(2 * (fit.logLikelihood! - highestAt(end)) - cut).toBeCloseTo(0, 2);
    }
  });
  it("are where no spread σ brings the lognormal likelihood above the cut", () => {
    for (const { x, u, censored } of sets(4, 12, (random) => Math.exp(0.6 * random.normal()))) {
      const fit = lognormalRandomEffects(x, u, censored);
      if (fit.status !== "ok") continue;
      const cut = devianceCut("small-sample", x.length, 0.95);
      const at = (lambda: number, sigma: number): number =>
        x.reduce((l, one, i) => l + lognormalReading(one, u[i]!, censored[i]!, lambda - sigma ** 2 / 2, sigma).logf, 0);
      for (const end of fit.interval) {
        if (!(end > 0 && end < 1e8)) continue;
        let best = Number.NEGATIVE_INFINITY;
        for (let step = 0; step <= 1000; step++) best = Math.max(best, at(Math.log(end), 10 ** (-2 + step / 320)));
        expect(Math.abs(2 * (fit.logLikelihood - best) - cut)).toBeLessThan(2e-3);
      }
    }
  });
});

/** ln Φ by Simpson's rule; below −8, where no best spread lies, so little that it counts as nothing. */
function logPhi(z: number): number {
  if (z < -8) return Number.NEGATIVE_INFINITY;
  const steps = 160;
  const h = Math.min(20, z + 12) / steps;
  let sum = 0;
  for (let i = 0; i <= steps; i++)
    sum += Math.exp(-0.5 * (z - i * h) ** 2) * (i === 0 || i === steps ? 1 : i % 2 === 1 ? 4 : 2);
  return Math.log((sum * h) / 3 / Math.sqrt(2 * Math.PI));
}
