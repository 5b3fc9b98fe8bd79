import { guardBand } from "./guard-band.ts";

/**
 * Where the verdicts turn for a symmetric result: at or below `below` it is "below the limit", at or above `above` it is
 * "above the limit", between them "too close to call".
 *
 * below = limit − g, above = limit + g, with g = t(1 − risk, nu)·u. All in the limit's unit. `below` may be negative: then
 * no result of this u can be shown to be below. Refuses what `guardBand` refuses.
 *
 * Source: JCGM 106:2012 8.3 (guarded acceptance and guarded rejection).
 *
 * @example guardedLimits(100, { u: 6, risk: 0.05 }) // { below: 90.13088, above: 109.86912 }
 */
export const guardedLimits = (
  limit: number,
  { u, nu, risk = 0.05 }: { u: number; nu?: number | null; risk?: number },
): { below: number; above: number } => {
  const g = guardBand({ risk, u, nu: nu ?? null });
  return { below: limit - g, above: limit + g };
};
