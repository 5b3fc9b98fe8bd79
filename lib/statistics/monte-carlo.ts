import { DomainError } from "../quantity/domain-error.ts";
import { requireLevel } from "./checks.ts";
import { type RandomStream, randomStream } from "./random-stream.ts";
import { splitAt } from "./split-at.ts";

/**
 * What is known of an input, as a distribution.
 * - normal: mean and standard deviation;
 * - lognormal: by mean and standard deviation of the quantity itself (mean > 0), or by its median and geometric standard deviation
 *   (gsd ≥ 1, the factor exp(sd of ln x));
 * - rectangular: its ends, or its mean and standard deviation (half-width √3·sd);
 * - triangular: its ends and the mode between them (middle unless given), or, symmetric, its mean and standard deviation
 *   (half-width √6·sd).
 * A standard deviation of zero, or ends that agree, is a constant.
 */
export type MonteCarloInput =
  | { shape: "normal"; mean: number; sd: number }
  | { shape: "lognormal"; mean: number; sd: number }
  | { shape: "lognormal"; median: number; gsd: number }
  | { shape: "rectangular"; min: number; max: number }
  | { shape: "rectangular"; mean: number; sd: number }
  | { shape: "triangular"; min: number; max: number; mode?: number }
  | { shape: "triangular"; mean: number; sd: number };

const finite = (name: string, number: number): number => {
  if (typeof number !== "number" || !Number.isFinite(number))
    throw new DomainError("not-finite", `${name} must be a finite number`, number);
  return number;
};
const atLeast = (name: string, number: number, least: number): number => {
  if (finite(name, number) < least) throw new DomainError("out-of-range", `${name} must be ${least} or more`, number);
  return number;
};
const above = (name: string, number: number): number => {
  if (finite(name, number) <= 0) throw new DomainError("not-positive", `${name} must be above zero`, number);
  return number;
};

/** The ends of a bounded shape, given or worked out from the standard deviation (`root`: √3 or √6). */
const endsOf = (
  name: string,
  input: { min: number; max: number } | { mean: number; sd: number },
  root: number,
): [number, number] => {
  if ("min" in input) {
    const min = finite(`${name} min`, input.min);
    return [min, atLeast(`${name} max`, input.max, min)];
  }
  const half = root * atLeast(`${name} sd`, input.sd, 0);
  const mean = finite(`${name} mean`, input.mean);
  return [mean - half, mean + half];
};

type Filler = (into: Float64Array) => void;

/** A checked input that fills a list with draws. */
const filler = (name: string, input: MonteCarloInput, stream: RandomStream): Filler => {
  switch (input.shape) {
    case "normal": {
      const mean = finite(`${name} mean`, input.mean);
      const sd = atLeast(`${name} sd`, input.sd, 0);
      return (into) => {
        stream.normals(into);
        for (let i = 0; i < into.length; i++) into[i] = mean + sd * into[i]!;
      };
    }
    case "lognormal": {
      const [mu, s] = logParameters(name, input);
      return (into) => {
        stream.normals(into);
        for (let i = 0; i < into.length; i++) into[i] = Math.exp(mu + s * into[i]!);
      };
    }
    case "rectangular": {
      const [min, max] = endsOf(name, input, Math.sqrt(3));
      return (into) => {
        stream.uniforms(into);
        for (let i = 0; i < into.length; i++) into[i] = min + (max - min) * into[i]!;
      };
    }
    case "triangular": {
      const across = triangle(name, input);
      return (into) => {
        stream.uniforms(into);
        for (let i = 0; i < into.length; i++) into[i] = across(into[i]!);
      };
    }
    default:
      throw new DomainError("bad-shape", `${name} has a shape that is not known`, (input as { shape: unknown }).shape);
  }
};

/** Mean and standard deviation of the logarithm. */
const logParameters = (
  name: string,
  input: { mean: number; sd: number } | { median: number; gsd: number },
): [number, number] => {
  if ("median" in input) {
    const mu = Math.log(above(`${name} median`, input.median));
    return [mu, Math.log(atLeast(`${name} gsd`, input.gsd, 1))];
  }
  const mean = above(`${name} mean`, input.mean);
  const s2 = Math.log1p((atLeast(`${name} sd`, input.sd, 0) / mean) ** 2);
  return [Math.log(mean) - s2 / 2, Math.sqrt(s2)];
};

/** The quantile function of a triangle. */
const triangle = (
  name: string,
  input: { min: number; max: number; mode?: number } | { mean: number; sd: number },
): ((p: number) => number) => {
  const [min, max] = endsOf(name, input, Math.sqrt(6));
  const mode = "min" in input && input.mode !== undefined ? finite(`${name} mode`, input.mode) : (min + max) / 2;
  if (mode < min || mode > max) throw new DomainError("out-of-range", `${name} mode must lie between its ends`, mode);
  if (min === max) return () => min;
  const split = (mode - min) / (max - min);
  return (p) =>
    p < split ? min + Math.sqrt(p * (max - min) * (mode - min)) : max - Math.sqrt((1 - p) * (max - min) * (max - mode));
};

