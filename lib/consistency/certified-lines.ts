import { done, type Outcome, type Problem, refused } from "../quantity/problem.ts";
import { parseUnit, type Unit } from "../quantity/units.ts";
import { parseTypedNumber } from "../quantity/written-quantity.ts";
import type { CalibratedRange } from "../reconcile/part-inputs.ts";
import type { CertifiedValue } from "./check-standard.ts";

const number = String.raw`[\d.,]*\d(?:[eE][+-]?\d+)?`;
const certifiedLine = new RegExp(
  String.raw`^([A-Z][a-z]?)\s*[:=]?\s*(<)?\s*(${number})\s*(?:(?:±|\+\/-|\+-)\s*(${number})|(none stated))?\s*(\D.*)?$`,
);
const rangeLine = new RegExp(
  String.raw`^([A-Z][a-z]?)\s*[:=]?\s*(${number})\s*(?:–|-|to)\s*(${number})\s*([^,]+?)(?:,\s*(.+))?$`,
);

const linesOf = (text: string): string[] =>
  text
    .split("\n")
    .map((line) => line.trim())
    .filter(Boolean);
const numberOf = (text: string): number | null => {
  const read = parseTypedNumber(text);
  return read.ok ? read.value.value : null;
};

/**
 * What a certificate certifies, typed one element a line: "Pb 5150 ± 180", "Cu 59,2 ± 0,52 %", "Cr 115 none stated", or for a blank "Pb < 1".
 * A line without a unit is in `unit`; every U covers `k` standard uncertainties.
 *
 * Refused, each with its line: `certified-line-unread`, `certified-twice`, and `certified-uncertainty-missing` where a value stands alone: "none
 * stated" has to be said.
 *
 * @example readCertifiedLines("Pb 5150 ± 180", { unit: "mg/kg", k: 2 })
 * // { ok: true, value: { Pb: { value: 5150, below: null, U: 180, k: 2, unit: "mg/kg" } } }
 */
export function readCertifiedLines(
  text: string,
  { unit, k }: { unit: Unit; k: 1 | 2 | 3 },
): Outcome<Record<string, CertifiedValue & { unit: Unit }>> {
  const where = { field: "certified" };
  const found: Record<string, CertifiedValue & { unit: Unit }> = {};
  const problems: Problem[] = [];
  for (const line of linesOf(text)) {
    const parts = certifiedLine.exec(line);
    const own = parts?.[6] ? parseUnit(parts[6].trim()) : unit;
    const value = parts?.[3] ? numberOf(parts[3]) : null;
    const U = parts?.[4] ? numberOf(parts[4]) : null;
    const [element, blank] = [parts?.[1] ?? "", parts?.[2] === "<"];
    if (!parts || own === null || value === null || value <= 0 || (parts[4] && !U))
      problems.push({ code: "certified-line-unread", where, found: line });
    else if (Object.hasOwn(found, element)) problems.push({ code: "certified-twice", where, found: element });
    else if (!blank && U === null && !parts[5])
      problems.push({ code: "certified-uncertainty-missing", where, found: line });
    else
      found[element] = { value: blank ? null : value, below: blank ? value : null, U: blank ? null : U, k, unit: own };
  }
  return problems.length > 0 ? refused(...problems) : done(found);
}

/** The same lines again, for the form that changes them; the unit is written where it differs from `unit`. */
export const writeCertifiedLines = (certified: Readonly<Record<string, CertifiedValue>>, unit: string): string =>
  Object.entries(certified)
    .map(([element, { value, below, U, unit: own }]) => {
      const figures = value === null ? `< ${below}` : `${value} ${U === null ? "none stated" : `± ${U}`}`;
      return `${element} ${figures}${own === unit ? "" : ` ${own}`}`;
    })
    .join("\n");

/**
 * Where an instrument is calibrated, typed one range a line: "Pb 20–6000 mg/kg", and after a comma the mode if it holds for one only.
 *
 * Refused: `range-line-unread`, with its line.
 *
 * @example readRangeLines("Pb 20–6000 mg/kg, glass").value // [{ element: "Pb", low: 20, high: 6000, unit: "mg/kg", mode: "glass" }]
 */
export function readRangeLines(text: string): Outcome<(CalibratedRange & { unit: Unit })[]> {
  const found: (CalibratedRange & { unit: Unit })[] = [];
  const problems: Problem[] = [];
  for (const line of linesOf(text)) {
    const parts = rangeLine.exec(line);
    const unit = parts?.[4] ? parseUnit(parts[4]) : null;
    const [low, high] = [numberOf(parts?.[2] ?? ""), numberOf(parts?.[3] ?? "")];
    if (!parts || unit === null || low === null || high === null)
      problems.push({ code: "range-line-unread", where: { field: "calibratedRanges" }, found: line });
    else found.push({ mode: parts[5]?.trim() ?? null, element: parts[1] as string, low, high, unit });
  }
  return problems.length > 0 ? refused(...problems) : done(found);
}

export const writeRangeLines = (ranges: readonly CalibratedRange[]): string =>
  ranges
    .map(({ element, low, high, unit, mode }) => `${element} ${low}–${high} ${unit}${mode === null ? "" : `, ${mode}`}`)
    .join("\n");
