/** One cell of the simulated grid: what its parts were like, and how the method fared with them. Shares are 0…1. */
export type CoverageCell = {
  /** What the true contents of the spots were drawn from. */
  shape: "even" | "normal" | "lognormal" | "gamma";
  spots: number;
  /** Standard deviation of the true contents, relative to their mean. */
  spread: number;
  /** Standard counting uncertainty, relative to the mean. */
  u: number;
  /** Share of readings below detection. */
  below: number;
  trials: number;
  /** Share of parts with an interval. */
  stated: number;
  /** Of those: the interval held the true mean. */
  covered: number;
  /** Of those: the interval lay wholly below the true mean. */
  unsafe: number;
  /** Relative to the true mean. */
  medianWidth: number;
  /** The larger of the shares of all parts called "below" a limit at 0.5 and at 0.9 of the true mean. */
  wrongBelow: number;
};

/** The aims of the method: coverage at least 0.94, unsafe misses at most 0.035, wrong "below" at most 0.05. */
export const coverageAims = { covered: 0.94, unsafe: 0.035, wrongBelow: 0.05 } as const;
export type CoverageAim = keyof typeof coverageAims;

/** An aim that a cell did not reach: by how much, and whether its number of trials could explain that (two standard errors of the aim's share). */
export type Shortfall = { aim: CoverageAim; share: number; by: number; explained: boolean };

/**
 * The aims that a cell is on the wrong side of, in the order of `coverageAims`.
 *
 * Examples with their answers: tests/reconcile/honest-intervals.test.ts.
 */
export function shortfallsOf(cell: Pick<CoverageCell, "trials" | "stated" | CoverageAim>): Shortfall[] {
  return (["covered", "unsafe", "wrongBelow"] as const).flatMap((aim) => {
    const share = cell[aim];
    const wanted = coverageAims[aim];
    const by = aim === "covered" ? wanted - share : share - wanted;
    if (!(by > 0)) return [];
    const trials = aim === "wrongBelow" ? cell.trials : cell.stated * cell.trials;
    return [{ aim, share, by, explained: by <= 2 * Math.sqrt((wanted * (1 - wanted)) / Math.max(trials, 1)) }];
  });
}
