import type { Reading } from "./reading.ts";

/** What rows of one shot share. Null where nothing tells shots apart: then each row is a reading of its own. */
function shotKey(reading: Reading): string | null {
  if (reading.number === null && reading.takenAtText === null) return null;
  const { serial, number, takenAtText, sample, spot, mode } = reading;
  return JSON.stringify([serial, number, takenAtText, sample, spot, mode]);
}

/**
 * Rows of a file with a row for each element → readings, one for each shot. Rows belong together when reading number or time, and
 * instrument, sample, spot and mode agree; without number and time nobody can say, and each row stays a reading of one element.
 * An element that comes twice in a shot is handed back, the first kept.
 */
export function groupLongReadings(rows: readonly Reading[]): {
  readings: Reading[];
  repeated: { row: number; element: string }[];
} {
  const shots = new Map<string, Reading>();
  const seen = new Set<string>();
  const readings: Reading[] = [];
  const repeated: { row: number; element: string }[] = [];
  for (const row of rows) {
    const key = shotKey(row);
    const shot = key === null ? undefined : shots.get(key);
    const [result] = row.results;
    const element = key === null || !result ? null : `${key} ${result.element} ${result.quantity}`;
    if (element !== null && seen.has(element)) {
      repeated.push({ row: row.row, element: result!.element });
      continue;
    }
    if (element !== null) seen.add(element);
    if (shot) shot.results.push(...row.results);
    else {
      const own = { ...row, results: [...row.results] };
      readings.push(own);
      if (key !== null) shots.set(key, own);
    }
  }
  return { readings, repeated };
}
