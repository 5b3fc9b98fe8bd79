import type { QuantityKind } from "../quantity/kinds.ts";
import { allLimits } from "./tables/all-limits.ts";
import type { Checked, LimitRow, Nature, Precision } from "./types.ts";

/** A limit as the public API shows it. The first fourteen keys are the stable format; the rest only add to it. */
export type PublicLimit = {
  id: string;
  jurisdiction: string;
  title: string;
  citation: string;
  substances: string[];
  quantity: QuantityKind;
  value: number | null;
  unit: string;
  failsAt: ">" | ">=";
  scope: string;
  from: string;
  until: string | null;
  nature: Nature;
  checked: Checked;
  checkedNote: string;
  sum: boolean;
  rule: string | null;
  family: string;
  fromKnown: Precision;
  complianceFrom: string | null;
  neverTookEffect: boolean;
  statistic: string | null;
  note: string | null;
};

/**
 * Every limit in the public shape, in the order of the data. Pure and the same every time: the caller may cache it.
 *
 * @example listLimits().find((l) => l.id === "CPSIA-100")?.value // 100
 */
export const listLimits = (): PublicLimit[] => allLimits.map(publicLimit);

export const publicLimit = (limit: LimitRow): PublicLimit => ({
  id: limit.id,
  jurisdiction: limit.jurisdiction,
  title: limit.title,
  citation: limit.citation,
  substances: [...limit.substances],
  quantity: limit.quantity,
  value: limit.value,
  unit: limit.unit,
  failsAt: limit.failsAt,
  scope: limit.scope,
  from: limit.from,
  until: limit.until,
  nature: limit.nature,
  checked: limit.checked,
  checkedNote: limit.checkedNote,
  sum: limit.sum,
  rule: limit.rule,
  family: limit.family,
  fromKnown: limit.fromKnown ?? "day",
  complianceFrom: limit.complianceFrom ?? null,
  neverTookEffect: limit.neverTookEffect ?? false,
  statistic: limit.statistic ?? null,
  note: limit.note ?? null,
});
