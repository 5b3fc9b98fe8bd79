import { DomainError } from "../quantity/domain-error.ts";
import type { QuantityKind } from "../quantity/kinds.ts";
import { toCanonical } from "../quantity/units.ts";
import type { WrittenNumber } from "../readings/reading.ts";
import type { ShotInput } from "./types.ts";

/** One shot in the canonical unit of its kind (step 0). `null` is "not known", never zero. */
export type Shot = DetectedShot | MissedShot;
export type DetectedShot = Shared & {
  detected: true;
  value: number;
  u: number | null; // standard uncertainty, null = unknown
  resolution: number; // one unit of the last written digit
};
export type MissedShot = Shared & { detected: false; value: null; u: null; resolution: null };

type Shared = {
  id: string;
  spot: string | null;
  limit: number | null; // detection limit reached, where stated (of a detected shot too)
  secondsCounted: number | null;
  arsenic: number | null;
  lead: number | null;
};

/**
 * Step 0: unit to the kind's canonical unit and standard uncertainty u = error / k.
 *
 * - A detected value whose error is missing, is written as 0 (hidden by the instrument's rounding) or has no stated
 *   k has unknown u: `u: null`.
 * - A non-detect keeps its detection limit. A limit that is absent, zero or negative is no limit: `limit: null`.
 *   Nothing is set to zero or to half the limit.
 * - `resolution` is one unit of the last digit written: 10^(−decimals) in the unit as written.
 * - A session's correction (step 5) multiplies value, error, limit and resolution alike: `factor`.
 *
 * Refused (DomainError): a value, error or limit that is not a finite number (`not-finite`), a negative error
 * (`negative-uncertainty`), a detected shot without a value (`value-missing`), a unit that is none of the kind's.
 *
 * @example normaliseShot({ …, unit: "%", value: 0.0412, error: 0.0018, k: 2 }, "bulk-mass-fraction")
 *          // { value: 412, u: 9, … } mg/kg
 */
export function normaliseShot(shot: ShotInput, quantity: QuantityKind): Shot {
  const factor = shot.factor ?? 1;
  const convert = (number: number): number => factor * toCanonical(quantity, number, shot.unit);
  const written = (what: string, number: WrittenNumber | null): number | null => {
    if (number === null) return null;
    if (!Number.isFinite(number.value)) throw new DomainError("not-finite", `${what} is not a finite number`, number);
    return number.value;
  };
  written("value", shot.value);
  const error = written("error", shot.error);
  const limit = written("detection limit", shot.detectionLimit);
  if (error !== null && error < 0) throw new DomainError("negative-uncertainty", "an error cannot be negative", error);
  const { id, spot, secondsCounted, arsenicValue: arsenic = null, leadValue: lead = null } = shot;
  const reached = limit !== null && limit > 0 ? convert(limit) : null;
  // Written out field by field: spreading one object into another shows in the time of ten thousand parts.
  if (shot.belowDetection)
    return {
      id,
      spot,
      detected: false,
      value: null,
      u: null,
      limit: reached,
      resolution: null,
      secondsCounted,
      arsenic,
      lead,
    };
  if (shot.value === null) throw new DomainError("value-missing", "a detected shot needs a value", shot.id);
  return {
    id,
    spot,
    detected: true,
    value: convert(shot.value.value),
    u: error !== null && error > 0 && shot.k !== null ? convert(error) / shot.k : null,
    limit: reached,
    resolution: convert(10 ** -shot.value.decimals),
    secondsCounted,
    arsenic,
    lead,
  };
}

/**
 * Refuses shots that must not be mixed (step 1): one that reports another quantity kind than the one reconciled
 * (`mixed-kinds`), or shots in more than one named mode (`mixed-modes`). A shot whose mode was not written is not
 * known to be in another one and may stand with any. Splitting by mode is the caller's: which of two modes is meant is a
 * person's decision, and reconcile would have to guess. A shot set aside is not held to this.
 */
export function requireOneKind(shots: readonly ShotInput[], quantity: QuantityKind): void {
  const modes = new Set<string>();
  for (const shot of shots) {
    if (shot.quantity !== quantity)
      throw new DomainError("mixed-kinds", "readings of different quantity kinds are never mixed", shot.quantity);
    if (shot.mode !== null) modes.add(shot.mode);
  }
  if (modes.size > 1)
    throw new DomainError("mixed-modes", "readings of different modes are never mixed", [...modes].sort());
}
