import { describe, expect, it } from "vitest";
import { DomainError } from "@/lib/quantity/domain-error.ts";
import { blankLimits } from "@/lib/statistics/blank-limits.ts";
import { countingLimits } from "@/lib/statistics/counting-limits.ts";
import { detectionNoncentrality } from "@/lib/statistics/detection-noncentrality.ts";
import { methodDetectionLimit } from "@/lib/statistics/method-detection-limit.ts";
import { pooledDetectionLimit } from "@/lib/statistics/pooled-detection-limit.ts";
import { randomStream } from "@/lib/statistics/random-stream.ts";
import { secondsForLimit } from "@/lib/statistics/seconds-for-limit.ts";
import { threeAndTenSigma } from "@/lib/statistics/three-and-ten-sigma.ts";
import { refusalCode } from "../support/refusal-code.ts";

// Readings below are invented for the tests.
const blanks = [1.2, -0.4, 0.5, 0.9, -0.2];

describe("countingLimits", () => {
  it("the detection limit is missed with probability beta: L_D − z·√(L_D + σ₀²) is the critical level", () => {
    for (const background of [0, 3, 40, 1e6])
      for (const [alpha, beta] of [
        [0.05, 0.05],
        [0.01, 0.1],
      ] as const) {
        const z = beta === 0.05 ? -1.6448536269514722 : -1.2815515655446004;
        const { critical, detection } = countingLimits({ background, alpha, beta });
        expect(detection + z * Math.sqrt(detection + 2 * background)).toBeCloseTo(critical, 6);
      }
  });
  it("a longer background count takes the limit from paired to known", () => {
    const at = (backgroundTime: number) => countingLimits({ background: 50, backgroundTime }).detection;
    expect(at(1)).toBeGreaterThan(at(10));
    expect(at(10)).toBeGreaterThan(at(Infinity));
    expect(at(1e12)).toBeCloseTo(at(Infinity), 6);
  });
  it("refuses what is no count, time or risk", () => {
    expect(refusalCode(() => countingLimits({ background: -1 }))).toBe("negative");
    expect(refusalCode(() => countingLimits({ background: Number.NaN }))).toBe("not-finite");
    expect(refusalCode(() => countingLimits({ background: 1, backgroundTime: 0 }))).toBe("not-positive");
    expect(refusalCode(() => countingLimits({ background: 1, alpha: 0.5 }))).toBe("bad-level");
    expect(refusalCode(() => countingLimits({ background: 1, beta: 0 }))).toBe("bad-level");
    expect(refusalCode(() => countingLimits({ background: 1, relative: 1 }))).toBe("bad-level");
  });
});

describe("detectionNoncentrality", () => {
  it("agrees with SciPy 1.17: nct.cdf(t.ppf(1 − alpha, nu), nu, delta) = beta", () => {
    const scipy: [number, number][] = [
      [1, 12.528978086996283],
      [2, 5.515883056824302],
      [4, 4.06727564116139],
      [9, 3.5753848340448195],
      [50, 3.335355562231514],
      [1e5, 3.2897295052991478],
    ];
    for (const [nu, delta] of scipy) expect(detectionNoncentrality({ nu })).toBeCloseTo(delta, 11);
    expect(detectionNoncentrality({ nu: 6, alpha: 0.01, beta: 0.1 })).toBeCloseTo(4.741768444145439, 11);
  });
  it("and with R's noncentral t where both risks are large and the distance small", () => {
    // R 4.2.2: uniroot(function(d) pt(qt(1 - alpha, nu), nu, d) - beta, c(0, 5), tol = 1e-13)
    const r: [number, number, number, number][] = [
      [1, 0.4, 0.4, 0.5162487811],
      [4, 0.4, 0.4, 0.5088511681],
      [19, 0.3, 0.45, 0.6524528585],
    ];
    for (const [nu, alpha, beta, delta] of r) expect(detectionNoncentrality({ nu, alpha, beta })).toBeCloseTo(delta, 8);
  });
  it("is z_α + z_β with a known standard deviation", () => {
    expect(detectionNoncentrality({ nu: Infinity })).toBeCloseTo(2 * 1.6448536269514722, 14);
  });
  it("refuses under one degree of freedom", () => {
    expect(refusalCode(() => detectionNoncentrality({ nu: 0.5 }))).toBe("too-few");
    expect(refusalCode(() => detectionNoncentrality({ nu: Number.NaN }))).toBe("too-few");
    expect(refusalCode(() => detectionNoncentrality({ nu: 3, beta: 0.6 }))).toBe("bad-level");
  });
});

