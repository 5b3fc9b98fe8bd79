/** Numbers that a text like "12-18, 21" names; null where it is no such text. */
export function numbersOf(text: string): { from: number; to: number }[] | null {
  const ranges: { from: number; to: number }[] = [];
  for (const piece of text.split(/[,;\s]+/).filter(Boolean)) {
    const match = /^(\d+)(?:[-–](\d+))?$/.exec(piece);
    if (!match) return null;
    const from = Number(match[1]);
    const to = Number(match[2] ?? match[1]);
    if (to < from) return null;
    ranges.push({ from, to });
  }
  return ranges.length === 0 ? null : ranges;
}

/** Which readings a range names, by their number in the list (1-based); null where it is no range of the list. */
export function readRange(text: string, count: number): number[] | null {
  const ranges = numbersOf(text);
  if (!ranges || ranges.some(({ from, to }) => from < 1 || to > count)) return null;
  const chosen = new Set<number>();
  for (const { from, to } of ranges) for (let n = from; n <= to; n += 1) chosen.add(n);
  return [...chosen].sort((a, b) => a - b);
}

/** Which readings a range names by the analyser's own numbers, "#012" being 12; null where it names none of the list. */
export function readShots<T extends { number: string }>(text: string, readings: readonly T[]): T[] | null {
  const ranges = numbersOf(text);
  const found = readings.filter(({ number }) => {
    const digits = /^\D{0,2}(\d+)$/.exec(number.trim());
    const n = digits ? Number(digits[1]) : Number.NaN;
    return ranges?.some(({ from, to }) => n >= from && n <= to);
  });
  return found.length === 0 ? null : found;
}
