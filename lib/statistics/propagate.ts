import { DomainError } from "../quantity/domain-error.ts";
import { requireLevel } from "./checks.ts";
import { combine } from "./combine.ts";
import { type Correlation, correlationMatrix } from "./correlation-matrix.ts";
import { coverageFactor } from "./coverage-factor.ts";
import { requireNotNegative, requireNumber } from "./require-number.ts";

/** An input: its estimate, standard uncertainty, and degrees of freedom where they are finite. */
export type LinearInput = { value: number; u: number; nu?: number | null };

export type LinearPropagation<Name extends string> = {
  value: number;
  u: number;
  nuEff: number;
  k: number;
  U: number;
  interval: [lo: number, hi: number];
  /** ∂f/∂xᵢ at the estimates; unit of the result over that of the input. */
  sensitivities: Record<Name, number>;
  /** ∂f/∂xᵢ·u(xᵢ), with its sign; unit of the result. */
  contributions: Record<Name, number>;
};

/**
 * Law of propagation of uncertainty, first order, with sensitivities found numerically.
 *
 * cᵢ = ∂f/∂xᵢ by the five-point central difference with step 10⁻³·max(|xᵢ|, u(xᵢ)), good to ten digits or so for a smooth model;
 * u² = Σᵢ Σⱼ cᵢuᵢ·r_ij·cⱼuⱼ; ν_eff by Welch–Satterthwaite (independent inputs); k = t((1 + level)/2, ν_eff); U = k·u; interval = value ± U.
 *
 * Where the model bends over the width of its inputs, or rests on its summit, this is not enough: `comparePropagation` tells, beside a Monte
 * Carlo of the same model. Inputs without any u are constants and still get a sensitivity.
 *
 * Refused: correlated inputs with finite degrees of freedom (Welch–Satterthwaite does not hold for them).
 *
 * Source: JCGM 100:2008 5.1.2, 5.1.3 note 2, 5.2.2 and G.4.1.
 *
 * @throws DomainError `empty`, `not-finite` (an input, or the model near it), `negative`, `not-positive`, `bad-level`,
 * `correlated-with-nu`, and what `correlationMatrix` refuses
 * @example propagate(({ v, i }) => v / i, { v: { value: 5, u: 0.1 }, i: { value: 0.02, u: 0.0003 } })
 * // { value: 250, u: 6.25, nuEff: Infinity, k: 1.959964, U: 12.24977, sensitivities: { v: 50, i: -12500 }, contributions: { v: 5, i: -3.75 } }
 */
export function propagate<Name extends string>(
  model: (inputs: Record<Name, number>) => number,
  inputs: Record<Name, LinearInput>,
  { correlations = [], level = 0.95 }: { correlations?: readonly Correlation<NoInfer<Name>>[]; level?: number } = {},
): LinearPropagation<Name> {
  requireLevel(level);
  const names = (Object.keys(inputs) as Name[]).sort();
  if (names.length === 0) throw new DomainError("empty", "a model needs at least one input", 0);
  for (const name of names) {
    requireNumber(`${name} value`, inputs[name].value);
    requireNotNegative(`${name} u`, inputs[name].u);
  }
  const estimates = Object.fromEntries(names.map((name) => [name, inputs[name].value])) as Record<Name, number>;
  const result = (at: Record<Name, number>): number => {
    const value = model(at);
    requireNumber("the model's result", value);
    return value;
  };
  const value = result({ ...estimates });
  const slopes = names.map((name) => slopeAt(result, estimates, name, inputs[name].u));
  const parts = names.map((name, i) => (slopes[i] as number) * inputs[name].u);
  const spread =
    correlations.length === 0
      ? combine(
          names.map((name, i) => ({ u: Math.abs(parts[i] as number), nu: inputs[name].nu ?? null })),
          { level },
        )
      : combinedCorrelated(names, inputs, parts, correlations, level);
  const byName = (numbers: readonly number[]) =>
    Object.fromEntries(names.map((name, i) => [name, numbers[i] as number])) as Record<Name, number>;
  return {
    value,
    ...spread,
    interval: [value - spread.U, value + spread.U],
    sensitivities: byName(slopes),
    contributions: byName(parts),
  };
}

function slopeAt<Name extends string>(
  result: (at: Record<Name, number>) => number,
  estimates: Record<Name, number>,
  name: Name,
  u: number,
): number {
  const x = estimates[name];
  const size = Math.max(Math.abs(x), u);
  // A power of two, so that x ± h loses as little as can be.
  const h = 2 ** Math.round(Math.log2(1e-3 * (size > 0 ? size : 1)));
  const at = (steps: number) => result({ ...estimates, [name]: x + steps * h });
  return (8 * (at(1) - at(-1)) - (at(2) - at(-2))) / (12 * h);
}

function combinedCorrelated<Name extends string>(
  names: readonly Name[],
  inputs: Record<Name, LinearInput>,
  parts: readonly number[],
  correlations: readonly Correlation<Name>[],
  level: number,
): { u: number; nuEff: number; k: number; U: number } {
  const finite = names.find((name) => Number.isFinite(inputs[name].nu ?? Number.POSITIVE_INFINITY));
  if (finite !== undefined)
    throw new DomainError("correlated-with-nu", "effective degrees of freedom need independent inputs", finite);
  const { lower } = correlationMatrix(names, correlations);
  // u² = |Lᵀ·p|²: a sum of squares, which cannot come out below zero.
  const u = Math.hypot(
    ...names.map((_, j) => lower.reduce((sum, row, i) => sum + (row[j] as number) * (parts[i] as number), 0)),
  );
  const k = coverageFactor(Number.POSITIVE_INFINITY, level);
  return { u, nuEff: Number.POSITIVE_INFINITY, k, U: k * u };
}
