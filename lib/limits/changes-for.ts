import type { QuantityKind } from "../quantity/kinds.ts";
import { standingOf } from "./applicability.ts";
import { changesBetween } from "./limits-in-force.ts";
import type { LimitRow, Subject } from "./types.ts";

/** What changed in one family of limits: the number before, the number after, and the day; null on the side where there is none. */
export type FamilyChange = {
  family: string;
  before: LimitRow | null;
  after: LimitRow | null;
  on: string;
  /** Whether the one that is in force now is made for such a part, or is held beside it only to compare. */
  applies: "applies" | "for-reference";
};

/**
 * The limits for one part, element and quantity kind that changed after one day and up to another, a change of a family told
 * once: an old number that ended and a new one that began are one change. Limits of another kind, and limits laid upon
 * something other than objects (dust, water, packaging), are left out, since none of them was ever held beside the part.
 *
 * Source: the dates of the limits themselves (`changesBetween`); which of them bear on the part: `standingOf`.
 *
 * A brass pan tested on 2025-06-01 and read on 2026-06-01: Washington's 90 mg/kg for cookware is new (tests/limits/changes-for.test.ts).
 */
export function changesFor(
  subject: Subject,
  kind: QuantityKind,
  element: string,
  testedOn: string,
  today: string,
): FamilyChange[] {
  const bearing = changesBetween(testedOn, today).filter(
    ({ limit }) => limit.target === "object" && limit.quantity === kind && limit.substances.includes(element),
  );
  const changes: FamilyChange[] = [];
  for (const { limit, what, on } of bearing) {
    const day = what === "began" ? on : limit.until;
    const standing = day === null ? null : standingOf(limit, subject, kind, element, day);
    if (standing === null || standing.applies === "other-quantity" || standing.fit === "out") continue;
    const told = changes.find((one) => one.family === limit.family && one.on === on);
    const change = told ?? { family: limit.family, before: null, after: null, on, applies: standing.applies };
    if (what === "began") change.after = limit;
    else change.before = limit;
    if (standing.applies === "applies") change.applies = "applies";
    if (!told) changes.push(change);
  }
  return changes;
}
