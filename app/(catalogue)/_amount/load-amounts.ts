import { type AmountsState, serialiseAmounts } from "@/lib/amounts/amounts-form.ts";
import { type CoatPart, coatOfPart } from "@/lib/amounts/coat-of-part.ts";
import { computeAmounts } from "@/lib/amounts/compute-amounts.ts";
import type { ReportedContent } from "@/lib/amounts/content-of-result.ts";
import type { AmountsResult } from "@/lib/amounts/types.ts";
import { intakeBenchmarks } from "@/lib/limits/intake-benchmarks.ts";
import { referenceLoadings } from "@/lib/limits/reference-loadings.ts";

/** One seed for every reader: the same address always gives the same figures. */
const seed = 20_261_124;
/** Enough for the two or three digits printed, and quick enough for a public page. */
const draws = 50_000;
const mostKept = 300;
const kept = new Map<string, AmountsResult>();

/** What a state comes to. Answers are kept, since a page, its two drawings and an item's panel ask for the same one. */
export function loadAmounts(state: AmountsState): AmountsResult {
  const key = serialiseAmounts(state);
  const known = kept.get(key);
  if (known) return known;
  const result = computeAmounts(state, seed, {
    references: referenceLoadings(),
    benchmarks: intakeBenchmarks(state.element),
    draws,
  });
  if (kept.size >= mostKept) kept.delete(kept.keys().next().value ?? "");
  kept.set(key, result);
  return result;
}

/** A published coat's result said the other way, with the seed of every reader. */
export const loadCoat = (part: CoatPart, result: ReportedContent) => coatOfPart(part, result, { seed, draws });
