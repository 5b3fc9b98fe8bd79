import { type Decisive, decisive } from "../../lib/reconcile/reconcile.ts";
import type { ReconcileInput, ShotInput } from "../../lib/reconcile/types.ts";
import { type Random, randomFrom } from "./random.ts";
import { verdictAgainst } from "./verdict.ts";

export type Shape = "even" | "normal" | "lognormal" | "gamma";
export type Cell = { shape: Shape; spots: number; spread: number; u: number; below: number };
export type CellResult = Cell & {
  trials: number;
  stated: number; // share of trials with an interval
  covered: number; // of those, holding the true mean
  unsafe: number; // of those, wholly below the true mean
  medianWidth: number; // relative to the true mean
  wrongBelow: [number, number]; // share of all trials called "below" a limit at 0.5 and 0.9 of the mean
  wrongByBound: number; // of those at 0.9, from a bound: nothing detected, or not quantified
  wrongAbove: [number, number]; // share of all trials called "above" a limit at 1.1 and 2 times the mean
};

const trueMean = 100;

/**
 * Spots 3, 4, 5, 7, 10; spread of the contents 0 to 1.0 of their mean; counting u 1 to 30 % of the mean; 0 to 50 % of
 * spots below detection; contents normal, lognormal or gamma. Normal contents stop at a spread of 0.3, since
 * beyond it many would be below zero. `quick` keeps the corners.
 */
export function grid(quick: boolean): Cell[] {
  const cells: Cell[] = [];
  for (const shape of ["even", "normal", "lognormal", "gamma"] as const)
    for (const spots of quick ? [3, 5, 10] : [3, 4, 5, 7, 10])
      for (const spread of shape === "even" ? [0] : quick ? [0.15, 0.3, 1] : [0.1, 0.15, 0.3, 0.6, 1])
        for (const u of quick ? [0.03, 0.15] : [0.01, 0.03, 0.15, 0.3])
          for (const below of quick ? [0, 0.4] : [0, 0.2, 0.4, 0.5])
            if (shape !== "normal" || spread <= 0.3) cells.push({ shape, spots, spread, u, below });
  return cells;
}

/** What came of some parts of a cell, as counts that add up; the widths by their median, null where no interval was stated. */
export type Tally = {
  trials: number;
  stated: number;
  covered: number;
  unsafe: number;
  medianWidth: number | null;
  below: [number, number];
  above: [number, number];
  byBound: number;
};

/** Parts in a block; a cell's own random numbers start anew with each, so that blocks can be made in any order. */
export const blockOf = 500;

/** One cell: `trials` parts, each shot once at every spot. */
export function simulateCell(cell: Cell, trials: number): CellResult {
  const blocks = Math.ceil(trials / blockOf);
  return resultOf(
    cell,
    Array.from({ length: blocks }, (_, block) =>
      simulateBlock(cell, block, Math.min(blockOf, trials - block * blockOf)),
    ),
  );
}

/** Block number `block` of a cell. */
export function simulateBlock(cell: Cell, block: number, trials: number): Tally {
  const limit = cell.below === 0 ? Number.NEGATIVE_INFINITY : detectionLimit(cell, randomFrom(seedOf(cell, "limit")));
  const random = randomFrom(seedOf(cell, `block ${block}`));
  const widths: number[] = [];
  const tally: Tally = {
    ...{ trials, stated: 0, covered: 0, unsafe: 0, medianWidth: null, below: [0, 0], above: [0, 0], byBound: 0 },
  };
  for (let trial = 0; trial < trials; trial++) {
    const result = decisive(part(cell, limit, random));
    if (result.interval) {
      const [lo, hi] = result.interval;
      widths.push((hi - lo) / trueMean);
      if (hi < trueMean) tally.unsafe += 1;
      else if (lo <= trueMean) tally.covered += 1;
    }
    countVerdicts(result, tally);
  }
  widths.sort((a, b) => a - b);
  tally.stated = widths.length;
  tally.medianWidth = widths[Math.floor(widths.length / 2)] ?? null;
  return tally;
}

