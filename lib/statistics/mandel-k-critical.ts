import { DomainError } from "../quantity/domain-error.ts";
import { requireLevel } from "./checks.ts";
import { fQuantile } from "./distributions.ts";

/**
 * Critical value of Mandel's k: how much larger than the pooled one a laboratory's (session's, spot's) own standard deviation may be.
 *
 * k = √(ν/(ν₁ + ν₂/F)), ν = ν₁ + ν₂, F the upper α quantile with ν₁ and ν₂ degrees of freedom; ν₁ = `own`, those of the
 * laboratory, ν₂ = `others`, those of all others together. For p laboratories of n readings each, ν₁ = n − 1 and ν₂ = (p − 1)(n − 1), and this
 * is √(p/(1 + (p − 1)/F)); unequal numbers are served as well. No unit.
 *
 * own, others: whole, 1 or more; alpha in (0, 1): 0.05 for a straggler, 0.01 for an outlier.
 *
 * Source: ISO 5725-2:1994 7.3.1 and Table 7; ASTM E691 (alpha 0.005).
 *
 * @throws DomainError `too-few`, `bad-level`
 * @example mandelKCritical(2, 14, { alpha: 0.005 }) // 2.06084
 */
export function mandelKCritical(own: number, others: number, { alpha = 0.05 }: { alpha?: number } = {}): number {
  for (const df of [own, others])
    if (!(Number.isInteger(df) && df >= 1))
      throw new DomainError("too-few", "degrees of freedom must be a whole number of 1 or more", df);
  requireLevel(alpha, "alpha");
  // The upper quantile of F(ν₁, ν₂) is the reciprocal of the lower one of F(ν₂, ν₁).
  return Math.sqrt((own + others) / (own + others * fQuantile(alpha, others, own)));
}
