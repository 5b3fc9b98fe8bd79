import { type MonteCarloInput, monteCarlo } from "../statistics/monte-carlo.ts";
import { propagate } from "../statistics/propagate.ts";
import type { Prepared } from "./prepare-input.ts";
import type { Estimate, Share } from "./types.ts";

/** JCGM 101:2008 7.2.2 asks for 10⁴/(1 − p) draws: 200 000 at 95 %. */
export const usualDraws = 200_000;

/**
 * Propagates inputs through a model of positive quantities, both ways.
 *
 * `value` is the model at the best values; `u` first order, u² = Σ(∂f/∂xᵢ·uᵢ)², by `propagate`; `shares` each term's part
 * of that sum, largest first; `interval` and `shortest` from Monte Carlo draws (95 %). Nothing is drawn where every input is exact.
 *
 * Source: JCGM 100:2008 5.1.2; JCGM 101:2008 7.
 *
 * @example propagateModel("g", { a: …, b: … }, ({ a, b }) => a * b, { seed: 1 })
 */
export function propagateModel<Unit extends string, Name extends string>(
  unit: Unit,
  inputs: Record<Name, Prepared>,
  model: (values: Record<Name, number>) => number,
  options: { seed: number; draws?: number },
): { estimate: Estimate<Unit>; shares: Share[] } {
  const names = Object.keys(inputs) as Name[];
  const best = Object.fromEntries(names.map((name) => [name, inputs[name].best])) as Record<Name, number>;
  const linear = propagate(
    model,
    Object.fromEntries(names.map((name) => [name, { value: inputs[name].best, u: inputs[name].u }])) as Record<
      Name,
      { value: number; u: number }
    >,
  );
  const { value, u } = linear;
  const shares = names
    .map((name) => ({ input: name as string, share: u === 0 ? 0 : (linear.contributions[name] / u) ** 2 }))
    .sort((a, b) => b.share - a.share);
  const atMost = names.some((name) => inputs[name].bound);
  const drawn = names.filter((name) => inputs[name].drawn !== null);
  if (drawn.length === 0)
    return { estimate: { unit, value, u: 0, interval: [value, value], shortest: [value, value], atMost }, shares };
  const sources = Object.fromEntries(drawn.map((name) => [name, inputs[name].drawn?.from])) as Record<
    Name,
    MonteCarloInput
  >;
  const places = drawn.map((name) => [name, inputs[name].drawn?.value as (draw: number) => number] as const);
  const current = { ...best };
  const { symmetric, shortest } = monteCarlo(
    (draw: Record<Name, number>) => {
      for (const [name, place] of places) current[name] = place(draw[name]);
      return model(current);
    },
    sources,
    { seed: options.seed, draws: options.draws ?? usualDraws },
  );
  return { estimate: { unit, value, u, interval: symmetric, shortest, atMost }, shares };
}

/** The estimate as an input of the next step: its value and interval, or its bound. */
export const asInput = (
  estimate: Estimate,
): { value: number; interval: readonly [number, number] } | { below: number } =>
  estimate.atMost
    ? { below: estimate.interval[1] }
    : { value: estimate.value, interval: spanning(estimate.value, estimate.interval) };

/** A value at the model's best can lie just outside the interval of very lopsided draws; the interval then reaches to it. */
const spanning = (value: number, [low, high]: readonly [number, number]): [number, number] => [
  Math.min(low, value),
  Math.max(high, value),
];

/** An estimate times an exact factor, in another unit: intervals follow exactly. */
export const scaleEstimate = <Unit extends string>(estimate: Estimate, factor: number, unit: Unit): Estimate<Unit> => ({
  unit,
  value: estimate.value * factor,
  u: estimate.u * factor,
  interval: [estimate.interval[0] * factor, estimate.interval[1] * factor],
  shortest: [estimate.shortest[0] * factor, estimate.shortest[1] * factor],
  atMost: estimate.atMost,
});
