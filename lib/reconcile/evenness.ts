import type { Policy } from "./types.ts";

/**
 * Whether the counting errors are too large to see if a part is even: their root mean square over `evenSeenTo` (policy, a tenth) of
 * the mean. Spots of an uneven part that look alike by chance then get a normal interval that ends too low: measured, three to five
 * lognormal spots with a spread of 1.0 and u of 15 or 30 % lay wholly above it in 4 to 7 parts of 100, not 2.5.
 */
export function evennessIsHidden(mean: number, u: readonly number[], { evenSeenTo }: Policy): boolean {
  return mean > 0 && Math.sqrt(u.reduce((sum, one) => sum + one * one, 0) / u.length) > evenSeenTo * mean;
}

/**
 * The upper end with its arm taken on the log scale, mean·exp((hi − mean)/mean): contents are above zero, and an uneven part's mean lies
 * farther up than down. Never below the end it was made from. All in one unit, mean above zero.
 *
 * @example onLogScale(50, 87) // 104.8
 */
export const onLogScale = (mean: number, hi: number): number => mean * Math.exp((hi - mean) / mean);
