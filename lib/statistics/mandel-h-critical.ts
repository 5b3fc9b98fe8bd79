import { DomainError } from "../quantity/domain-error.ts";
import { requireLevel } from "./checks.ts";
import { tUpperQuantile } from "./distributions.ts";

/**
 * Critical value of Mandel's h, for |h|: how far one laboratory's (session's, spot's) mean may lie from the mean of all.
 *
 * h = (p − 1)·t/√(p·(t² + p − 2)), t the upper α/2 quantile of Student's t with p − 2 degrees of freedom, p laboratories. No unit.
 *
 * labs: whole, 3 or more (of two, h is always ±0.7071); alpha in (0, 1): 0.05 for a straggler, 0.01 for an outlier.
 *
 * Source: ISO 5725-2:1994 7.3.1 and Table 6; ASTM E691 (alpha 0.005).
 *
 * @throws DomainError `too-few-groups`, `bad-level`
 * @example mandelHCritical(8, { alpha: 0.005 }) // 2.1525
 */
export function mandelHCritical(labs: number, { alpha = 0.05 }: { alpha?: number } = {}): number {
  if (!(Number.isInteger(labs) && labs >= 3))
    throw new DomainError("too-few-groups", "labs must be a whole number of 3 or more", labs);
  requireLevel(alpha, "alpha");
  const t = tUpperQuantile(alpha / 2, labs - 2);
  return ((labs - 1) * t) / Math.sqrt(labs * (t * t + labs - 2));
}
