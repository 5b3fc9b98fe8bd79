import { canonicalUnit, type QuantityKind } from "../quantity/kinds.ts";
import { toCanonical, unitBelongs } from "../quantity/units.ts";
import type { ElementResult } from "../readings/reading.ts";
import type { ShotFitness } from "../reconcile/part-inputs.ts";
import type { StatedContribution } from "../reconcile/types.ts";
import type { CheckReading } from "./check-reading.ts";
import type { CertifiedValue, CheckStandard, StandardReading } from "./check-standard.ts";
import { type DoubtSpan, doubtSpans, isInDoubt } from "./doubt-spans.ts";
import { grouped } from "./grouped.ts";
import type { Recovery } from "./recovery.ts";
import { sessionDrift } from "./session-drift.ts";
import { type SessionState, sessionState } from "./session-state.ts";

export type Fitness = SessionState["state"];

/** What one check standard shows of one element and mode. Values in the canonical unit of the kind. */
export type StandardVerdict = {
  standard: CheckStandard;
  unit: string;
  certified: number | null;
  /** Certified as below this: a blank. */
  below: number | null;
  uCertified: number | null;
  checks: (CheckReading & { recovery: number | null; within: boolean | null })[];
  state: Fitness;
  inDoubt: DoubtSpan[];
  recovery: Recovery | null;
  contributions: StatedContribution[];
  /** For parts of the standard's material, where the tester asked for a correction and it is called for; else null. */
  corrected: { factor: number; contributions: StatedContribution[] } | null;
  drifts: boolean;
};

/** What a session shows of one element in one mode, from every standard read for it. */
export type ElementFitness = {
  element: string;
  quantity: QuantityKind;
  mode: string | null;
  state: Fitness;
  standards: StandardVerdict[];
  inDoubt: DoubtSpan[];
  drifts: boolean;
};

/** A check reading that shows nothing, and why. */
export type UncountedCheck = {
  readingId: string;
  standardId: string;
  why: "wrong-mode" | "expired" | "no-time" | "nothing-certified";
};

export type SessionFitness = { elements: ElementFitness[]; uncounted: UncountedCheck[] };

/**
 * Was the instrument fit in this session? For each element and mode that a check standard was read for, from all standards together: the worst
 * state of any of them counts, and the doubtful stretches of all (`sessionState`, method step 5). A reading of a standard outside the modes it is
 * meant for, after its certificate ran out, or without a time, shows nothing and is listed with why.
 *
 * A blank (certified as below a bound) fails where the element is found above the bound; passed, it shows no recovery, and alone leaves "not-shown".
 * Where a certificate states no uncertainty, the checks are judged as ever, nothing is corrected, and the certificate's line stays out of the budget
 * for the instrument's own default to take its place.
 *
 * `corrections`: the elements whose recovery the tester asks to correct for.
 *
 * Source: method steps 5 and 6; EPA Method 6200 for the blank (nothing above the detection limit; see the tests for how well it is verified).
 *
 * @example sessionFitness({ standards: [{ id: "t", name: "Tile", material: "glaze", modes: [], expiresOn: null,
 *   certified: { Pb: { value: 100, below: null, U: 4, k: 2, unit: "mg/kg" } } }], checks: [{ id: "1", standardId: "t", takenAt: "2026-03-14T09:00:00Z", mode: null,
 *   results: [{ element: "Pb", quantity: "bulk-mass-fraction", unit: "ppm", belowDetection: false, value: { value: 70 }, error: null, k: null, detectionLimit: null }] }] }).elements[0].state // "not-fit"
 */
