import { requireNumbers } from "../statistics/checks.ts";
import { combine } from "../statistics/combine.ts";
import { moments } from "../statistics/moments.ts";
import { requireNotNegative, requirePositive } from "../statistics/require-number.ts";
import type { Certificate } from "./check-reading.ts";

export type Recovery = {
  /** Mean read over certified. */
  recovery: number;
  /** Null where one reading came without an error, so that nothing says how sure it is. */
  u: number | null;
  /** Null: infinite, or u unknown. */
  nuEff: number | null;
  U: number | null;
  /** Whether it differs from 1 by more than its expanded uncertainty (95 %); null where that is unknown. */
  differs: boolean | null;
  /** Relative standard uncertainties: of the mean read (the larger of scatter and counting) and of the certificate. */
  parts: { scatter: number | null; counting: number | null; certificate: number };
  readings: number;
};

/**
 * Recovery of a check standard: how much of the certified value the analyser reads, with its uncertainty.
 *
 * R = x̄/c; u(R)/R = √((u(x̄)/x̄)² + (u(c)/c)²). u(x̄) = the larger of s/√n (n − 1 degrees of freedom) and √Σu²/n from counting alone (infinitely
 * many): scatter holds the counting, and with few readings can come out too small by chance. One reading: counting alone. U = k·u by
 * Welch–Satterthwaite.
 *
 * readings: one or more detected values, above 0 on average, u 0 or more or null; certified above 0, uCertified 0 or more; one unit.
 *
 * Source: JCGM 100:2008 4.2, 5.1.6 and G.4.1; Eurachem/CITAC, Quantifying Uncertainty in Analytical Measurement (2012) 7.15 on recovery.
 *
 * @throws DomainError `empty`, `not-finite`, `negative`, `not-positive`
 * @example recoveryOf([{ value: 95, u: 2 }, { value: 97, u: 2 }], { certified: 100, uCertified: 1 })
 * // { recovery: 0.96, u: 0.0171, nuEff: null, U: 0.033501, differs: true, parts: { scatter: 0.0104, counting: 0.0147, certificate: 0.01 } }
 */
export function recoveryOf(
  readings: readonly { value: number; u: number | null }[],
  { certified, uCertified }: Certificate,
): Recovery {
  requireNumbers(
    "values",
    readings.map((reading) => reading.value),
  );
  requirePositive("certified", certified);
  requireNotNegative("uCertified", uCertified);
  const errors = readings.flatMap((reading) => (reading.u === null ? [] : [reading.u]));
  for (const u of errors) requireNotNegative("u", u);
  const { n, mean, sd } = moments(readings.map((reading) => reading.value));
  requirePositive("the mean read", mean);
  const scatter = n > 1 ? sd / Math.sqrt(n) / mean : null;
  const counting = errors.length === n ? Math.hypot(...errors) / n / mean : null;
  const certificate = uCertified / certified;
  const recovery = mean / certified;
  const shared = { recovery, parts: { scatter, counting, certificate }, readings: n };
  if (scatter === null && counting === null) return { ...shared, u: null, nuEff: null, U: null, differs: null };
  const read =
    scatter !== null && scatter >= (counting ?? 0) ? { u: scatter, nu: n - 1 } : { u: counting as number, nu: null };
  const { u, nuEff, U } = combine([read, { u: certificate }]);
  return {
    ...shared,
    u: recovery * u,
    nuEff: Number.isFinite(nuEff) ? nuEff : null,
    U: recovery * U,
    differs: Math.abs(recovery - 1) > recovery * U,
  };
}
