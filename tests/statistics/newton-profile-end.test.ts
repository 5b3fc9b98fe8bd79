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
    const aside = (best: number) => (m: number, r: number) => bowl(0)(m, r - best);
    for (const best of [60, -60])
      expect(newtonProfileEnd(aside(best), { l: 0, m: 0, r: 0, drift: 0 }, 0.3, 3.84, bounds)).toBeNull();
  });
  it("stays on a bound of r where the likelihood still rises towards it, and gives up where that counts for nothing", () => {
    // Held at r = 0 the bowl about r = −1 is −½(m² + 1): the end lies 3.84 below −½ at √3.84.
    const held = (m: number, r: number) => bowl(0)(m, r + 1);
    const top = { l: -0.5, m: 0, r: 0, drift: 0 };
    const bounded = { ...bounds, least: 0, bounded: true };
    expect(newtonProfileEnd(held, top, 0.3, 3.84, bounded)?.m).toBeCloseTo(Math.sqrt(3.84), 9);
    expect(newtonProfileEnd(held, top, 0.3, 3.84, { ...bounded, bounded: false })).toBeNull();
  });
});

type Readings = { x: number[]; u: number[]; censored: boolean[] };

/** The censored normal log-likelihood at a mean, highest over 2,000 spreads from a hundredth of the smallest u. */
function highestNormal({ x, u, censored }: Readings, m: number): number {
  const least = Math.min(...u) / 100;
  const decades = Math.log10((10 * Math.max(...u, ...x.map((one) => Math.abs(one - m)))) / least);
  let best = Number.NEGATIVE_INFINITY;
  for (let step = 0; step <= 2000; step++) {
    const tau = step === 0 ? 0 : least * 10 ** ((step / 2000) * decades);
    let l = 0;
    for (let i = 0; i < x.length; i++) {
      const s = Math.hypot(u[i]!, tau);
      const z = (x[i]! - m) / s;
      l += censored[i] ? logPhi(z) : -0.5 * z * z - Math.log(s) - 0.5 * Math.log(2 * Math.PI);
    }
    best = Math.max(best, l);
  }
  return best;
}

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
      for (const end of fit.interval!)
        if (Math.abs(end) < 600)
          expect(2 * (fit.logLikelihood! - highestNormal({ x, u, censored }, end)) - cut).toBeCloseTo(0, 2);
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

