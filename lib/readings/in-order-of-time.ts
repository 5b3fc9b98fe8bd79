/** What is needed of a reading to know when its turn was. */
export type TimedReading = { id: string; takenAt: string | null; batchId: string; row: number };

/**
 * Readings in the order in which they were taken: by their moments where all have one, else in the order of the file.
 * A file's rows stand in the order of shooting (common practice, no source); mixing both would invent an order.
 *
 * @example inOrderOfTime([{ id: "b", takenAt: "2026-05-02T10:02:00+02:00", batchId: "f", row: 2 },
 *   { id: "a", takenAt: "2026-05-02T08:00:00Z", batchId: "f", row: 3 }]).map((r) => r.id) // ["a", "b"]
 */
export function inOrderOfTime<T extends TimedReading>(readings: readonly T[]): T[] {
  const byRow = (a: T, b: T) => (a.batchId < b.batchId ? -1 : a.batchId > b.batchId ? 1 : a.row - b.row);
  const moments = new Map(readings.map((r) => [r.id, r.takenAt === null ? Number.NaN : Date.parse(r.takenAt)]));
  if ([...moments.values()].some(Number.isNaN)) return [...readings].sort(byRow);
  return [...readings].sort((a, b) => moments.get(a.id)! - moments.get(b.id)! || byRow(a, b));
}

/**
 * Readings dealt to spots in order: with as many shots on every spot as go, the first spot gets the first shots. Null where
 * the counts do not go: somebody has to say then which reading was where.
 *
 * @example dealToSpots(["r1", "r2", "r3", "r4"], ["A", "B"]) // [["A", ["r1", "r2"]], ["B", ["r3", "r4"]]]
 * @example dealToSpots(["r1", "r2", "r3"], ["A", "B"]) // null
 */
export function dealToSpots<R, S>(readings: readonly R[], spots: readonly S[]): [S, R[]][] | null {
  const each = readings.length / spots.length;
  if (spots.length === 0 || each < 1 || !Number.isInteger(each)) return null;
  return spots.map((spot, at) => [spot, readings.slice(at * each, (at + 1) * each)]);
}
