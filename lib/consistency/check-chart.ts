import { cusum } from "../statistics/cusum.ts";
import { ewma } from "../statistics/ewma.ts";
import { beyond, individualsChart } from "../statistics/individuals-chart.ts";
import { type Multirule, multirule } from "../statistics/multirule.ts";
import { requirePositive } from "../statistics/require-number.ts";
import type { CheckReading } from "./check-reading.ts";
import { instantOf } from "./instant.ts";

export type CheckChart =
  | {
      status: "ok";
      /** In the order of time: which reading, and read over certified. */
      points: { id: string; takenAt: string; recovery: number; ewma: number }[];
      /** The recovery the charts are drawn about, its standard deviation, and where they come from. */
      center: number;
      sigma: number;
      baseline: "given" | "these readings";
      limits: [lo: number, hi: number];
      /** Ids of the readings at which each chart speaks up. */
      signals: { individuals: string[]; ewma: string[]; cusum: string[] } & Record<keyof Multirule, string[]>;
      /** Readings below detection: on no chart. */
      withoutValue: string[];
    }
  /** Fewer than two readings with a value; or all alike, so that there is no spread to draw limits from. */
  | { status: "too-few" | "no-spread"; withoutValue: string[] };

/** Run lengths near 500 between false alarms (Montgomery, Introduction to Statistical Quality Control, Tables 9.11 and 9.4; from memory). */
const chartSettings = { lambda: 0.2, L: 2.962, k: 0.5, h: 5 };

/**
 * Control charts of one check standard over time: single readings, EWMA and CUSUM (which see a slow drift sooner), and five rules read
 * together. They say that the analyser has changed, not by how much it is wrong: for that, `recoveryOf`.
 *
 * Each reading becomes its recovery R = read/certified. About the `baseline` (mean and standard deviation of recoveries while the analyser was
 * known to be well) or, without one, about these readings' own mean with σ from their moving range: an own baseline hides a drift
 * that was there throughout. individuals: beyond center ± 3σ; EWMA λ = 0.2, L = 2.962; CUSUM k = 0.5, h = 5; rules on z = (R − center)/σ.
 *
 * checks: of one standard and element, any order; certified above 0, in their unit; baseline.sd above 0.
 *
 * Source: ISO 7870-2, ISO 7870-4 and ISO 7870-6; multirule: see `multirule`.
 *
 * @throws DomainError `no-zone`, `not-finite`, `not-positive`
 * @example checkChart([101, 99, 100, 115].map((value, day) => ({ id: `c${day}`, takenAt: `2026-03-0${day + 1}T09:00:00Z`, value, u: 1,
 *   detectionLimit: null })), { certified: 100, baseline: { mean: 1, sd: 0.02 } }).signals
 * // { individuals: ["c3"], ewma: ["c3"], cusum: ["c3"], "1-3s": ["c3"], "2-2s": [] }
 */
export function checkChart(
  checks: readonly CheckReading[],
  { certified, baseline }: { certified: number; baseline?: { mean: number; sd: number } },
): CheckChart {
  requirePositive("certified", certified);
  const ordered = [...checks].sort((a, b) => instantOf(a.takenAt) - instantOf(b.takenAt));
  const withoutValue = ordered.filter((check) => check.value === null).map((check) => check.id);
  const read = ordered.filter((check) => check.value !== null);
  // Without a baseline two readings are the least that have a moving range; with one, a single reading can be held against it.
  if (read.length < (baseline ? 1 : 2)) return { status: "too-few", withoutValue };
  const recoveries = read.map((check) => (check.value as number) / certified);
  const own = baseline ? null : individualsChart(recoveries);
  const center = own ? own.center : (baseline as { mean: number }).mean;
  const sigma = own ? own.sigma : (baseline as { sd: number }).sd;
  if (own && sigma === 0) return { status: "no-spread", withoutValue };
  const { lambda, L, k, h } = chartSettings;
  const averages = ewma(recoveries, { mu: center, sigma, lambda, L });
  const limits: [number, number] = [center - 3 * sigma, center + 3 * sigma];
  const ids = (positions: readonly number[]) => positions.map((i) => (read[i] as CheckReading).id);
  const rules = multirule(recoveries.map((recovery) => (recovery - center) / sigma));
  return {
    status: "ok",
    points: read.map(({ id, takenAt }, i) => ({
      id,
      takenAt,
      recovery: recoveries[i] as number,
      ewma: averages.z[i] as number,
    })),
    center,
    sigma,
    baseline: own ? "these readings" : "given",
    limits,
    signals: {
      individuals: ids(beyond(recoveries, () => limits)),
      ewma: ids(averages.signals),
      cusum: ids(cusum(recoveries, { mu: center, sigma, k, h }).signals),
      "1-3s": ids(rules["1-3s"]),
      "2-2s": ids(rules["2-2s"]),
      "R-4s": ids(rules["R-4s"]),
      "4-1s": ids(rules["4-1s"]),
      "10-x": ids(rules["10-x"]),
    },
    withoutValue,
  };
}
