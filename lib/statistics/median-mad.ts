import { requireNumbers } from "./checks.ts";

/** Median of numbers already in rising order. */
const middle = (sorted: readonly number[]): number => {
  const half = sorted.length >> 1;
  const upper = sorted[half]!;
  if (sorted.length % 2 === 1) return upper;
  const lower = sorted[half - 1]!;
  return lower + (upper - lower) / 2;
};

/**
 * Median and median absolute deviation.
 *
 * median: the middle value, or the mean of the two middle ones; mad = median |x − median| (raw); scaled = 1.4826·mad, which
 * estimates the standard deviation of a normal distribution. Unit of x. mad is 0 where more than half the values agree.
 * Refuses (DomainError) an empty list and numbers that are not finite.
 *
 * Source: ISO 13528:2022 C.2.
 *
 * @example medianMad([1, 2, 4, 7, 100]) // { median: 4, mad: 3, scaled: 4.4478 }
 */
export const medianMad = (x: readonly number[]): { median: number; mad: number; scaled: number } => {
  requireNumbers("x", x);
  const rising = (a: number, b: number) => a - b;
  const median = middle(x.toSorted(rising));
  const mad = middle(x.map((value) => Math.abs(value - median)).sort(rising));
  return { median, mad, scaled: 1.4826 * mad };
};
