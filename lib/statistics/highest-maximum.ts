import { bracketedRoot } from "./bracketed-root.ts";

/**
 * The highest maximum over t ≥ 0 of a function given by its value and slope.
 *
 * `grid` holds rising positive values of t; every change of the slope from rising to falling between neighbours is followed to
 * its root, t = 0 counts where the slope there is not positive, and the grid goes on by factors of four while the last slope
 * still rises. Likelihoods of a spread can have more than one maximum where the uncertainties differ much.
 *
 * @example highestMaximum((t) => -((t - 3) ** 2), (t) => 6 - 2 * t, [1, 2, 4]) // { at: 3, value: 0 }
 */
export function highestMaximum(
  value: (t: number) => number,
  slope: (t: number) => number,
  grid: readonly number[],
): { at: number; value: number } {
  let best = { at: 0, value: Number.NEGATIVE_INFINITY };
  const consider = (at: number) => {
    const here = value(at);
    if (here > best.value) best = { at, value: here };
  };
  let before = 0;
  let rising = slope(0) > 0;
  if (!rising) consider(0);
  const step = (at: number) => {
    const risingHere = slope(at) > 0;
    if (rising && !risingHere) consider(slope(before) > 0 && slope(at) <= 0 ? bracketedRoot(slope, before, at) : at);
    rising = risingHere;
    before = at;
  };
  for (const at of grid) step(at);
  for (let i = 0; rising && i < 100; i++) step(before * 4);
  return best;
}

/**
 * Rising values from `from` to at least `to`, `perDecade` to a factor of ten.
 *
 * @example logGrid(1, 100, 1) // [1, 10, 100]
 */
export function logGrid(from: number, to: number, perDecade: number): number[] {
  const count = Math.max(1, Math.ceil(perDecade * Math.log10(to / from)));
  const ratio = 10 ** (1 / perDecade);
  return Array.from({ length: count + 1 }, (_, i) => from * ratio ** i);
}
