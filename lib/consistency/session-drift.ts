import { requireLevel, requireNumbers } from "../statistics/checks.ts";
import { tUpperTail } from "../statistics/distributions.ts";
import { weightedLine } from "../statistics/weighted-line.ts";
import { instantOf } from "./instant.ts";

export type SessionDrift =
  | {
      status: "ok";
      /** Change of the reading in an hour, and its standard uncertainty; unit of the readings per hour. */
      slopePerHour: number;
      u: number;
      /** Probability of a slope this steep or steeper, either way, if nothing drifts. */
      p: number;
      /** Along the line, from the first reading to the last; unit of the readings. */
      change: number;
      hours: number;
      drifts: boolean;
      /** Where the uncertainty of the slope comes from. */
      from: "errors" | "scatter";
    }
  /** Fewer than three readings; or all at the same time. */
  | { status: "too-few" | "same-time" };

/**
 * Whether readings of the same thing drift within a session: weighted straight line of values over time, with a test of its slope.
 *
 * All u known: `weightedLine`; where χ² is above n − 2, u(slope) is widened by √(χ²/(n − 2)) and t has n − 2 degrees of freedom, else
 * the normal distribution serves. A u unknown: all weights equal, u(slope) from the scatter about the line, t with n − 2. p two-sided;
 * `drifts` where p is under `differBelow` (policy: 0.01, as for the other tests of scatter). Points exactly on a line that slopes: p = 0.
 *
 * Only for one spot or one check standard read again and again: spots read one after another differ for reasons of their own.
 *
 * readings: any order, takenAt with offset; value finite; u above 0 or null; one unit.
 *
 * Source: ISO/TS 28037:2010 clause 6 (line); ISO Guide 35:2017 (test of a slope over time).
 *
 * @throws DomainError `no-zone`, `not-finite`, `not-positive`, `bad-level`
 * @example sessionDrift([400, 404, 409, 412].map((value, i) => ({ takenAt: `2026-03-14T1${i}:00:00Z`, value, u: 2 })))
 * // { status: "ok", slopePerHour: 4.1, u: 0.894427, p: 4.563e-6, change: 12.3, hours: 3, drifts: true, from: "errors" }
 */
export function sessionDrift(
  readings: readonly { takenAt: string; value: number; u: number | null }[],
  { differBelow = 0.01 }: { differBelow?: number } = {},
): SessionDrift {
  requireLevel(differBelow, "differBelow");
  const instants = readings.map((reading) => instantOf(reading.takenAt));
  if (readings.length < 3) return { status: "too-few" };
  const values = readings.map((reading) => reading.value);
  requireNumbers("values", values);
  const first = Math.min(...instants);
  const hours = instants.map((instant) => (instant - first) / 3_600_000);
  const span = Math.max(...hours);
  if (span === 0) return { status: "same-time" };
  const known = readings.every((reading) => reading.u !== null);
  const line = weightedLine(
    hours,
    values,
    readings.map((reading) => (known ? (reading.u as number) : 1)),
  );
  const scatter = Math.sqrt(line.chi2 / line.df);
  const widened = known ? Math.max(1, scatter) : scatter;
  const u = line.seSlope * widened;
  const nu = known && widened === 1 ? Number.POSITIVE_INFINITY : line.df;
  const p = u > 0 ? 2 * tUpperTail(Math.abs(line.slope) / u, nu) : line.slope === 0 ? 1 : 0;
  return {
    status: "ok",
    slopePerHour: line.slope,
    u,
    p,
    change: line.slope * span,
    hours: span,
    drifts: p < differBelow,
    from: known ? "errors" : "scatter",
  };
}
