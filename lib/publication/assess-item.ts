import { infiniteThicknessMm, readingDepth, shareOfThick } from "../attenuation/reading-depth.ts";
import { shiftedTime } from "../consistency/join-sessions.ts";
import { type Fitness, shotFitness, worst } from "../consistency/session-fitness.ts";
import { decisionsByResult } from "../limits/decisions-for.ts";
import { subjectOf } from "../limits/subject-of.ts";
import { type PartReading, partInputs, type ShotFitness } from "../reconcile/part-inputs.ts";
import { reconcile } from "../reconcile/reconcile.ts";
import type { ReconcileResult } from "../reconcile/types.ts";
import type { WorkingPart, WorkingReading, WorkingResult, WorkingSpecimen } from "./build-snapshot.ts";
import { canonicalJson, type Sha256 } from "./canonical-json.ts";
import { decisionsOfTest, type OtherTest, testResult } from "./other-test.ts";
import type { Snapshot, SnapshotDepth, SnapshotOtherTest } from "./snapshot.ts";
import type { AssessSession } from "./snapshot-sessions.ts";

/** A reading as the bench holds it: enough to reconcile, and to walk back to its file. */
export type AssessReading = PartReading & {
  componentId: string;
  file: string | null; // SHA-256 of the raw file
  row: number | null;
  number: string | null;
  takenAtText: string | null;
  sessionId?: string | null;
  serial?: string | null; // of the instrument that took it
};

export type AssessPart = Omit<WorkingPart, "results">;
export type AssessInput = {
  item: Snapshot["item"];
  specimens: (Omit<WorkingSpecimen, "parts"> & { parts: AssessPart[] })[];
  readings: AssessReading[];
  /** Wipes, leachates and laboratory results; each is judged by itself. */
  otherTests?: OtherTest[];
  /** Their sessions, and earlier ones of the same instruments; left out, nobody asks whether the instrument was fit. */
  sessions?: AssessSession[];
  /** ISO date of the last shot; null where no reading carries a time. */
  testDay: string | null;
  today: string;
};

/** `instruments`: by serial, what the sessions say of the shots used. */
export type AssessedResult = WorkingResult & { mode: string | null; instruments: Record<string, Fitness> };
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
    ...withTests(specimen, input),
  }));
  const digests = specimens.map(({ parts, otherTests, ...specimen }) => ({
    ...specimen,
    // Days of judgement move with every morning; what was found does not.
    ...(otherTests ? { otherTests: otherTests.map(({ decisions: _, ...test }) => test) } : {}),
    parts: parts.map(({ results, ...part }) => ({ ...part, results: results.map((r) => r.reconciled.inputsDigest) })),
  }));
  // Why doubtful readings are used is read by whoever approves it.
  const reasons = (input.sessions ?? []).flatMap((s) => (s.inDoubtReason === null ? [] : [[s.id, s.inDoubtReason]]));
  const about = { item: input.item, specimens: digests, ...(reasons.length > 0 ? { reasons } : {}) };
  return { specimens, inputsDigest: hash(canonicalJson(about)) };
}

type AssessSpecimen = AssessInput["specimens"][number];

/** An object's other tests; the key is left out where there are none. A test whose figure cannot be read does not stand on a page. */
function withTests(specimen: AssessSpecimen, input: AssessInput): { otherTests?: SnapshotOtherTest[] } {
  const own = (input.otherTests ?? []).filter((test) => test.specimenId === specimen.id);
  const otherTests = own.flatMap((test): SnapshotOtherTest[] => {
    const result = testResult(test);
    if (!result.ok) return [];
    const part = specimen.parts.find((p) => p.id === test.componentId);
    const about = part ?? { material: "other", form: "bulk" as const, accessible: true };
    const testDay = test.reportedOn ?? input.testDay ?? input.today;
    const decisions = decisionsOfTest(
      subjectOf({ item: input.item, specimen, part: about }),
      test.element,
      result.value,
      {
        testDay: [testDay, input.today].sort()[0]!,
        today: input.today,
      },
    );
    const { specimenId: _, componentId: __, value: ___, reportingLimit: ____, u: _____, ...words } = test;
    return [{ ...words, part: part?.id ?? null, result: result.value, decisions }];
  });
  return otherTests.length > 0 ? { otherTests } : {};
}