/** Blocks put together: shares of all, and the mean of the blocks' median widths. */
export function resultOf(cell: Cell, blocks: readonly Tally[]): CellResult {
  const sum = (count: (tally: Tally) => number): number => blocks.reduce((total, tally) => total + count(tally), 0);
  const trials = sum((tally) => tally.trials);
  const stated = sum((tally) => tally.stated);
  return {
    ...cell,
    trials,
    stated: stated / trials,
    covered: sum((tally) => tally.covered) / stated,
    unsafe: sum((tally) => tally.unsafe) / stated,
    medianWidth: sum((tally) => tally.stated * (tally.medianWidth ?? 0)) / stated,
    wrongBelow: [sum(({ below }) => below[0]) / trials, sum(({ below }) => below[1]) / trials],
    wrongByBound: sum((tally) => tally.byBound) / trials,
    wrongAbove: [sum(({ above }) => above[0]) / trials, sum(({ above }) => above[1]) / trials],
  };
}

function countVerdicts(result: Decisive, tally: Tally): void {
  const at = (times: number) => verdictAgainst(result, trueMean * times);
  const nearly = at(0.9) === "below";
  if (result.state !== "quantified" && nearly) tally.byBound += 1;
  if (at(0.5) === "below") tally.below[0] += 1;
  if (nearly) tally.below[1] += 1;
  if (at(1.1) === "above") tally.above[0] += 1;
  if (at(2) === "above") tally.above[1] += 1;
}

function content({ shape, spread }: Cell, random: Random): number {
  if (shape === "even" || spread === 0) return trueMean;
  if (shape === "normal") return trueMean * (1 + spread * random.normal());
  if (shape === "gamma") return trueMean * spread ** 2 * random.gamma(1 / spread ** 2);
  const sigma = Math.sqrt(Math.log1p(spread ** 2));
  return trueMean * Math.exp(sigma * random.normal() - sigma ** 2 / 2);
}

const measured = (cell: Cell, random: Random): number => content(cell, random) + cell.u * trueMean * random.normal();

/** The detection limit that leaves the wanted share of readings below it, from 20,000 readings of the cell's own kind. */
function detectionLimit(cell: Cell, random: Random): number {
  const readings = Array.from({ length: 20_000 }, () => measured(cell, random)).sort((a, b) => a - b);
  return Math.max(readings[Math.floor(cell.below * readings.length)] ?? 0, 1e-3);
}

function part(cell: Cell, limit: number, random: Random): ReconcileInput {
  const shots = Array.from({ length: cell.spots }, (_, i) =>
    shotOf(`${i + 1}`, measured(cell, random), cell.u * trueMean, limit),
  );
  return { element: "Pb", quantity: "bulk-mass-fraction", form: "bulk", shots, contributions: [] };
}

function shotOf(id: string, value: number, u: number, limit: number): ShotInput {
  const below = value < limit;
  const number = (one: number) => ({ text: "simulated", value: one, decimals: 3 });
  return {
    id,
    spot: id,
    quantity: "bulk-mass-fraction",
    mode: null,
    unit: "mg/kg",
    belowDetection: below,
    value: below ? null : number(value),
    error: below ? null : number(u),
    k: below ? null : 1,
    detectionLimit: below ? number(limit) : null,
    secondsCounted: null,
    takenAt: null,
    setAside: null,
  };
}

/** A whole number from the cell's own description and what it seeds, so a cell's numbers do not depend on which others are run. */
function seedOf(cell: Cell, what: string): number {
  const text = `${cell.shape} ${cell.spots} ${cell.spread} ${cell.u} ${cell.below} ${what}`;
  let seed = 2166136261;
  for (const character of text) seed = Math.imul(seed ^ character.charCodeAt(0), 16777619);
  return seed;
}
