import type { ElementResult, Reading, WrittenNumber } from "./reading.ts";

const text = (written: WrittenNumber | null): string | null =>
  written === null ? null : written.text.replace(/\s+/g, "");

const ofResult = (result: ElementResult): (string | null)[] => [
  result.oxide ?? result.element,
  result.unit,
  result.belowDetection ? "<" : "=",
  text(result.value),
  text(result.error),
  text(result.detectionLimit),
];

/**
 * What identifies a reading, as one stable text: instrument, reading number, time, and every result as written. The same reading in
 * two files (exported again, or with other rows around it) gives the same text; names a person may change later (sample, spot,
 * note) are left out. Order of columns does not matter. The caller may hash it.
 *
 * Example: number "7", Pb "12.5" ppm → '[null,"7",null,[["Pb","ppm","=","12.5",null,null]]]'.
 */
export function readingFingerprint(reading: Reading): string {
  const results = reading.results
    .map((result) => {
      const texts = ofResult(result);
      return { texts, key: texts.join("\u0001") };
    })
    .sort((one, other) => (one.key < other.key ? -1 : 1))
    .map(({ texts }) => texts);
  return JSON.stringify([reading.serial, reading.number, reading.takenAt ?? reading.takenAtText, results]);
}

/**
 * Whether the fingerprint can tell this reading from a repeat with the same figures: it has a number or a moment. Without either, equal
 * fingerprints are only a hint (two shots can read the same).
 */
export const isIdentified = (reading: Reading): boolean => reading.number !== null || reading.takenAtText !== null;
