import { DomainError } from "../quantity/domain-error.ts";
import type { FlagCode, StatedContribution } from "../reconcile/types.ts";
import { requireNotNegative, requirePositive } from "../statistics/require-number.ts";
import type { Certificate, CheckReading } from "./check-reading.ts";
import { type DoubtSpan, doubtSpans } from "./doubt-spans.ts";
import { instantOf } from "./instant.ts";
import { type Recovery, recoveryOf } from "./recovery.ts";

export type SessionState = {
  state: "fit" | "fit-with-correction" | "not-fit" | "not-shown";
  /** Half-width of the acceptance band on the recovery that was used. */
  band: number;
  /** In the order of time. `within` null: below detection where the standard need not have been seen. */
  checks: { id: string; takenAt: string; recovery: number | null; within: boolean | null }[];
  failed: string[];
  /** When readings are in doubt, because a check failed before or after them. */
  inDoubt: DoubtSpan[];
  /** From the checks that passed; null where none did. */
  recovery: Recovery | null;
  /** By what readings are to be multiplied, 1/R; null without correction. */
  factor: number | null;
  /** What the session adds to the budget of each result it carries. */
  contributions: StatedContribution[];
  flag: Extract<FlagCode, "check-missing" | "check-failed"> | null;
};

/** Policy; common practice for field XRF, no source. */
const widestBand = 0.2;

/**
 * Was the instrument fit? The state of a session for one element, from its readings of one check standard (method, step 5).
 *
 * Each check's recovery R = read/certified must lie within 1 ± band, band = the smaller of 0.2 (policy) and the instrument's own. A check
 * below detection fails where its limit lies under the lower end of the band, and says nothing otherwise (its limit unknown or higher).
 *
 * - "not-shown": no check says anything; flag check-missing;
 * - "not-fit": a check failed; flag check-failed. Readings between the last good and the next good check about it are in doubt (`inDoubt`), others stand;
 * - "fit-with-correction": all passed, and the tester asked for a correction, the standard's matrix matches, and R of the passed checks differs
 *   from 1 by more than its expanded uncertainty. Readings are multiplied by 1/R, and u(R)'s own part (scatter or counting) enters the budget;
 * - "fit": all passed. The difference |R − 1| enters the budget as a rectangular component of that half-width, relative: |R − 1|/√3.
 *
 * The certified value's relative u enters in both. All contributions are relative to the result.
 *
 * checks: of one element on one standard in one session, any order; certified above 0, uCertified 0 or more; band of the instrument above 0.
 *
 * Source: method steps 5 and 6; JCGM 100:2008 4.3.7 (rectangular), F.2.4.5 (a known difference that is not corrected).
 *
 * @throws DomainError `no-zone`, `not-finite`, `not-positive`, `negative`, `bad-band`
 * @example sessionState([{ id: "before", takenAt: "2026-03-14T09:00:00Z", value: 94, u: 1, detectionLimit: null }], { certified: 100, uCertified: 2 })
 * // { state: "fit", band: 0.2, factor: null, failed: [], contributions: [{ code: "certified-value", relative: 0.02 }, { code: "recovery", relative: 0.0346410 }], flag: null }
 */
export function sessionState(
  checks: readonly CheckReading[],
  { certified, uCertified }: Certificate,
  {
    instrumentBand,
    correction = { asked: false, matrixMatches: false },
  }: { instrumentBand?: number | null; correction?: { asked: boolean; matrixMatches: boolean } } = {},
): SessionState {
  requirePositive("certified", certified);
  requireNotNegative("uCertified", uCertified);
  if (instrumentBand !== undefined && instrumentBand !== null && !(instrumentBand > 0))
    throw new DomainError("bad-band", "the instrument's acceptance band must be above zero", instrumentBand);
  const band = Math.min(widestBand, instrumentBand ?? widestBand);
  const ordered = [...checks].sort((a, b) => instantOf(a.takenAt) - instantOf(b.takenAt));
  const judged = ordered.map((check) => ({
    id: check.id,
    takenAt: check.takenAt,
    recovery: check.value === null ? null : check.value / certified,
    within: isWithin(check, certified, band),
  }));
  const passed = ordered.flatMap(({ value, u }, i) => (value !== null && judged[i]?.within ? [{ value, u }] : []));
  const failed = judged.filter((check) => check.within === false).map((check) => check.id);
  const recovery = passed.length > 0 ? recoveryOf(passed, { certified, uCertified }) : null;
  const shared = { band, checks: judged, failed, inDoubt: doubtSpans(judged), recovery };
  if (failed.length > 0)
    return {
      ...shared,
      state: "not-fit",
      factor: null,
      contributions: recovery ? uncorrected(recovery) : [],
      flag: "check-failed",
    };
  if (recovery === null)
    return { ...shared, state: "not-shown", factor: null, contributions: [], flag: "check-missing" };
  const corrects = correction.asked && correction.matrixMatches && recovery.differs === true;
  return {
    ...shared,
    state: corrects ? "fit-with-correction" : "fit",
    factor: corrects ? 1 / recovery.recovery : null,
    contributions: corrects ? corrected(recovery) : uncorrected(recovery),
    flag: null,
  };
}

/** Rounding in read/certified must not fail a check that lies on the edge of the band as printed. */
const edge = 1e-12;

function isWithin(check: CheckReading, certified: number, band: number): boolean | null {
  if (check.value !== null) return Math.abs(check.value / certified - 1) <= band + edge;
  if (check.detectionLimit === null) return null;
  return check.detectionLimit < certified * (1 - band) ? false : null;
}

const certificateLine = (recovery: Recovery): StatedContribution => ({
  code: "certified-value",
  relative: recovery.parts.certificate,
  type: "B",
  source: "check-standard-certificate",
});

function uncorrected(recovery: Recovery): StatedContribution[] {
  const relative = Math.abs(recovery.recovery - 1) / Math.sqrt(3);
  return [certificateLine(recovery), { code: "recovery", relative, type: "B", source: "check-standard-difference" }];
}

function corrected(recovery: Recovery): StatedContribution[] {
  const { scatter, counting } = recovery.parts;
  const byScatter = scatter !== null && scatter >= (counting ?? 0);
  return [
    certificateLine(recovery),
    {
      code: "recovery",
      relative: byScatter ? scatter : (counting as number),
      ...(byScatter ? { nu: recovery.readings - 1 } : {}),
      type: "A",
      source: "check-standard-corrected",
    },
  ];
}
