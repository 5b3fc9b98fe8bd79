import { done, type Outcome, refused } from "../quantity/problem.ts";
import { convert } from "../quantity/units.ts";

/** Area of a wiped rectangle, ft², from its sides in inches. @example wipedArea(11.625, 12.125) // 0.979 ft² */
export const wipedArea = (lengthIn: number, widthIn: number): number =>
  convert(lengthIn, "in", "ft") * convert(widthIn, "in", "ft");

/** What the laboratory found on one wipe: µg, or "<" its reporting limit. */
export type Wipe = { found: number; below?: boolean; areaFt2: number };
export type WipeLoading = { loading: number; below: boolean };

/**
 * Loading of settled dust by a wipe, µg/ft²: what was on the wipe over the area wiped. A "<" stays a "<": `below` true means under the
 * number. No blank is subtracted: that is the laboratory's to say.
 *
 * Refused (Problem): `area-zero`, `not-above-zero`.
 *
 * @example wipeLoading({ found: 20, areaFt2: 0.5 }) // { loading: 40, below: false }
 */
export function wipeLoading({ found, below = false, areaFt2 }: Wipe): Outcome<WipeLoading> {
  if (!(Number.isFinite(areaFt2) && areaFt2 > 0))
    return refused({ code: "area-zero", where: { field: "area" }, found: String(areaFt2) });
  if (!(Number.isFinite(found) && found > 0))
    return refused({ code: "not-above-zero", where: { field: "found" }, found: String(found) });
  return done({ loading: found / areaFt2, below });
}

/**
 * Area-weighted mean loading of several wipes, µg/ft²: Σ found / Σ area. The plain mean of the loadings is another number. With any "<"
 * among them the mean is "below": at most that.
 *
 * @example areaWeightedLoading([{ found: 10, areaFt2: 1 }, { found: 4, areaFt2: 0.5 }, { found: 3, areaFt2: 0.25 }]) // 9.714
 */
export function areaWeightedLoading(wipes: readonly Wipe[]): Outcome<WipeLoading> {
  const each = wipes.map(wipeLoading);
  const problems = each.flatMap((one) => (one.ok ? [] : one.problems));
  if (wipes.length === 0 || problems.length > 0)
    return refused(...(problems.length > 0 ? problems : [{ code: "area-zero", where: { field: "area" } }]));
  const sum = (of: (wipe: Wipe) => number) => wipes.reduce((total, wipe) => total + of(wipe), 0);
  return done({
    loading: sum((wipe) => wipe.found) / sum((wipe) => wipe.areaFt2),
    below: wipes.some((wipe) => wipe.below),
  });
}

/**
 * Weighted arithmetic mean of samples as 40 CFR 745.63 defines it: each result weighted by the number of subsamples in it, not by its area.
 *
 * Refused (Problem): `not-above-zero` (an empty list, a count that is no whole number above zero, a result of zero or less).
 *
 * @example subsampleWeightedMean([{ loading: 60, subsamples: 1 }, { loading: 100, subsamples: 3 }, { loading: 110, subsamples: 4 }]) // 100
 */
export function subsampleWeightedMean(samples: readonly { loading: number; subsamples: number }[]): Outcome<number> {
  const bad = samples.find(
    ({ loading, subsamples }) =>
      !(Number.isFinite(loading) && loading > 0 && Number.isInteger(subsamples) && subsamples > 0),
  );
  if (samples.length === 0 || bad !== undefined)
    return refused({ code: "not-above-zero", where: { field: "samples" }, found: String(bad?.loading ?? "none") });
  const count = samples.reduce((sum, one) => sum + one.subsamples, 0);
  return done(samples.reduce((sum, one) => sum + one.loading * one.subsamples, 0) / count);
}
