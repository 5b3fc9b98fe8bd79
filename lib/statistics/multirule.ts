import { requireNumbers } from "./checks.ts";

export type Multirule = Record<"1-3s" | "2-2s" | "R-4s" | "4-1s" | "10-x", number[]>;

/**
 * Five control rules read together on standardised check readings (common practice of clinical laboratories; Westgard,
 * Barry, Hunt and Groth, Clin. Chem. 27 (1981) 493).
 *
 * Positions (from 0) of the reading that completes the pattern, all inequalities strict:
 * 1-3s: |z| > 3. 2-2s: this and the one before beyond 2 on the same side. R-4s: this beyond 2 on one side and the one
 * before beyond 2 on the other. 4-1s: four in a row beyond 1 on the same side. 10-x: ten in a row on the same side of 0.
 * A longer run completes the pattern again at each further reading.
 *
 * z: finite, without unit, in the order taken.
 *
 * @throws DomainError `too-few`, `not-finite`
 * @example multirule([0.2, -2.4, 2.2, 3.1]) // { "1-3s": [3], "2-2s": [3], "R-4s": [2], "4-1s": [], "10-x": [] }
 */
export function multirule(z: readonly number[]): Multirule {
  requireNumbers("z", z, 1);
  const positions = [...z.keys()];
  const last = (i: number, count: number) => z.slice(i - count + 1, i + 1);
  const run = (count: number, bound: number) =>
    positions.filter((i) => {
      if (i < count - 1) return false;
      const run = last(i, count);
      return run.every((value) => value > bound) || run.every((value) => value < -bound);
    });
  return {
    "1-3s": run(1, 3),
    "2-2s": run(2, 2),
    "R-4s": positions.filter((i) => {
      const [before, now] = i > 0 ? (last(i, 2) as [number, number]) : [0, 0];
      return (before > 2 && now < -2) || (before < -2 && now > 2);
    }),
    "4-1s": run(4, 1),
    "10-x": run(10, 0),
  };
}
