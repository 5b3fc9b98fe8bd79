import * as z from "zod";
import { defaultPolicy, flagCodes, type ReconcileInput, type ShotInput } from "../reconcile/types.ts";
import type { SnapshotPart, SnapshotReading, SnapshotResult } from "./snapshot.ts";

const contribution = z.object({
  code: z.string(),
  relative: z.number().optional(),
  absolute: z.number().optional(),
  nu: z.number().optional(),
  type: z.enum(["A", "B"]),
  source: z.string(),
  shared: z.string().optional(),
});

/**
 * What a result was made from beside its readings, so that a stranger can make it again: the stated contributions, the
 * policy in force, what is known of part and analyser, and what holds for single shots.
 */
export const snapshotInputs = z.object({
  contributions: z.array(contribution),
  policy: z.object({
    version: z.string(),
    level: z.literal(0.95),
    unevenFrom: z.number(),
    scatterP: z.number(),
    decisionRisk: z.number(),
    // Since policy 2; a snapshot from before has none, and is made again by method 1 only.
    spreadAllowed: z.number().optional(),
    evenSeenTo: z.number().optional(),
    threeSpotsLevel: z.number().optional(),
    fiveSpotsLevel: z.number().optional(),
  }),
  sessionFlags: z.array(z.enum(flagCodes)).optional(),
  minimumSeconds: z.number().nullable().optional(),
  calibratedRange: z.tuple([z.number(), z.number()]).nullable().optional(), // canonical unit
  thicknessMm: z.number().nullable().optional(),
  smallestDimensionMm: z.number().nullable().optional(),
  windowMm: z.number().nullable().optional(),
  infiniteThicknessMm: z.number().nullable().optional(),
  /** By id of the reading, only those of which more is to be said than their row: what a session corrects or doubts, and the other element. */
  readings: z.array(
    z.object({
      id: z.string(),
      factor: z.number().optional(),
      setAside: z.object({ reason: z.string() }).nullable().optional(),
      arsenicValue: z.number().optional(),
      leadValue: z.number().optional(),
    }),
  ),
});
export type SnapshotInputs = z.infer<typeof snapshotInputs>;

/** The inputs of a result as its snapshot keeps them; `readings` are the rows that stand in the snapshot beside them. */
export function keptInputs(
  input: ReconcileInput,
  readings: readonly Pick<SnapshotReading, "id" | "setAside">[],
): SnapshotInputs {
  const { element: _, quantity: __, form: ___, shots, policy, contributions, ...others } = input;
  const {
    sessionFlags,
    minimumSeconds,
    calibratedRange,
    thicknessMm,
    smallestDimensionMm,
    windowMm,
    infiniteThicknessMm,
    ...rest
  } = others;
  rest satisfies Record<string, never>; // a new input must find its place here, or this does not compile
  const reasons = new Map(readings.map(({ id, setAside }) => [id, setAside?.reason ?? null]));
  return {
    contributions,
    policy: { ...defaultPolicy, ...policy },
    ...defined({
      sessionFlags,
      minimumSeconds,
      calibratedRange,
      thicknessMm,
      smallestDimensionMm,
      windowMm,
      infiniteThicknessMm,
    }),
    readings: shots
      .map(({ id, factor, setAside, arsenicValue, leadValue }) => ({
        id,
        ...(factor === undefined ? {} : { factor }),
        ...((setAside?.reason ?? null) === (reasons.get(id) ?? null) ? {} : { setAside }),
        ...(arsenicValue === null || arsenicValue === undefined ? {} : { arsenicValue }),
        ...(leadValue === null || leadValue === undefined ? {} : { leadValue }),
      }))
      .filter((shot) => Object.keys(shot).length > 1),
  };
}

const defined = <T extends object>(members: T): { [K in keyof T]?: Exclude<T[K], undefined> } =>
  Object.fromEntries(Object.entries(members).filter(([, value]) => value !== undefined)) as never;

/**
 * What `reconcile` was handed for a published result, put together again from the snapshot alone.
 *
 * A snapshot from before inputs were kept has none: the contributions are then taken from the published budget, by their
 * size. The figures follow from these as well; the flags that ask for more, and the digest of the inputs, do not.
 */
export function inputsOfResult(
  result: SnapshotResult,
  form: SnapshotPart["form"],
): { input: ReconcileInput; whole: boolean } {
  const kept = result.inputs;
  const { readings: said = [], ...others } = kept ?? { contributions: contributionsOfBudget(result) };
  const more = new Map(said.map((shot) => [shot.id, shot]));
  const quantity = result.quantity as ReconcileInput["quantity"];
  const input = {
    element: result.element,
    quantity,
    form,
    shots: result.readings.map((reading) => shotOf(reading, quantity, more.get(reading.id))),
    ...others,
  } as ReconcileInput;
  return { input, whole: kept !== undefined };
}

function shotOf(
  reading: SnapshotReading,
  quantity: ShotInput["quantity"],
  more: SnapshotInputs["readings"][number] | undefined,
): ShotInput {
  const { id, spot, mode, secondsCounted, takenAt, setAside } = reading;
  const { unit, belowDetection, value, error, k, detectionLimit } = reading;
  return {
    id,
    spot,
    mode,
    secondsCounted,
    takenAt,
    setAside: more?.setAside === undefined ? setAside : more.setAside,
    ...(more?.factor === undefined ? {} : { factor: more.factor }),
    quantity,
    unit,
    belowDetection,
    value,
    error,
    k,
    detectionLimit,
    arsenicValue: more?.arsenicValue ?? null,
    leadValue: more?.leadValue ?? null,
  };
}

const contributionsOfBudget = (result: SnapshotResult): SnapshotInputs["contributions"] =>
  result.budget
    .filter((line) => line.code !== "scatter-and-counting")
    .map(({ code, u, nu, type, source, shared }) => ({
      code,
      // Relative, so that the value with the readings set aside is widened as it was.
      ...(result.value ? { relative: u / Math.abs(result.value) } : { absolute: u }),
      ...(nu === null ? {} : { nu }),
      type,
      source,
      ...(shared === undefined ? {} : { shared }),
    }));
