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

/** Answers are kept, since a page, its two drawings, its twin in the other language and its older revisions ask for the same ones. */
function keeping<T>(): (key: string, work: () => T) => T {
  const kept = new Map<string, T>();
  return (key, work) => {
    const known = kept.get(key);
    if (known !== undefined) return known;
    const result = work();
    if (kept.size >= mostKept) kept.delete(kept.keys().next().value ?? "");
    kept.set(key, result);
    return result;
  };
}

const amounts = keeping<AmountsResult>();
const coats = keeping<ReturnType<typeof coatOfPart>>();

/** What a state comes to. */
export const loadAmounts = (state: AmountsState): AmountsResult =>
  amounts(serialiseAmounts(state), () =>
    computeAmounts(state, seed, {
      references: referenceLoadings(),
      benchmarks: intakeBenchmarks(state.element),
      draws,
    }),
  );

/** A published coat's result said the other way, with the seed of every reader. */
export function loadCoat({ form, material, thicknessMm }: CoatPart, result: ReportedContent) {
  const { quantity, state, value, u, interval, below, upperBound, range } = result;
  const given = [form, material, thicknessMm, quantity, state, value, u, interval, below, upperBound, range];
  return coats(JSON.stringify(given), () => coatOfPart({ form, material, thicknessMm }, result, { seed, draws }));
}
