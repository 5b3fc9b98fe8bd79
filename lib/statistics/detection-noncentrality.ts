import { DomainError } from "../quantity/domain-error.ts";
import { bracketedRoot } from "./bracketed-root.ts";
import { requireLevel } from "./checks.ts";
import { chiSquareQuantile, normalQuantile, normalUpperTail, tUpperQuantile } from "./distributions.ts";
import { gaussLegendre } from "./gauss-legendre.ts";

const rule = gaussLegendre(120);

/**
 * How many standard deviations above the blank a true value must lie to be missed with probability `beta` only, when the decision at
 * risk `alpha` is made with a standard deviation estimated on nu degrees of freedom.
 *
 * The noncentrality δ of Student's t with P(T_ν(δ) ≤ t_{1−α,ν}) = β. With nu infinite, δ = z_α + z_β; with few degrees of freedom it
 * lies a little under t_α + t_β, the approximation 2t of the standard. P(T ≤ t) = ∫ Φ(t·w − δ)·f(w) dw, w = √(χ²_ν/ν), by
 * Gauss–Legendre quadrature over all but 2·10⁻¹⁵ of w.
 *
 * nu: 1 or more, real, may be Infinity; alpha, beta in (0, 0.5). No unit.
 *
 * Source: ISO 11843-2:2000 5.3 (δ(ν; α; β)); Currie, Pure Appl. Chem. 67 (1995) 1699, 3.7.3.
 *
 * @throws DomainError `too-few`, `bad-level`
 * @example detectionNoncentrality({ nu: 4 }) // 4.067
 */
export function detectionNoncentrality({
  nu,
  alpha = 0.05,
  beta = 0.05,
}: {
  nu: number;
  alpha?: number;
  beta?: number;
}): number {
  if (typeof nu !== "number" || !(nu >= 1))
    throw new DomainError("too-few", "degrees of freedom must be 1 or more", nu);
  requireLevel(2 * alpha, "2·alpha");
  requireLevel(2 * beta, "2·beta");
  const zBeta = -normalQuantile(beta);
  // The spread of w falls as 1/√(2ν): far out it changes no digit of δ.
  if (nu > 1e8) return zBeta - normalQuantile(alpha);
  const t = tUpperQuantile(alpha, nu);
  const lowest = Math.sqrt(chiSquareQuantile(1e-15, nu) / nu);
  const highest = Math.sqrt(chiSquareQuantile(1 - 1e-15, nu) / nu);
  const half = (highest - lowest) / 2;
  const middle = (highest + lowest) / 2;
  const points = rule.nodes.map((node, i) => {
    const w = middle + half * node;
    return { w, weight: (rule.weights[i] as number) * Math.exp((nu - 1) * Math.log(w) - (nu * (w * w - 1)) / 2) };
  });
  // Normalised by its own sum: the constant of the density is not needed.
  const whole = points.reduce((sum, point) => sum + point.weight, 0);
  const missed = (delta: number) =>
    points.reduce((sum, { w, weight }) => sum + weight * normalUpperTail(delta - t * w), 0) / whole;
  return bracketedRoot((delta) => missed(delta) - beta, 0, t + tUpperQuantile(beta, nu) + 1);
}