/**
 * Probabilistically symmetric and shortest coverage intervals: JCGM 101 7.7, clauses 7.7.2 to 7.7.4. Only the ends of the order are
 * needed, so only they are sorted; `values` is rearranged.
 */
const coverageIntervals = (values: Float64Array, level: number) => {
  const m = values.length;
  const q = Math.min(m - 1, Math.max(1, Math.round(level * m)));
  const r = Math.max(1, Math.floor((m - q + 1) / 2));
  const fromLow = Math.max(m - q, r); // how many of the smallest values an interval can start from
  const fromHigh = Math.min(q, r + q - 1);
  if (fromLow >= fromHigh) values.sort();
  else {
    splitAt(values, fromHigh);
    splitAt(values.subarray(0, fromHigh), fromLow);
    values.subarray(0, fromLow).sort();
    values.subarray(fromHigh).sort();
  }
  const symmetric: [number, number] = [values[r - 1]!, values[r + q - 1]!];
  let start = 0;
  for (let i = 1; i + q < m; i++) if (values[i + q]! - values[i]! < values[start + q]! - values[start]!) start = i;
  const shortest: [number, number] = [values[start]!, values[start + q]!];
  return { symmetric, shortest };
};

/** Draws of every input made at a time. Part of what a seed means: another length gives other draws. */
const blockLength = 4096;

/**
 * Fills `values` with the model's answers to the draws of `blocks`, one list an input. The first four inputs are named each at a place of its
 * own: V8 finds a property faster where the code always means the same name, by ten times in a process that runs one model.
 */
function runModel<Name extends string>(
  model: (inputs: Record<Name, number>) => number,
  names: readonly Name[],
  blocks: readonly Float64Array[],
  values: Float64Array,
): void {
  const current = Object.fromEntries(names.map((name) => [name, 0])) as Record<Name, number>;
  const [first, second, third, fourth] = names as readonly [Name, ...Name[]];
  const [ofFirst, ofSecond, ofThird, ofFourth] = blocks as readonly [Float64Array, ...Float64Array[]];
  for (let i = 0; i < values.length; i++) {
    current[first] = ofFirst[i]!;
    if (second !== undefined) current[second] = ofSecond![i]!;
    if (third !== undefined) current[third] = ofThird![i]!;
    if (fourth !== undefined) current[fourth] = ofFourth![i]!;
    for (let j = 4; j < names.length; j++) current[names[j]!] = blocks[j]![i]!;
    const value = model(current);
    if (typeof value !== "number" || !Number.isFinite(value))
      throw new DomainError("not-finite", "the model gave something that is not a finite number", value);
    values[i] = value;
  }
}

/**
 * Propagates distributions through a model by Monte Carlo.
 *
 * `model` takes one number for each input, by name, and returns one number; inputs are independent. mean and sd (M − 1) of the M
 * `draws`; symmetric and shortest `level` (0.95) coverage intervals. The same seed gives the same answer, whatever the order in which the
 * inputs are listed. The interval ends of 100,000 draws wander by about 1 % of the standard deviation; JCGM 101 asks for
 * 10⁴/(1 − level) draws or more.
 *
 * Refuses (DomainError) fewer than 100 or more than 20,000,000 draws, an input outside its domain, a shape not known, no inputs, a
 * model result that is not finite, a bad seed or level.
 *
 * Source: JCGM 101:2008 7.2 to 7.7 (Supplement 1 to the GUM).
 *
 * @example monteCarlo(({ a, b }) => a * b, { a: { shape: "normal", mean: 3, sd: 0.1 }, b: { shape: "rectangular", min: 1, max: 2 } },
 *   { draws: 200_000, seed: 1 }) // { mean: 4.5, sd: 0.88 }
 */
export const monteCarlo = <Name extends string>(
  model: (inputs: Record<Name, number>) => number,
  inputs: Record<Name, MonteCarloInput>,
  options: { draws: number; seed: number; level?: number },
): { mean: number; sd: number; symmetric: [number, number]; shortest: [number, number] } => {
  const { draws, seed, level = 0.95 } = options;
  requireLevel(level);
  if (!Number.isInteger(draws) || draws < 100 || draws > 20_000_000)
    throw new DomainError("bad-draws", "draws must be a whole number from 100 to 20,000,000", draws);
  const names = (Object.keys(inputs) as Name[]).sort();
  if (names.length === 0) throw new DomainError("empty", "a model needs at least one input", 0);
  const stream = randomStream(seed);
  const fillers = names.map((name) => filler(name, inputs[name], stream));
  const blocks = names.map(() => new Float64Array(blockLength));
  const values = new Float64Array(draws);
  for (let from = 0; from < draws; from += blockLength) {
    for (const [j, fill] of fillers.entries()) fill(blocks[j]!);
    runModel(model, names, blocks, values.subarray(from, from + blockLength));
  }
  // Two passes about one of the values, so that nothing cancels.
  const origin = values[0]!;
  let sum = 0;
  for (let i = 0; i < draws; i++) sum += values[i]! - origin;
  const shift = sum / draws;
  let squares = 0;
  for (let i = 0; i < draws; i++) squares += (values[i]! - origin - shift) ** 2;
  return { mean: origin + shift, sd: Math.sqrt(squares / (draws - 1)), ...coverageIntervals(values, level) };
};
