import { normaliseShot } from "../reconcile/normalise.ts";
import { reconcile } from "../reconcile/reconcile.ts";
import type { ReconcileInput, ReconcileResult } from "../reconcile/types.ts";
import { moments } from "../statistics/moments.ts";
import { type ComparedResults, compareResults } from "./compare-results.ts";
import { type FactorSurvey, surveyFactors } from "./factor-survey.ts";
import { grouped } from "./grouped.ts";
import { type Factor, factors, type LocatedReading } from "./located-reading.ts";
import { type SessionPrecision, sessionPrecision } from "./session-precision.ts";

/** Where a shot was taken and by whom: labels, null where not known. */
export type ShotPlace = Record<Factor, string | null>;

/** The detected readings of one level of a factor: "spot a", "Shelf analyser A". Values in the canonical unit. */
export type LevelReadings = {
  factor: Factor;
  level: string | null;
  detected: number;
  all: number;
  mean: number | null;
  sd: number | null;
};

/** The result were one reading not there. `change`: value less the value with all, null where either has none. */
export type WithoutOne = {
  id: string;
  state: ReconcileResult["state"];
  value: number | null;
  interval: [number, number] | null;
  change: number | null;
};

/** Two levels of a factor, each reconciled by itself, held beside each other. */
export type LevelsCompared = { factor: Factor; a: string; b: string; compared: ComparedResults | null };

export type PartConsistency = {
  unit: string;
  whole: ReconcileResult;
  levels: LevelReadings[];
  /** Null where some readings are below detection: an analysis of scatter has no place for them. */
  survey: FactorSurvey | null;
  precision: SessionPrecision | null;
  compared: LevelsCompared[];
  /** Null where there are too many readings to work each out on a page. */
  withoutEach: WithoutOne[] | null;
};

/** One more reading than this, and leaving out each in turn takes longer than a page may. */
export const mostLeftOut = 80;

/** The factors between whose levels results are compared: a spot's own value is no result, and sessions stand in `precision`. */
const comparedFactors: readonly Factor[] = ["instrument", "operator", "session"];

/**
 * All that the readings of one part and element can say of their own consistency: by level of each factor, by components of
 * variance, between and within sessions, each level's own result held beside the others', and what each reading does to the result.
 *
 * `places`: by id of the shot. Shots that are set aside take no part. Levels are compared by their own results, each made by the method
 * from its shots alone; what two of one instrument or session share is left out (`compareResults`).
 *
 * Source: as `surveyFactors`, `sessionPrecision`, `compareResults` and the method's step 8 (leaving out is for a person to look at; nothing is
 * dropped).
 *
 * @throws DomainError as `reconcile`
 * Examples with their answers: tests/consistency/part-consistency.test.ts.
 */
export function partConsistency(
  input: ReconcileInput,
  places: ReadonlyMap<string, ShotPlace>,
  hash: (text: string) => string,
): PartConsistency {
  const whole = reconcile(input, hash);
  const shots = input.shots.filter((shot) => shot.setAside === null);
  const read = shots.map((shot) => ({ id: shot.id, value: normaliseShot(shot, input.quantity).value }));
  const located = read.flatMap(({ id, value }): LocatedReading[] =>
    value === null ? [] : [{ id, value, ...placeOf(places, id) }],
  );
  const allDetected = located.length === shots.length && shots.length > 0;
  return {
    unit: whole.unit,
    whole,
    levels: factors.flatMap((factor) => levelsOf(factor, read, places)),
    survey: allDetected ? surveyFactors(located) : null,
    precision: allDetected ? sessionPrecision(located) : null,
    compared: comparedFactors.flatMap((factor) => comparedLevels(factor, input, places, hash)),
    withoutEach: shots.length > mostLeftOut ? null : shots.map(({ id }) => withoutOne(id, input, whole, hash)),
  };
}

const nowhere: ShotPlace = { specimen: null, instrument: null, operator: null, session: null, spot: null };
const placeOf = (places: ReadonlyMap<string, ShotPlace>, id: string): ShotPlace => places.get(id) ?? nowhere;

function levelsOf(
  factor: Factor,
  read: readonly { id: string; value: number | null }[],
  places: ReadonlyMap<string, ShotPlace>,
): LevelReadings[] {
  return [...grouped(read, ({ id }) => placeOf(places, id)[factor])].map(([level, members]) => {
    const values = members.flatMap(({ value }) => (value === null ? [] : [value]));
    const { mean, sd } = values.length > 0 ? moments(values) : { mean: null, sd: null };
    const known = { factor, level, detected: values.length, all: members.length };
    return { ...known, mean, sd: values.length > 1 ? sd : null };
  });
}

function comparedLevels(
  factor: Factor,
  input: ReconcileInput,
  places: ReadonlyMap<string, ShotPlace>,
  hash: (text: string) => string,
): LevelsCompared[] {
  const shots = input.shots.filter((shot) => shot.setAside === null);
  const levels = [...grouped(shots, ({ id }) => placeOf(places, id)[factor])].flatMap(([level, members]) => {
    if (level === null) return [];
    const sets = (of: Factor) => [...new Set(members.map(({ id }) => placeOf(places, id)[of]))];
    const result = reconcile({ ...input, shots: members }, hash);
    return [{ level, result, instruments: sets("instrument"), sessions: sets("session") }];
  });
  return levels.flatMap((a, at) =>
    levels.slice(at + 1).map((b) => ({ factor, a: a.level, b: b.level, compared: comparedPair(a, b) })),
  );
}

type Level = { result: ReconcileResult; instruments: (string | null)[]; sessions: (string | null)[] };

function comparedPair(a: Level, b: Level): ComparedResults | null {
  if (a.result.value === null || b.result.value === null) return null;
  const alike = (one: (string | null)[], other: (string | null)[]) =>
    one.length === 1 && other.length === 1 && one[0] !== null && one[0] === other[0];
  const shared = alike(a.sessions, b.sessions)
    ? ["calibration", "recovery", "certified-value"]
    : alike(a.instruments, b.instruments)
      ? ["calibration"]
      : [];
  return compareResults(
    { value: a.result.value, budget: a.result.budget },
    { value: b.result.value, budget: b.result.budget },
    { shared },
  );
}

function withoutOne(
  id: string,
  input: ReconcileInput,
  whole: ReconcileResult,
  hash: (text: string) => string,
): WithoutOne {
  const { state, value, interval } = reconcile({ ...input, shots: input.shots.filter((shot) => shot.id !== id) }, hash);
  const change = value === null || whole.value === null ? null : value - whole.value;
  return { id, state, value, interval, change };
}
