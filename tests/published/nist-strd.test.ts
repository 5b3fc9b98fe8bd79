import { describe, expect, it } from "vitest";
import { moments } from "@/lib/statistics/moments.ts";
import { oneWayAnova } from "@/lib/statistics/one-way-anova.ts";
import { printed, worked } from "./printed.ts";

/** Certified to 15 digits; a double carries about as many, so the last few of a standard deviation are left out. */
const certified = (what: string, got: number | null, value: number, digits: number) => {
  expect(got, what).not.toBeNull();
  expect(Math.abs((got as number) - value), `${what}: got ${got}, certified ${value}`).toBeLessThanOrEqual(
    Math.abs(value) * 10 ** -digits,
  );
};

const alternating = (first: number, low: number, high: number, n: number) =>
  Array.from({ length: n }, (_, i) => (i === 0 ? first : i % 2 === 1 ? low : high));

/** The first n digits of π, by Machin's formula in whole numbers. */
function digitsOfPi(n: number): number[] {
  const one = 10n ** BigInt(n + 10);
  const arctanOfInverse = (x: bigint) => {
    let power = one / x;
    let sum = power;
    for (let k = 3n, sign = -1n; power !== 0n; k += 2n, sign = -sign) {
      power /= x * x;
      sum += (sign * power) / k;
    }
    return sum;
  };
  const pi = 4n * (4n * arctanOfInverse(5n) - arctanOfInverse(239n));
  return [...pi.toString().slice(0, n)].map(Number);
}

describe("NIST StRD, univariate summary statistics", () => {
  it("Lew, beam deflection, n = 200 [certified values from memory, confirmed in a public test]", () => {
    const { mean, sd } = moments(worked.lew);
    certified("mean", mean, -177.435, 14);
    certified("sd", sd, 277.332168044316, 14);
  });
  it("Mavro, transmittance, n = 50 [certified values from memory]", () => {
    const { mean, sd } = moments(worked.mavro);
    certified("mean", mean, 2.001856, 14);
    certified("sd", sd, 0.000429123454003053, 12);
  });
  it("Michelso, speed of light, n = 100 [certified values from memory]", () => {
    const { mean, sd } = moments(worked.michelson);
    certified("mean", mean, 299.8524, 14);
    certified("sd", sd, 0.0790105478190518, 12);
  });
  it("Lottery, n = 218 [certified values from memory]", () => {
    const { mean, sd } = moments(worked.lottery);
    certified("mean", mean, 518.95871559633, 14);
    certified("sd", sd, 291.699727470969, 14);
  });
  it("PiDigits, n = 5000: the true digits of π, which differ somewhere from the file (its certified values do not apply)", () => {
    const { mean, sd } = moments(digitsOfPi(5000));
    certified("mean", mean, 4.5358, 14);
    certified("sd", sd, 2.867675552187612, 14);
  });
  it("NumAcc1: 10000001, 10000003, 10000002", () => {
    const { mean, sd } = moments([10000001, 10000003, 10000002]);
    certified("mean", mean, 10000002, 15);
    certified("sd", sd, 1, 15);
  });
  it("NumAcc2: 1.2, then 1.1 and 1.3", () => {
    const { mean, sd } = moments(alternating(1.2, 1.1, 1.3, 1001));
    certified("mean", mean, 1.2, 14);
    certified("sd", sd, 0.1, 14);
  });
  it("NumAcc3: 1000000.2, then 1000000.1 and 1000000.3 (doubles hold about 9 digits of the spread)", () => {
    const { mean, sd } = moments(alternating(1000000.2, 1000000.1, 1000000.3, 1001));
    certified("mean", mean, 1000000.2, 15);
    certified("sd", sd, 0.1, 9);
  });
  it("NumAcc4: 10000000.2, then 10000000.1 and 10000000.3 (doubles hold about 8 digits of the spread)", () => {
    const { mean, sd } = moments(alternating(10000000.2, 10000000.1, 10000000.3, 1001));
    certified("mean", mean, 10000000.2, 15);
    certified("sd", sd, 0.1, 8);
  });
});

describe("NIST StRD, one-way analysis of variance", () => {
  const check = (groups: number[][], wanted: { f: number; residual: number; r2?: number }, digits: number) => {
    const r = oneWayAnova(groups);
    certified("F", r.f, wanted.f, digits);
    certified("residual sd", Math.sqrt(r.within), wanted.residual, digits);
    if (wanted.r2 === undefined) return;
    const k = groups.length;
    const n = groups.flat().length;
    const ratio = ((k - 1) * (r.f as number)) / (n - k);
    certified("R²", ratio / (1 + ratio), wanted.r2, digits);
  };

  it("SiRstv, silicon resistivity", () => {
    check(worked.silicon, { f: 1.18046237440255, residual: 0.104076068334656, r2: 0.190999039051129 }, 11);
    const r = oneWayAnova(worked.silicon);
    certified("mean square within", r.within, 0.010831828, 11);
    certified("mean square between", r.betweenRaw * 5 + r.within, 0.0127865654, 11);
  });
  it("AtmWtAg, atomic weight of silver: seven constant leading digits (doubles then hold about 8 of F)", () => {
    check(worked.silver, { f: 15.946733567793, residual: 1.5104831444641e-5, r2: 0.257426544538321 }, 8);
  });

  const simonLesage = (offset: number, n: number) =>
    [1.4, 1.3, 1.5, 1.3, 1.5, 1.3, 1.5, 1.3, 1.5].map((centre) =>
      alternating(
        Number((centre + offset).toFixed(1)),
        Number((centre - 0.1 + offset).toFixed(1)),
        Number((centre + 0.1 + offset).toFixed(1)),
        n,
      ),
    );
  it.each([
    ["SmLs01", 0, 21, 21, 0.482758620689655, 12],
    ["SmLs02", 0, 201, 201, 0.471830985915493, 12],
    ["SmLs03", 0, 2001, 2001, 0.470712773465067, 12],
    ["SmLs04", 999_999, 21, 21, 0.482758620689655, 8],
    ["SmLs05", 999_999, 201, 201, 0.471830985915493, 8],
    ["SmLs06", 999_999, 2001, 2001, 0.470712773465067, 8],
    // At 1e12 doubles lie 1.2e-4 apart: the data as stored have F = 20.989, whatever the algorithm.
    ["SmLs07", 999_999_999_999, 21, 21, 0.482758620689655, 3],
    ["SmLs08", 999_999_999_999, 201, 201, 0.471830985915493, 3],
    ["SmLs09", 999_999_999_999, 2001, 2001, 0.470712773465067, 3],
  ] as const)("%s, Simon and Lesage 1989, offset %d, n = %d a group: F = %d", (_name, offset, n, f, r2, digits) => {
    check(simonLesage(offset, n), { f, residual: 0.1, r2 }, digits);
  });
});

describe("JCGM GUM-5:2026", () => {
  it("example 12: ten bottles of five, mean squares 3.25e-7 and 4.90e-7, between component negative", () => {
    const r = oneWayAnova(worked.bottles.map((bottle) => bottle.map((value) => value * 1e-6)));
    printed("within", r.within, "4.90e-7");
    printed("between", r.betweenRaw * 5 + r.within, "3.25e-7");
    printed("within, recomputed", r.within, "4.9037872e-7");
    printed("F, recomputed", r.f, "0.662448");
    printed("p, recomputed", r.p, "0.73713");
    expect(r.betweenRaw).toBeLessThan(0);
    expect([r.between, r.reml.between]).toEqual([0, 0]);
  });
});
