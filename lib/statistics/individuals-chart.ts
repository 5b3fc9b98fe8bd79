import { requireNumbers } from "./checks.ts";
import { moments } from "./moments.ts";

/** Positions (from 0) at which a chart speaks up. */
export type Signals = number[];
export type IndividualsChart = { center: number; sigma: number; limits: [lo: number, hi: number]; signals: Signals };

/** d₂ for pairs, as printed (ASTM E2587; ISO 7870-2): the exact value is 2/√π = 1.128379. */
const D2_OF_PAIRS = 1.128;

/**
 * Chart of individual readings with limits from the moving range (ISO 7870-2; NIST/SEMATECH e-Handbook 6.3.2.2).
 *
 * center = x̄; sigma = mean|xᵢ − xᵢ₋₁|/1.128; limits = center ± 3·sigma; a signal is a reading strictly beyond a limit.
 * With all readings equal, sigma is 0 and the limits meet at the centre, without a signal.
 *
 * x: two or more finite readings in the order taken, one unit.
 *
 * @throws DomainError `too-few`, `not-finite`
 * @example individualsChart([49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 52.1]).limits // [45.81591, 55.80409]
 */
export function individualsChart(x: readonly number[]): IndividualsChart {
  requireNumbers("x", x, 2);
  const center = moments(x).mean;
  const ranges = x.slice(1).map((value, i) => Math.abs(value - (x[i] as number)));
  const sigma = ranges.reduce((sum, range) => sum + range, 0) / ranges.length / D2_OF_PAIRS;
  const limits: [number, number] = [center - 3 * sigma, center + 3 * sigma];
  return { center, sigma, limits, signals: beyond(x, () => limits) };
}

/** Positions of the values strictly outside the limits that hold at each position. */
export function beyond(values: readonly number[], limitsAt: (position: number) => [number, number]): Signals {
  return values.flatMap((value, i) => {
    const [lo, hi] = limitsAt(i);
    return value < lo || value > hi ? [i] : [];
  });
}
