import { algorithmA } from "../statistics/algorithm-a.ts";
import { generalizedEsd } from "../statistics/generalized-esd.ts";
import { medianMad } from "../statistics/median-mad.ts";
import { pauleMandelMean } from "../statistics/random-effects.ts";
import { compareNames, compareNumbers } from "./canonical-order.ts";
import type { DetectedShot, Shot } from "./normalise.ts";
import { plainMean, type Spot } from "./spots.ts";
import type { ReconcileResult } from "./types.ts";

const fewestForRobust = 5;
/** A shot further than this many standard uncertainties from its spot is a candidate (policy; three sigma, common practice). */
const farResidual = 3;

/**
 * Step 8, beside the result and never in place of it: median and scaled MAD of the spots; Algorithm A (ISO 13528) from five spots;
 * the range of the component's mean when each spot in turn is left out; and candidates for a person to look at.
 *
 * Candidates are ids of shots: those of a spot named by the generalised extreme Studentised deviate test (five spots or
 * more, at most a third of them, α 0.05), and in a spot of three or more shots those further than three of
 * their own standard uncertainties from the mean of the others.
 *
 * Only where every spot was detected: a median or a mean of the detected ones alone would be too high. Null otherwise.
 * The mean left out for is the random-effects mean, or the plain mean where errors are unknown, whichever model states
 * the result: the range answers "does one spot carry it?", not "what is the value?".
 */
export function crossCheck(spots: readonly Spot[]): ReconcileResult["crossCheck"] {
  const sorted = spots.filter((spot) => spot.detected).sort((a, b) => a.value - b.value || compareNumbers(a.u, b.u));
  if (sorted.length === 0 || sorted.length < spots.length) return null;
  const x = sorted.map((spot) => spot.value);
  const { median, scaled } = medianMad(x);
  return {
    median,
    scaledMad: scaled,
    algorithmA: x.length >= fewestForRobust ? algorithmA(x).mean : null,
    leaveOneOut: leaveOneOut(sorted, x),
    candidates: candidates(sorted, x),
  };
}

function candidates(spots: readonly Spot[], x: readonly number[]): string[] {
  const named = new Set(unusualSpots(spots, x));
  for (const { shots } of spots) for (const id of unusualShots(shots)) named.add(id);
  return [...named].sort(compareNames);
}

function leaveOneOut(spots: readonly Spot[], x: readonly number[]): [number, number] | null {
  if (spots.length < 2) return null;
  const known = spots.every((spot) => spot.u !== null);
  const u = known ? spots.map((spot) => spot.u!) : [];
  let [low, high] = [Infinity, -Infinity];
  for (let left = 0; left < x.length; left++) {
    const others = without(x, left);
    const mean = known && others.length > 1 ? pauleMandelMean(others, without(u, left)) : plainMean(others, 0).value;
    low = Math.min(low, mean);
    high = Math.max(high, mean);
  }
  return [low, high];
}

const without = (list: readonly number[], left: number): number[] => {
  const others = list.slice(0, left);
  for (let i = left + 1; i < list.length; i++) others.push(list[i]!);
  return others;
};

function unusualSpots(spots: readonly Spot[], x: readonly number[]): string[] {
  if (x.length < fewestForRobust || x.every((one) => one === x[0])) return [];
  const { outliers } = generalizedEsd([...x], { maxOutliers: Math.max(1, Math.floor(x.length / 3)) });
  return outliers.flatMap((index) => spots[index]!.shots.map((shot) => shot.id));
}

/** Of one spot's shots, where there are three or more and all their errors are known. */
function unusualShots(shots: readonly Shot[]): string[] {
  if (shots.length < 3) return [];
  const known = shots.filter((shot): shot is KnownShot => shot.u !== null);
  if (known.length < shots.length) return [];
  return known.filter((shot) => isFar(shot, known)).map((shot) => shot.id);
}

type KnownShot = DetectedShot & { u: number };

function isFar(shot: KnownShot, all: readonly KnownShot[]): boolean {
  let weight = 0;
  let sum = 0;
  for (const other of all) {
    if (other === shot) continue;
    const w = 1 / other.u ** 2;
    weight += w;
    sum += w * other.value;
  }
  return Math.abs(shot.value - sum / weight) > farResidual * Math.hypot(shot.u, 1 / Math.sqrt(weight));
}