function resultsOf(
  part: AssessPart,
  specimen: AssessSpecimen,
  readings: AssessReading[],
  input: AssessInput,
  hash: Sha256,
): AssessedResult[] {
  const byId = new Map(readings.map((r) => [r.id, r]));
  const thickFor = (element: string) => infiniteThicknessMm(part.material, element);
  const fitFor = input.sessions ? fitnessOfSessions(input.sessions, part.material) : undefined;
  const inputs = partInputs(part, readings, thickFor, fitFor).map((each) => ({
    ...each,
    shots: new Map(each.input.shots.map((shot) => [shot.id, shot])),
  }));
  const reconciled = inputs.map(({ mode, input: one, resultOf, fitnessOf, shots }) => ({
    mode,
    ...fitnessOfResult(fitnessOf, (id) => shots.get(id)?.setAside === null, byId),
    input: one,
    result: reconcile(one, hash),
    readings: [...resultOf].map(([id, result]): WorkingReading => {
      const { componentId: _, instrument: __, results: ___, sessionId, serial: ____, ...reading } = byId.get(id)!;
      const { setAside = null, factor } = shots.get(id)!;
      const session = sessionId ? { session: sessionId } : {};
      return { ...reading, setAside, ...session, ...(factor === undefined ? {} : { factor }), result };
    }),
  }));
  const decided = decideAll(
    part,
    specimen,
    input,
    reconciled.map((r) => r.result),
  );
  return reconciled.map(({ mode, input: one, result, readings: rows, fitness, instruments }, i) => ({
    mode,
    reconciled: result,
    input: one,
    decisions: decided[i]!,
    readings: rows,
    depth: depthOf(part, result),
    ...(fitness ? { fitness } : {}),
    instruments,
  }));
}

/** Only of what an analyser read in the part itself can a check standard say anything. */
function fitnessOfSessions(sessions: readonly AssessSession[], material: string) {
  const byId = new Map(sessions.map((session) => [session.id, session]));
  return (
    reading: PartReading & { sessionId?: string | null },
    result: PartReading["results"][number],
  ): ShotFitness | null => {
    if (!readByXRays.has(result.quantity)) return null;
    const session = byId.get(reading.sessionId ?? "") ?? null;
    const { element, quantity } = result;
    const { mode } = reading;
    const takenAt = reading.takenAt === null ? null : shiftedTime(reading.takenAt, session?.clockShiftMinutes ?? 0);
    const about = session && { id: session.id, label: session.label, doubtAllowed: session.inDoubtReason !== null };
    return shotFitness(session?.fitness ?? null, about, { element, quantity, mode, takenAt }, material);
  };
}

/** The worst state of the shots used; where a failed check left none, that of those left out. */
function fitnessOfResult(
  fitnessOf: ReadonlyMap<string, ShotFitness>,
  isUsed: (id: string) => boolean,
  byId: ReadonlyMap<string, AssessReading>,
): { fitness: Fitness | null; instruments: Record<string, Fitness> } {
  const used = [...fitnessOf].filter(([id]) => isUsed(id));
  const counted = used.length > 0 ? used : [...fitnessOf];
  if (counted.length === 0) return { fitness: null, instruments: {} };
  const instruments: Record<string, Fitness> = {};
  for (const [id, { state }] of counted) {
    const serial = byId.get(id)?.serial;
    if (serial) instruments[serial] = worst([state, instruments[serial] ?? state]);
  }
  return { fitness: worst(counted.map(([, { state }]) => state)), instruments };
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
