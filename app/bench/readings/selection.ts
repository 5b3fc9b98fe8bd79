/** Which readings a range like "12-18, 21" names, by their number in the list (1-based); null where it is no range. */
export function readRange(text: string, count: number): number[] | null {
  const chosen = new Set<number>();
  for (const piece of text.split(/[,;\s]+/).filter(Boolean)) {
    const match = /^(\d+)(?:[-–](\d+))?$/.exec(piece);
    if (!match) return null;
    const from = Number(match[1]);
    const to = Number(match[2] ?? match[1]);
    if (from < 1 || to < from || to > count) return null;
    for (let n = from; n <= to; n += 1) chosen.add(n);
  }
  return chosen.size === 0 ? null : [...chosen].sort((a, b) => a - b);
}
