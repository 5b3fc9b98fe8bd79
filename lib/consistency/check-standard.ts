import type { Material } from "../quantity/item-words.ts";
import type { ElementResult } from "../readings/reading.ts";

/**
 * What a certificate states of one element, in its own words: a value with its expanded uncertainty U = k·u, or `below` for a blank.
 * U null: none stated. Such a standard shows whether the instrument is fit, but nothing is corrected by it.
 */
export type CertifiedValue = {
  value: number | null;
  below: number | null;
  U: number | null;
  k: 1 | 2 | 3;
  unit: string;
};

export type CheckStandard = {
  id: string;
  name: string;
  material: Material;
  /** Modes it is meant for; empty: any. */
  modes: readonly string[];
  expiresOn: string | null;
  certified: Readonly<Record<string, CertifiedValue>>;
};

/** One shot of a check standard, with all its elements. `takenAt` by a clock put right. */
export type StandardReading = {
  id: string;
  standardId: string;
  takenAt: string | null;
  mode: string | null;
  results: readonly ElementResult[];
};

const folded = (text: string): string => text.normalize("NFKC").trim().replace(/\s+/g, " ").toLowerCase();

/**
 * The check standard that a file's sample text names: by its name or one of its other names, case and spaces apart. Only a whole match
 * counts, so that "Amber disc, broken" is nobody's check. Retired standards are the caller's to leave out.
 *
 * @example namedStandard("CHECK amber  disc", [{ id: "s1", name: "Amber disc", otherNames: ["check Amber disc"] }]) // "s1"
 */
export function namedStandard(
  sample: string | null,
  standards: readonly { id: string; name: string; otherNames: readonly string[] }[],
): string | null {
  if (sample === null) return null;
  const wanted = folded(sample);
  const [found, ...others] = standards.filter((s) => [s.name, ...s.otherNames].some((name) => folded(name) === wanted));
  return found && others.length === 0 ? found.id : null;
}
