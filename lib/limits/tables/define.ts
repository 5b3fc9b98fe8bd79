import { canonicalUnit } from "../../quantity/kinds.ts";
import type { Criteria, LimitRow } from "../types.ts";

/** A limit as written in a data file: what is left out has one plain meaning (no end, a single substance, the kind's own unit). */
type Draft = Omit<LimitRow, "unit" | "sum" | "rule" | "value" | "until" | "criteria" | "substances"> &
  Partial<Pick<LimitRow, "unit" | "sum" | "rule" | "value" | "until">> & {
    substances: readonly string[];
    criteria?: readonly Criteria[];
  };

export const limit = (draft: Draft): LimitRow => ({
  sum: false,
  rule: null,
  value: null,
  until: null,
  unit: canonicalUnit(draft.quantity),
  ...draft,
  substances: [...draft.substances],
  criteria: [...(draft.criteria ?? [])],
});

/** Several limits of one instrument: `shared` holds what they have in common, each part may say otherwise. */
export const limits = <S extends Partial<Draft>>(
  shared: S,
  parts: (Omit<Draft, keyof S> & Partial<Draft>)[],
): LimitRow[] => parts.map((part) => limit({ ...shared, ...part } as unknown as Draft));

/** Percent by mass to mg/kg: 1 % = 10 000 mg/kg. */
export const percent = (value: number): number => value * 10_000;
