import { infiniteThicknessMm, readingDepth, shareOfThick } from "../attenuation/reading-depth.ts";
import { decisionsByResult } from "../limits/decisions-for.ts";
import { subjectOf } from "../limits/subject-of.ts";
import { type PartReading, partInputs } from "../reconcile/part-inputs.ts";
import { reconcile } from "../reconcile/reconcile.ts";
import type { ReconcileResult } from "../reconcile/types.ts";
import type { WorkingPart, WorkingReading, WorkingResult, WorkingSpecimen } from "./build-snapshot.ts";
import { canonicalJson, type Sha256 } from "./canonical-json.ts";
import type { Snapshot, SnapshotDepth } from "./snapshot.ts";

/** A reading as the bench holds it: enough to reconcile, and to walk back to its file. */
export type AssessReading = PartReading & {
  componentId: string;
  file: string | null; // SHA-256 of the raw file
  row: number | null;
  number: string | null;
  takenAtText: string | null;
};

export type AssessPart = Omit<WorkingPart, "results">;
export type AssessInput = {
  item: Snapshot["item"];
  specimens: (Omit<WorkingSpecimen, "parts"> & { parts: AssessPart[] })[];
  readings: AssessReading[];
  /** ISO date of the last shot; null where no reading carries a time. */
  testDay: string | null;
  today: string;
};

export type AssessedResult = WorkingResult & { mode: string | null };
export type AssessedPart = AssessPart & { results: AssessedResult[] };
export type AssessedItem = {
  specimens: (Omit<WorkingSpecimen, "parts"> & { parts: AssessedPart[] })[];
  /** Digest of everything the figures and words rest on; an approval is bound to it. */
  inputsDigest: string;
};

/**
 * Every part of an item through the whole flow: its readings reconciled element by element, and each result held
 * beside the limits in force on the test's day and today. Pure: the same input gives the same answer.
 *
 * The digest is SHA-256 over the canonical JSON of the item's words, the parts and every result's own inputs digest,
 * so that any change of a reading, a spot, a setting aside, a part or a word moves it.
 */
export function assessItem(input: AssessInput, hash: Sha256): AssessedItem {
  const byPart = new Map<string, AssessReading[]>();
  for (const reading of input.readings)
    byPart.set(reading.componentId, [...(byPart.get(reading.componentId) ?? []), reading]);
  const specimens = input.specimens.map((specimen) => ({
    ...specimen,
    parts: specimen.parts.map((part) => ({
      ...part,
      results: resultsOf(part, specimen, byPart.get(part.id) ?? [], input, hash),
    })),
  }));
  const digests = specimens.map(({ parts, ...specimen }) => ({
    ...specimen,
    parts: parts.map(({ results, ...part }) => ({ ...part, results: results.map((r) => r.reconciled.inputsDigest) })),
  }));
  return { specimens, inputsDigest: hash(canonicalJson({ item: input.item, specimens: digests })) };
}

type AssessSpecimen = AssessInput["specimens"][number];

function resultsOf(
  part: AssessPart,
  specimen: AssessSpecimen,
  readings: AssessReading[],
  input: AssessInput,
  hash: Sha256,
): AssessedResult[] {
  const byId = new Map(readings.map((r) => [r.id, r]));
  const thickFor = (element: string) => infiniteThicknessMm(part.material, element);
  const reconciled = partInputs(part, readings, thickFor).map(({ mode, input: one, resultOf }) => ({
    mode,
    input: one,
    result: reconcile(one, hash),
    readings: [...resultOf].map(([id, result]): WorkingReading => {
      const { componentId: _, instrument: __, results: ___, ...reading } = byId.get(id)!;
      return { ...reading, result };
    }),
  }));
  const decided = decideAll(
    part,
    specimen,
    input,
    reconciled.map((r) => r.result),
  );
  return reconciled.map(({ mode, input: one, result, readings: rows }, i) => ({
    mode,
    reconciled: result,
    input: one,
    decisions: decided[i] ?? [],
    readings: rows,
    depth: depthOf(part, result),
  }));
}

/** Only what the analyser itself read in the part has a depth. */
function depthOf(part: AssessPart, { element, quantity }: ReconcileResult): SnapshotDepth | null {
  if (!readByXRays.has(quantity)) return null;
  const depth = readingDepth(part.material, element);
  if (!depth) return null;
  return { ...depth, ofThick: part.thicknessMm === null ? null : shareOfThick(depth, part.thicknessMm) };
}

const readByXRays: ReadonlySet<string> = new Set(["bulk-mass-fraction", "coating-mass-fraction", "coating-areal"]);

function decideAll(part: AssessPart, specimen: AssessSpecimen, input: AssessInput, results: ReconcileResult[]) {
  const subject = subjectOf({ item: input.item, specimen, part });
  return decisionsByResult(subject, results, { testDay: input.testDay ?? input.today, today: input.today });
}
