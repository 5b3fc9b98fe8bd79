import type { QuantityKind } from "../quantity/kinds.ts";
import { toCanonical, unitBelongs } from "../quantity/units.ts";
import type { ElementResult } from "../readings/reading.ts";
import type { FlagCode, ReconcileInput, ShotInput, StatedContribution } from "./types.ts";

/** Where an analyser is calibrated: one mode (null: any) and element, between two contents. */
export type CalibratedRange = { mode: string | null; element: string; low: number; high: number; unit: string };

/** What is known of the analyser that took a shot, as far as reconciling asks. */
export type ShotInstrument = {
  calibrationRel: number | null;
  windowMm: number | null;
  minimumSeconds: number | null;
  calibratedRanges?: readonly CalibratedRange[];
};

/**
 * What its session says of one shot's result (method, step 5; `lib/consistency` decides it). `contributions` hold for every result of the
 * session. `unsaidCertificate`: the certificate states no uncertainty, so that the instrument's own default stands in for it.
 */
export type ShotFitness = {
  session: string | null;
  state: "fit" | "fit-with-correction" | "not-fit" | "not-shown";
  factor: number | null;
  contributions: readonly StatedContribution[];
  unsaidCertificate: boolean;
  drifts: boolean;
  /** Between a failed check and the good ones about it; `allowed` where the tester wrote down why it is used all the same. */
  inDoubt: boolean;
  allowed: boolean;
};

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
export type PartInput = {
  mode: string | null;
  input: ReconcileInput;
  resultOf: Map<string, ElementResult>;
  /** By id of the reading; empty where nobody asked after sessions. */
  fitnessOf: Map<string, ShotFitness>;
};

/** The reason of a reading that no person set aside but a failed check did; worded in `lib/wording`. */
export const failedCheckReason = "session-check-failed";

type Member = { reading: PartReading; result: ElementResult; fitness: ShotFitness | null };

/**
 * Splits a part's readings into what `reconcile` takes: one input for each element, quantity kind and calibration
 * mode, since readings of another kind or mode are never mixed in (method, step 1). Ordered by element, kind, mode.
 *
 * `infiniteThicknessMm` answers how thick the part would have to be for an element (`lib/attenuation`; null: not known).
 * It is asked for mass fractions only: a loading per area is read on thin coats by its nature.
 *
 * `fitnessFor` answers whether the instrument was fit for a shot (step 5). A shot in doubt is set aside unless the tester said otherwise, the
 * session's correction goes with each shot, and its contributions take the place of the instrument's default. Of several
 * sessions or instruments the one with the widest contributions counts for all.
 */
export function partInputs(
  part: { form: "bulk" | "coating"; thicknessMm: number | null; smallestDimensionMm?: number | null | undefined },
  readings: readonly PartReading[],
  infiniteThicknessMm: (element: string) => number | null = () => null,
  fitnessFor: (reading: PartReading, result: ElementResult) => ShotFitness | null = () => null,
): PartInput[] {
  const groups = new Map<string, { element: string; quantity: QuantityKind; mode: string | null; members: Member[] }>();
  for (const reading of readings)
    for (const result of reading.results) {
      const key = JSON.stringify([result.element, result.quantity, reading.mode]);
      const group = groups.get(key) ?? {
        element: result.element,
        quantity: result.quantity,
        mode: reading.mode,
        members: [],
      };
      group.members.push({ reading, result, fitness: fitnessFor(reading, result) });
      groups.set(key, group);
    }
  return [...groups.entries()]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([, { element, quantity, mode, members }]) => {
      const instruments = members.flatMap(({ reading }) => (reading.instrument ? [reading.instrument] : []));
      const shots = members.map(shotOf);
      const used = members.filter((_, i) => shots[i]?.setAside === null);
      const flags = sessionFlags(members, used);
      const range = calibratedRange(instruments, element, mode, quantity);
      const input: ReconcileInput = {
        element,
        quantity,
        form: part.form,
        shots,
        contributions: widest(used.length > 0 ? used : members),
        ...(flags.length > 0 ? { sessionFlags: flags } : {}),
        ...(range ? { calibratedRange: range } : {}),
        minimumSeconds: largest(instruments.map((i) => i.minimumSeconds)),
        windowMm: largest(instruments.map((i) => i.windowMm)),
        thicknessMm: part.thicknessMm,
        smallestDimensionMm: part.smallestDimensionMm ?? null,
        infiniteThicknessMm: massFractions.has(quantity) ? infiniteThicknessMm(element) : null,
      };
      return {
        mode,
        input,
        resultOf: new Map(members.map(({ reading, result }) => [reading.id, result])),
        fitnessOf: new Map(
          members.flatMap(({ reading, fitness }) => (fitness ? [[reading.id, fitness] as const] : [])),
        ),
      };
    });
}