export function sessionFitness({
  standards,
  checks,
  corrections = [],
}: {
  standards: readonly CheckStandard[];
  checks: readonly StandardReading[];
  corrections?: readonly string[];
}): SessionFitness {
  const byId = new Map(standards.map((standard) => [standard.id, standard]));
  const uncounted: UncountedCheck[] = [];
  const counted: Counted[] = [];
  for (const reading of checks) {
    const standard = byId.get(reading.standardId);
    if (!standard) continue;
    const found = countedOf(reading, standard);
    if (typeof found === "string") uncounted.push({ readingId: reading.id, standardId: standard.id, why: found });
    else counted.push(...found);
  }
  const groups = grouped(counted, (c) => keyOf(c.result.element, c.result.quantity, c.mode));
  const elements = [...groups.values()].map((members): ElementFitness => {
    const { element, quantity } = members[0]!.result;
    const asked = corrections.includes(element);
    const verdicts = [...grouped(members, (m) => m.standard.id).values()].map((own) => verdictOf(own, asked));
    return {
      element,
      quantity,
      mode: members[0]!.mode,
      state: stateOfAll(verdicts),
      standards: verdicts,
      inDoubt: verdicts.flatMap((v) => v.inDoubt),
      drifts: verdicts.some((v) => v.drifts),
    };
  });
  return { elements: elements.sort((a, b) => (sortKey(a) < sortKey(b) ? -1 : 1)), uncounted };
}

/**
 * What the session says of one shot of a part. An element without a check of its own in its mode is not shown, and in doubt wherever any check of
 * the session is, since nothing clears it. Outside the doubtful stretch a reading stands though a check failed.
 */
export function shotFitness(
  fitness: SessionFitness | null,
  session: { id: string; label: string; doubtAllowed: boolean } | null,
  shot: { element: string; quantity: QuantityKind; mode: string | null; takenAt: string | null },
  material: string,
): ShotFitness {
  const own = fitness?.elements.find(
    (e) => keyOf(e.element, e.quantity, e.mode) === keyOf(shot.element, shot.quantity, shot.mode),
  );
  const spans = own && own.state !== "not-shown" ? own.inDoubt : (fitness?.elements ?? []).flatMap((e) => e.inDoubt);
  const inDoubt = isInDoubt(shot.takenAt, spans);
  const chosen = own ? chosenStandard(own, material) : null;
  const corrected = chosen?.corrected && chosen.standard.material === material ? chosen.corrected : null;
  const state = inDoubt ? "not-fit" : !own || chosen === null ? "not-shown" : corrected ? "fit-with-correction" : "fit";
  const contributions = (corrected ?? chosen)?.contributions ?? [];
  return {
    session: session?.id ?? null,
    state,
    factor: corrected?.factor ?? null,
    contributions: session ? contributions.map((one) => ({ ...one, shared: session.label })) : [...contributions],
    unsaidCertificate: chosen !== null && chosen.uCertified === null,
    drifts: own?.drifts ?? false,
    inDoubt,
    allowed: inDoubt && (session?.doubtAllowed ?? false),
  };
}

/** A standard that shows nothing of it, as a good blank, takes nothing from what another shows. */
const stateOfAll = (verdicts: readonly StandardVerdict[]): Fitness =>
  worst(verdicts.map((v) => v.state).filter((state) => state !== "not-shown"));

/** The elements for which a reading lies in a doubtful stretch. `takenAt` by a clock put right. */
export const doubtedElements = (
  fitness: SessionFitness,
  reading: { mode: string | null; takenAt: string | null; results: readonly ElementResult[] },
): string[] =>
  reading.results.flatMap(({ element, quantity }) =>
    shotFitness(fitness, null, { element, quantity, mode: reading.mode, takenAt: reading.takenAt }, "").inDoubt
      ? [element]
      : [],
  );

/** The one that corrects a part of its own material; else the one that says the least good. Null where none shows a recovery. */
function chosenStandard({ standards }: ElementFitness, material: string): StandardVerdict | null {
  const shown = standards.filter((v) => v.recovery !== null);
  const size = (v: StandardVerdict) => Math.hypot(...v.contributions.map((one) => one.relative!));
  const corrects = shown.find((v) => v.corrected && v.standard.material === material);
  return (
    corrects ?? shown.reduce<StandardVerdict | null>((most, v) => (most && size(most) >= size(v) ? most : v), null)
  );
}

/** The worst of several states; "not-shown" is worse than fit, and a failed check worse than none. */
export function worst(states: readonly Fitness[]): Fitness {
  const order: Fitness[] = ["not-fit", "not-shown", "fit-with-correction", "fit"];
  return order.find((state) => states.includes(state)) ?? "not-shown";
}

const keyOf = (element: string, quantity: QuantityKind, mode: string | null): string =>
  JSON.stringify([element, canonicalUnit(quantity), mode]);
const sortKey = (e: ElementFitness): string => JSON.stringify([e.mode ?? "", e.element]);

