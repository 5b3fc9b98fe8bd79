import { requireNumbers } from "./checks.ts";
import { tUpperQuantile } from "./distributions.ts";
import { moments } from "./moments.ts";

/**
 * Method detection limit from spiked samples and blanks carried through the whole method: the smallest value that differs from the
 * blanks with 99 % confidence.
 *
 * fromSpiked = t(n − 1, 0.99)·s of the spiked samples; fromBlanks = max(x̄, 0) + t(n − 1, 0.99)·s of the blanks, null where none is
 * given; limit = the greater.
 *
 * spiked: seven or more finite values; blanks: none, or seven or more. One unit. Where some blanks gave no number the rule has
 * other steps, which are not done here.
 *
 * Source: 40 CFR 136 Appendix B, Revision 2 (EPA 821-R-16-006), (2)(d).
 *
 * @throws DomainError `empty`, `too-few`, `not-finite`
 * @example methodDetectionLimit([4.1, 5.2, 4.6, 4.9, 5.5, 4.4, 4.8]) // { fromSpiked: 1.48991, fromBlanks: null, limit: 1.48991 }
 */
export function methodDetectionLimit(
  spiked: readonly number[],
  blanks: readonly number[] = [],
): { fromSpiked: number; fromBlanks: number | null; limit: number } {
  requireNumbers("spiked", spiked, 7);
  if (blanks.length > 0) requireNumbers("blanks", blanks, 7);
  const expanded = (values: readonly number[]) => {
    const { n, mean, sd } = moments(values);
    return { mean, reach: tUpperQuantile(0.01, n - 1) * sd };
  };
  const fromSpiked = expanded(spiked).reach;
  if (blanks.length === 0) return { fromSpiked, fromBlanks: null, limit: fromSpiked };
  const { mean, reach } = expanded(blanks);
  const fromBlanks = Math.max(mean, 0) + reach;
  return { fromSpiked, fromBlanks, limit: Math.max(fromSpiked, fromBlanks) };
}
