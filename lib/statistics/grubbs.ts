import { DomainError } from "../quantity/domain-error.ts";
import { requireLevel, requireNumbers } from "./checks.ts";
import { tUpperQuantile, tUpperTail } from "./distributions.ts";
import { moments } from "./moments.ts";

export type Grubbs = {
  /** "no-spread": all values are equal, so nothing stands out and there is no statistic. */
  status: "ok" | "no-spread";
  /** Position (from 0) of the value tested; the first of equals. Null where there is no spread. */
  index: number | null;
  g: number | null;
  /** Critical value of g at alpha. */
  critical: number;
  /** Upper bound of the probability of a g at least this large (exact where it is small). */
  p: number | null;
};

/**
 * Grubbs' test for one outlier (Grubbs 1969; ISO 5725-2:1994 7.3.4; NIST/SEMATECH e-Handbook 1.3.5.17.1).
 *
 * sides 1: g = (max − x̄)/s, the largest value. sides 2: g = max|xᵢ − x̄|/s, either end.
 * critical = (n − 1)/√n·√(t²/(n − 2 + t²)), t the upper α/n (one side) or α/(2n) (two sides) quantile of Student's t with
 * n − 2 degrees of freedom. p = min(1, n·P(T > t_g)) or min(1, 2n·P(T > t_g)), t_g² = n(n − 2)g²/((n − 1)² − n g²): the
 * Bonferroni bound.
 *
 * x: three or more finite values in one unit.
 *
 * @throws DomainError `too-few`, `not-finite`, `bad-level`, `unknown-sides`
 * @example grubbs([199.31, 199.53, 200.19, 200.82, 201.92, 201.95, 202.18, 245.57], { sides: 1 })
 * // { status: "ok", index: 7, g: 2.4687646, critical: 2.0316520, p: 1.5e-7 }
 */
export function grubbs(x: readonly number[], { sides, alpha = 0.05 }: { sides: 1 | 2; alpha?: number }): Grubbs {
  requireNumbers("x", x, 3);
  requireLevel(alpha, "alpha");
  if (sides !== 1 && sides !== 2) throw new DomainError("unknown-sides", "sides must be 1 or 2", sides);
  const n = x.length;
  const critical = grubbsCritical(n, alpha / sides);
  const { mean, sd } = moments(x);
  if (sd === 0) return { status: "no-spread", index: null, g: null, critical, p: null };
  const distance = (value: number) => (sides === 1 ? value - mean : Math.abs(value - mean)) / sd;
  let index = 0;
  for (const [i, value] of x.entries()) if (distance(value) > distance(x[index] as number)) index = i;
  const g = distance(x[index] as number);
  return { status: "ok", index, g, critical, p: Math.min(1, sides * n * tailOfStudentised(g, n)) };
}

/** Critical g where each single value is tested at the upper tail `tail`/n. */
function grubbsCritical(n: number, tail: number): number {
  const t = tUpperQuantile(tail / n, n - 2);
  return ((n - 1) / Math.sqrt(n)) * Math.sqrt((t * t) / (n - 2 + t * t));
}

/** P that one chosen value lies at least g standard deviations above the mean. */
function tailOfStudentised(g: number, n: number): number {
  const room = (n - 1) ** 2 - n * g * g;
  // g has the bound (n − 1)/√n; rounding may carry it onto the bound, where the tail is empty.
  if (room <= 0) return 0;
  return tUpperTail(Math.sign(g) * Math.sqrt((n * (n - 2) * g * g) / room), n - 2);
}
