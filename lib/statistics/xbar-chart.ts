import { DomainError } from "../quantity/domain-error.ts";
import { requireNumbers } from "./checks.ts";
import { beyond, type Signals } from "./individuals-chart.ts";
import { moments } from "./moments.ts";
import { requireNumber, requirePositive } from "./require-number.ts";

export type XbarChart = { means: number[]; limits: [lo: number, hi: number]; signals: Signals };

/**
 * Chart of group means against a known level and spread (ISO 7870-2, standards given).
 *
 * limits = mu ± 3·sigma/√n, n readings in each group; a signal is a mean strictly beyond a limit.
 *
 * groups: one or more lists of n finite readings each, in order, all of one length; mu and sigma (above 0, of single
 * readings) in the same unit. Groups of unequal length are refused: one pair of limits would be wrong for some.
 *
 * @throws DomainError `too-few-groups`, `unequal-groups`, `too-few`, `not-finite`, `not-positive`
 * @example xbarChart([[10.1, 9.9], [12, 13]], { mu: 10, sigma: 0.5 })
 * // { means: [10, 12.5], limits: [8.93934, 11.06066], signals: [1] }
 */
export function xbarChart(
  groups: readonly (readonly number[])[],
  { mu, sigma }: { mu: number; sigma: number },
): XbarChart {
  requireNumber("mu", mu);
  requirePositive("sigma", sigma);
  const [first] = groups;
  if (!first) throw new DomainError("too-few-groups", "one or more groups are needed", 0);
  for (const [i, group] of groups.entries()) {
    requireNumbers(`groups[${i}]`, group, 1);
    if (group.length !== first.length)
      throw new DomainError("unequal-groups", "all groups must hold the same number of readings", group.length);
  }
  const means = groups.map((group) => moments(group).mean);
  const reach = (3 * sigma) / Math.sqrt(first.length);
  const limits: [number, number] = [mu - reach, mu + reach];
  return { means, limits, signals: beyond(means, () => limits) };
}
