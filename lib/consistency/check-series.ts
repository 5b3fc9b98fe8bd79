import { type CheckChart, checkChart } from "./check-chart.ts";
import type { CheckReading } from "./check-reading.ts";
import { grouped } from "./grouped.ts";
import { type SessionDrift, sessionDrift } from "./session-drift.ts";
import type { SessionFitness } from "./session-fitness.ts";

/** A session with what its check standards showed. */
export type CheckedSitting = {
  id: string;
  instrument: string;
  operator: string | null;
  startedAt: string;
  fitness: SessionFitness;
};

/** One check standard read for one element in one mode by one analyser, over its sessions. */
export type CheckSeries = {
  instrument: string;
  mode: string | null;
  element: string;
  standard: string;
  unit: string;
  certified: number;
  /** In the order of time, each with the session and operator it was read in. */
  checks: (CheckReading & { session: string; operator: string | null })[];
  chart: CheckChart;
  /** The recovery over time: `slopePerHour` is of read over certified. */
  drift: SessionDrift;
  /** The charts speak up, or the recovery slopes; null where too few were read to say. */
  speaksUp: boolean | null;
};

/**
 * The readings of check standards over several sessions, put together by analyser, mode, element and standard, each with its control charts and
 * the slope of its recovery over time. Standards certified only as "below" make no series.
 *
 * Source: as `checkChart` and `sessionDrift`.
 *
 * @throws DomainError as `checkChart`
 * @example checkSeries([]) // []
 */
export function checkSeries(sittings: readonly CheckedSitting[]): CheckSeries[] {
  const found = sittings.flatMap((sitting) =>
    sitting.fitness.elements.flatMap((one) =>
      one.standards.flatMap((verdict) =>
        verdict.certified === null ? [] : [{ sitting, one, verdict: { ...verdict, certified: verdict.certified } }],
      ),
    ),
  );
  const keys = grouped(found, ({ sitting, one, verdict }) =>
    JSON.stringify([sitting.instrument, one.mode, one.element, one.quantity, verdict.standard.id]),
  );
  return [...keys.values()].flatMap((members) => {
    const { sitting, one, verdict } = members[0]!; // a group holds what made it
    const checks = members
      .flatMap(({ sitting: { id, operator }, verdict: { checks: own } }) =>
        own.map(({ recovery: _, within: __, ...check }) => ({ ...check, session: id, operator })),
      )
      .sort((a, b) => Date.parse(a.takenAt) - Date.parse(b.takenAt));
    const chart = checkChart(checks, { certified: verdict.certified });
    const drift = recoveryDrift(checks, verdict.certified);
    return [
      {
        instrument: sitting.instrument,
        mode: one.mode,
        element: one.element,
        standard: verdict.standard.name,
        unit: verdict.unit,
        certified: verdict.certified,
        checks,
        chart,
        drift,
        speaksUp: speaksUp(chart, drift),
      },
    ];
  });
}

function recoveryDrift(checks: readonly CheckReading[], certified: number): SessionDrift {
  const read = checks.flatMap(({ takenAt, value, u }) =>
    value === null ? [] : [{ takenAt, value: value / certified, u: u === null || u === 0 ? null : u / certified }],
  );
  return sessionDrift(read);
}

/** The individuals, EWMA and CUSUM charts and the 1-3s rule; the other rules alone are too ready to speak up in short series. */
function speaksUp(chart: CheckChart, drift: SessionDrift): boolean | null {
  const slopes = drift.status === "ok" ? drift.drifts : null;
  if (chart.status !== "ok") return slopes;
  const { individuals, ewma, cusum } = chart.signals;
  return individuals.length + ewma.length + cusum.length > 0 || slopes === true;
}

/** Series of one instrument, operator or mode together: how many speak up, how many do not, of how many nothing can be said. */
export type DriftCount = {
  level: string | null;
  series: number;
  speakUp: number;
  quiet: number;
  tooFew: number;
  checks: number;
};

/**
 * Which instrument, operator or mode drifts: their series counted. For an operator the series are made of that operator's own sessions.
 *
 * @example driftCounts([], "instrument") // []
 */
export function driftCounts(sittings: readonly CheckedSitting[], by: "instrument" | "operator" | "mode"): DriftCount[] {
  const series =
    by === "operator"
      ? [...grouped(sittings, (s) => s.operator)].flatMap(([level, own]) =>
          checkSeries(own).map((one) => ({ level, one })),
        )
      : checkSeries(sittings).map((one) => ({ level: by === "instrument" ? one.instrument : one.mode, one }));
  return [...grouped(series, ({ level }) => level)].map(([level, members]) => ({
    level,
    series: members.length,
    speakUp: members.filter(({ one }) => one.speaksUp === true).length,
    quiet: members.filter(({ one }) => one.speaksUp === false).length,
    tooFew: members.filter(({ one }) => one.speaksUp === null).length,
    checks: members.reduce((sum, { one }) => sum + one.checks.length, 0),
  }));
}
