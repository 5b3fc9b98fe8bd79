import { describe, expect, it } from "vitest";
import * as library from "@/lib/index.ts";
import { DomainError } from "@/lib/quantity/domain-error.ts";

/**
 * Every name of the library's face on bad input, from one table: each number in turn NaN or infinite, u of zero or below, lists empty, single,
 * of unequal length, all equal, u over twelve decades, values from 1e-9 to 1e6. A call answers, with no NaN in the answer, or throws a
 * DomainError. What an answer must be is said by an independent relation: how each figure changes when all values and uncertainties are
 * multiplied (`powers`), where the answer lies (`within`), and what it is where nothing varies (`equal`).
 */
type Args = readonly unknown[];
// biome-ignore lint/suspicious/noExplicitAny: answers of thirty functions, looked into by name
type Answer = any;
type Entry = {
  call: (...args: never[]) => unknown;
  /** Good arguments, all values and uncertainties times `size`. */
  args: (size: number) => Args;
  /** Power of the size that each figure of the answer goes with; a figure not named does not change. */
  powers?: Record<string, number>;
  /** Paths of arguments that are uncertainties: negative is refused, and so is zero unless the table says "zero". */
  u?: readonly string[];
  zeroAllowed?: boolean;
  /** Paths of lists that belong together: one cut short is refused. */
  paired?: readonly string[];
  /** Paths whose Infinity means something: degrees of freedom. */
  infinite?: readonly string[];
  /** Arguments where every reading is the same, and what then holds. */
  equal?: [Args, (answer: Answer) => void];
  /** Location of the answer: between the least and the largest of these, whatever the u. */
  within?: [(u: readonly number[]) => Args, (answer: Answer) => number];
};

const x = [412, 405, 421, 398, 417];
const u = [9, 8, 10, 9, 12];
const times = (size: number, list: readonly number[]) => list.map((one) => size * one);
const seen = [false, false, true, false, false];
const same = [7, 7, 7, 7, 7];
const groups = (size: number) => [times(size, [412, 405]), times(size, [421, 398]), times(size, [440, 431])];
const rows = (size: number) => groups(size).flatMap((group, lab) => group.map((y) => ({ lab, y })));
const nested = (size: number) =>
  times(size, [412, 405, 421, 398, 440, 431, 419, 428]).map((y, i) => ({ a: i >> 2, b: i >> 1, y }));
const line = { intercept: 2, slope: 0.5, seIntercept: 0.1, seSlope: 0.01, cov: -0.0005 };
const spread: Entry["equal"] = [[same, { sides: 2 }], (answer) => expect(answer.status).toBe("no-spread")];
const remlPowers = (variances: string[]) => ({
  ...Object.fromEntries(variances.map((name) => [`reml.${name}`, 2])),
  ...{ "reml.mean": 1, "reml.seMean": 1 },
});
const twelve = [1e-6, 1e-3, 1, 1e3, 1e6];

