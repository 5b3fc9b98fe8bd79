import { weightedMean } from "../statistics/weighted-mean.ts";
import { compareNames, compareNumbers, inOrder } from "./canonical-order.ts";
import { censoredSpotMean } from "./censored-spot-mean.ts";
import type { Shot } from "./normalise.ts";

/** What one marked place on the part says (step 2), in the canonical unit. */
export type Spot = DetectedSpot | MissedSpot;
export type DetectedSpot = Shared & {
  detected: true;
  value: number;
  u: number | null; // null = unknown
  limit: null;
  resolution: number; // finest last digit among the detected shots
};
/** Nothing at the spot was detected. */
export type MissedSpot = Shared & {
  detected: false;
  value: null;
  u: null;
  limit: number | null; // lowest detection limit reached, null = none was stated
  resolution: null;
};

type Shared = {
  spot: string | null;
  shots: Shot[];
  nu: number; // degrees of freedom of u; Infinity where u comes from counting statistics alone
  birge: number | null;
  agreement: number | null; // p of the Q test among the spot's shots; null with fewer than two errors
};

/**
 * Step 2: the shots grouped by spot. A shot without a spot is a spot of its own. Spots come in the order of their names,
 * then those without one by the shot's id.
 */
export function groupBySpot(shots: readonly Shot[]): Shot[][] {
  const named = new Map<string, Shot[]>();
  const nameless: Shot[][] = [];
  for (const shot of inOrder(shots, (a, b) => compareNames(a.id, b.id))) {
    const group = shot.spot === null ? undefined : named.get(shot.spot);
    if (group) group.push(shot);
    else if (shot.spot === null) nameless.push([shot]);
    else named.set(shot.spot, [shot]);
  }
  const byName = (a: Shot[], b: Shot[]): number => compareNames(a[0]!.spot!, b[0]!.spot!);
  return [...inOrder([...named.values()], byName), ...nameless];
}

/**
 * Step 2: one spot's value and standard uncertainty from its shots.
 *
 * - all detected, every u known: inverse-variance mean; u = (Σ1/u²)^(−1/2), times the Birge ratio √(Q/(n−1)) where that is over
 *   1, and then with n−1 degrees of freedom;
 * - a detected shot with unknown u among them: plain mean and s/√n with n−1 degrees of freedom (`plainMean`); one such
 *   shot alone has unknown u;
 * - some shots not detected, others detected with known u: the value that makes both likeliest, non-detects left-censored at
 *   their limits with the errors `censoredSpotMean` says. The spot counts as detected. With unknown u the mean is that of the detected shots,
 *   which errs on the high side;
 * - none detected: the lowest detection limit reached. Its u is limit/3 (method, step 0).
 *
 * @example two shots 412 ± 9 and 405 ± 8 (k = 1): value 408.09, u 5.98, Birge ratio 0.58 (not applied)
 */
export function reconcileSpot(unsorted: readonly Shot[]): Spot {
  const [only, ...more] = unsorted;
  if (only !== undefined && more.length === 0) return loneShot(only);
  const shots = [...unsorted].sort((a, b) => compareNames(a.id, b.id));
  // Sums run over values in order of size, so that the digits do not depend on how the shots were numbered.
  const detected = shots
    .filter((shot) => shot.detected)
    .sort((a, b) => compareNumbers(a.value, b.value) || compareNumbers(a.u, b.u));
  const missed = shots.filter((shot) => !shot.detected);
  const limits = missed.flatMap((shot) => (shot.limit === null ? [] : [shot.limit])).sort((a, b) => a - b);
  const base = { spot: shots[0]!.spot, shots, nu: Infinity, birge: null, agreement: null };
  if (detected.length === 0)
    return { ...base, detected: false, value: null, u: null, limit: limits[0] ?? null, resolution: null };

  const x = detected.map((shot) => shot.value);
  const known = detected.flatMap((shot) => (shot.u === null ? [] : [shot.u]));
  const resolution = Math.min(...detected.map((shot) => shot.resolution));
  const rest = { ...base, detected: true, limit: null, resolution } as const;
  if (known.length < detected.length) return { ...rest, ...plainMean(x, resolution) };
  if (limits.length > 0) return { ...rest, ...censoredSpotMean(x, known, limits) };
  // One detected shot is left where the others missed it and named no limit.
  if (x.length === 1) return { ...rest, value: x[0]!, u: known[0]! };
  const pooled = weightedMean(x, known);
  const scattered = pooled.birge !== null && pooled.birge > 1;
  return {
    ...rest,
    value: pooled.mean,
    u: scattered ? pooled.uExternal : pooled.uInternal,
    nu: scattered ? pooled.df : Infinity,
    birge: pooled.birge,
    agreement: pooled.p,
  };
}

/** A spot shot once, the common case: the shot as it stands. */
const loneShot = (shot: Shot): Spot =>
  ({
    spot: shot.spot,
    shots: [shot],
    detected: shot.detected,
    value: shot.value,
    u: shot.u,
    nu: Infinity,
    limit: shot.detected ? null : shot.limit,
    birge: null,
    agreement: null,
    resolution: shot.resolution,
  }) as Spot;

/**
 * Plain mean with u = s/√n and n−1 degrees of freedom. Where all values are equal, s = 0 shows only that the display is coarse,
 * and u is that of its last digit, δ/√12 (GUM F.2.2.1; `resolution` is δ). One value: u unknown.
 *
 * @example plainMean([10, 12, 14], 1) // { value: 12, u: 1.1547…, nu: 2 }
 */
export function plainMean(x: readonly number[], resolution: number): { value: number; u: number | null; nu: number } {
  const n = x.length;
  const anchor = x[0]!;
  const value = anchor + x.reduce((sum, one) => sum + (one - anchor), 0) / n;
  if (n < 2) return { value, u: null, nu: Infinity };
  const squares = x.reduce((sum, one) => sum + (one - value) ** 2, 0);
  return { value, u: squares > 0 ? Math.sqrt(squares / (n - 1) / n) : resolution / Math.sqrt(12), nu: n - 1 };
}