describe("blankLimits", () => {
  it("averaging the sample's own readings brings the limits nearer the blank", () => {
    const one = blankLimits(blanks);
    const nine = blankLimits(blanks, { repeats: 9 });
    const ratio = Math.sqrt(1 / 9 + 1 / 5) / Math.sqrt(1 + 1 / 5);
    expect(nine.critical - nine.mean).toBeCloseTo(ratio * (one.critical - one.mean), 12);
    expect(nine.detection - nine.mean).toBeCloseTo(ratio * (one.detection - one.mean), 12);
  });
  it("keeps its two risks in a simulation of five blanks each (invented, seeded)", () => {
    const stream = randomStream(11843);
    const trials = 3000;
    const delta = detectionNoncentrality({ nu: 4 }) * Math.sqrt(1 + 1 / 5);
    let falseClaims = 0;
    let misses = 0;
    for (let i = 0; i < trials; i++) {
      const { critical } = blankLimits(Array.from({ length: 5 }, () => stream.normal()));
      if (stream.normal() > critical) falseClaims++;
      if (delta + stream.normal() <= critical) misses++;
    }
    // Four standard errors of a share of 0.05.
    const wander = 4 * Math.sqrt((0.05 * 0.95) / trials);
    expect(Math.abs(falseClaims / trials - 0.05)).toBeLessThan(wander);
    expect(Math.abs(misses / trials - 0.05)).toBeLessThan(wander);
  });
  it("blanks that all agree put both limits at their mean", () => {
    expect(blankLimits([2, 2, 2])).toEqual({ mean: 2, sd: 0, df: 2, critical: 2, detection: 2 });
  });
  it("refuses a single blank, a hole in the list and half a repeat", () => {
    expect(refusalCode(() => blankLimits([1]))).toBe("too-few");
    expect(refusalCode(() => blankLimits([]))).toBe("empty");
    expect(refusalCode(() => blankLimits([1, Number.NaN]))).toBe("not-finite");
    expect(refusalCode(() => blankLimits(blanks, { repeats: 1.5 }))).toBe("bad-repeats");
    expect(refusalCode(() => blankLimits(blanks, { repeats: 0 }))).toBe("bad-repeats");
    expect(refusalCode(() => blankLimits(blanks, { alpha: 0.7 }))).toBe("bad-level");
    expect(refusalCode(() => blankLimits(blanks, { beta: 0.7 }))).toBe("bad-level");
  });
});

describe("threeAndTenSigma and methodDetectionLimit", () => {
  it("lie three and ten standard deviations above the mean", () => {
    const { mean, sd, detection, quantification } = threeAndTenSigma(blanks);
    expect((detection - mean) / sd).toBeCloseTo(3, 12);
    expect((quantification - mean) / sd).toBeCloseTo(10, 12);
    expect(refusalCode(() => threeAndTenSigma([1]))).toBe("too-few");
  });
  it("the greater of the two rules counts, and a blank mean below zero counts as zero", () => {
    const spiked = [4.1, 5.2, 4.6, 4.9, 5.5, 4.4, 4.8];
    const low = spiked.map((value) => value - 100);
    const same = methodDetectionLimit(spiked, low);
    expect(same.fromBlanks).toBeCloseTo(same.fromSpiked, 10);
    const high = methodDetectionLimit(spiked, spiked);
    expect(high.limit).toBe(high.fromBlanks);
    expect(high.limit).toBeCloseTo(high.fromSpiked + 33.5 / 7, 12);
    expect(refusalCode(() => methodDetectionLimit(spiked.slice(1)))).toBe("too-few");
    expect(refusalCode(() => methodDetectionLimit(spiked, [1, 2]))).toBe("too-few");
  });
});

describe("pooledDetectionLimit", () => {
  it("n equal limits give L/√n, and the shared part stays", () => {
    expect(pooledDetectionLimit([12, 12, 12])).toBeCloseTo(12 / Math.sqrt(3), 12);
    expect(pooledDetectionLimit([13], { shared: 5 })).toBeCloseTo(13, 12);
    expect(pooledDetectionLimit(Array(1e4).fill(13), { shared: 5 })).toBeCloseTo(Math.hypot(5, 0.12), 12);
  });
  it("another reading never raises it, and scale does not matter", () => {
    expect(pooledDetectionLimit([12, 30])).toBeLessThan(12);
    expect(pooledDetectionLimit([12e-200, 30e-200])).toBeCloseTo(1e-200 * pooledDetectionLimit([12, 30]), 210);
  });
  it("refuses limits of zero and a shared part as large as a limit", () => {
    expect(refusalCode(() => pooledDetectionLimit([]))).toBe("empty");
    expect(refusalCode(() => pooledDetectionLimit([1, 0]))).toBe("not-positive");
    expect(refusalCode(() => pooledDetectionLimit([2, 3], { shared: 2 }))).toBe("shared-too-large");
    expect(refusalCode(() => pooledDetectionLimit([2, 3], { shared: -1 }))).toBe("negative");
  });
});

describe("secondsForLimit", () => {
  it("half the limit takes four times as long, and a limit already reached takes less", () => {
    expect(secondsForLimit({ limit: 12, seconds: 30, wanted: 6 })).toEqual({ status: "ok", seconds: 120 });
    expect(secondsForLimit({ limit: 12, seconds: 30, wanted: 24 }).seconds).toBeCloseTo(7.5, 12);
  });
  it("counting longer agrees with pooling as many repeats", () => {
    const wanted = pooledDetectionLimit([12, 12, 12, 12, 12], { shared: 4 });
    expect(secondsForLimit({ limit: 12, seconds: 30, wanted, floor: 4 }).seconds).toBeCloseTo(150, 9);
  });
  it("says never where the wanted limit lies under the floor", () => {
    expect(secondsForLimit({ limit: 12, seconds: 30, wanted: 4, floor: 4 })).toEqual({
      status: "never",
      seconds: null,
    });
  });
  it("refuses what is no time or limit", () => {
    const good = { limit: 12, seconds: 30, wanted: 6 };
    expect(refusalCode(() => secondsForLimit({ ...good, limit: 0 }))).toBe("not-positive");
    expect(refusalCode(() => secondsForLimit({ ...good, seconds: -1 }))).toBe("not-positive");
    expect(refusalCode(() => secondsForLimit({ ...good, wanted: Infinity }))).toBe("not-finite");
    expect(refusalCode(() => secondsForLimit({ ...good, floor: 12 }))).toBe("floor-too-large");
    expect(() => secondsForLimit({ ...good, floor: -1 })).toThrow(DomainError);
  });
});
