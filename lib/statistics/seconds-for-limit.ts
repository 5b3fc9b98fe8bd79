import { DomainError } from "../quantity/domain-error.ts";
import { requireNotNegative, requirePositive } from "./require-number.ts";

export type SecondsForLimit =
  | { status: "ok"; seconds: number }
  /** The wanted limit is at or under the part that counting longer does not shrink. */
  | { status: "never"; seconds: null };

/**
 * How long a count must last to reach a wanted detection limit, from a limit reached in a known time.
 *
 * L(t)² = F² + (L₁² − F²)·t₁/t, so t = t₁·(L₁² − F²)/(L₂² − F²), F = `floor`: the part of the limit that does not come from counting. With
 * F = 0, L ∝ 1/√t: half the limit takes four times as long. Holds where the background is many counts (Currie's L_D without
 * its 2.71); with few, the limit falls faster and this time is more than enough. A limit already reached gives a time of t₁ or less.
 *
 * limit, wanted: above 0, one unit; floor: 0 or more, below `limit`; seconds: above 0, live time.
 *
 * Source: Currie, Anal. Chem. 40 (1968) 586, Table II (L_D ∝ √B, net counts ∝ t); common practice of field XRF for 1/√t.
 *
 * @throws DomainError `not-finite`, `not-positive`, `negative`, `floor-too-large`
 * @example secondsForLimit({ limit: 12, seconds: 30, wanted: 6 }) // { status: "ok", seconds: 120 }
 */
export function secondsForLimit({
  limit,
  seconds,
  wanted,
  floor = 0,
}: {
  limit: number;
  seconds: number;
  wanted: number;
  floor?: number;
}): SecondsForLimit {
  requirePositive("limit", limit);
  requirePositive("seconds", seconds);
  requirePositive("wanted", wanted);
  requireNotNegative("floor", floor);
  if (floor >= limit) throw new DomainError("floor-too-large", "the floor must be below the limit reached", floor);
  if (wanted <= floor) return { status: "never", seconds: null };
  const unit = Math.max(limit, wanted);
  const above = (value: number) => ((value - floor) / unit) * ((value + floor) / unit);
  return { status: "ok", seconds: (seconds * above(limit)) / above(wanted) };
}