const table: Record<keyof typeof library, Entry> = {
  weightedMean: {
    call: library.weightedMean,
    args: (s) => [times(s, x), times(s, u)],
    powers: { mean: 1, uInternal: 1, uExternal: 1 },
    ...{ u: ["1"], paired: ["0", "1"] },
    equal: [[same, u], (answer) => expect([answer.mean, answer.q]).toEqual([expect.closeTo(7, 12), 0])],
    within: [(u) => [x, u], (answer) => answer.mean],
  },
  randomEffects: {
    call: library.randomEffects,
    args: (s) => [times(s, x), times(s, u), { tau2: "PM", interval: "HK-adhoc", level: 0.95 }],
    powers: { mean: 1, se: 1, tau2: 2, interval: 1, tau2Interval: 2 },
    ...{ u: ["1"], paired: ["0", "1"] },
    equal: [
      [same, u, { tau2: "REML" }],
      (answer) => expect([answer.mean, answer.tau2]).toEqual([expect.closeTo(7, 12), 0]),
    ],
    within: [(u) => [x, u, { tau2: "PM" }], (answer) => answer.mean],
  },
  medianMad: {
    call: library.medianMad,
    args: (s) => [times(s, x)],
    powers: { median: 1, mad: 1, scaled: 1 },
    equal: [[same], (answer) => expect(answer).toMatchObject({ median: 7, mad: 0, scaled: 0 })],
  },
  algorithmA: {
    call: library.algorithmA,
    args: (s) => [times(s, x)],
    powers: { mean: 1, sd: 1 },
    equal: [[same], (answer) => expect(answer).toMatchObject({ mean: 7, sd: 0, degenerate: true })],
  },
  huberProposal2: {
    call: library.huberProposal2,
    args: (s) => [times(s, x), { k: 1.5 }],
    powers: { mean: 1, sd: 1 },
    equal: [[same], (answer) => expect(answer).toMatchObject({ mean: 7, sd: 0 })],
  },
  grubbs: { call: library.grubbs, args: (s) => [times(s, x), { sides: 2, alpha: 0.05 }], equal: spread },
  dixon: { call: library.dixon, args: (s) => [times(s, x), { alpha: 0.05 }], equal: spread },
  generalizedEsd: {
    call: library.generalizedEsd,
    args: (s) => [times(s, [...x, 600]), { maxOutliers: 2, alpha: 0.05 }],
    equal: [[same, { maxOutliers: 2 }], (answer) => expect(answer.outliers).toEqual([])],
  },
  cochran: {
    call: library.cochran,
    args: (s) => [times(s * s, [1, 3, 2.5, 1.8]), 3, { alpha: 0.05 }],
    ...{ u: ["0"], zeroAllowed: true },
    equal: [[same, 3], (answer) => expect(answer.c).toBeCloseTo(1 / 5, 12)],
  },
  censoredNormal: {
    call: library.censoredNormal,
    args: (s) => [times(s, x), seen, { log: false }],
    // A density of values k times as large is 1/k: four values seen, so ln k each.
    powers: { mean: 1, sd: 1, seMean: 1, profile: 1, logLikelihood: Number.NaN },
    paired: ["0", "1"],
    equal: [[same, same.map(() => false)], (answer) => expect(answer.status).toBe("no-spread")],
  },
  censoredRandomEffects: {
    call: library.censoredRandomEffects,
    args: (s) => [times(s, x), times(s, u), seen, { level: 0.95, cut: "small-sample" }],
    powers: { mean: 1, tau: 1, interval: 1, logLikelihood: Number.NaN },
    ...{ u: ["1"], paired: ["0", "1", "2"] },
    equal: [
      [same, u, same.map(() => false)],
      (answer) => expect(answer).toMatchObject({ status: "ok", mean: expect.closeTo(7, 12), tau: 0 }),
    ],
    within: [(u) => [x, u, x.map(() => false)], (answer) => answer.mean],
  },
  lognormalRandomEffects: {
    call: library.lognormalRandomEffects,
    args: (s) => [times(s, x), times(s, u), seen, { level: 0.95 }],
    powers: { mean: 1, interval: 1, theta: Number.NaN, logLikelihood: Number.NaN },
    ...{ u: ["1"], paired: ["0", "1", "2"] },
    equal: [
      [same, times(0.01, u), same.map(() => false)],
      (answer) => expect(answer).toMatchObject({ status: "ok", mean: expect.closeTo(7, 6) }),
    ],
  },
  upperBoundAllCensored: {
    call: library.upperBoundAllCensored,
    args: (s) => [times(s, x), times(s, u), { level: 0.95 }],
    powers: { upper: 1 },
    ...{ u: ["1"], paired: ["0", "1"] },
    equal: [[same, same.map(() => 1)], (answer) => expect(answer.upper).toBeGreaterThan(0)],
  },
  oneWayAnova: {
    call: library.oneWayAnova,
    args: (s) => [groups(s)],
    powers: { within: 2, between: 2, betweenRaw: 2, grandMean: 1, ...remlPowers(["within", "between"]) },
    equal: [
      [
        [
          [7, 7],
          [7, 7],
        ],
      ],
      (answer) => expect(answer).toMatchObject({ within: 0, between: 0, grandMean: 7 }),
    ],
  },
  nestedAnova: {
    call: library.nestedAnova,
    args: (s) => [nested(s)],
    powers: { a: 2, b: 2, error: 2, aRaw: 2, bRaw: 2, ...remlPowers(["a", "b", "error"]) },
    equal: [[nested(0)], (answer) => expect(answer).toMatchObject({ a: 0, b: 0, error: 0 })],
  },
  repeatability: {
    call: library.repeatability,
    args: (s) => [rows(s)],
    powers: { sr: 1, sL: 1, sR: 1, generalMean: 1 },
    equal: [[rows(0)], (answer) => expect(answer).toMatchObject({ sr: 0, sL: 0, sR: 0, generalMean: 0 })],
  },
  scores: {
    call: library.scores,
    args: (s) => [{ x: 412 * s, ux: 9 * s, assigned: 400 * s, uAssigned: 6 * s, sigma: 20 * s, k: 2 }],
    ...{ u: ["0.ux", "0.uAssigned"], zeroAllowed: true },
    equal: [
      [{ x: 7, ux: 0, assigned: 7, uAssigned: 0, sigma: 1 }],
      (answer) => expect(answer).toEqual({ z: 0, zPrime: 0, zeta: null, en: null }),
    ],
  },
  individualsChart: {
    call: library.individualsChart,
    args: (s) => [times(s, x)],
    powers: { center: 1, sigma: 1, limits: 1 },
    equal: [[same], (answer) => expect(answer).toEqual({ center: 7, sigma: 0, limits: [7, 7], signals: [] })],
  },
  xbarChart: {
    call: library.xbarChart,
    args: (s) => [groups(s), { mu: 410 * s, sigma: 9 * s }],
    powers: { means: 1, limits: 1 },
    u: ["1.sigma"],
    equal: [
      [
        [
          [7, 7],
          [7, 7],
        ],
        { mu: 7, sigma: 1 },
      ],
      (answer) => expect(answer.signals).toEqual([]),
    ],
  },
  ewma: {
    call: library.ewma,
    args: (s) => [times(s, x), { mu: 410 * s, sigma: 9 * s, lambda: 0.2, L: 3 }],
    powers: { z: 1, limits: 1 },
    u: ["1.sigma"],
    equal: [[same, { mu: 7, sigma: 1, lambda: 0.2, L: 3 }], (answer) => expect(answer.signals).toEqual([])],
  },
  cusum: {
    call: library.cusum,
    args: (s) => [times(s, x), { mu: 410 * s, sigma: 9 * s, k: 0.5, h: 4 }],
    powers: { cPlus: 1, cMinus: 1 },
    u: ["1.sigma"],
    equal: [[same, { mu: 7, sigma: 1, k: 0.5, h: 4 }], (answer) => expect(answer.signals).toEqual([])],
  },
  multirule: {
    call: library.multirule,
    args: () => [[0.2, -2.4, 2.2, 3.1]],
    equal: [[[0, 0, 0]], (answer) => expect(Object.values(answer).flat()).toEqual([])],
  },
  york: {
    call: library.york,
    args: (s) => [
      times(s, [17, 50, 148, 400]),
      times(s, [19, 48, 155, 389]),
      times(s, [0.4, 1, 5, 12]),
      times(s, [2, 2, 6, 10]),
    ],
    powers: { intercept: 1, seIntercept: 1, cov: 1 },
    ...{ u: ["2", "3"], zeroAllowed: true, paired: ["0", "1", "2", "3"] },
    equal: [
      [
        [1, 2, 3],
        [7, 7, 7],
        [1, 1, 1],
        [1, 1, 1],
      ],
      (answer) => expect(answer).toMatchObject({ slope: 0, s: 0 }),
    ],
  },
  weightedLine: {
    call: library.weightedLine,
    args: (s) => [times(s, [1, 2, 3, 5]), times(s, [2.1, 3.9, 6.2, 9.8]), times(s, [0.1, 0.1, 0.2, 0.3])],
    powers: { intercept: 1, seIntercept: 1, cov: 1 },
    ...{ u: ["2"], paired: ["0", "1", "2"] },
    equal: [
      [
        [1, 2, 3],
        [7, 7, 7],
        [1, 1, 1],
      ],
      (answer) => expect(answer.slope).toBeCloseTo(0, 12),
    ],
  },
  inversePrediction: {
    call: library.inversePrediction,
    args: (s) => [
      { ...line, intercept: 2 * s, seIntercept: 0.1 * s, cov: -0.0005 * s },
      { y0: 12 * s, uY0: 0.3 * s },
    ],
    powers: { x: 1, u: 1 },
    ...{ u: ["1.uY0"], zeroAllowed: true },
    equal: [[line, { y0: 2, uY0: 0 }], (answer) => expect(answer.x).toBe(0)],
  },
  combine: {
    call: library.combine,
    args: (s) => [
      [
        { u: 3 * s, nu: 4 },
        { u: 4 * s, nu: 9 },
      ],
      { level: 0.95 },
    ],
    powers: { u: 1, U: 1 },
    ...{ u: ["0.0.u", "0.1.u"], zeroAllowed: true, infinite: ["0.0.nu", "0.1.nu"] },
    equal: [[[{ u: 7 }, { u: 7 }]], (answer) => expect(answer.u).toBeCloseTo(7 * Math.SQRT2, 12)],
  },
  coverageFactor: { call: library.coverageFactor, args: () => [4, 0.95], infinite: ["0"] },
  monteCarlo: {
    call: library.monteCarlo,
    args: (s) => [
      ({ a, b }: { a: number; b: number }) => a + b,
      { a: { shape: "normal", mean: 400 * s, sd: 9 * s }, b: { shape: "rectangular", min: -5 * s, max: 5 * s } },
      { draws: 2000, seed: 3, level: 0.95 },
    ],
    powers: { mean: 1, sd: 1, symmetric: 1, shortest: 1 },
    ...{ u: ["1.a.sd"], zeroAllowed: true },
    equal: [
      [({ a }: { a: number }) => a, { a: { shape: "normal", mean: 7, sd: 0 } }, { draws: 200, seed: 1 }],
      (answer) => expect(answer).toEqual({ mean: 7, sd: 0, symmetric: [7, 7], shortest: [7, 7] }),
    ],
  },
  solidVolume: {
    call: library.solidVolume,
    args: (s) => [
      { shape: "box", dimensions: { a: 2 * s, b: 3 * s, c: 4 * s }, u: { a: 0.1 * s, b: 0.1 * s, c: 0.2 * s } },
    ],
    powers: { volume: 3, u: 3, sensitivity: 2 },
    ...{ u: ["0.u.a", "0.u.c"], zeroAllowed: true },
  },
  roundToUncertainty: { call: library.roundToUncertainty, args: () => ["412.37", "18.4", { digits: 2 }] },
  probabilityAbove: {
    call: library.probabilityAbove,
    args: (s) => [{ value: 412 * s, u: 9 * s, nu: 5, shape: "t" }, 400 * s],
    ...{ u: ["0.u"], infinite: ["0.nu"] },
    equal: [[{ value: 7, u: 1, shape: "normal" }, 7], (answer) => expect(answer).toBe(0.5)],
  },
  guardBand: {
    call: library.guardBand,
    args: (s) => [{ risk: 0.05, u: 9 * s, nu: 5 }],
    powers: { "": 1 },
    ...{ u: ["0.u"], zeroAllowed: true, infinite: ["0.nu"] },
  },
};

