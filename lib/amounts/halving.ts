import { DomainError } from "../quantity/domain-error.ts";
import type { HalvingStep } from "./types.ts";

const positive = (name: string, value: number): number => {
  if (!Number.isFinite(value) || value <= 0)
    throw new DomainError("not-positive", `${name} must be a number above zero`, value);
  return value;
};

/**
 * How often a loading must be halved to be at or below a target: the least n with L/2ⁿ ≤ T, n = max(0, ⌈log₂(L/T)⌉).
 * Counted by halving itself (exact in binary), so that a whole power of two never comes out one too many.
 *
 * @example halvingsTo(40, 5) // 3
 */
export function halvingsTo(loading: number, target: number): number {
  let left = positive("loading", loading);
  positive("target", target);
  let n = 0;
  // The tolerance is that of the division that made the loading, not of the target.
  while (left > target * (1 + 1e-12)) {
    left /= 2;
    n++;
  }
  return n;
}

/**
 * Halving a mass halves the loading over the same area. Steps from what there is down to the first at or below `target`
 * (µg/ft²), at least one halving, at most 40.
 *
 * @example halvingLadder({ mass: 3074.16, loading: 40 }, 5).map((s) => s.loading) // [40, 20, 10, 5]
 */
export function halvingLadder(from: { mass: number | null; loading: number }, target: number): HalvingStep[] {
  const steps = Math.min(40, Math.max(1, halvingsTo(from.loading, target)));
  if (from.mass !== null) positive("mass", from.mass);
  return Array.from({ length: steps + 1 }, (_, halvings) => ({
    halvings,
    mass: from.mass === null ? null : from.mass / 2 ** halvings,
    loading: from.loading / 2 ** halvings,
  }));
}