const massFractions: ReadonlySet<QuantityKind> = new Set(["bulk-mass-fraction", "coating-mass-fraction"]);

function shotOf({ reading, result, fitness }: Member): ShotInput {
  const { id, spot, mode, secondsCounted, takenAt } = reading;
  const { quantity, unit, belowDetection, value, error, k, detectionLimit } = result;
  const doubted = fitness?.inDoubt && !fitness.allowed ? { reason: failedCheckReason } : null;
  return {
    id,
    spot,
    mode,
    secondsCounted,
    takenAt,
    setAside: reading.setAside ?? doubted,
    ...(fitness && fitness.factor !== null ? { factor: fitness.factor } : {}),
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

/** A failed check is told even where its readings were all left out; the others only of the readings that are used. */
function sessionFlags(members: readonly Member[], used: readonly Member[]): FlagCode[] {
  const flags: FlagCode[] = [];
  if (used.some(({ fitness }) => fitness?.drifts)) flags.push("drift-in-session");
  if (used.some(({ fitness }) => fitness?.state === "not-shown")) flags.push("check-missing");
  if (members.some(({ fitness }) => fitness?.inDoubt)) flags.push("check-failed");
  return flags;
}

/** What each shot brings from its session and its instrument; of several, the widest taken together. */
function widest(members: readonly Member[]): StatedContribution[] {
  const size = (list: readonly StatedContribution[]) => Math.hypot(...list.map((one) => one.relative ?? 0));
  return members
    .map(({ reading, fitness }) => {
      const shown = fitness?.contributions ?? [];
      const byDefault = shown.length === 0 || fitness?.unsaidCertificate ? defaultOf(reading.instrument) : [];
      return [...byDefault, ...shown];
    })
    .reduce<StatedContribution[]>((most, one) => (size(one) > size(most) ? one : most), []);
}

/** Where no check standard shows better: what the tester stated for the instrument. */
function defaultOf(instrument: ShotInstrument | null): StatedContribution[] {
  const relative = instrument?.calibrationRel ?? 0;
  return relative === 0 ? [] : [{ code: "calibration", relative, type: "B", source: "instrument-default" }];
}

/** Where all the instruments are calibrated for this element and mode, canonical unit; null where one of them does not say. */
function calibratedRange(
  instruments: readonly ShotInstrument[],
  element: string,
  mode: string | null,
  quantity: QuantityKind,
): [number, number] | null {
  const ranges = [...new Set(instruments)].map((instrument) => {
    const found = (instrument.calibratedRanges ?? []).filter(
      (r) => r.element === element && unitBelongs(quantity, r.unit),
    );
    return found.find((r) => r.mode === mode) ?? found.find((r) => r.mode === null) ?? null;
  });
  if (ranges.length === 0 || ranges.some((range) => range === null)) return null;
  const in_ = (value: number, unit: string): number => toCanonical(quantity, value, unit);
  return ranges.reduce<[number, number]>(
    ([low, high], range) => [
      Math.max(low, in_(range!.low, range!.unit)),
      Math.min(high, in_(range!.high, range!.unit)),
    ],
    [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY],
  );
}