/** Every number or list in a value, by its path. */
const leaves = (value: unknown, want: "number" | "list", path = ""): string[] => {
  if (typeof value === "number") return want === "number" ? [path] : [];
  if (typeof value !== "object" || value === null) return [];
  const inner = Object.entries(value).flatMap(([key, one]) => leaves(one, want, path === "" ? key : `${path}.${key}`));
  return want === "list" && Array.isArray(value) && path !== "" ? [path, ...inner] : inner;
};
const at = (value: unknown, path: string): unknown =>
  path === "" ? value : path.split(".").reduce((one, key) => (one as Record<string, unknown>)[key], value);
const put = (args: Args, path: string, value: unknown): Args => {
  const copy = (one: unknown, [key, ...rest]: string[]): unknown => {
    if (key === undefined) return value;
    const inner = copy((one as Record<string, unknown>)[key], rest);
    return Array.isArray(one) ? one.with(Number(key), inner) : { ...(one as object), [key]: inner };
  };
  return copy(args, path.split(".")) as Args;
};

const run = (entry: Entry, args: Args): Answer => entry.call(...(args as never[]));
/** An answer without a NaN in it, or the code it was refused with; anything else thrown is a bug. */
const answerOrCode = (entry: Entry, args: Args): { answer: Answer } | { code: string } => {
  try {
    const answer = run(entry, args);
    for (const path of leaves(answer, "number")) expect(at(answer, path), `NaN at ${path}`).not.toBeNaN();
    return { answer };
  } catch (error) {
    if (error instanceof DomainError) return { code: error.code };
    throw error;
  }
};
const refused = (entry: Entry, args: Args, why: string) => {
  const outcome = answerOrCode(entry, args);
  expect("code" in outcome, `${why} is refused, not answered with ${JSON.stringify(outcome)}`).toBe(true);
};

