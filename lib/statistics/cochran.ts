import { DomainError } from "../quantity/domain-error.ts";
import { requireLevel, requireNumbers } from "./checks.ts";
import { fQuantile, fUpperTail } from "./distributions.ts";
import { requireNotNegative } from "./require-number.ts";

export type Cochran = {
  /** "no-spread": every variance is 0, so no laboratory or spot stands out. */
  status: "ok" | "no-spread";
  /** Position (from 0) of the largest variance; the first of equals. Null where there is no spread. */
  index: number | null;
  c: number | null;
  critical: number;
  p: number | null;
};

/**
 * Cochran's test: is the largest of k variances, each from n readings, too large? (Cochran 1941; ISO 5725-2:1994 7.3.3.)
 *
 * C = max sᵢ²/Σsᵢ². critical = F/(F + k − 1), F the upper α/k quantile with n − 1 and (k − 1)(n − 1) degrees of freedom;
 * p = min(1, k·P(F > (k − 1)C/(1 − C))): the Bonferroni bound on which the standard's tables rest.
 *
 * variances: two or more, zero or more, in one squared unit; nEach: readings behind each, the same for all, 2 or more.
 *
 * @throws DomainError `too-few`, `not-finite`, `negative`, `bad-level`, `bad-group-size`
 * @example cochran([0.12, 0.3, 0.25, 0.18, 2.9], 3) // { status: "ok", index: 4, c: 0.77333, critical: 0.68377, p: 0.0131984 }
 */
export function cochran(
  variances: readonly number[],
  nEach: number,
  { alpha = 0.05 }: { alpha?: number } = {},
): Cochran {
  requireNumbers("variances", variances, 2);
  for (const variance of variances) requireNotNegative("variances", variance);
  requireLevel(alpha, "alpha");
  if (!(Number.isInteger(nEach) && nEach >= 2))
    throw new DomainError("bad-group-size", "nEach must be a whole number of 2 or more", nEach);
  const k = variances.length;
  const df1 = nEach - 1;
  const df2 = (k - 1) * df1;
  // The upper quantile of F(df1, df2) is the reciprocal of the lower one of F(df2, df1): keeps the digits of a small α/k.
  const f = 1 / fQuantile(alpha / k, df2, df1);
  const critical = f / (f + k - 1);
  const largest = Math.max(...variances);
  if (largest === 0) return { status: "no-spread", index: null, c: null, critical, p: null };
  const index = variances.indexOf(largest);
  // Scaled by the largest, so that very large or very small variances neither overflow nor vanish.
  const others = variances.reduce((sum, variance, i) => (i === index ? sum : sum + variance / largest), 0);
  const p = Math.min(1, k * fUpperTail((k - 1) / others, df1, df2));
  return { status: "ok", index, c: 1 / (1 + others), critical, p };
}
