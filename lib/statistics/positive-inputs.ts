import { DomainError } from "../quantity/domain-error.ts";
import type { Propagation } from "./correlated-inputs.ts";
import { normalQuantile, normalUpperTail } from "./distributions.ts";
import type { MonteCarloInput } from "./monte-carlo.ts";
import { requireNumber, requirePositive } from "./require-number.ts";

/**
 * Keeps normal inputs of a Monte Carlo above zero, as a content, a mass or a thickness must be: hands back a model of uniform draws that
 * first turns them into normal ones cut off at zero, so that `monteCarlo` and `adaptiveMonteCarlo` run it as any other.
 *
 * x = μ − σ·Φ⁻¹(p·Φ(μ/σ)), p uniform: the normal distribution given x > 0 (inverse transform). mean and sd are those of the normal
 * distribution before the cut; the cut one's mean is μ + σ·φ(μ/σ)/Φ(μ/σ), higher by 0.3 % of σ at μ = 3.1σ, by half of σ at μ = 0.5σ. A
 * mean below zero is allowed (a net count may be), down to −30 σ.
 *
 * names: the inputs to keep above zero, each normal with sd above 0. A lognormal input is positive as it stands.
 *
 * Source: JCGM 101:2008 6.4.1 and C.2 (inverse transform); the cut is the state of knowledge "normal, and not below zero" (JCGM
 * 106:2012 annex A, prior of zero below zero).
 *
 * @throws DomainError `unknown-input`, `not-normal`, `not-finite`, `not-positive`, `out-of-range` (mean under −30 sd)
 * @example monteCarlo(...positiveInputs(({ a }) => a, { a: { shape: "normal", mean: 0, sd: 1 } }, ["a"]), { draws: 1000, seed: 1 }).symmetric[0] > 0
 * // true
 */
export function positiveInputs<Name extends string>(
  model: (inputs: Record<Name, number>) => number,
  inputs: Record<Name, MonteCarloInput>,
  names: readonly NoInfer<Name>[],
): Propagation<Name> {
  const all = Object.keys(inputs) as Name[];
  const cut = new Map<Name, { mean: number; sd: number; share: number }>();
  for (const name of names) {
    const input = all.includes(name) ? inputs[name] : undefined;
    if (input === undefined) throw new DomainError("unknown-input", "no input has this name", name);
    if (input.shape !== "normal")
      throw new DomainError("not-normal", `${name} must be normal to be cut off at zero`, input.shape);
    requireNumber(`${name} mean`, input.mean);
    requirePositive(`${name} sd`, input.sd);
    if (input.mean < -30 * input.sd)
      throw new DomainError("out-of-range", `${name} lies too far below zero to be cut off there`, input.mean);
    cut.set(name, { mean: input.mean, sd: input.sd, share: normalUpperTail(-input.mean / input.sd) });
  }
  const current = {} as Record<Name, number>;
  const uniform: MonteCarloInput = { shape: "rectangular", min: 0, max: 1 };
  return [
    (drawn) => {
      for (const name of all) {
        const part = cut.get(name);
        current[name] = part ? cutNormal(part, drawn[name]) : drawn[name];
      }
      return model(current);
    },
    Object.fromEntries(all.map((name) => [name, cut.has(name) ? uniform : inputs[name]])) as typeof inputs,
  ];
}

/** The value above zero that a share p of the cut distribution lies above; never zero itself by rounding. */
const cutNormal = ({ mean, sd, share }: { mean: number; sd: number; share: number }, p: number): number =>
  Math.max(mean - sd * normalQuantile(p * share), Number.MIN_VALUE);