describe.each(Object.keys(table) as (keyof typeof library)[])("%s", (name) => {
  const entry = table[name];
  const good = entry.args(1);
  const numbers = leaves(good, "number");

  it("refuses NaN and infinities wherever a number stands", () => {
    for (const path of numbers)
      for (const bad of [Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY]) {
        const args = put(good, path, bad);
        if (bad === Number.POSITIVE_INFINITY && entry.infinite?.includes(path))
          expect(answerOrCode(entry, args)).toHaveProperty("answer");
        else refused(entry, args, `${bad} at ${path}`);
      }
  });

  it("refuses an uncertainty below zero, and of zero unless that means exact", () => {
    for (const path of entry.u ?? [])
      for (const spot of leaves(at(good, path), "number", path)) {
        refused(entry, put(good, spot, -1), `-1 at ${spot}`);
        const zero = put(good, spot, 0);
        if (entry.zeroAllowed) expect(answerOrCode(entry, zero), `0 at ${spot}`).toHaveProperty("answer");
        else refused(entry, zero, `0 at ${spot}`);
      }
  });

  it("answers or refuses lists that are empty or of one, and refuses lists of unequal length", () => {
    for (const path of leaves(good, "list")) {
      const list = at(good, path) as unknown[];
      refused(entry, put(good, path, []), `nothing at ${path}`);
      answerOrCode(entry, put(good, path, list.slice(0, 1)));
      if (entry.paired?.includes(path)) refused(entry, put(good, path, list.slice(1)), `one short at ${path}`);
    }
    // All the paired lists cut to one element together: answered or refused, without NaN.
    const single = (entry.paired ?? []).reduce(
      (args, path) => put(args, path, (at(good, path) as unknown[]).slice(0, 1)),
      good,
    );
    answerOrCode(entry, single);
  });

  it("goes with the size of its values, from 1e-9 to 1e6", () => {
    const base = run(entry, good);
    for (const size of [1e-9, 1e-6, 1e-3, 1e3, 1e6]) {
      const answer = run(entry, entry.args(size));
      expect(leaves(answer, "number")).toEqual(leaves(base, "number"));
      for (const path of leaves(base, "number")) {
        const key = path.replace(/\.\d+/g, "");
        const power = entry.powers?.[key] ?? entry.powers?.[key.split(".")[0]!] ?? 0;
        if (Number.isNaN(power)) continue;
        const expected = (at(base, path) as number) * size ** power;
        const found = at(answer, path) as number;
        const most =
          Math.max(
            ...leaves(base, "number")
              .filter((one) => one.split(".")[0] === path.split(".")[0])
              .map((one) => Math.abs(at(base, one) as number)),
          ) *
          size ** power;
        expect(Math.abs(found - expected), `${path} at ${size}: ${found}, not ${expected}`).toBeLessThanOrEqual(
          1e-6 * most,
        );
      }
    }
  });

  if (entry.equal)
    it("says of values that are all equal what is so", () => entry.equal![1](run(entry, entry.equal![0])));

  if (entry.within)
    it("lies among its values where u spans twelve decades", () => {
      const [args, place] = entry.within!;
      for (let turn = 0; turn < 5; turn++) {
        const u = [...twelve.slice(turn), ...twelve.slice(0, turn)];
        const found = place(run(entry, args(u)));
        // Without a spread between readings nothing else counts beside the surest.
        if (name === "weightedMean") expect(found).toBeCloseTo(x[u.indexOf(1e-6)]!, 3);
        expect(found).toBeGreaterThanOrEqual(Math.min(...x));
        expect(found).toBeLessThanOrEqual(Math.max(...x));
      }
    });
});

it("the table holds every name of the library's face", () =>
  expect(Object.keys(table).sort()).toEqual(Object.keys(library).sort()));
