import { isoDay } from "./iso-day.ts";
import { allLimits } from "./tables/all-limits.ts";
import type { LimitRow } from "./types.ts";

/**
 * Whether a limit is in force on a day: from its first day to its last, both included. A limit that was enacted and
 * replaced before its first day is in force on no day.
 *
 * @example isInForce(findLimit("EPA-DLHS-FLOOR-2019")!, "2020-01-06") // true
 */
export const isInForce = (limit: { from: string; until: string | null }, day: string): boolean =>
  limit.from <= isoDay(day) && (limit.until === null || day <= limit.until);

/**
 * Every limit in force on a day, in the order of the data.
 *
 * @example limitsOn("2018-06-01").some((limit) => limit.id === "CPSIA-100") // true
 */
export const limitsOn = (day: string): LimitRow[] => allLimits.filter((limit) => isInForce(limit, day));

/**
 * A limit by its id; null where there is none of that id.
 * @example findLimit("CPSIA-100")?.value // 100
 */
export const findLimit = (id: string): LimitRow | null => allLimits.find((limit) => limit.id === id) ?? null;

/**
 * All limits of one family, oldest first: the number before, the number now, the number to come.
 * Limits that begin on one day stand in the order of the data; one that never took effect keeps its place.
 *
 * @example historyOf("us-dust-floor").map((l) => l.value) // [40, 10, null]
 */
export const historyOf = (family: string): LimitRow[] =>
  allLimits.filter((limit) => limit.family === family).sort((a, b) => (a.from < b.from ? -1 : a.from > b.from ? 1 : 0));

/**
 * The limits before and after one in its family; null at either end. Refuses nothing: an unknown id has neither.
 *
 * @example neighboursOf("EPA-DLHS-FLOOR-2019").previous?.value // 40
 */
export const neighboursOf = (id: string): { previous: LimitRow | null; next: LimitRow | null } => {
  const limit = findLimit(id);
  if (!limit) return { previous: null, next: null };
  const history = historyOf(limit.family);
  const at = history.findIndex((row) => row.id === id);
  return { previous: history[at - 1] ?? null, next: history[at + 1] ?? null };
};

export type LimitChange = { limit: LimitRow; what: "began" | "ended"; on: string };

/**
 * What changed after one day and up to another: limits that began (on their first day) and limits that ended (on the day
 * after their last), by day, then in the order of the data. This is "which limits changed since this was tested".
 *
 * @example changesBetween("2025-12-31", "2026-01-01").map((c) => c.limit.id) // ["WA-COOK-90"]
 */
export const changesBetween = (after: string, upTo: string): LimitChange[] => {
  isoDay(after);
  isoDay(upTo);
  const within = (on: string) => on > after && on <= upTo;
  return allLimits
    .filter((limit) => !limit.neverTookEffect)
    .flatMap((limit): LimitChange[] => [
      { limit, what: "began", on: limit.from },
      ...(limit.until === null ? [] : [{ limit, what: "ended" as const, on: dayAfter(limit.until) }]),
    ])
    .filter((change) => within(change.on))
    .sort((a, b) => (a.on < b.on ? -1 : a.on > b.on ? 1 : 0));
};

const dayAfter = (day: string): string =>
  new Date(Date.parse(`${day}T00:00:00Z`) + 86_400_000).toISOString().slice(0, 10);
