import { DomainError } from "../quantity/domain-error.ts";
import { type Correlation, correlationMatrix } from "./correlation-matrix.ts";
import type { MonteCarloInput } from "./monte-carlo.ts";
import { requireNotNegative, requireNumber, requirePositive } from "./require-number.ts";

/** A model and its inputs, as `monteCarlo` takes them: `monteCarlo(...propagation, { draws, seed })`. */
export type Propagation<Name extends string> = [
  model: (inputs: Record<Name, number>) => number,
  inputs: Record<Name, MonteCarloInput>,
];

/**
 * Makes inputs of a Monte Carlo correlated: hands back a model of independent standard normal draws that first turns them into
 * the correlated inputs, so that `monteCarlo` and `adaptiveMonteCarlo` run it as any other.
 *
 * x_i = m_i + s_i·Σ_j L_ij·z_j, L·Lᵀ the correlation matrix. For lognormal inputs ln x_i is made so, and r is that of the logarithms.
 * Inputs that no correlation names stay as they are. The multivariate normal distribution is one choice among many with the
 * same coefficients, the one JCGM 101 names where nothing else is known.
 *
 * @throws DomainError `correlation-needs-normal` (another shape), what `correlationMatrix` refuses, `not-finite`, `negative`,
 * `not-positive`, `out-of-range` (an input outside its domain)
 *
 * Source: JCGM 101:2008 6.4.8.4 and C.5.
 *
 * @example monteCarlo(...correlatedInputs(({ a, b }) => a - b, { a: { shape: "normal", mean: 9, sd: 1 }, b: { shape: "normal", mean: 4, sd: 1 } },
 *   [{ between: ["a", "b"], r: 1 }]), { draws: 1000, seed: 1 }).symmetric // [5, 5]
 */
export function correlatedInputs<Name extends string>(
  model: (inputs: Record<Name, number>) => number,
  inputs: Record<Name, MonteCarloInput>,
  correlations: readonly Correlation<NoInfer<Name>>[],
): Propagation<Name> {
  const all = Object.keys(inputs) as Name[];
  const named = new Set(correlations.flatMap(({ between }) => [...between]));
  for (const name of named)
    if (!Object.hasOwn(inputs, name))
      throw new DomainError("unknown-input", "a correlation names an input that is none", name);
  const correlated = all.filter((name) => named.has(name)).sort();
  if (correlated.length === 0) return [model, inputs];
  const { lower } = correlationMatrix(correlated, correlations);
  const parts = correlated.map((name, row) => ({ name, row: lower[row] as number[], ...place(name, inputs[name]) }));
  const independent = all.filter((name) => !named.has(name));
  const current = {} as Record<Name, number>;
  const standard: MonteCarloInput = { shape: "normal", mean: 0, sd: 1 };
  return [
    (drawn) => {
      for (const name of independent) current[name] = drawn[name];
      for (const { name, row, centre, spread, log } of parts) {
        let z = 0;
        for (let j = 0; j < correlated.length; j++) z += (row[j] as number) * drawn[correlated[j] as Name];
        const x = centre + spread * z;
        current[name] = log ? Math.exp(x) : x;
      }
      return model(current);
    },
    Object.fromEntries(all.map((name) => [name, named.has(name) ? standard : inputs[name]])) as typeof inputs,
  ];
}

/** Mean and standard deviation of the input, or of its logarithm. */
function place(name: string, input: MonteCarloInput): { centre: number; spread: number; log: boolean } {
  if (input.shape === "normal") {
    requireNumber(`${name} mean`, input.mean);
    requireNotNegative(`${name} sd`, input.sd);
    return { centre: input.mean, spread: input.sd, log: false };
  }
  if (input.shape !== "lognormal")
    throw new DomainError(
      "correlation-needs-normal",
      `${name} must be normal or lognormal to be correlated`,
      input.shape,
    );
  if ("median" in input) {
    requirePositive(`${name} median`, input.median);
    requireNumber(`${name} gsd`, input.gsd);
    if (input.gsd < 1) throw new DomainError("out-of-range", `${name} gsd must be 1 or more`, input.gsd);
    return { centre: Math.log(input.median), spread: Math.log(input.gsd), log: true };
  }
  requirePositive(`${name} mean`, input.mean);
  requireNotNegative(`${name} sd`, input.sd);
  const variance = Math.log1p((input.sd / input.mean) ** 2);
  return { centre: Math.log(input.mean) - variance / 2, spread: Math.sqrt(variance), log: true };
}
