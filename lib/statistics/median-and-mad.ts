/** Median: the middle of the ordered values, or the mean of the two in the middle. */
export function medianOf(values: readonly number[]): number {
  const ordered = [...values].sort((a, b) => a - b);
  const upper = ordered[Math.floor(ordered.length / 2)] as number;
  if (ordered.length % 2 === 1) return upper;
  const lower = ordered[ordered.length / 2 - 1] as number;
  return lower + (upper - lower) / 2;
}

/** Median of the distances from the median, not scaled. */
export function rawMad(values: readonly number[], median = medianOf(values)): number {
  return medianOf(values.map((value) => Math.abs(value - median)));
}
