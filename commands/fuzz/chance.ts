import { type Random, randomFrom } from "../coverage/random.ts";

/** What mutations draw from: the same seed makes the same file on every machine. */
export type Chance = {
  /** A whole number from 0 up to, not including, `below`. */
  below: (below: number) => number;
  pick: <T>(from: readonly T[]) => T;
};

export function chanceOf(seed: number): Chance {
  const random: Random = randomFrom(seed);
  const below = (n: number): number => Math.floor(random.uniform() * n);
  return { below, pick: (from) => from[below(from.length)]! };
}
