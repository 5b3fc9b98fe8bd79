import type { QuantityKind } from "../../lib/quantity/kinds.ts";
import type { Problem } from "../../lib/quantity/problem.ts";
import { toCanonical } from "../../lib/quantity/units.ts";
import type { ElementResult, Reading, RowAccount } from "../../lib/readings/reading.ts";
import { method, reconcile } from "../../lib/reconcile/reconcile.ts";
import type { ReconcileResult, ShotInput, StatedContribution } from "../../lib/reconcile/types.ts";
import type { ReadFile } from "./read-file.ts";

/** One sample, element, quantity and mode, as the command prints it: canonical units, numbers unrounded, `stated` as printed. */
export type ResultRow = {
  sample: string | null;
  element: string;
  quantity: QuantityKind;
  mode: string | null;
  unit: string;
  verdict: string;
  value: number | null;
  u: number | null;
  U: number | null;
  k: number | null;
  nuEff: number | null;
  interval: [number, number] | null;
  below: number | null;
  upperBound: number | null;
  readings: number;
  spots: number;
  detected: number; // spots
  model: ReconcileResult["model"];
  flags: string[];
  highestSpot: ReconcileResult["highestSpot"];
  range: ReconcileResult["range"];
  crossCheck: ReconcileResult["crossCheck"];
  stated: ReconcileResult["stated"];
  inputsDigest: string;
};

export type Answer = {
  method: { name: string; version: string };
  rows: RowAccount;
  problems: (Problem & { sentence: string })[];
  notes: string[];
  results: ResultRow[];
};

const verdicts: Record<ReconcileResult["state"], string> = {
  quantified: "quantified",
  "range-only": "uneven, range only",
  "not-quantified": "detected, not quantified",
  "not-detected": "not detected",
  "no-readings": "no readings",
};

type Group = {
  sample: string | null;
  element: string;
  quantity: QuantityKind;
  mode: string | null;
  shots: ShotInput[];
};

/** Reconciles every sample, element, quantity kind and mode of a file that was read; groups come in the order of the file. */
export function answerFor(read: ReadFile, calibration: number | null, hash: (text: string) => string): Answer {
  const contributions: StatedContribution[] =
    calibration === null
      ? []
      : [
          {
            code: "calibration",
            relative: calibration,
            type: "B",
            source: "relative standard uncertainty stated with --calibration",
          },
        ];
  return {
    method: { name: method.name, version: method.version },
    rows: read.account,
    problems: read.problems,
    notes: read.notes,
    results: groupsOf(read.readings).map((group) => {
      const { element, quantity, shots } = group;
      const form = quantity.startsWith("coating") ? "coating" : "bulk";
      return rowOf(group, reconcile({ element, quantity, form, shots, contributions }, hash));
    }),
  };
}

function groupsOf(readings: readonly Reading[]): Group[] {
  const groups = new Map<string, Group>();
  for (const reading of readings) {
    for (const result of reading.results) {
      const { element, quantity } = result;
      const key = JSON.stringify([reading.sample, element, quantity, reading.mode]);
      const group = groups.get(key) ?? { sample: reading.sample, element, quantity, mode: reading.mode, shots: [] };
      group.shots.push(shotOf(reading, result));
      groups.set(key, group);
    }
  }
  return [...groups.values()];
}

/** The value of one element in the shot, in the canonical unit; null where it was not measured or not detected. */
function beside(reading: Reading, element: string): number | null {
  const found = reading.results.find((result) => result.element === element && !result.belowDetection);
  return found?.value ? toCanonical(found.quantity, found.value.value, found.unit) : null;
}

function shotOf(reading: Reading, result: ElementResult): ShotInput {
  return {
    id: String(reading.row),
    spot: reading.spot,
    quantity: result.quantity,
    mode: reading.mode,
    unit: result.unit,
    belowDetection: result.belowDetection,
    value: result.value,
    error: result.error,
    k: result.k,
    detectionLimit: result.detectionLimit,
    secondsCounted: reading.secondsCounted,
    takenAt: reading.takenAt,
    setAside: null,
    arsenicValue: beside(reading, "As"),
    leadValue: beside(reading, "Pb"),
  };
}

function rowOf(group: Group, result: ReconcileResult): ResultRow {
  return {
    sample: group.sample,
    element: result.element,
    quantity: result.quantity,
    mode: group.mode,
    unit: result.unit,
    verdict: verdicts[result.state],
    value: result.value,
    u: result.u,
    U: result.U,
    k: result.k,
    nuEff: result.nuEff,
    interval: result.interval,
    below: result.below,
    upperBound: result.upperBound,
    readings: result.counts.used,
    spots: result.counts.spots,
    detected: result.counts.spotsDetected,
    model: result.model,
    flags: result.flags,
    highestSpot: result.highestSpot,
    range: result.range,
    crossCheck: result.crossCheck,
    stated: result.stated,
    inputsDigest: result.inputsDigest,
  };
}
