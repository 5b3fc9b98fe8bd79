import { appendFileSync, existsSync, readFileSync } from "node:fs";
import { z } from "zod";
import { method } from "../../lib/reconcile/reconcile.ts";
import { defaultPolicy } from "../../lib/reconcile/types.ts";
import type { Cell, Tally } from "./cells.ts";

/** One block of one cell: which it was, and what came of it. */
export type FinishedBlock = { ask: { cell: Cell; block: number; trials: number }; tally: Tally };

export const blockKey = ({ cell, block, trials }: FinishedBlock["ask"]): string =>
  [cell.shape, cell.spots, cell.spread, cell.u, cell.below, block, trials].join(" ");

const made = { method: method.version, policy: defaultPolicy.version };
const pair = z.tuple([z.number(), z.number()]);
const line = z.object({
  made: z.object({ method: z.string(), policy: z.string() }),
  ask: z.object({
    cell: z.object({
      shape: z.enum(["even", "normal", "lognormal", "gamma"]),
      spots: z.number(),
      spread: z.number(),
      u: z.number(),
      below: z.number(),
    }),
    block: z.number(),
    trials: z.number(),
  }),
  tally: z.object({
    trials: z.number(),
    stated: z.number(),
    covered: z.number(),
    unsafe: z.number(),
    medianWidth: z.number().nullable(),
    below: pair,
    above: pair,
    byBound: z.number(),
  }),
});

/** The blocks a file holds; none where there is no such file, null where it was made by another version of the method or its policy. */
export function keptBlocks(file: string): Map<string, FinishedBlock> | null {
  const kept = new Map<string, FinishedBlock>();
  if (!existsSync(file)) return kept;
  for (const text of readFileSync(file, "utf8").split("\n")) {
    if (text === "") continue;
    const { made: by, ...block } = line.parse(JSON.parse(text));
    if (by.method !== made.method || by.policy !== made.policy) return null;
    kept.set(blockKey(block.ask), block);
  }
  return kept;
}

export function keepBlock(file: string, block: FinishedBlock): void {
  appendFileSync(file, `${JSON.stringify({ made, ...block })}\n`);
}