type Counted = {
  id: string;
  takenAt: string;
  mode: string | null;
  result: ElementResult;
  standard: CheckStandard;
  certificate: CertifiedValue;
};

function countedOf(reading: StandardReading, standard: CheckStandard): Counted[] | UncountedCheck["why"] {
  const { id, takenAt, mode } = reading;
  if (takenAt === null) return "no-time";
  if (standard.modes.length > 0 && (mode === null || !standard.modes.includes(mode))) return "wrong-mode";
  if (standard.expiresOn !== null && takenAt.slice(0, 10) > standard.expiresOn) return "expired";
  const counted = reading.results.flatMap((result) => {
    const certificate = standard.certified[result.element];
    if (!certificate || !unitBelongs(result.quantity, certificate.unit)) return [];
    return [{ id, takenAt, mode, result, standard, certificate }];
  });
  return counted.length > 0 ? counted : "nothing-certified";
}

function verdictOf(members: readonly Counted[], asked: boolean): StandardVerdict {
  const { standard, certificate, result } = members[0]!;
  const inUnit = (value: number | null, unit: string) =>
    value === null ? null : toCanonical(result.quantity, value, unit);
  const checks = members.map((m): CheckReading => {
    const { value, error, k, detectionLimit, unit, belowDetection } = m.result;
    return {
      id: m.id,
      takenAt: m.takenAt,
      value: belowDetection ? null : inUnit(value!.value, unit),
      u: error && error.value > 0 && k ? (inUnit(error.value, unit) as number) / k : null,
      detectionLimit: inUnit(detectionLimit?.value ?? null, unit),
    };
  });
  const certified = inUnit(certificate.value, certificate.unit);
  const U = inUnit(certificate.U, certificate.unit);
  const base = {
    standard,
    unit: canonicalUnit(result.quantity),
    certified,
    below: inUnit(certificate.below, certificate.unit),
    uCertified: U === null ? null : U / certificate.k,
    drifts: driftsOf(checks),
  };
  if (certified === null || certified <= 0) return { ...base, ...blankVerdict(checks, base.below) };
  return { ...base, ...valuedVerdict(checks, certified, base.uCertified, asked) };
}

type Judged = Omit<StandardVerdict, "standard" | "unit" | "certified" | "below" | "uCertified" | "drifts">;

function valuedVerdict(
  checks: readonly CheckReading[],
  certified: number,
  uCertified: number | null,
  asked: boolean,
): Judged {
  const certificate = { certified, uCertified: uCertified ?? 0 };
  const plain = sessionState(checks, certificate);
  const correction = { asked: asked && uCertified !== null, matrixMatches: true };
  const corrected = sessionState(checks, certificate, { correction });
  const corrects = corrected.factor !== null;
  return {
    checks: merged(checks, plain.checks),
    state: corrected.state,
    inDoubt: plain.inDoubt,
    recovery: plain.recovery,
    // Without a stated uncertainty a line of 0 would claim that the certificate is exact.
    contributions: plain.contributions.filter((one) => one.code !== "certified-value" || uCertified !== null),
    corrected: corrects ? { factor: corrected.factor as number, contributions: corrected.contributions } : null,
  };
}

function blankVerdict(checks: readonly CheckReading[], below: number | null): Judged {
  const ordered = [...checks].sort((a, b) => (Date.parse(a.takenAt) < Date.parse(b.takenAt) ? -1 : 1));
  const judged = ordered.map((check) => ({
    ...check,
    recovery: null,
    within: check.value === null || (below !== null && check.value <= below),
  }));
  return {
    checks: judged,
    state: judged.some((check) => !check.within) ? "not-fit" : "not-shown",
    inDoubt: doubtSpans(judged),
    recovery: null,
    contributions: [],
    corrected: null,
  };
}

const merged = (checks: readonly CheckReading[], judged: SessionState["checks"]): StandardVerdict["checks"] =>
  judged.map(({ id, recovery, within }) => ({ ...checks.find((c) => c.id === id)!, recovery, within }));

function driftsOf(checks: readonly CheckReading[]): boolean {
  const read = checks.flatMap(({ takenAt, value, u }) => (value === null ? [] : [{ takenAt, value, u }]));
  const drift = sessionDrift(read);
  return drift.status === "ok" && drift.drifts;
}