/** Each found by random search as one that turns a search away from its straight path: flat or doubled hills, spreads on the edge. */
describe("sets that lead the searches astray", () => {
  const flags = (said: string) => [...said].map((one) => one === "<");
  it.each([
    ["one limit below, one reading", [0.597852, 0.884974], [0.06198, 0.06198], "<."],
    ["a limit that is surer than the reading", [1.66956, 1.23421], [0.05327, 0.2022], "<."],
    ["two readings alike and a limit", [2.99408, 2.9942, 4.8717], [5.703, 5.703, 5.703], "..<"],
    ["a limit ten thousand times surer", [619.516, 0.909829, 978.919, 715.957], [1271, 0.1113, 4027, 882], ".<.<"],
    [
      "one reading, six limits",
      [46.8365, -16.2705, 14.8779, -45.2912, 41.9583, -16.0097, -28.9702],
      Array(7).fill(27.75),
      "<<.<<<<",
    ],
    ["one u and limits", [53.73, -15.1822, -13.4974, 25.824, 9.24047, 19.202, 35.8449], Array(7).fill(14.1), "<.<...."],
    [
      "several u and limits",
      [0.364054, 20.1044, 0.453252, 1.02874, 29.1435, 2.38255, -0.482272],
      [1.142, 0.954, 0.464, 0.1551, 0.2217, 0.2576, 1.095],
      "...<<<.",
    ],
    [
      "limits far below and far above",
      [-16.8468, 151445, 0.497837, 213790, 1.3613],
      [7.952, 5.01, 2.546, 3.28, 2.127],
      "<<.<.",
    ],
    [
      "no spread at the best",
      [1.20736, 2.39629, -1.56279, 3.10572, 5.03992, 2.25656, 2.40283],
      [1.539, 1.218, 3.881, 1.541, 8.787, 1.597, 2.192],
      ".<.<.<<",
    ],
  ] as [string, number[], number[], string][])("normal: %s", (_name, x, u, said) => {
    const censored = flags(said);
    const fit = censoredRandomEffects(x, u, censored, { cut: "small-sample" });
    const cut = devianceCut("small-sample", x.length, 0.95);
    expect(highestNormal({ x, u, censored }, fit.mean!)).toBeCloseTo(fit.logLikelihood!, 3);
    for (const end of fit.interval!)
      if (Number.isFinite(end))
        expect(2 * (fit.logLikelihood! - highestNormal({ x, u, censored }, end)) - cut).toBeCloseTo(0, 2);
  });

  const highestLognormal = ({ x, u, censored }: Readings, mean: number): number => {
    let best = Number.NEGATIVE_INFINITY;
    for (let step = 0; step <= 800; step++) {
      const sigma = 10 ** (-6 + step / 108);
      const theta = Math.log(mean) - sigma ** 2 / 2;
      best = Math.max(
        best,
        x.reduce((l, one, i) => l + lognormalReading(one, u[i]!, censored[i]!, theta, sigma).logf, 0),
      );
    }
    return best;
  };
  it.each([
    ["even within their errors", [13.1496, 14.092, 6.5652], [6.629, 6.629, 6.629], "..."],
    ["one sure reading among unsure ones", [0.213722, 3.37287, 1.47162], [0.6243, 0.03819, 0.729], "..."],
    ["a reading three thousand u off nothing beside one of nothing", [-0.305112, 1.85797], [0.6779, 0.000598], ".."],
    ["a limit in between", [1.24273, 3.56975, 0.875151], [0.02297, 0.07405, 0.2102], ".<."],
    [
      "a high limit and two readings below nothing",
      [-311.424, -4.85537, 15.2141, 1310.55],
      [262.8, 74.78, 1.1, 2990],
      "...<",
    ],
    [
      "one far above",
      [3.12078, 0.469087, -1.09544, 0.194308, 37.9957, 0.256955, 10.8099],
      Array(7).fill(1.585),
      "..<.<<.",
    ],
    [
      "limits below nothing",
      [1.47099, 1.03992, 1.65376, 0.688614, 0.72151, 0.409684, 0.373308],
      Array(7).fill(0.3772),
      "...<<.<",
    ],
  ] as [string, number[], number[], string][])("lognormal: %s", (_name, x, u, said) => {
    const censored = flags(said);
    const fit = lognormalRandomEffects(x, u, censored);
    if (fit.status !== "ok") throw new Error(fit.status);
    const cut = devianceCut("small-sample", x.length, 0.95);
    expect(Math.abs(highestLognormal({ x, u, censored }, fit.mean) - fit.logLikelihood)).toBeLessThan(2e-3);
    for (const end of fit.interval)
      if (end > 0 && end < 1e12)
        expect(Math.abs(2 * (fit.logLikelihood - highestLognormal({ x, u, censored }, end)) - cut)).toBeLessThan(4e-3);
  });
  it.each([
    [[120.803, -158.431, -272.537, -3.39805, -8.68413, -36.7995], [174.3, 597.3, 445.9, 31.47, 7.885, 125.7], "....<."],
    [[-4845.82, -1388.97, -235.466, -112.325], [6983, 3498, 833.5, 2511], "...."],
    [[36.6675, -88.971, 124.515, -92.4624, 12.213, -54.0221], [40.72, 58.81, 118.8, 59.11, 32.25, 100.2], "<....<"],
  ] as [number[], number[], string][])("no content at all is likelier than any: %j", (x, u, said) => {
    const censored = flags(said);
    const fit = lognormalRandomEffects(x, u, censored);
    expect(fit).toMatchObject({ status: "at-zero", mean: 0, interval: [0, Number.POSITIVE_INFINITY] });
    for (const mean of [1e-3, 0.1, 1, 10, 100, 1000])
      expect(highestLognormal({ x, u, censored }, mean)).toBeLessThan(fit.logLikelihood! + 1e-9);
  });
  it("a mean all but zero is bounded by nothing", () => {
    const fit = lognormalRandomEffects([143.78, -23.6721], [105.9, 69.02], [false, true]);
    expect(fit.interval).toEqual([0, Number.POSITIVE_INFINITY]);
  });
});

/** ln Φ by Simpson's rule; below −8 by the asymptotic series of Mills' ratio, 1 − 1/z² + 3/z⁴ − 15/z⁶; above 8 zero to 15 digits. */
function logPhi(z: number): number {
  if (z > 8) return 0;
  const s = 1 / (z * z);
  if (z < -8)
    return -0.5 * (z * z + Math.log(2 * Math.PI)) - Math.log(-z) + Math.log(1 - s + 3 * s * s - 15 * s * s * s);
  const steps = 160;
  const h = Math.min(20, z + 12) / steps;
  let sum = 0;
  for (let i = 0; i <= steps; i++)
    sum += Math.exp(-0.5 * (z - i * h) ** 2) * (i === 0 || i === steps ? 1 : i % 2 === 1 ? 4 : 2);
  return Math.log((sum * h) / 3 / Math.sqrt(2 * Math.PI));
}
