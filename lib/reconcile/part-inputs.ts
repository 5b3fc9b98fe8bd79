import type { QuantityKind } from "../quantity/kinds.ts";
import type { ElementResult } from "../readings/reading.ts";
import type { ReconcileInput, ShotInput, StatedContribution } from "./types.ts";

/** What is known of the analyser that took a shot, as far as reconciling asks. */
export type ShotInstrument = { calibrationRel: number | null; windowMm: number | null; minimumSeconds: number | null };

/** A reading assigned to a part, with all its elements. */
export type PartReading = {
  id: string;
  spot: string | null;
  mode: string | null;
  secondsCounted: number | null;
  takenAt: string | null;
  setAside: { reason: string } | null;
  results: ElementResult[];
  instrument: ShotInstrument | null;
};

/** One thing to reconcile: an element of a part, in one quantity kind and one mode. */
export type PartInput = { mode: string | null; input: ReconcileInput; resultOf: Map<string, ElementResult> };

/**
 * Splits a part's readings into what `reconcile` takes: one input for each element, quantity kind and calibration
 * mode, since readings of another kind or mode are never mixed in (method, step 1). Ordered by element, kind, mode.
 *
 * `infiniteThicknessMm` answers how thick the part would have to be for an element (`lib/attenuation`; null: not known).
 * It is asked for mass fractions only: a loading per area is read on thin coats by its nature.
 */
export function partInputs(
  part: { form: "bulk" | "coating"; thicknessMm: number | null; smallestDimensionMm?: number | null | undefined },
  readings: readonly PartReading[],
  infiniteThicknessMm: (element: string) => number | null = () => null,
): PartInput[] {
  const groups = new Map<
    string,
    { element: string; quantity: QuantityKind; mode: string | null; members: [PartReading, ElementResult][] }
  >();
  for (const reading of readings)
    for (const result of reading.results) {
      const key = JSON.stringify([result.element, result.quantity, reading.mode]);
      const group = groups.get(key) ?? {
        element: result.element,
        quantity: result.quantity,
        mode: reading.mode,
        members: [],
      };
      group.members.push([reading, result]);
      groups.set(key, group);
    }
  return [...groups.entries()]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([, { element, quantity, mode, members }]) => {
      const instruments = members.flatMap(([reading]) => (reading.instrument ? [reading.instrument] : []));
      const input: ReconcileInput = {
        element,
        quantity,
        form: part.form,
        shots: members.map(([reading, result]) => shotOf(reading, result)),
        contributions: calibrationOf(instruments),
        minimumSeconds: largest(instruments.map((i) => i.minimumSeconds)),
        windowMm: largest(instruments.map((i) => i.windowMm)),
        thicknessMm: part.thicknessMm,
        smallestDimensionMm: part.smallestDimensionMm ?? null,
        infiniteThicknessMm: massFractions.has(quantity) ? infiniteThicknessMm(element) : null,
      };
      return { mode, input, resultOf: new Map(members.map(([reading, result]) => [reading.id, result])) };
    });
}

const massFractions: ReadonlySet<QuantityKind> = new Set(["bulk-mass-fraction", "coating-mass-fraction"]);

function shotOf(reading: PartReading, result: ElementResult): ShotInput {
  const { id, spot, mode, secondsCounted, takenAt, setAside } = reading;
  const { quantity, unit, belowDetection, value, error, k, detectionLimit } = result;
  return {
    id,
    spot,
    mode,
    secondsCounted,
    takenAt,
    setAside,
    quantity,
    unit,
    belowDetection,
    value,
    error,
    k,
    detectionLimit,
    arsenicValue: detectedValue(reading, "As"),
    leadValue: detectedValue(reading, "Pb"),
  };
}

// Only their ratio is asked for, and both stand in one reading, so the unit written serves as long as it is the same.
const detectedValue = (reading: PartReading, element: string): number | null =>
  reading.results.find((r) => r.element === element && !r.belowDetection)?.value?.value ?? null;

const largest = (values: (number | null)[]): number | null =>
  values.reduce<number | null>((max, v) => (v === null ? max : Math.max(max ?? v, v)), null);

/** Until check-standard sessions exist, the instrument's own stated default; of several instruments, the widest. */
function calibrationOf(instruments: ShotInstrument[]): StatedContribution[] {
  const relative = largest(instruments.map((i) => i.calibrationRel));
  if (relative === null || relative === 0) return [];
  return [{ code: "calibration", relative, type: "B", source: "instrument-default" }];
}
