import { DomainError } from "../quantity/domain-error.ts";
import { moments } from "./moments.ts";
import { type MonteCarloInput, monteCarlo } from "./monte-carlo.ts";
import { numericalTolerance } from "./numerical-tolerance.ts";
import { randomStream } from "./random-stream.ts";

export type AdaptiveMonteCarlo = {
  /** "not-settled": the most draws allowed were made and the last figures still wander by more than the tolerance. */
  status: "settled" | "not-settled";
  mean: number;
  sd: number;
  interval: [lo: number, hi: number];
  draws: number;
  /** The tolerance asked for, and twice the standard deviation of each of the four figures. */
  tolerance: number;
  wander: { mean: number; sd: number; lo: number; hi: number };
};

/** A standard deviation of two or three sequences says little: JCGM 101 lets two do, and stops too early by chance. */
const leastSequences = 10;

/**
 * Propagates distributions by Monte Carlo until the figures have settled.
 *
 * Sequences of M = max(10⁴, ⌈100/(1 − level)⌉) draws each, from streams of their own; after each, twice the standard deviation of the averages
 * over the h sequences (s/√h) of mean, standard deviation and both interval ends is held to δ, half a unit of the last of
 * `digits` (2) significant digits of the standard deviation. Done when all four are within it, and h is ten or more.
 *
 * mean and interval ends are the averages of the sequences'; sd that of all draws together. JCGM 101 sorts all draws at once for the
 * ends: the same within δ, and here the memory does not grow. interval: "symmetric" or "shortest"; the ends of a shortest one wander
 * most. Model and inputs as `monteCarlo` takes them; the same seed gives the same answer.
 *
 * mostDraws: 10 sequences or more (10⁷). A model whose result does not vary (sd 0) is settled at once.
 *
 * Source: JCGM 101:2008 7.9.2 to 7.9.4; Wübbeler, Harris, Cox and Elster, Metrologia 47 (2010) 317 for the least number.
 *
 * @throws DomainError what `monteCarlo` and `numericalTolerance` refuse; `bad-draws` (mostDraws), `unknown-interval`
 * @example adaptiveMonteCarlo(({ a }) => 2 * a, { a: { shape: "normal", mean: 5, sd: 1 } }, { seed: 1 }).tolerance // 0.05
 */
export function adaptiveMonteCarlo<Name extends string>(
  model: (inputs: Record<Name, number>) => number,
  inputs: Record<Name, MonteCarloInput>,
  {
    seed,
    level = 0.95,
    digits = 2,
    interval = "symmetric",
    mostDraws = 10_000_000,
  }: { seed: number; level?: number; digits?: number; interval?: "symmetric" | "shortest"; mostDraws?: number },
): AdaptiveMonteCarlo {
  numericalTolerance(1, digits);
  if (interval !== "symmetric" && interval !== "shortest")
    throw new DomainError("unknown-interval", "interval must be symmetric or shortest", interval);
  // A level out of range gives a length of NaN or a negative one; `monteCarlo` refuses the level itself.
  const length = level > 0 && level < 1 ? Math.max(10_000, Math.ceil(100 / (1 - level))) : 10_000;
  if (!(mostDraws >= leastSequences * length))
    throw new DomainError("bad-draws", `mostDraws must be ${leastSequences * length} or more`, mostDraws);
  const seeds = randomStream(seed);
  const means: number[] = [];
  const sds: number[] = [];
  const los: number[] = [];
  const his: number[] = [];
  for (;;) {
    const sequenceSeed = Math.floor(seeds.uniform() * 2 ** 53);
    const one = monteCarlo(model, inputs, { draws: length, seed: sequenceSeed, level });
    means.push(one.mean);
    sds.push(one.sd);
    los.push(one[interval][0]);
    his.push(one[interval][1]);
    const h = means.length;
    if (h < leastSequences) continue;
    const [mean, sd, lo, hi] = [means, sds, los, his].map(settling) as [Settling, Settling, Settling, Settling];
    const together = pooledSd(means, sds, length);
    const tolerance = together > 0 ? numericalTolerance(together, digits) : 0;
    const settled = [mean, sd, lo, hi].every(({ wander }) => wander <= tolerance);
    if (!settled && (h + 1) * length <= mostDraws) continue;
    return {
      status: settled ? "settled" : "not-settled",
      mean: mean.average,
      sd: together,
      interval: [lo.average, hi.average],
      draws: h * length,
      tolerance,
      wander: { mean: mean.wander, sd: sd.wander, lo: lo.wander, hi: hi.wander },
    };
  }
}

type Settling = { average: number; wander: number };

function settling(figures: readonly number[]): Settling {
  const { n, mean, sd } = moments(figures);
  return { average: mean, wander: (2 * sd) / Math.sqrt(n) };
}

/** The standard deviation of all draws of all sequences, from each sequence's own. */
function pooledSd(means: readonly number[], sds: readonly number[], length: number): number {
  const within = sds.reduce((sum, sd) => sum + sd * sd, 0) * (length - 1);
  const between = moments(means).sumSquares * length;
  return Math.sqrt((within + between) / (means.length * length - 1));
}
